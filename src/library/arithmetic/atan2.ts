import { anyNumber, define, number } from "../spec.ts";
import { elementary } from "./elementary.ts";

/** `atan2(rise, run)`. */
export const atan2 = define({
  name: "atan2",
  summary: "The angle of a slope told by its rise and its run, all the way round.",
  topic: "arithmetic",
  parameters: { rise: anyNumber("how far it goes up"), run: anyNumber("how far it goes along") },
  result: number("deg", "angle from −180 to 180 deg"),
  formula: "the angle whose tangent is rise / run, in the quadrant that their signs say",
  errors: ["Rise and run are both 0."],
  assumptions: [],
  sources: elementary,
  examples: [
    { summary: "1 up, 1 back: 135 deg", arguments: { rise: 1, run: -1 }, result: (3 * Math.PI) / 4 },
    { summary: "3 up, 4 along", arguments: { rise: 0.003, run: 0.004 }, result: 0.6435011087932844 },
  ],
  elementwise: true,
  compute: ({ rise, run }, refuse) => {
    if (rise === 0 && run === 0) refuse("run", "Rise and run are both 0, which has no angle. Make one of them other.");
    return Math.atan2(rise, run);
  },
});
