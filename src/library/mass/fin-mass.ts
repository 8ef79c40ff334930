import { type Fin, finRecord } from "../shape/fin-record.ts";
import { taperedFin } from "../shape/sample-tails.ts";
import { define } from "../spec.ts";
import { type Body, gather } from "./gather.ts";
import { partRecord } from "./part-record.ts";
import { plate } from "./plate.ts";
import { fullSection } from "./section-fill.ts";
import { sheetWood } from "./sheet-wood.ts";

/** `fin_mass(fin, density, sanded)`: the bare wood of a fin as one part. */
export const finMass = define({
  name: "fin_mass",
  summary: "The bare wood of a fin as one part: mass, balance point, inertia.",
  topic: "mass",
  parameters: { fin: finRecord, ...sheetWood },
  result: partRecord,
  formula: "mass = density · sanded · thickness · area; balance point and inertia by integrals up the fin",
  errors: [],
  assumptions: [
    "A sheet of even thickness in the middle plane that balances at the middle of its chord; sanding takes the same share everywhere.",
    "Glue at the foot and finish are not in it.",
  ],
  sources: [{ text: "Integrals of a straight taper of even thickness, exact", mark: "derived" }],
  examples: [
    {
      summary: "19.5 cm² of 1.5 mm sheet at 90 kg/m³, its middle 253.64 mm + half of 39.42 mm behind the wing root",
      arguments: { fin: taperedFin, density: 90 },
      result: { mass: 0.00026325, x: 0.273350427350427, y: 0, z: 0.0275042735042735, ixy: 0, iyz: 0 },
    },
  ],
  compute: ({ fin, density, sanded }) => gather(finWood(fin, density * sanded)),
});

/** A fin as bodies: a plate on end, whose lower face looks left. */
const finWood = ({ x, z, height, sweep, root_chord, tip_chord, thickness }: Fin, density: number): readonly Body[] =>
  plate({
    length: height,
    root: { corner: [x, -thickness / 2, z], chord: root_chord },
    tip: { corner: [x + sweep, -thickness / 2, z + height], chord: tip_chord },
    thickness,
    density,
    aft: [1, 0, 0],
    up: [0, 1, 0],
    section: fullSection,
  });
