import { numberText } from "../number-text.ts";
import { number, record, table, type ValueOf } from "../spec.ts";

const stations = table("places along the right half: root and tip", {
  x: number("mm", "leading edge, aft of the wing root's leading edge"),
  y: number("mm", "towards the right tip"),
  z: number("mm", "leading edge of the lower face, up"),
  chord: number("mm", "chord there"),
});

/**
 * A flat tailplane. x runs aft from the leading edge of the wing's root, y to the right, z up from where the whole
 * notebook counts heights; the mean aerodynamic chord is of the plan view.
 */
export const tailplaneRecord = record(
  "tailplane",
  "a flat tailplane",
  {
    span: number("mm", "tip to tip"),
    area: number("cm^2", "area of the plan view"),
    mean_chord: number("mm", "area over span"),
    aspect_ratio: number("1", "span squared over area"),
    mac: number("mm", "mean aerodynamic chord"),
    mac_x: number("mm", "leading edge of the mean aerodynamic chord, aft of the wing root's leading edge"),
    mac_y: number("mm", "distance of the mean aerodynamic chord from the centre line"),
    quarter_x: number("mm", "a quarter of the mean aerodynamic chord, where its lift acts, aft of the wing root"),
    x: number("mm", "leading edge at the root, aft of the wing root's leading edge"),
    z: number("mm", "lower face at the root's leading edge, up"),
    root_chord: number("mm", "chord at the root"),
    tip_chord: number("mm", "chord at the tips"),
    sweep: number("mm", "how far the tips' leading edge lies behind the root's"),
    thickness: number("mm", "thickness"),
    incidence: number("deg", "nose-up angle"),
    tilt: number("deg", "tilt across, right tip up"),
    stations,
  },
  (tail) => `${numberText(tail.span, "mm")} span, ${numberText(tail.area, "cm^2")}`,
);

/** The value of a tailplane in SI. */
export type Tailplane = ValueOf<typeof tailplaneRecord>;
