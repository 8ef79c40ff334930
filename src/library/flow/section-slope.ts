import { number } from "../spec.ts";

/** Lift slope of the section, as parameter. */
export const sectionSlope = number("1/rad", "lift slope of the section: 2π in theory, 5.7 for thin balsa", {
  above: 0,
  max: 10,
  default: 5.7,
});

/** Where the default comes from. */
export const sectionSlopeSource = {
  text: "Lift slope of thin balsa sections at Reynolds numbers of 15 000 to 80 000: 5.2 to 5.7 per radian",
  mark: "from memory",
} as const;
