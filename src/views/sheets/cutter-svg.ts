import type { CuttingPlan } from "./cutting-plan.ts";
import { markSvg, svgOfSize } from "./page-svg.ts";
import { type SvgTree, svgText } from "./svg-tree.ts";

/** The layers of a cutter's file, in the order in which it should burn: what is within a part before its outline. */
export const cutterLayers = ["text", "score", "cut"] as const;

/** The text of an SVG file for a laser cutter, in mm: text, score lines and cuts each in a group of its own by id. */
export function cutterSvg({ width, height, marks }: CuttingPlan, title: string): string {
  const groups = cutterLayers.map(
    (layer): SvgTree => ({
      tag: "g",
      attributes: { id: layer },
      children: marks.filter((mark) => mark.layer === layer).map(markSvg),
    }),
  );
  return svgText(svgOfSize(width, height, title, groups));
}
