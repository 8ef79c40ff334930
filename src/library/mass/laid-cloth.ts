import { number } from "../spec.ts";

/** What is said of cloth laid in resin, as parameters of what weighs it. */
export const clothParameters = {
  cloth: number("g/m^2", "weight of the dry cloth", { above: 0 }),
  resin: number("%", "share of resin in the finished strip, by mass", { min: 0, below: 0.95, default: 0.5 }),
};

/** Mass per area of one layer of cloth of this dry weight whose resin is this share of the whole. */
export const laidWeight = (cloth: number, resin: number): number => cloth / (1 - resin);

/** Where the share of resin comes from. */
export const resinSource = {
  text: "Hand lay-up: as much resin as glass by mass (50 %); thin cyanoacrylate wicked onto balsa leaves about 70 %",
  mark: "common practice",
} as const;
