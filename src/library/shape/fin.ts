import { define, type FieldValues, number } from "../spec.ts";
import { type Fin, finRecord } from "./fin-record.ts";
import { taperMeans } from "./taper.ts";

const parameters = {
  height: number("mm", "foot to tip", { above: 0 }),
  root_chord: number("mm", "chord at the foot", { above: 0 }),
  tip_chord: number("mm", "chord at the tip", { above: 0 }),
  x: number("mm", "its leading edge at the foot, aft of the wing root's leading edge"),
  thickness: number("mm", "thickness of its sheet", { above: 0 }),
  sweep: number("mm", "how far the tip's leading edge lies behind the foot's", { default: 0 }),
  z: number("mm", "its foot, up from where heights are counted", { default: 0 }),
};

/** `fin(…)`: a flat fin with straight edges. */
export const fin = define({
  name: "fin",
  summary: "A flat fin with straight edges that stands upright in the middle, and where it stands.",
  topic: "shape",
  parameters,
  result: finRecord,
  formula:
    "area = height · (root_chord + tip_chord) / 2; mac = ∫ c² dz / area, mac_x = x + ∫ c·(x_LE − x) dz / area, mac_z = ∫ c·z dz / area; quarter_x = mac_x + mac / 4",
  errors: [],
  assumptions: [
    "x runs aft from the leading edge of the wing's root, z up.",
    "The aspect ratio is that of the fin alone; a tailplane at its foot makes it work like a taller one.",
  ],
  sources: [{ text: "Area and mean aerodynamic chord of a straight-tapered surface", mark: "derived" }],
  examples: [
    {
      summary: "50 mm high, chords 46 and 32 mm, leading edge at x 248 mm and swept by 12 mm, foot 4 mm up",
      arguments: {
        height: 0.05,
        root_chord: 0.046,
        tip_chord: 0.032,
        x: 0.248,
        thickness: 0.0015,
        sweep: 0.012,
        z: 0.004,
      },
      result: {
        area: 0.00195,
        mean_chord: 0.039,
        aspect_ratio: 0.05 / 0.039,
        mac: 0.0394188034188,
        mac_x: 0.253641025641,
        mac_z: 0.0275042735043,
        quarter_x: 0.263495726496,
        stations: { x: [0.248, 0.26], z: [0.004, 0.054], chord: [0.046, 0.032] },
      },
    },
  ],
  compute: (given) => buildFin(given),
});

/** The fin of these sizes, in SI. */
export function buildFin(given: FieldValues<typeof parameters>): Fin {
  const { height, root_chord, tip_chord, x, sweep, z } = given;
  const { area, mac, behind, out } = taperMeans({ length: height, root_chord, tip_chord, sweep });
  const mac_x = x + behind;
  return {
    ...given,
    area,
    mean_chord: area / height,
    aspect_ratio: height ** 2 / area,
    mac,
    mac_x,
    mac_z: z + out,
    quarter_x: mac_x + mac / 4,
    stations: { x: [x, x + sweep], z: [z, z + height], chord: [root_chord, tip_chord] },
  };
}
