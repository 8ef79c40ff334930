import { partRecord } from "../mass/part-record.ts";
import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";
import { finRecord } from "./fin-record.ts";
import { fuselageStickRecord } from "./fuselage-stick-record.ts";
import { tailplaneRecord } from "./tailplane-record.ts";
import { wingRecord } from "./wing-record.ts";

/**
 * A glider as one: its parts where they stand, all in the axes of the notebook (x aft from the leading edge of the
 * wing's root, y to the right tip, z up). What was not given is left out, and so is what follows from it.
 */
export const gliderRecord = record(
  "glider",
  "a glider: wing, tail, stick and balance in their places",
  {
    wing: wingRecord,
    tailplane: { ...tailplaneRecord, optional: true },
    fin: { ...finRecord, optional: true },
    stick: { ...fuselageStickRecord, optional: true },
    balance: { ...partRecord, optional: true },
    neutral_x: number("mm", "neutral point, aft of the wing root's leading edge", { optional: true }),
    seat_height: number("mm", "height of the wing root's lower face at its leading edge, up"),
    seat_angle: number("deg", "nose-up angle of the wing's seat"),
    decalage: number("deg", "what the wing's seat stands steeper than the tailplane", { optional: true }),
    static_margin: number(
      "%",
      "how far the balance point lies ahead of the neutral point, in mean aerodynamic chords",
      {
        optional: true,
      },
    ),
    tail_arm: number("mm", "from the balance point back to a quarter of the tailplane's mean aerodynamic chord", {
      optional: true,
    }),
  },
  ({ wing, balance, static_margin }) =>
    [
      `${numberText(wing.span, "mm")} span`,
      ...(balance ? [numberText(balance.mass, "g")] : []),
      ...(static_margin === undefined ? [] : [`static margin ${numberText(static_margin, "%")}`]),
    ].join(", "),
);

/** The value of a glider in SI. */
export type Glider = ValueOf<typeof gliderRecord>;
