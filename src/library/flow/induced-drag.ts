import { define, number } from "../spec.ts";

/** Span efficiency, as parameter. */
export const efficiency = number("1", "span efficiency: 1 for an elliptic loading, 0.9 to 0.98 for real wings", {
  above: 0,
  max: 1.2,
  default: 0.95,
});

/** Where the default comes from. */
export const efficiencySource = {
  text: "Span efficiency of straight-tapered wings of aspect ratio 6 to 10: 0.92 to 0.99 by lifting line",
  mark: "own computation",
} as const;

/** `induced_drag(lift_coefficient, aspect_ratio, efficiency)`. */
export const inducedDrag = define({
  name: "induced_drag",
  summary: "The drag coefficient that lift itself costs a wing of finite span.",
  topic: "flow",
  parameters: {
    lift_coefficient: number("1", "lift coefficient of the wing"),
    aspect_ratio: number("1", "span squared over area, both of the plan view", { above: 0 }),
    efficiency,
  },
  result: number("1", "induced drag coefficient"),
  formula: "lift_coefficient² / (π · efficiency · aspect_ratio)",
  errors: [],
  assumptions: [
    "Of a bent wing the span is that of the plan view: on the span as cut its efficiency would look better than it is.",
    "Washout is right at one lift coefficient only; away from it the efficiency falls.",
  ],
  sources: [{ text: "L. Prandtl, lifting-line theory, 1918", mark: "derived" }, efficiencySource],
  examples: [
    {
      summary: "lift coefficient 0.6, aspect ratio 7.5",
      arguments: { lift_coefficient: 0.6, aspect_ratio: 7.5 },
      result: 0.36 / (Math.PI * 0.95 * 7.5),
    },
  ],
  elementwise: true,
  compute: ({ lift_coefficient, aspect_ratio, efficiency }) =>
    lift_coefficient ** 2 / (Math.PI * efficiency * aspect_ratio),
});
