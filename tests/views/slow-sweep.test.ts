import { expect, test } from "vitest";
import { type ChartCell, compile, prepareStudy, rowsOf } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { positionsOver, rangeTrackOf } from "../../src/views/literal.ts";
import { pointsOn, slowSweepOf, sweptPoints } from "../../src/views/slow-sweep.ts";
import { withSlow } from "../cells/crew/slow-functions.ts";

const table = withSlow(functions, ["tan"]);

const cellsWith = (range: readonly [string, string, string?], height: string) =>
  [
    { id: "a1", kind: "given", name: "angle", formula: "9 deg", range },
    { id: "a2", kind: "given", name: "arm", formula: "2 m" },
    { id: "a3", kind: "derived", name: "height", formula: height },
    { id: "a4", kind: "derived", name: "aside", formula: "tan(arm / 4 m * 1 rad)" },
    { id: "a5", kind: "chart", view: "trade_off", sweep: "angle", x: "height", y: ["arm", "aside"] },
  ] as const;

test("a sweep is slow where something slow follows from what is swept, not where it stands beside", () => {
  const quick = compile(cellsWith(["0 deg", "20 deg"], "arm * sin(angle)") as never, table);
  expect(slowSweepOf(quick, "a5")).toBeNull();
  const slow = compile(cellsWith(["0 deg", "20 deg"], "arm * tan(angle)") as never, table);
  expect(slowSweepOf(slow, "a5")).toMatchObject({ without: "a1" });
});

test.each([[["0 deg", "20 deg"]], [["0 deg", "20 deg", "3 deg"]], [["0.1 rad", "0.9 rad", "0.01 rad"]]] as const)(
  "studied elsewhere over %j it has just the designs of a chart's own sweep",
  (range) => {
    const cells = cellsWith(range, "arm * tan(angle)") as never;
    const program = compile(cells, table);
    const studied = slowSweepOf(program, "a5");
    if (!studied) throw new Error("expected a slow sweep");
    const study = prepareStudy({ title: "", cells, trials: [] }, studied.study, table);
    const rows = rowsOf(study);
    const news = { status: "done", progress: 1, left: 0, isOld: false, message: null, fault: null } as const;
    const [points = []] = sweptPoints({ ...news, outcome: study.conclude(rows) });
    const track = rangeTrackOf(program.byName.get("angle"));
    const positions = track ? positionsOver(track, pointsOn(undefined)) : [];
    const factor = track?.unit === "rad" ? 1 : Math.PI / 180;
    expect(points.map(({ value }) => value)).toEqual(positions.map((position) => expect.closeTo(position * factor, 9)));
    expect(points.map(({ x }) => x)).toEqual(points.map(({ value }) => expect.closeTo(2 * Math.tan(value), 9)));
    const some = sweptPoints({ ...news, outcome: study.conclude(rows.map((row, at) => (at % 2 ? undefined : row))) });
    expect(some).toEqual([points.filter((_, at) => at % 2 === 0)]);
  },
);

test("a design that fails is a gap with its reason", () => {
  const cells = cellsWith(["0 deg", "20 deg", "10 deg"], "arm / tan(angle)") as never as readonly ChartCell[];
  const studied = slowSweepOf(compile(cells, table), "a5");
  if (!studied) throw new Error("expected a slow sweep");
  const study = prepareStudy({ title: "", cells, trials: [] }, studied.study, table);
  const outcome = study.conclude(rowsOf(study));
  const [[first] = []] = sweptPoints({
    status: "done",
    progress: 1,
    left: 0,
    isOld: false,
    message: null,
    fault: null,
    outcome,
  });
  expect(first?.x).toBeNull();
  expect(first?.reason).toMatch(/\w/);
});

test("of several curves each has its own designs, also where one has none", () => {
  const cells = [
    { id: "a1", kind: "given", name: "bend", formula: "9 deg", range: ["3 deg", "9 deg", "3 deg"] },
    { id: "a2", kind: "derived", name: "low", formula: "atmosphere(1000 m * tan(bend))" },
    {
      id: "a3",
      kind: "derived",
      name: "high",
      formula: "atmosphere(if bend > 5 deg then 1000 m / tan(bend) else -1e9 m)",
    },
    {
      id: "a4",
      kind: "chart",
      view: "trade_off",
      sweep: "bend",
      x: "density",
      y: ["pressure"],
      curves: ["low", "high"],
    },
  ] as never as readonly ChartCell[];
  const studied = slowSweepOf(compile(cells, table), "a4");
  if (!studied) throw new Error("expected a slow sweep");
  expect(studied.study.results).toEqual(["low.density", "low.pressure", "high.density", "high.pressure"]);
  const study = prepareStudy({ title: "", cells, trials: [] }, studied.study, table);
  const news = { status: "done", progress: 1, left: 0, isOld: false, message: null, fault: null } as const;
  const [low = [], high = []] = sweptPoints({ ...news, outcome: study.conclude(rowsOf(study)) }, 2);
  expect(low.map(({ y }) => y.length)).toEqual([1, 1, 1]);
  expect(low[0]?.x).toBeGreaterThan(low[2]?.x ?? Number.NaN);
  expect(high.map(({ x }) => x !== null)).toEqual([false, true, true]);
  expect(high[0]?.reason).toMatch(/\w/);
  expect(high[1]?.x).toBeLessThan(high[2]?.x ?? Number.NaN);
});
