import { expect, test } from "vitest";
import { compareTrials, compile, type Notebook } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import { comparisonText, firstRows, offeredRows, setRows } from "../../../src/views/trials/compared-rows.ts";
import { cellsOf } from "../../cells/notebook-text.ts";

const notebook: Notebook = {
  title: "",
  cells: cellsOf(`given tip [deg] = 11 deg
table panels | length mm
| 110
| 90
half [mm] = sum(panels.length)
twice [deg] = -2 * tip
kind = "balsa"
f(x) = 2 * x
check wide = half > 195 mm
check shallow = tip < 12 deg`),
  trials: [
    { name: "steep", set: { tip: "13 deg" } },
    { name: "long\ttips", set: { "panels[2].length": "80" } },
  ],
};
const program = compile(notebook.cells, functions);

test("what trials set comes first, an entry as the formula that reads it; then what the checks look at", () => {
  expect(setRows(notebook).map(({ text }) => text)).toEqual(["tip", "panels.length[2]"]);
  expect(firstRows(notebook, program).map(({ label, isSet }) => [label, isSet])).toEqual([
    ["tip", true],
    ["panels[2].length", true],
    ["half", false],
  ]);
});

test("every other cell with a value can be added, and no function", () => {
  expect(offeredRows(program, firstRows(notebook, program))).toEqual(["twice", "kind"]);
});

test("as text numbers stand bare under their unit, checks in words, and a tab in a name does no harm", () => {
  const rows = [
    ...firstRows(notebook, program),
    ...["twice", "kind"].map((text) => ({ label: text, text, isSet: false })),
  ];
  const comparison = compareTrials(notebook, functions, { texts: rows.map(({ text }) => text) });
  expect(comparisonText(comparison, rows, program).split("\n")).toEqual([
    '\tunit\tbaseline\tsteep\t"long\ttips"',
    "tip\tdeg\t11\t13\t11",
    "panels[2].length\tmm\t90\t90\t80",
    "half\tmm\t200\t200\t190",
    "twice\tdeg\t-22\t-26\t-22",
    "kind\t\tbalsa\tbalsa\tbalsa",
    "wide\t\tholds, 5 mm to spare\tholds, 5 mm to spare\tfails by 5 mm",
    "shallow\t\tholds, 1 deg to spare\tfails by 1 deg\tholds, 1 deg to spare",
  ]);
});
