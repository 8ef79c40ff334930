import { expect, test } from "vitest";
import { type ChartCell, compile, prepareStudy, rowsOf } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { positionsOver, rangeTrackOf } from "../../src/views/literal.ts";
import { mostPoints, slowSweepOf, sweptPoints } from "../../src/views/slow-sweep.ts";
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
    const news = { status: "done", progress: 1, left: 0, isOld: false, message: null } as const;
    const points = sweptPoints({ ...news, outcome: study.conclude(rows) });
    const track = rangeTrackOf(program.byName.get("angle"));
    const positions = track ? positionsOver(track, mostPoints) : [];
    const factor = track?.unit === "rad" ? 1 : Math.PI / 180;
    expect(points.map(({ value }) => value)).toEqual(positions.map((position) => expect.closeTo(position * factor, 9)));
    expect(points.map(({ x }) => x)).toEqual(points.map(({ value }) => expect.closeTo(2 * Math.tan(value), 9)));
    const some = sweptPoints({ ...news, outcome: study.conclude(rows.map((row, at) => (at % 2 ? undefined : row))) });
    expect(some).toEqual(points.filter((_, at) => at % 2 === 0));
  },
);

test("a design that fails is a gap with its reason", () => {
  const cells = cellsWith(["0 deg", "20 deg", "10 deg"], "arm / tan(angle)") as never as readonly ChartCell[];
  const studied = slowSweepOf(compile(cells, table), "a5");
  if (!studied) throw new Error("expected a slow sweep");
  const study = prepareStudy({ title: "", cells, trials: [] }, studied.study, table);
  const outcome = study.conclude(rowsOf(study));
  const [first] = sweptPoints({ status: "done", progress: 1, left: 0, isOld: false, message: null, outcome });
  expect(first?.x).toBeNull();
  expect(first?.reason).toMatch(/\w/);
});
