import { define, type FieldValues, number } from "../spec.ts";
import { type FuselageStick, fuselageStickRecord } from "./fuselage-stick-record.ts";

const parameters = {
  front_x: number("mm", "its front end, aft of the wing root's leading edge; negative ahead of it"),
  rear_x: number("mm", "its rear end, aft of the wing root's leading edge"),
  width: number("mm", "width at the front", { above: 0 }),
  height: number("mm", "height at the front", { above: 0 }),
  end_width: number("mm", "width at the rear; left out, as at the front", { min: 0, optional: true }),
  end_height: number("mm", "height at the rear; left out, as at the front", { min: 0, optional: true }),
  z: number("mm", "height of its middle line", { default: 0 }),
};

/** `fuselage_stick(front_x, rear_x, width, height, …)`: the stick that carries wing and tail. */
export const fuselageStick = define({
  name: "fuselage_stick",
  summary: "A straight stick of rectangular section that carries wing and tail, and where it lies.",
  topic: "shape",
  parameters,
  result: fuselageStickRecord,
  formula: "length = rear_x − front_x; width and height change evenly from the front end to the rear end",
  errors: ["The rear end does not lie behind the front end."],
  assumptions: ["x runs aft from the leading edge of the wing's root, z up; the middle line is straight and level."],
  sources: [{ text: "Plane geometry", mark: "derived" }],
  examples: [
    {
      summary: "from 85 mm ahead of the wing root to 295 mm behind it, 6 by 9 mm tapering to 4 by 5 mm",
      arguments: { front_x: -0.085, rear_x: 0.295, width: 0.006, height: 0.009, end_width: 0.004, end_height: 0.005 },
      result: { length: 0.38, width: 0.006, height: 0.009, end_width: 0.004, end_height: 0.005, z: 0 },
    },
    {
      summary: "an even stick, its middle line 2 mm up",
      arguments: { front_x: -0.1, rear_x: 0.25, width: 0.005, height: 0.008, z: 0.002 },
      result: { length: 0.35, end_width: 0.005, end_height: 0.008, z: 0.002 },
    },
  ],
  compute: (given, refuse) => {
    if (!(given.rear_x > given.front_x)) {
      refuse("rear_x", "The rear end must lie behind the front end: give it the larger x.");
    }
    return buildFuselageStick(given);
  },
});

/** The stick of these sizes, in SI. */
export function buildFuselageStick(given: FieldValues<typeof parameters>): FuselageStick {
  const { front_x, rear_x, width, height, end_width = width, end_height = height, z } = given;
  return { front_x, rear_x, length: rear_x - front_x, width, height, end_width, end_height, z };
}
