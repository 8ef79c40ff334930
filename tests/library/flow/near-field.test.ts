import { expect, test } from "vitest";
import { nearFieldDrag } from "../../../src/library/flow/near-field.ts";
import { straightFlight } from "../../../src/library/flow/wind-axes.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Glider } from "../../../src/library/shape/glider-record.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { refuse } from "../call.ts";
import { ploverPanels } from "../plover.ts";
import { farDrag, plainWing, plover, solved } from "./sample-flows.ts";

/** The demo glider with a left tip that is longer and stands flatter. */
function crooked(): Glider {
  const left = { ...ploverPanels, length: [0.105, 0.08, 0.07], break: [degrees(3), degrees(7), degrees(5)] };
  return { ...plover(), wing: buildWing(ploverPanels, left, refuse) };
}

// By the velocities at the vortices, which know nothing of the wake's trace.
test.each([
  ["a rectangle", plainWing(8), 0.0005],
  ["a V of 20 deg", plainWing(8, { cant: degrees(20) }), 0.0005],
  ["a tapered wing", plainWing(6, { taper: 0.5 }), 0.006],
  ["a swept V", plainWing(8, { sweep: 0.1, cant: degrees(8) }), 0.04],
  ["a whole glider", plover(), 0.014],
  ["a whole glider with halves that differ", crooked(), 0.02],
])(
  "drag by the near field is that of the far field, for %s, and comes nearer in a finer lattice",
  (_, glider, share) => {
    const offBy = (counts: { strips: number; rows: number }) => {
      const nearField = (2 * nearFieldDrag(solved(glider, counts), straightFlight(0.05))) / glider.wing.area;
      return Math.abs(nearField / farDrag(glider, 0.05, counts) - 1);
    };
    const usual = offBy({ strips: 12, rows: 4 });
    expect(usual).toBeLessThan(share);
    expect(offBy({ strips: 40, rows: 8 })).toBeLessThan(0.75 * usual);
  },
);
