import { numberText } from "../number-text.ts";
import { number, record, table, text, type ValueOf } from "../spec.ts";

/**
 * Parts to be cut from sheet, at true size. Each has a frame of its own, in which it lies flat with its lowest and
 * leftmost point at the origin; of wood, the grain runs along x. Lines of one part with the same number are one stroke; a
 * closed one ends where it began. A cut lies outside the part by half the kerf.
 */
export const patternRecord = record(
  "pattern",
  "parts to cut from sheet, at true size",
  {
    parts: table("each part", {
      part: text("its name"),
      thickness: number("mm", "thickness of its sheet"),
      width: number("mm", "its size along x, along the grain"),
      height: number("mm", "its size along y"),
      area: number("cm^2", "its area, without kerf"),
    }),
    lines: table("the lines of the parts, point by point", {
      part: text("the part it belongs to"),
      layer: text("cut: all the way through; score: drawn or scored"),
      stroke: number("1", "points of one part with the same number are one stroke"),
      x: number("mm", "along the grain"),
      y: number("mm", "across it"),
    }),
    labels: table("what is written on the parts", {
      part: text("the part it belongs to"),
      label: text("what is written"),
      x: number("mm", "middle of the words, along the grain"),
      y: number("mm", "middle of the words, across it"),
      angle: number("deg", "turned to the left by"),
      size: number("mm", "height of the letters"),
    }),
  },
  ({ parts }) => {
    const count = parts.part.length;
    const area = parts.area.reduce((sum, each) => sum + each, 0);
    return `${count} ${count === 1 ? "part" : "parts"}, ${numberText(area, "cm^2")}`;
  },
);

/** The value of a pattern in SI. */
export type Pattern = ValueOf<typeof patternRecord>;
