import { expect, test } from "vitest";
import { type Cell, compile, explain, runPlan, type Subject } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import { mathsText, row } from "../../../src/views/why/maths.ts";
import { tellingOf } from "../../../src/views/why/subject-words.ts";
import { workingOf } from "../../../src/views/why/working.ts";

const cells: readonly Cell[] = [
  { id: "a1", kind: "given", name: "span", formula: "480 mm", unit: "mm" },
  { id: "a2", kind: "given", name: "chord", formula: "2 3/4 in", unit: "in", fraction: 16 },
  { id: "a3", kind: "given", name: "shares", formula: "[0.6, 0.4]" },
  { id: "a4", kind: "derived", name: "area", formula: "span * chord", unit: "cm^2" },
  { id: "a5", kind: "derived", name: "halves(x)", formula: "x / 2" },
  { id: "a6", kind: "derived", name: "outer", formula: "halves(span) * shares[2]", unit: "mm" },
  { id: "a7", kind: "check", name: "fits", formula: "span < 500 mm" },
  {
    id: "a8",
    kind: "table",
    name: "parts",
    columns: [{ name: "mass", unit: "g" }],
    rows: [["12"], ["2 * 3"], ["area * 0.1 kg/m^2"], ["-4"]],
  },
  { id: "a9", kind: "derived", name: "all", formula: "sum(parts.mass)", unit: "g" },
  { id: "a10", kind: "derived", name: "copy", formula: "if fits then span else 1 m", unit: "mm" },
  { id: "a11", kind: "derived", name: "odd", formula: "span + (", unit: "mm" },
  { id: "a12", kind: "derived", name: "wrong", formula: "span + 3 kg", unit: "mm" },
];
const program = compile(cells, functions);
const results = runPlan(program);

function lines(subject: Subject, concealed: ReadonlySet<string> = new Set()): string[] {
  const explanation = explain(program, (id) => results.get(id), subject, concealed);
  if (!explanation) throw new Error(`expected an explanation of ${subject.id}`);
  const telling = (name: string) => tellingOf(program.byName.get(name)?.cell ?? (cells[0] as Cell));
  return workingOf(explanation, subject, telling).map((line) => mathsText(row(...line)));
}

test("a derived value: its formula, the same with numbers in it, the result in its own unit", () => {
  expect(lines({ id: "a4" })).toEqual(["area = span · chord", "= 480 mm · 2 3 / 4 in", "= 335.3 cm²"]);
  expect(lines({ id: "a6" })).toEqual(["outer = halves(span) · shares [2]", "= halves(480 mm) · 0.4", "= 96 mm"]);
  expect(lines({ id: "a9" })).toEqual(["all = sum(mass [parts])", "= sum([12, 6, 3.353, −4] g)", "= 17.35 g"]);
});

test("a given whose formula is a number says it once", () => {
  expect(lines({ id: "a1" })).toEqual(["span = 480 mm"]);
});

test("a check needs no result below it", () => {
  expect(lines({ id: "a7" })).toEqual(["span < 500 mm", "480 mm < 500 mm"]);
});

test("a function cell shows its body, whose parameters have no values", () => {
  expect(lines({ id: "a5" })).toEqual(["halves(x) = x / 2"]);
});

test("an entry has its row as its index, and the unit of its column where it says none", () => {
  expect(lines({ id: "a8", entry: { row: 0, column: 0 } })).toEqual(["mass [1] = 12 g"]);
  expect(lines({ id: "a8", entry: { row: 1, column: 0 } })).toEqual(["mass [2] = (2 · 3) g", "= 6 g"]);
  expect(lines({ id: "a8", entry: { row: 2, column: 0 } })[1]).toBe("= 335.3 cm² · 0.1 kg/m²");
  expect(lines({ id: "a8", entry: { row: 3, column: 0 } })).toEqual(["mass [4] = −4 g"]);
});

test("names stay names where a value is hidden or too long to be read in a line", () => {
  expect(lines({ id: "a4" }, new Set(["a1"]))[1]).toBe("= span · 2 3 / 4 in");
});

test("a formula that cannot be read has no working; one that fails its checks has only its first line", () => {
  expect(lines({ id: "a11" })).toEqual([]);
  expect(lines({ id: "a12" })).toEqual(["wrong = span + 3 kg"]);
});

test("cases stand behind a brace", () => {
  expect(lines({ id: "a10" })[0]).toBe("copy = {span if fits; 1 m otherwise");
});
