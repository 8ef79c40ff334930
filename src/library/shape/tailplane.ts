import { degrees } from "../numerics/degrees.ts";
import { define, type FieldValues, number } from "../spec.ts";
import { type Tailplane, tailplaneRecord } from "./tailplane-record.ts";
import { taperMeans } from "./taper.ts";

const parameters = {
  span: number("mm", "tip to tip", { above: 0 }),
  root_chord: number("mm", "chord at the root", { above: 0 }),
  tip_chord: number("mm", "chord at the tips", { above: 0 }),
  x: number("mm", "its leading edge at the root, aft of the wing root's leading edge"),
  thickness: number("mm", "thickness of its sheet", { above: 0 }),
  sweep: number("mm", "how far the tips' leading edge lies behind the root's", { default: 0 }),
  z: number("mm", "its lower face at the root's leading edge, up from where heights are counted", { default: 0 }),
  incidence: number("deg", "nose-up angle to the line that incidences are counted from", {
    above: -degrees(45),
    below: degrees(45),
    default: 0,
  }),
  tilt: number("deg", "how far it is tilted across, its right tip up", {
    above: -degrees(45),
    below: degrees(45),
    default: 0,
  }),
};

/** `tailplane(…)`: a flat tailplane of two straight-tapered halves. */
export const tailplane = define({
  name: "tailplane",
  summary: "A flat tailplane of two equal halves with straight edges, and where it stands.",
  topic: "shape",
  parameters,
  result: tailplaneRecord,
  formula:
    "area = span · (root_chord + tip_chord) / 2; mac = ∫ c² dy / area, mac_x = x + ∫ c·(x_LE − x) dy / area; quarter_x = mac_x + mac / 4",
  errors: [],
  assumptions: [
    "x runs aft from the leading edge of the wing's root, y to the right tip, z up.",
    "Both halves are the same and in one plane; incidence and tilt change no area or position here, only what flow and all that flies by it find.",
  ],
  sources: [{ text: "Area and mean aerodynamic chord of a straight-tapered surface", mark: "derived" }],
  examples: [
    {
      summary: "150 mm span, chords 46 and 34 mm, leading edge at x 245 mm and swept by 5 mm",
      arguments: {
        span: 0.15,
        root_chord: 0.046,
        tip_chord: 0.034,
        x: 0.245,
        thickness: 0.0015,
        sweep: 0.005,
        z: 0.003,
        incidence: degrees(0.9),
        tilt: 0,
      },
      result: {
        area: 0.006,
        mean_chord: 0.04,
        aspect_ratio: 3.75,
        mac: 0.0403,
        mac_x: 0.247375,
        mac_y: 0.035625,
        quarter_x: 0.25745,
        stations: { x: [0.245, 0.25], y: [0, 0.075], z: [0.003, 0.003], chord: [0.046, 0.034] },
      },
    },
  ],
  compute: (given) => buildTailplane(given),
});

type Sizes = FieldValues<typeof parameters>;

/** The tailplane of these sizes, in SI; level where no tilt is given. */
export function buildTailplane(given: Omit<Sizes, "tilt"> & Partial<Sizes>): Tailplane {
  const { span, root_chord, tip_chord, x, sweep, z, tilt = 0 } = given;
  const half = taperMeans({ length: span / 2, root_chord, tip_chord, sweep });
  const mac_x = x + half.behind;
  return {
    ...given,
    tilt,
    area: 2 * half.area,
    mean_chord: (2 * half.area) / span,
    aspect_ratio: span ** 2 / (2 * half.area),
    mac: half.mac,
    mac_x,
    mac_y: half.out,
    quarter_x: mac_x + half.mac / 4,
    stations: { x: [x, x + sweep], y: [0, span / 2], z: [z, z], chord: [root_chord, tip_chord] },
  };
}
