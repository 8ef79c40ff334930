import { numberText } from "../number-text.ts";
import type { Refuse } from "../spec.ts";

/** Clay nearer to the wanted balance point than this, m, moves nothing that could be measured. */
const least = 0.001;

/** How far ahead of the wanted balance point clay sits; refuses clay that sits on it. */
export function clayArm(wanted_x: number, clay_x: number, refuse: Refuse): number {
  const arm = wanted_x - clay_x;
  if (Math.abs(arm) < least) {
    refuse(
      "clay_x",
      `Clay at ${numberText(clay_x, "mm")} lies where the glider is to balance, ${numberText(wanted_x, "mm")}: no amount of it moves the ` +
        "balance. Put it in the nose, or at the tail.",
    );
  }
  return arm;
}
