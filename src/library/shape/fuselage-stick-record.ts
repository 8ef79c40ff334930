import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

/**
 * A fuselage stick: a straight rod along x, of rectangular section, that may taper. x runs aft from the leading edge of
 * the wing's root, z up from where the whole notebook counts heights.
 */
export const fuselageStickRecord = record(
  "fuselage_stick",
  "a straight stick that carries wing and tail",
  {
    front_x: number("mm", "front end, aft of the wing root's leading edge; negative ahead of it"),
    rear_x: number("mm", "rear end, aft of the wing root's leading edge"),
    length: number("mm", "front end to rear end"),
    width: number("mm", "width at the front"),
    height: number("mm", "height at the front"),
    end_width: number("mm", "width at the rear"),
    end_height: number("mm", "height at the rear"),
    z: number("mm", "height of its middle line, up"),
  },
  (stick) => `${numberText(stick.length, "mm")} long`,
);

/** The value of a fuselage stick in SI. */
export type FuselageStick = ValueOf<typeof fuselageStickRecord>;
