import { describe, expect, test } from "vitest";
import { balance } from "../../src/library/mass/balance.ts";
import { combine } from "../../src/library/mass/combine.ts";
import { finMass } from "../../src/library/mass/fin-mass.ts";
import { jointMass } from "../../src/library/mass/joint-mass.ts";
import { panelMasses } from "../../src/library/mass/panel-masses.ts";
import type { Part } from "../../src/library/mass/part-record.ts";
import { stickMass } from "../../src/library/mass/stick-mass.ts";
import { tailplaneMass } from "../../src/library/mass/tailplane-mass.ts";
import { wingMass } from "../../src/library/mass/wing-mass.ts";
import { buildFin } from "../../src/library/shape/fin.ts";
import { buildTailplane } from "../../src/library/shape/tailplane.ts";
import { call } from "./call.ts";
import { ploverFin, ploverSeat, ploverStick, ploverTailplane, ploverWing } from "./plover.ts";

const part = (spec: unknown, given: Record<string, unknown>) => call(spec, given) as Part;

/** A row of the sheet that describes Plover, both sides of what comes twice: grams and millimetres. */
const rows = {
  panel1: { mass: 2 * 2.08, x: 32.4, z: 16.2 },
  panel2: { mass: 2 * 1.07, x: 31.2, z: 25.8 },
  panel3: { mass: 2 * 0.515, x: 32.1, z: 42.9 },
  rootJoint: { mass: 0.48, x: 33.3, z: 12 },
  joint1: { mass: 2 * 0.3, x: 31.5, z: 17.5 },
  joint2: { mass: 2 * 0.26, x: 31, z: 31.4 },
};
type Row = (typeof rows)["panel1"];

/** Several rows of the sheet as one. */
function together(...list: readonly Row[]): Row {
  const mass = list.reduce((sum, row) => sum + row.mass, 0);
  const mean = (axis: "x" | "z") => list.reduce((sum, row) => sum + row.mass * row[axis], 0) / mass;
  return { mass, x: mean("x"), z: mean("z") };
}

/** Holds a part to a row: mass within a share, x and z within so many millimetres. */
function expectNear(found: Part, row: Row, within: { mass: number; x: number; z: number }) {
  expect(Math.abs(found.mass * 1000 - row.mass) / row.mass, `mass ${found.mass * 1000} g`).toBeLessThan(within.mass);
  expect(Math.abs(found.x * 1000 - row.x), `x ${found.x * 1000} mm`).toBeLessThan(within.x);
  expect(Math.abs(found.z * 1000 - row.z), `z ${found.z * 1000} mm`).toBeLessThan(within.z);
  expect(Math.abs(found.y)).toBeLessThan(1e-12);
}

const wing = part(wingMass, { wing: ploverWing, density: 110, sanded: 0.78, ...ploverSeat });
const joints = part(jointMass, { wing: ploverWing, cloth: 0.025, root_width: 0.035, glue: 0.00016, ...ploverSeat });
const stick = part(stickMass, ploverStick);
const tailplane = part(tailplaneMass, { tailplane: buildTailplane(ploverTailplane), density: 90 });
const fin = part(finMass, { fin: buildFin(ploverFin), density: 90 });

describe("Plover, weighed from its geometry", () => {
  test("has the panels of the sheet to its last digit", () => {
    const masses = call(panelMasses, { wing: ploverWing, density: 110, sanded: 0.78 }) as number[];
    [2.08, 1.07, 0.515].forEach((mass, index) => {
      expect(Math.abs((masses[index] ?? 0) * 1000 - mass)).toBeLessThan(0.006);
    });
  });

  // The sheet puts each section at 45 % of its chord (the section here at 46.4 %: 1 mm), its middle 1.5 mm up whatever
  // the thickness (here 0.44 of it), and leaves out that a seat at 2 deg lowers what lies behind the leading edge (1.2 mm).
  test("has the wing of the sheet but for 1 mm in x and 2 mm in z", () => {
    expectNear(wing, together(rows.panel1, rows.panel2, rows.panel3), { mass: 0.002, x: 1.5, z: 2 });
  });

  // Strips are as long as the chord, so they balance at its middle, 5 % of it behind where the sheet has them.
  test("has joints of the same mass from 20 mm strips of 25 g/m² on both faces, 35 mm at the root, and 0.16 g of glue", () => {
    expectNear(joints, together(rows.rootJoint, rows.joint1, rows.joint2), { mass: 0.02, x: 4, z: 1.5 });
  });

  // The sheet takes the mean of the end sections; a rod that tapers both ways has 3.6 % less wood, and more of it in front.
  test("has a stick 4 % lighter than the sheet, which takes its section for the mean of its ends", () => {
    expectNear(stick, { mass: 2.67, x: 75.9, z: 0 }, { mass: 0.04, x: 1.3, z: 0.01 });
    expect(stick.mass).toBeLessThan(0.00267);
  });

  // The sheet's tail carries about 0.1 g and 0.05 g of glue and finish, and balances at 45 % of its chords, where a
  // sheet of even thickness balances at 50 %; its fin stands 2.5 mm lower than the middle of the trapezium.
  test("has a tail of bare wood 0.1 g and 0.05 g lighter than the sheet, which counts its glue", () => {
    expectNear(tailplane, { mass: 0.91, x: 265.5, z: 4 }, { mass: 0.12, x: 2.2, z: 0.8 });
    expectNear(fin, { mass: 0.31, x: 271.6, z: 25 }, { mass: 0.16, x: 2, z: 2.6 });
  });

  // Of the whole: 0.27 g less of 17.3 g (stick, tail), and the balance point 1.4 mm ahead, since what is missing is aft.
  test("weighs and balances as a whole like the sheet, within 2 % and 1.5 mm", () => {
    const items = { mass: [0.0011, 0.00338], x: [0, -0.08], y: [0, 0], z: [0.014, 0] };
    const all = part(balance, { items, part_1: wing, part_2: joints, part_3: stick, part_4: tailplane, part_5: fin });
    const sheet = part(balance, { items: sheetItems() });
    expectNear(all, { mass: sheet.mass * 1000, x: sheet.x * 1000, z: sheet.z * 1000 }, { mass: 0.02, x: 1.5, z: 1 });
    // Points have no inertia of their own: the sheet misses the stick's 29 kg mm² in pitch and half a panel each in roll.
    const own = stick.iyy + wing.iyy + joints.iyy;
    expect(all.iyy).toBeGreaterThan(sheet.iyy);
    expect(Math.abs(all.iyy - sheet.iyy - own) / all.iyy).toBeLessThan(0.08);
    expect(all.ixx / sheet.ixx).toBeGreaterThan(1);
    expect(all.ixx / sheet.ixx).toBeLessThan(1.08);
    expect(all.ixz).toBeGreaterThan(0);
  });

  test("weighs the same however its parts are put together", () => {
    const rear = combine.compute({ part_1: tailplane, part_2: fin }, refused);
    const once = combine.compute(
      { part_1: wing, part_2: joints, part_3: stick, part_4: tailplane, part_5: fin },
      refused,
    );
    const nested = combine.compute({ part_1: wing, part_2: joints, part_3: stick, part_8: rear }, refused);
    for (const [field, value] of Object.entries(once)) {
      expect(Math.abs(nested[field as keyof Part] - value), field).toBeLessThan(1e-15);
    }
  });
});

function refused(): never {
  throw new Error("got a refusal, expected a part");
}

/** All rows of the sheet, each a point, in SI. */
function sheetItems() {
  const rows = [
    [2.08, 32.4, 51.9, 16.2],
    [2.08, 32.4, -51.9, 16.2],
    [1.07, 31.2, 143.2, 25.8],
    [1.07, 31.2, -143.2, 25.8],
    [0.515, 32.1, 209.8, 42.9],
    [0.515, 32.1, -209.8, 42.9],
    [0.48, 33.3, 0, 12],
    [0.3, 31.5, 104.9, 17.5],
    [0.3, 31.5, -104.9, 17.5],
    [0.26, 31, 183.6, 31.4],
    [0.26, 31, -183.6, 31.4],
    [2.67, 75.9, 0, 0],
    [0.91, 265.5, 0, 4],
    [0.31, 271.6, 0, 25],
    [1.1, 0, 0, 14],
    [3.38, -80, 0, 0],
  ];
  const column = (index: number) => rows.map((row) => (row[index] ?? 0) / 1000);
  return { mass: column(0), x: column(1), y: column(2), z: column(3) };
}
