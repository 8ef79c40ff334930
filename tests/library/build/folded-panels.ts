import { anyPanels, withColumns } from "../panel-arbitraries.ts";

/** Breaks that no bevel limit forbids and that carry the washout of anyPanels by a cut. */
export const folded = anyPanels.map((panels) =>
  withColumns(panels, {
    length: panels.length.map((each) => each + 0.03),
    break: panels.break.map((each) => 0.12 + Math.abs(each)),
  }),
);
