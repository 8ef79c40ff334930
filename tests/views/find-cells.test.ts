import { describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/index.ts";
import { type FindableCell, findable, findCells } from "../../src/views/find-cells.ts";

const cells: readonly (readonly [Cell, string])[] = [
  [
    {
      id: "a1",
      kind: "note",
      text: "# How far to bend it\n\nThe **wing** must roll upright before it has lost {height}.",
    },
    "",
  ],
  [
    { id: "a2", kind: "given", name: "tip_break", formula: "11 deg", reason: "most of the bend stands far out" },
    "11 deg",
  ],
  [{ id: "a3", kind: "derived", name: "wing_part", formula: "wing_mass(main_wing, wood)" }, "8.47 g"],
  [{ id: "a4", kind: "derived", name: "main_wing", formula: "wing(panels)" }, "480 mm span"],
  [
    {
      id: "a5",
      kind: "decision",
      question: "V or polyhedral?",
      chosen: "polyhedral",
      why: "sinks slower",
      alternatives: [{ option: "a plain V", why_not: "a steep fold" }],
    },
    "",
  ],
  [{ id: "a6", kind: "drawing", view: "plan", of: "main_wing" }, ""],
  [
    {
      id: "a7",
      kind: "table",
      name: "panels",
      columns: [{ name: "part", text: true }],
      rows: [["the outermost panel"]],
    },
    "1 row",
  ],
];
const all: readonly FindableCell[] = cells.map(([cell, value]) => findable(cell, value, false));
const found = (query: string): string[] => findCells(all, query).map(({ cell }) => cell.id);

describe("cells are found", () => {
  test("by name, at its start first, then within it, then in formulas", () => {
    expect(found("wing")).toEqual(["a3", "a4", "a1", "a6"]);
    expect(found("main_wing")[0]).toBe("a4");
  });

  test("by a name written with a blank, in capitals, or in part", () => {
    expect(found("Tip br")).toEqual(["a2"]);
  });

  test("by kind, by title, by value, and by words of prose, decisions and tables", () => {
    expect(found("decision")).toEqual(["a5"]);
    expect(found("plan view")).toEqual(["a6"]);
    expect(found("8.47")).toEqual(["a3"]);
    expect(found("upright")).toEqual(["a1"]);
    expect(found("steep fold")).toEqual(["a5"]);
    expect(found("outermost")).toEqual(["a7"]);
  });

  test("only where every word stands", () => {
    expect(found("given bend")).toEqual(["a2"]);
    expect(found("bend nowhere")).toEqual([]);
  });

  test("all of them, in order, before anything is typed", () => {
    expect(found(" ")).toEqual(["a1", "a2", "a3", "a4", "a5", "a6", "a7"]);
  });
});

test("the excerpt marks what was looked for, in the words as they stand", () => {
  expect(findCells(all, "UPRIGHT")[0]?.excerpt).toMatchObject({ match: "upright" });
  expect(findCells(all, "UPRIGHT")[0]?.excerpt.after).toBe(" before it has lost {height}.");
  expect(findCells(all, "main_wing")[0]?.excerpt).toEqual({ before: "480 mm span", match: "", after: "" });
});

test("a hidden given is not found by its value, nor does its excerpt tell it", () => {
  const [given] = cells[1] ?? [];
  if (!given) throw new Error("got no given");
  const hidden = findable(given, "11 deg", true);
  expect(findCells([hidden], "11")).toEqual([]);
  expect(JSON.stringify(findCells([hidden], "tip"))).not.toContain("11 deg");
});
