import { numberText } from "../number-text.ts";
import { number, record, table, type ValueOf } from "../spec.ts";

const stations = table("places up the fin: foot and tip", {
  x: number("mm", "leading edge, aft of the wing root's leading edge"),
  z: number("mm", "height, up"),
  chord: number("mm", "chord there"),
});

/**
 * A flat fin that stands upright in the middle. x runs aft from the leading edge of the wing's root, z up from where
 * the whole notebook counts heights; the mean aerodynamic chord is of the side view.
 */
export const finRecord = record(
  "fin",
  "a flat fin",
  {
    height: number("mm", "foot to tip"),
    area: number("cm^2", "area of the side view"),
    mean_chord: number("mm", "area over height"),
    aspect_ratio: number("1", "height squared over area"),
    mac: number("mm", "mean aerodynamic chord"),
    mac_x: number("mm", "leading edge of the mean aerodynamic chord, aft of the wing root's leading edge"),
    mac_z: number("mm", "height of the mean aerodynamic chord, up"),
    quarter_x: number("mm", "a quarter of the mean aerodynamic chord, where its side force acts, aft of the wing root"),
    x: number("mm", "leading edge at the foot, aft of the wing root's leading edge"),
    z: number("mm", "foot, up"),
    root_chord: number("mm", "chord at the foot"),
    tip_chord: number("mm", "chord at the tip"),
    sweep: number("mm", "how far the tip's leading edge lies behind the foot's"),
    thickness: number("mm", "thickness"),
    stations,
  },
  (fin) => `${numberText(fin.height, "mm")} high, ${numberText(fin.area, "cm^2")}`,
);

/** The value of a fin in SI. */
export type Fin = ValueOf<typeof finRecord>;
