import { expect, test } from "vitest";
import { flow } from "../../../src/library/flow/flow.ts";
import type { Flow } from "../../../src/library/flow/flow-record.ts";
import { tailLiesInWing } from "../../../src/library/flow/overlap.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { call } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";
import { ploverSeat, ploverTailplane } from "../plover.ts";

const { z: seat_height } = ploverSeat;
const tailAt = (x: number, above: number) =>
  ploverWith({ tailplane: buildTailplane({ ...ploverTailplane, x, z: seat_height + above }) });
const rootChord = ploverWith().wing.right.root_chord[0] ?? Number.NaN;

test("a tailplane that lies in the wing is refused and told to be moved", () => {
  for (const above of [-0.004, 0, 0.0001, 0.003]) {
    expect(() => call(flow, { glider: tailAt(0.01, above) })).toThrow(/lie upon each other\. Move the tailplane/);
  }
});

test("just over the wing, just behind it, or ahead of it, it is computed", () => {
  expect(tailLiesInWing(tailAt(0.01, 0.11 * rootChord))).toBe(false);
  expect(tailLiesInWing(tailAt(rootChord, 0))).toBe(false);
  expect(tailLiesInWing(tailAt(-0.2, 0))).toBe(false);
  const over = call(flow, { glider: tailAt(0.01, 0.11 * rootChord) }) as Flow;
  expect(over.lift_slope).toBeGreaterThan(3);
  expect(over.lift_slope).toBeLessThan(6);
});
