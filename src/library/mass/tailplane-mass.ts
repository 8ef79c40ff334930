import { taperedTailplane } from "../shape/sample-tails.ts";
import { type Tailplane, tailplaneRecord } from "../shape/tailplane-record.ts";
import { define } from "../spec.ts";
import { type Body, gather } from "./gather.ts";
import { partRecord } from "./part-record.ts";
import { plate } from "./plate.ts";
import { directions, seated } from "./seat.ts";
import { fullSection } from "./section-fill.ts";
import { sheetWood } from "./sheet-wood.ts";

/** `tailplane_mass(tailplane, density, sanded)`: the bare wood of a tailplane as one part. */
export const tailplaneMass = define({
  name: "tailplane_mass",
  summary: "The bare wood of a tailplane as one part: mass, balance point, inertia.",
  topic: "mass",
  parameters: { tailplane: tailplaneRecord, ...sheetWood },
  result: partRecord,
  formula: "mass = density · sanded · thickness · area; balance point and inertia by integrals over both halves",
  errors: [],
  assumptions: [
    "A sheet of even thickness that balances at the middle of its chord; sanding takes the same share everywhere.",
    "Glue at the stick and finish are not in it.",
  ],
  sources: [{ text: "Integrals of a straight taper of even thickness, exact", mark: "derived" }],
  examples: [
    {
      summary: "60 cm² of 1.5 mm sheet at 90 kg/m³, its middle 247.4 mm + half of 40.3 mm behind the wing root",
      arguments: { tailplane: taperedTailplane, density: 90 },
      result: { mass: 0.00081, x: 0.267535, y: 0, ixy: 0, iyz: 0 },
      tolerance: 1e-4,
    },
  ],
  compute: ({ tailplane, density, sanded }) => gather(tailplaneWood(tailplane, density * sanded)),
});

/** Both halves of a tailplane as bodies. */
const tailplaneWood = (tail: Tailplane, density: number): readonly Body[] =>
  ([1, -1] as const).flatMap((side) => {
    const { aft, up } = directions(side, 0, 0, tail);
    return plate({
      length: tail.span / 2,
      root: { corner: seated([0, 0, 0], tail), chord: tail.root_chord },
      tip: { corner: seated([tail.sweep, (side * tail.span) / 2, 0], tail), chord: tail.tip_chord },
      thickness: tail.thickness,
      density,
      aft,
      up,
      section: fullSection,
    });
  });
