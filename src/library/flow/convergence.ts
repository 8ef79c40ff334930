import { degrees } from "../numerics/degrees.ts";
import { taperedFin, taperedTailplane } from "../shape/sample-tails.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { flowAbout } from "./flow.ts";
import type { Flow } from "./flow-record.ts";

/** What a lattice of so many strips and rows says of a bent wing with tailplane and fin. */
export interface Fineness {
  readonly strips: number;
  readonly rows: number;
  readonly tailStrips: number;
  readonly tailRows: number;
  readonly flow: Flow;
}

const counts: readonly (readonly [strips: number, rows: number, tailStrips: number, tailRows: number])[] = [
  [6, 2, 3, 2],
  [9, 3, 5, 2],
  [12, 4, 6, 3],
  [18, 5, 9, 4],
  [24, 6, 12, 5],
  [36, 8, 18, 6],
];

/** The same glider at 5 deg by ever finer lattices, the usual one among them, the finest last. */
export function latticeConvergence(): readonly Fineness[] {
  const glider = {
    ...{ wing: threePanelWing, tailplane: taperedTailplane, fin: taperedFin },
    ...{ seat_height: 0.012, seat_angle: degrees(2) },
  };
  return counts.map(([strips, rows, tailStrips, tailRows]) => {
    const given = { glider, angle_of_attack: degrees(5), section_slope: 2 * Math.PI, camber: 0, axes: "stability" };
    const flow = flowAbout({ ...given, strips, rows, tail_strips: tailStrips, tail_rows: tailRows }, (_, message) => {
      throw new Error(message);
    });
    return { strips, rows, tailStrips, tailRows, flow };
  });
}
