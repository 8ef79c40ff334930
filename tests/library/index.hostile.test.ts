import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { readNotebook } from "../../src/cells/notebook-file.ts";
import { runPlan } from "../../src/cells/plan.ts";
import type { Result } from "../../src/cells/value.ts";
import { functions } from "../../src/library/index.ts";
import { root } from "../../src/tools/place.js";

/** The cells of Plover up to the whole glider: enough to fly it, and quick. */
const plover = readNotebook(readFileSync(join(root, "notebooks/plover.json"), "utf8"));
const cells = plover.cells
  .slice(0, plover.cells.findIndex((cell) => "name" in cell && cell.name === "air") + 1)
  .filter(({ kind }) => ["given", "derived", "table"].includes(kind));

type Columns = readonly (readonly [name: string, unit?: string])[];
interface Table {
  readonly columns: Columns;
  readonly rows: readonly (readonly string[])[];
}

/** What a formula comes to beside Plover's cells, and a table called `own` if one is given. */
function outcome(formula: string, own?: Table): Result {
  const table = own && {
    id: "own",
    kind: "table" as const,
    name: "own",
    columns: own.columns.map(([name, unit]) => ({ name, ...(unit !== undefined && { unit }) })),
    rows: own.rows.map((row) => [...row]),
  };
  const asked = { id: "asked", kind: "derived" as const, name: "asked", formula };
  const result = runPlan(compile([...cells, ...(table ? [table] : []), asked], functions)).get("asked");
  if (!result) throw new Error("got no result");
  return result;
}

function faultOf(formula: string, own?: Table): string {
  const result = outcome(formula, own);
  return result.ok ? `no fault: ${JSON.stringify(result.value).slice(0, 200)}` : result.error.message;
}

function valueIn(formula: string, own?: Table): unknown {
  const result = outcome(formula, own);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

const flying = ["trim", "sink_polar", "best_decalage", "trimmed_turn", "modes", "circle", "recovery", "release"];
const gliderOf = (change: { readonly wing?: string; readonly tail?: string; readonly balance?: string }) =>
  `glider(${change.wing ?? "main_wing"}, ${change.tail ?? "tail"}, tail_fin, body, ` +
  `${change.balance ?? "glider_mass"}, seat_height: seat_height, seat_angle: seat_angle)`;
const ballast = (mass: string, x: string) => `combine(glider_mass, point_mass(${mass}, ${x}, 0 mm, 0 mm))`;

const panel: Columns = [
  ["length", "mm"],
  ["root_chord", "mm"],
  ["tip_chord", "mm"],
  ["sweep", "mm"],
  ["break", "deg"],
  ["washout", "deg"],
  ["thickness", "mm"],
];
/** A half wing bent to an arc of many small panels of one chord, without washout. */
const arc = (panels: number): Table => ({
  columns: panel,
  rows: Array.from({ length: panels }, () => [`${240 / panels}`, "70", "70", "0", `${30 / panels}`, "0", "3"]),
});

describe.each([
  ["swept back by a metre", ["240", "70", "60", "1000", "5", "0", "3"]],
  ["washed out by 40 deg", ["240", "70", "60", "0", "5", "40", "3"]],
  ["of a centimetre", ["5", "2", "1", "0", "6", "0", "0.5"]],
])("a wing %s", (_, row) => {
  test.each(flying)("is refused by %s in words, without an angle that no tailplane could stand at", (name) => {
    const fault = faultOf(`${name}(${gliderOf({ wing: "wing(own)" })})`, { columns: panel, rows: [row] });
    expect(fault).toMatch(/It does not trim|balance|Reynolds/);
    expect(fault).not.toMatch(/could not be computed|NaN|\d{3,}(\.\d+)? deg|e\d+ deg/);
    expect(fault).toMatch(/Move the balance point|decalage|Check/);
  });
});

describe("a balance point far off", () => {
  test.each(flying)("is told by %s with a remedy that can be built", (name) => {
    for (const [mass, x] of [
      ["500 g", "-2 m"],
      ["500 g", "3 m"],
      ["50 g", "200 mm"],
    ]) {
      const fault = faultOf(`${name}(${gliderOf({ balance: ballast(mass ?? "", x ?? "") })})`);
      expect(fault).toMatch(/Move the balance point/);
      expect(fault).not.toMatch(/\d{3,}(\.\d+)? deg|e\d+ deg/);
    }
  });
});

describe("a wing bent to an arc", () => {
  test("has a polar from its stall on, though deep in the stall it would fall slower still", () => {
    const polar = (n: number) => valueIn(`sink_polar(${gliderOf({ wing: "wing(own)" })}, count: 5)`, arc(n));
    const [few, many] = [polar(6), polar(24)] as { stall_speed: number; least_sink: number; decalage: number[] }[];
    expect(few?.stall_speed).toBeCloseTo(3.2, 1);
    expect(many?.stall_speed).toBeCloseTo(few?.stall_speed ?? 0, 1);
    expect(many?.least_sink).toBeCloseTo(few?.least_sink ?? 0, 2);
    expect(Math.max(...(many?.decalage ?? []))).toBeLessThan(0.2);
  });
  test("stalls at an angle near that of the flat wing, not at the last one looked at", () => {
    const stall = valueIn(`recovery(${gliderOf({ wing: "wing(own)" })}, seconds: 1 s).stall_angle`, arc(6)) as number;
    expect((stall * 180) / Math.PI).toBeGreaterThan(9);
    expect((stall * 180) / Math.PI).toBeLessThan(13);
  });
});

describe("a polar of one's own", () => {
  const columns: Columns = [["reynolds"], ["lift_coefficient"], ["drag_coefficient"]];
  const good = (reynolds: string, drag = "0.03") => ({
    columns,
    rows: ["-0.2", "0.2", "0.6", "0.9"].map((lift) => [reynolds, lift, drag]),
  });
  test.each([
    ["a Reynolds number next to nothing", good("0.001"), /^Reynolds in row 1 must be at least 1000; it is 0.001/],
    ["a Reynolds number beyond all flight", good("1e12"), /^Reynolds in row 1 must be at most 10000000; it is/],
    ["drag in per cent", good("40000", "3"), /^Drag coefficient in row 1 must be at most 2; it is 3/],
    ["one row", { columns, rows: [["40000", "0.4", "0.03"]] }, /has 1 row up to the stall. Give at least three/],
    ["no row", { columns, rows: [] }, /no rows/],
  ])("with %s is refused by its place", (_, own, expected) => {
    for (const name of [...flying, "rolling_tendency"]) {
      expect(faultOf(`${name}(plover, measured: own)`, own)).toMatch(expected);
    }
    expect(faultOf("glide(18 g, main_wing, 0.6, measured: own)", own)).toMatch(expected);
  });
  test("of a draggy section has a polar that ends where no angle flies twice as fast", () => {
    const speeds = valueIn("sink_polar(plover, measured: own, count: 4).speed", good("40000", "0.5")) as number[];
    expect(speeds).toHaveLength(4);
    expect(speeds.at(-1)).toBeLessThan(2 * (speeds[0] ?? 0));
  });
});

describe("a bank that is none", () => {
  test("is refused, be it only rounding", () => {
    expect(faultOf("trimmed_turn(plover, bank: 1e-12 deg)")).toMatch(/of 0.01 deg at least/);
    expect(faultOf("turn(glide(18 g, main_wing, 0.6), -1e-12 deg)")).toMatch(/of 0.01 deg at least/);
  });
  test("is 0 where a glider flies straight, and so are slip and turning", () => {
    const straight = valueIn("circle(plover)") as Record<string, number>;
    expect([straight.bank, straight.sideslip, straight.turn_rate]).toEqual([0, 0, 0]);
    expect(valueIn("recovery(plover, seconds: 1 s).trim_bank")).toBe(0);
  });
});

describe("what is not there cannot be turned", () => {
  const tailless = "glider(main_wing, fin: tail_fin, stick: body, balance: glider_mass)";
  const finless = "glider(main_wing, tail, stick: body, balance: glider_mass, seat_angle: seat_angle)";
  test.each(["trim", "trimmed_turn", "rolling_tendency", "modes", "circle", "recovery", "release"])(
    "%s refuses a turn of a tailplane that is missing",
    (name) => {
      expect(faultOf(`${name}(${tailless}, tail_turn: 1 deg)`)).toBe(
        "It has no tailplane to turn. Give glider(…) one.",
      );
    },
  );
  test.each(["modes", "circle", "recovery", "release"])("%s refuses a turn of a fin that is missing", (name) => {
    expect(faultOf(`${name}(${finless}, fin_turn: 1 deg)`)).toBe("It has no fin to turn. Give glider(…) one.");
  });
});

describe("a flight too short to judge", () => {
  test("is refused where it was asked for", () => {
    expect(faultOf("recovery(plover, seconds: 0.01 s)")).toBe("Seconds must be at least 1 s; it is 0.01 s.");
    expect(faultOf("release(plover, seconds: 0.5 s)")).toBe("Seconds must be at least 1 s; it is 0.5 s.");
  });
  test("is refused where the motion is too quick to be followed", () => {
    const far = gliderOf({ tail: "tailplane(150 mm, 46 mm, 34 mm, 245 m, 1.5 mm, z: 3 mm)" });
    expect(faultOf(`recovery(${far})`)).toMatch(/cannot be followed.*Look at its mass/);
  });
});

describe("a slope told as a bare number", () => {
  test("is refused with a remedy that can be written just so", () => {
    const fault = faultOf("finite_lift_slope(7, section_slope: 6.28)");
    expect(fault).toBe("Section slope must be a slope per angle; this is a number. Write 6.28 / 1 rad?");
    expect(valueIn("finite_lift_slope(7, section_slope: 6.28 / 1 rad)")).toBeGreaterThan(4);
    expect(faultOf("finite_lift_slope(7, section_slope: -2 * 3)")).toMatch(/Write -2 \* 3 \/ 1 rad\?$/);
  });
});

test("modes of numbers far beyond any glider are refused in words", () => {
  const modes = (area: string, chord: string) =>
    `longitudinal_modes(18 g, 500 g cm^2, ${area}, ${chord}, 4 m/s, 0.6, 0.06, 4.5 / 1 rad, 0.3 / 1 rad, -0.8 / 1 rad, -10 / 1 rad, downwash_lag: -3 / 1 rad)`;
  expect(valueIn(modes("0.03 m^2", "65 mm"))).toMatchObject({ usual: true });
  for (const formula of [modes("1e300 m^2", "65 mm"), modes("0.03 m^2", "1e300 mm")]) {
    expect(faultOf(formula)).toMatch(/^These numbers are far beyond those of any glider.*Check their units\.$/);
  }
});
