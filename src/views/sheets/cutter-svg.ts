import type { CuttingPlan } from "./cutting-plan.ts";
import { markSvg, svgOfSize } from "./page-svg.ts";
import { type SvgTree, svgText } from "./svg-tree.ts";

/** The layers of a cutter's file, in the order in which it should burn: what is within a part before its outline. */
export const cutterLayers = ["text", "score", "cut"] as const;

/** What drives a laser tells layers apart by colour more often than by group, and cuts what is hair-thin (common practice). */
const hair = 0.05;

/** The same three as in the DXF file: black, blue, green. */
const inks = {
  text: { color: "#0f766e", width: hair },
  score: { color: "#1f6fa8", width: hair },
  cut: { color: "#000000", width: hair },
} as const;

/**
 * The text of an SVG file for a laser cutter, in mm: text, score lines and cuts each in a group of its own by id and in a
 * colour of its own, all lines through and hair-thin.
 */
export function cutterSvg({ width, height, marks }: CuttingPlan, title: string): string {
  const groups = cutterLayers.map(
    (layer): SvgTree => ({
      tag: "g",
      attributes: { id: layer },
      children: marks.filter((mark) => mark.layer === layer).map((mark) => markSvg(mark, inks[layer])),
    }),
  );
  return svgText(svgOfSize(width, height, title, groups));
}
