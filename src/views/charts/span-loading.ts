import type { Flow } from "../../library/index.ts";
import { figureText } from "./figure-text.ts";
import type { Place, PlotData } from "./plot-data.ts";

/** How lift is spread along the wing, against the ellipse of the same lift, which costs least induced drag. */
export function spanLoadingPlot(flow: Flow, before?: Flow): PlotData {
  const places = ({ loading, span }: Flow, of: "load" | "section_lift" | "ellipse"): Place[] => {
    const strips = loading.y.map((y, i) => ({ x: y, y: loading[of][i] ?? Number.NaN }));
    // A load ends at the tips, where the air comes round them.
    const tips = of === "section_lift" ? [] : [-span / 2, span / 2].map((y) => ({ x: y, y: 0 }));
    return [...tips.slice(0, 1), ...strips, ...tips.slice(1)];
  };
  const ghosts = (of: "load" | "section_lift") =>
    before ? [{ look: "ghost" as const, places: places(before, of) }] : [];
  return {
    view: "span-loading",
    title: "Span loading",
    x: { label: "along the span, from the left tip to the right", unit: "mm", isExact: true },
    panels: [
      {
        y: { label: "load: section lift × chord over mean chord", unit: "" },
        curves: [
          ...ghosts("load"),
          { look: "aside", name: "ellipse of the same lift", places: places(flow, "ellipse") },
          { look: "curve", name: "load", places: places(flow, "load") },
        ],
        reach: { x: [-flow.span / 2, flow.span / 2], y: [0] },
      },
      {
        y: { label: "lift coefficient of the section, square to its panel", unit: "" },
        curves: [
          ...ghosts("section_lift"),
          { look: "curve", name: "section lift", places: places(flow, "section_lift") },
        ],
        reach: { x: [-flow.span / 2, flow.span / 2], y: [0] },
      },
    ],
    description: () => {
      const most = Math.max(...flow.loading.section_lift);
      const at = flow.loading.y[flow.loading.section_lift.indexOf(most)] ?? 0;
      return (
        `At ${figureText(flow.angle_of_attack, "deg")} of angle of attack the wing lifts with a coefficient of ` +
        `${figureText(flow.lift_coefficient, "1")} and a span efficiency of ${figureText(flow.span_efficiency, "1")}. ` +
        `The section lift is largest, ${figureText(most, "1")}, ${figureText(Math.abs(at), "mm")} from the centre.`
      );
    },
  };
}
