import type { Wing } from "../shape/wing-record.ts";
import { number, type Refuse } from "../spec.ts";

/** What is said of a wing's wood, as parameters of what weighs it. */
export const sanding = {
  density: number("kg/m^3", "density of the wood; left out, the column density of the table of panels", {
    above: 0,
    optional: true,
  }),
  sanded: number("%", "share of the blank's volume that sanding leaves", { above: 0, max: 1, default: 1 }),
};

/** The density of each panel of both halves: one for all, or the column of the table. */
export function densities(
  wing: Wing,
  density: number | undefined,
  refuse: Refuse,
): Readonly<Record<"right" | "left", readonly number[]>> {
  const of = ({ length, density: column }: Wing["right"]) => {
    if (density !== undefined) return length.map(() => density);
    if (column.length < length.length) {
      refuse("density", "The wing does not say of what wood it is. Give a density, or a column density in its panels.");
    }
    return column;
  };
  return { right: of(wing.right), left: of(wing.left) };
}
