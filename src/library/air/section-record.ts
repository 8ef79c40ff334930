import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

/** A thin section, as `thin_section` makes it. */
export const sectionRecord = record(
  "section",
  "a thin section",
  {
    thickness: number("%", "thickness over chord"),
    camber: number("%", "height of the mean line over chord"),
    suction: number("%", "share of the leading edge's suction that is kept"),
    zero_lift_angle: number("deg", "angle of attack without lift"),
    ideal_lift: number("1", "lift coefficient at which the flow meets the leading edge smoothly"),
    max_lift: number("1", "largest lift coefficient, ±0.1"),
    moment: number("1", "nose-up moment coefficient about a quarter of the chord"),
  },
  (of) => `${numberText(of.thickness, "%")} thick, ${numberText(of.camber, "%")} camber`,
);

/** The value of a section in SI. */
export type SectionValue = ValueOf<typeof sectionRecord>;
