import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { panelPlaces } from "../../../src/library/build/panel-place.ts";
import { type Repaired, repaired } from "../../../src/library/build/repaired.ts";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, refuse } from "../call.ts";
import { anyPanels, runs } from "../panel-arbitraries.ts";
import { ploverWing } from "../plover.ts";

const glider: Part = {
  mass: 0.02,
  x: 0.03,
  y: 0.0002,
  z: 0.01,
  ixx: 1e-5,
  iyy: 2e-5,
  izz: 3e-5,
  ixy: 0,
  ixz: 0,
  iyz: 0,
};
const repair = (repairs: Record<string, readonly unknown[]>, given: Record<string, unknown> = {}) =>
  call(repaired, { wing: ploverWing, balance: glider, repairs, ...given }) as Repaired;

/** Angle between two panels in space, by their normals. */
function angleBetween(wing: Wing, side: "right" | "left", inner: number): number {
  const of = (number: number) => panelPlaces(wing).find((each) => each.side === side && each.number === number)?.up;
  const [a, b] = [of(inner) ?? [0, 0, 0], of(inner + 1) ?? [0, 0, 0]];
  return Math.acos(
    Math.min(
      1,
      a.reduce((sum, each, k) => sum + each * (b[k] ?? 0), 0),
    ),
  );
}

describe("a repaired glider", () => {
  test("that gained nothing and was opened nowhere is what it was", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const wing = buildWing(panels, undefined, refuse);
        const after = repair({ repair: ["looked at it"], added: [0], x: [0] }, { wing, clay_x: -0.08 });
        wing.right.cant.forEach((cant, k) => {
          expect(after.wing.right.cant[k]).toBeCloseTo(cant, 12);
        });
        expect(after.wing.span).toBeCloseTo(wing.span, 12);
        expect(after.balance.x).toBeCloseTo(glider.x, 12);
        expect(after.clay).toBeCloseTo(0, 12);
        expect(after.turned_apart).toBeCloseTo(0, 12);
      }),
      runs,
    );
  });

  test("has the fold that was measured at the joint that was opened, and all others as before", () => {
    // Without washout the fold is the angle between the panels themselves.
    const flat = [0, 0, 0];
    const panels = { length: [0.1, 0.08, 0.06], root_chord: [0.08, 0.07, 0.06], tip_chord: [0.07, 0.06, 0.04] };
    const wing = buildWing(
      { ...panels, sweep: flat, break: [0.1, 0.12, 0.2], washout: flat, thickness: [0.003, 0.003, 0.002] },
      undefined,
      refuse,
    );
    const after = repair(
      { repair: ["tip"], added: [0], x: [0], joint: ["Left 2 - 3"], fold: [degrees(9)] },
      { wing },
    ).wing;
    expect(angleBetween(after, "left", 2)).toBeCloseTo(degrees(9), 9);
    expect(angleBetween(after, "right", 2)).toBeCloseTo(0.2, 9);
    expect(angleBetween(after, "left", 1)).toBeCloseTo(0.12, 9);
    const root = repair({ repair: ["root"], added: [0], x: [0], joint: ["root"], fold: [0.3] }, { wing }).wing;
    expect([root.right.cant[0], root.left.cant[0]]).toEqual([expect.closeTo(0.15, 12), expect.closeTo(0.15, 12)]);
    expect(angleBetween(root, "left", 2)).toBeCloseTo(0.2, 9);
  });

  test("balances where its masses do, and with the clay where it did before, whatever was added where", () => {
    const grams = fc.double({ min: -0.002, max: 0.005, noNaN: true });
    const places = fc.double({ min: -0.1, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(grams, places), { minLength: 1, maxLength: 5 }), (rows) => {
        const after = repair(
          { repair: rows.map(() => "glue"), added: rows.map(([added]) => added), x: rows.map(([, x]) => x) },
          { clay_x: -0.08 },
        );
        const mass = rows.reduce((sum, [added]) => sum + added, glider.mass);
        const moment = rows.reduce((sum, [added, x]) => sum + added * x, glider.mass * glider.x);
        expect(after.balance.x).toBeCloseTo(moment / mass, 9);
        expect((moment + (after.clay ?? 0) * -0.08) / (mass + (after.clay ?? 0))).toBeCloseTo(glider.x, 9);
        expect(after.repairs.moved.reduce((sum, each) => sum + each, 0)).toBeCloseTo(after.balance.x - glider.x, 12);
      }),
      runs,
    );
  });

  test("is told what to do before it flies: clay, tip weight, a half that stands steeper, incidence, tosses", () => {
    const after = repair(
      { repair: ["tip glued on"], added: [0.0004], x: [0.06], y: [0.2], joint: ["right 2–3"], fold: [degrees(13)] },
      { clay_x: -0.08 },
    );
    expect(after.tip_weight).toBeCloseTo((0.0004 * 0.2) / (ploverWing.right.stations.y.at(-1) ?? 0), 9);
    expect(after.light_tip).toBe("left");
    expect(after.check).toMatch(
      /^put 0\.109 g of clay at x −80 mm; put 0\.3\d+ g on the left tip; the right half .* steeper .*; measure incidence/,
    );
    const less = repair({ repair: ["sanded the tail"], added: [-0.0005], x: [0.25] }, { clay_x: -0.08 });
    expect(less.check).toMatch(/^take .* of clay off/);
  });

  test("is refused for a joint that is not there, one without its fold, more off than there is, and clay at the balance point", () => {
    const row = { repair: ["tip"], added: [0], x: [0] };
    expect(() => repair({ ...row, joint: ["right 2-4"], fold: [0.1] })).toThrow(
      /no joint "right 2-4".*Did you mean "right 2–3"/,
    );
    expect(() => repair({ ...row, joint: ["root"] })).toThrow(/Measure its fold/);
    expect(() => repair({ ...row, added: [-0.03] })).toThrow(/Repair 1, "tip", takes .* off a glider of 20 g/);
    expect(() => repair(row, { clay_x: 0.03 })).toThrow(/no amount of it moves the balance/);
  });
});
