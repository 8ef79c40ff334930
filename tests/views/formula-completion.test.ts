import { CompletionContext, type CompletionResult } from "@codemirror/autocomplete";
import { LRLanguage } from "@codemirror/language";
import { EditorState } from "@codemirror/state";
import { expect, test } from "vitest";
import { type Cell, compile, parser } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { type CompletionScope, completeFormula } from "../../src/views/formula-completion.ts";

const cells: readonly Cell[] = [
  { id: "a1", kind: "given", name: "half_span", formula: "240 mm", unit: "mm" },
  {
    id: "a2",
    kind: "table",
    name: "items",
    columns: [
      { name: "mass", unit: "g" },
      { name: "x", unit: "mm" },
    ],
    rows: [["1", "2"]],
  },
  { id: "a3", kind: "derived", name: "twice", formula: "2 * half_span" },
  { id: "a4", kind: "derived", name: "later", formula: "twice + half_span" },
  { id: "a5", kind: "derived", name: "lift(speed)", formula: "speed ^ 2" },
];
const program = compile(cells, functions);

/** What is offered at the end of a text. */
function offered(text: string, scope: Partial<CompletionScope> = {}, explicit = false): string[] {
  const language = LRLanguage.define({ parser });
  const state = EditorState.create({ doc: text, extensions: [language] });
  const complete = completeFormula({
    cell: "a9",
    program: () => program,
    functions,
    namesCells: true,
    unit: null,
    ...scope,
  });
  const found = complete(new CompletionContext(state, text.length, explicit)) as CompletionResult | null;
  const typed = found ? text.slice(found.from) : "";
  return found?.options.map(({ label }) => label).filter((label) => label.startsWith(typed)) ?? [];
}

test("names of cells, functions and constants where a word begins", () => {
  expect(offered("2 * ha")).toEqual(["half_span"]);
  expect(offered("(equ")).toEqual(["equivalent_dihedral"]);
  expect(offered("lif")).toContain("lift");
  expect(offered("grav")).toEqual(["gravity"]);
});

test("neither the cell itself nor one that needs it is offered, since that would make a loop", () => {
  expect(offered("t", { cell: "a3" })).not.toContain("twice");
  expect(offered("la", { cell: "a3" })).not.toContain("later");
  expect(offered("la", { cell: "a1" })).not.toContain("later");
  expect(offered("la")).toContain("later");
  expect(offered("tw")).toEqual(["twice"]);
});

test("a given is offered functions, but no cells", () => {
  expect(offered("ha", { namesCells: false })).toEqual([]);
  expect(offered("sq", { namesCells: false })).toEqual(["sqrt"]);
});

test("units after a number, those of the wanted dimension first; none within a name", () => {
  expect(offered("12 m")).toContain("mm");
  expect(offered("12m")).toContain("mm");
  expect(offered("3 kg/m")).toContain("m");
  expect(offered("2 ", {}, true)).toContain("deg");
  expect(offered("2 ")).toEqual([]);
  expect(offered("panel2_m")).toEqual([]);
  expect(offered("2 an")).toEqual([]);
});

test("a unit that stands there already is nothing to offer", () => {
  expect(offered("12 deg")).toEqual([]);
});

test("fields after a dot: of cells, of calls, of fields of theirs, of elements", () => {
  expect(offered("items.m")).toEqual(["mass"]);
  expect(offered("2 * wing(panels).sp")).toEqual(["span"]);
  expect(offered("wing(panels).stations.")).toContain("chord");
  expect(offered("(items).")).toEqual(["mass", "x"]);
  expect(offered("half_span.")).toEqual([]);
  expect(offered("2.")).toEqual([]);
});

test("the names of a call's arguments where one begins, without those that are given already", () => {
  expect(offered("wing(", {}, true)).toContain("panels: ");
  expect(offered("wing(pa")).toContain("panels: ");
  expect(offered("wing(panels: items, l")).toContain("left: ");
  expect(offered("wing(panels: items, p")).not.toContain("panels: ");
  expect(offered("wing(2 * pa")).not.toContain("panels: ");
});
