import { formatNumber, joinUnit } from "../format.ts";
import type { GliderOnPaper } from "./glider.ts";

/** Where the glider balances, where it is neutral, and the margin between, as far as they are known. */
export function balanceInWords(
  { wing, balance, neutral_x, static_margin }: GliderOnPaper,
  told: (value: number) => string,
) {
  const place = (x: number): string =>
    `${told(x)} behind the root's leading edge, at ${share((x - wing.mac_x) / wing.mac)} of the mean aerodynamic chord`;
  return [
    ...(balance ? [`Balance point ${place(balance.x)}.`] : []),
    ...(neutral_x === undefined ? [] : [`Neutral point ${place(neutral_x)}.`]),
    ...(static_margin === undefined ? [] : [`Static margin ${share(static_margin)}.`]),
  ];
}

/** A share in per cent to three figures, at most to a hundredth: "41.8%", "4.25%". */
export const share = (value: number): string =>
  joinUnit(formatNumber(Math.round(value * 1e4) / 1e4, "%", { figures: 3 }));
