import { number } from "../spec.ts";

/** What is said of the sheet of a tail surface, as parameters of what weighs it. */
export const sheetWood = {
  density: number("kg/m^3", "density of the wood", { above: 0 }),
  sanded: number("%", "share of the sheet's volume that sanding leaves", { above: 0, max: 1, default: 1 }),
};
