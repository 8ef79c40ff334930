import { define, number } from "../spec.ts";
import { airAt, airParameter } from "./atmosphere.ts";
import { bodyForm, turbulent } from "./friction.ts";

/** `body_drag_area(length, width, height, speed, air)`. */
export const bodyDragArea = define({
  name: "body_drag_area",
  summary: "The drag of a stick or pod as an area: its drag over the dynamic pressure.",
  topic: "air",
  parameters: {
    length: number("mm", "length", { above: 0 }),
    width: number("mm", "mean width", { above: 0 }),
    height: number("mm", "mean height", { above: 0 }),
    speed: number("m/s", "speed", { above: 0 }),
    air: airParameter,
  },
  result: number("cm^2", "drag area"),
  formula:
    "2·(width + height)·length · 0.455/(log₁₀ Re)^2.58 · (1 + 1.5·(d/l)^1.5 + 7·(d/l)³), with d the diameter of equal section",
  errors: ["The body is shorter than twice its diameter.", "The Reynolds number of its length is below 1000."],
  assumptions: [
    "Turbulent friction all along: a stick is rough, and stands in what the nose and the wing stir up.",
    "A square edge, a hook or a blunt end is not in it: common practice doubles the figure for a pod with fittings.",
  ],
  sources: [
    { text: "L. Prandtl, H. Schlichting, 1932: turbulent friction of a plate", mark: "from memory" },
    { text: "S. F. Hoerner, Fluid-Dynamic Drag, 1965, chapter 6: form of a slender body", mark: "from memory" },
  ],
  examples: [
    {
      summary: "a stick of 380 by 5 by 7 mm at 4 m/s: 91 cm² of surface at a Reynolds number of 104 000",
      arguments: { length: 0.38, width: 0.005, height: 0.007, speed: 4 },
      result: 6.48e-5,
      tolerance: 2e-3,
    },
  ],
  compute: ({ length, width, height, speed, air = airAt(0) }, refuse) => {
    if (length < 2 * diameterOf(width, height))
      refuse("length", "The body is shorter than twice its diameter: it is no slender body.");
    const reynolds = (speed * length) / air.kinematic_viscosity;
    if (reynolds < 1000)
      refuse("speed", "Its Reynolds number is below 1000, where this friction law ends. Fly faster.");
    return bodyArea(length, width, height, reynolds);
  },
});

/** The same at the Reynolds number of its length. */
export const bodyArea = (length: number, width: number, height: number, reynolds: number): number =>
  2 * (width + height) * length * turbulent(reynolds) * bodyForm(length / diameterOf(width, height));

/** Diameter of the circle of equal section. */
const diameterOf = (width: number, height: number) => Math.sqrt((4 * width * height) / Math.PI);
