import { expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { concealedBraces, concealedCells } from "../../src/cells/concealed.ts";
import { functions } from "../../src/library/index.ts";

const derived = (name: string, formula: string): Cell => ({ id: name, kind: "derived", name, formula });
const cells: readonly Cell[] = [
  { id: "bend", kind: "given", name: "bend", formula: "9 deg", range: ["0 deg", "20 deg"] },
  {
    id: "panels",
    kind: "table",
    name: "panels",
    columns: [
      ...["length", "root_chord", "tip_chord", "sweep", "thickness"].map((name) => ({ name, unit: "mm" })),
      { name: "break", unit: "deg" },
      { name: "washout", unit: "deg" },
    ],
    rows: [["200", "60", "50", "4", "2", "bend", "0"]],
  },
  derived("main_wing", "wing(panels)"),
  derived("height", "main_wing.tip_height"),
  derived("again", "height"),
  derived("other", "main_wing.span"),
  derived("twice", "2 * height"),
  derived("steeper", "bend + 1 deg"),
  { id: "tall", kind: "check", name: "tall", formula: "height > 30 mm" },
  { id: "front", kind: "drawing", view: "front", of: "main_wing" },
  { id: "cost", kind: "chart", view: "trade_off", sweep: "bend", x: "bend", y: ["twice", "height"] },
  { id: "calm", kind: "chart", view: "trade_off", sweep: "bend", x: "bend", y: ["twice"] },
];
const program = compile(cells, functions);
const concealed = (...ids: string[]) => Object.fromEntries(concealedCells(program, new Set(ids)));

test("nothing is hidden where nothing is asked", () => {
  expect(concealed()).toEqual({});
});

test("with a hidden value go what hands it on or reckons with it, checks and charts of it, and drawings of what it is a part of", () => {
  expect(concealed("height")).toEqual({
    height: "height",
    again: "height",
    twice: "height",
    tall: "height",
    front: "height",
    cost: "height",
    calm: "height",
  });
});

test("a hidden given takes along the charts that sweep it and what is reckoned from it, but no wing that is built with it", () => {
  expect(concealed("bend")).toEqual({ bend: "bend", cost: "bend", calm: "bend", steeper: "bend" });
});

test("a hidden record takes along its drawings and the cells that show a part of it", () => {
  expect(concealed("main_wing")).toEqual({
    main_wing: "main_wing",
    height: "main_wing",
    again: "main_wing",
    other: "main_wing",
    twice: "main_wing",
    calm: "main_wing",
    tall: "main_wing",
    front: "main_wing",
    cost: "main_wing",
  });
});

test("in a note those braces are hidden that show the value, by its name or by the way to it", () => {
  const hidden = concealedCells(program, new Set(["height"]));
  const text = "{height} {again} {twice} {main_wing.tip_height} {main_wing . span} {nothing} \\{height}";
  expect(concealedBraces(text, program, hidden)).toEqual([true, true, true, true, false, false]);
});
