import { degrees } from "../numerics/degrees.ts";
import { number } from "../spec.ts";

const most = { above: -degrees(20), below: degrees(20), default: 0 } as const;

/** How the tail is set against what the glider says of it. */
export const settingParameters = {
  tail_turn: number("deg", "tailplane turned more nose-up than built", most),
  fin_turn: number("deg", "fin turned so that it steers to the right; to the left below 0", most),
};
