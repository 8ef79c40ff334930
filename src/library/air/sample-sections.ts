/** Sections for the examples of functions that take one. */
import { idealLift, maxLift, moment, zeroLiftAngle } from "./section.ts";
import type { SectionValue } from "./section-record.ts";

const shape = { thickness: 0.042, camber: 0.021, suction: 0.6 };

/** Flat-bottomed, 4.2 % thick. */
export const sampleSection: SectionValue = {
  ...shape,
  zero_lift_angle: zeroLiftAngle(shape),
  ideal_lift: idealLift(shape),
  max_lift: maxLift(shape),
  moment: moment(shape),
};
