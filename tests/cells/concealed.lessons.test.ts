import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { concealedCells } from "../../src/cells/concealed.ts";
import { hiddenCells } from "../../src/cells/hidden.ts";
import { readNotebook } from "../../src/cells/notebook-file.ts";
import { functions } from "../../src/library/index.ts";
import { root } from "../../src/tools/place.js";

const folder = join(root, "notebooks");
const lessons = readdirSync(folder)
  .map((name) => ({ name, notebook: readNotebook(readFileSync(join(folder, name), "utf8")) }))
  .filter(({ notebook }) => notebook.cells.some(({ kind }) => kind === "question"));

describe.each(lessons)("the lesson $name", ({ notebook }) => {
  test("has no question whose answer is a sum of givens written right under it", () => {
    const givens = new Set(notebook.cells.flatMap((cell) => (cell.kind === "given" ? [cell.name] : [])));
    const asked = hiddenCells(notebook);
    const told = notebook.cells.flatMap((cell) => {
      if (cell.kind !== "derived" || !asked.has(cell.id)) return [];
      const names = cell.formula.match(/[a-z_]\w*/gi) ?? [];
      return names.every((name) => givens.has(name)) ? [`${cell.name} = ${cell.formula}`] : [];
    });
    expect(told).toEqual([]);
  });
});

test.each([
  ["saved", ["saved", "same_mass", "Sink against the plain V: same mass, and as built"]],
  [
    "best_count",
    ["best_count", "costs", "as_built", "Sink against the plain V: same mass, and as built", "all_at_stake", "seen"],
  ],
])("the lesson on one more break shows nothing of %s before it is predicted", (about, hidden) => {
  const notebook = lessons.find(({ name }) => name === "one-more-break.json")?.notebook;
  if (!notebook) throw new Error("the lesson is not there");
  const cells = notebook.cells.map((cell) =>
    cell.kind === "question" && cell.about !== about ? { ...cell, answer: "a few" } : cell,
  );
  const concealed = concealedCells(compile(cells, functions), hiddenCells({ ...notebook, cells }));
  const names = cells.flatMap((cell) =>
    concealed.has(cell.id) ? ("name" in cell ? cell.name : "title" in cell ? (cell.title ?? "") : []) : [],
  );
  expect(names).toEqual(hidden);
});

test("the lesson on the jig shows the wing from the start, and its joints only to who has answered", () => {
  const notebook = lessons.find(({ name }) => name === "number-to-jig.json")?.notebook;
  if (!notebook) throw new Error("the lesson is not there");
  const concealed = concealedCells(compile(notebook.cells, functions), hiddenCells(notebook));
  const hidden = notebook.cells.flatMap((cell) => (cell.kind === "drawing" && concealed.has(cell.id) ? [cell.of] : []));
  expect(hidden).toEqual(["bevels"]);
});
