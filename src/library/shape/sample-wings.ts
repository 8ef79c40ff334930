/** Wings for the examples of functions that take one. */
import { degrees } from "../numerics/degrees.ts";
import { buildWing } from "./wing.ts";
import type { Wing } from "./wing-record.ts";

/** Corners at y 0, 200, 400, 500 mm with chords 120, 120, 100, 60 mm; panels at 3, 8 and 20 deg. */
export const threePanelWing: Wing = sample({
  y: [0, 0.2, 0.4, 0.5],
  chord: [0.12, 0.12, 0.1, 0.06],
  cant: [degrees(3), degrees(8), degrees(20)],
});

/** A constant chord of 90 mm: level to y 250 mm, then tips at 20 deg to y 500 mm. */
export const tipDihedralWing: Wing = sample({ y: [0, 0.25, 0.5], chord: [0.09, 0.09, 0.09], cant: [0, degrees(20)] });

/** A plain V at 12 deg, chord 110 mm at the root and 70 mm at the tip. */
export const plainVWing: Wing = sample({ y: [0, 0.4], chord: [0.11, 0.07], cant: [degrees(12)] });

/** A level centre panel and a 20 deg tip of the same true length, the tip tapered to three quarters of its chord. */
export const taperedTipWing: Wing = sample({
  y: [0, 0.2, 0.2 + 0.2 * Math.cos(degrees(20))],
  chord: [0.08, 0.08, 0.06],
  cant: [0, degrees(20)],
});

/** A flat rectangle, 800 mm by 100 mm. */
export const rectangularWing: Wing = sample({ y: [0, 0.4], chord: [0.1, 0.1], cant: [0] });

/** A wing told by its plan view: y and chord at root, joints and tip, and the cant of each panel. */
function sample(plan: { y: readonly number[]; chord: readonly number[]; cant: readonly number[] }): Wing {
  const { y, chord, cant } = plan;
  const each = (value: (index: number) => number) => cant.map((_, index) => value(index));
  const at = (list: readonly number[], index: number) => list[index] ?? Number.NaN;
  return buildWing(
    {
      length: each((i) => (at(y, i + 1) - at(y, i)) / Math.cos(at(cant, i))),
      root_chord: chord.slice(0, -1),
      tip_chord: chord.slice(1),
      sweep: each(() => 0),
      break: each((i) => at(cant, i) - (i === 0 ? 0 : at(cant, i - 1))),
      washout: each(() => 0),
      thickness: each(() => 0.003),
    },
    undefined,
    (parameter, message) => {
      throw new Error(`got a sample wing with faulty ${parameter}: ${message}`);
    },
  );
}
