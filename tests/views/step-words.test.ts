import { expect, test } from "vitest";
import {
  type Cell,
  editCell,
  insertCell,
  moveCell,
  type Notebook,
  removeCell,
  rename,
  Session,
  setTitle,
} from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { seenIn, stepWords } from "../../src/views/step-words.ts";

const start: Notebook = {
  title: "start",
  cells: [
    { id: "a1", kind: "given", name: "span", formula: "480 mm" },
    { id: "a2", kind: "note", text: "## The wing\n\nIt is {span} wide." },
    { id: "a3", kind: "derived", name: "half", formula: "span / 2" },
  ],
  trials: [],
};

function after(...edits: readonly ((notebook: Notebook) => Notebook)[]) {
  const session = new Session(functions);
  session.open(start);
  for (const edit of edits) session.edit(edit);
  return session;
}
const wordsAfter = (...edits: readonly ((notebook: Notebook) => Notebook)[]): string => {
  const { undo } = after(...edits).steps;
  return undo ? stepWords(undo) : "";
};

const fresh: Cell = { id: "n1", kind: "derived", name: "third", formula: "span / 3" };

test("a step is told by what it did and to which cell", () => {
  expect(wordsAfter((notebook) => insertCell(notebook, 1, fresh))).toBe("insert third");
  expect(wordsAfter((notebook) => removeCell(notebook, "a2"))).toBe("delete The wing");
  expect(wordsAfter((notebook) => moveCell(notebook, "a1", 2))).toBe("move span");
  expect(wordsAfter((notebook) => moveCell(notebook, "a3", 0))).toBe("move half");
  expect(wordsAfter((notebook) => editCell(notebook, "a1", { formula: "500 mm" }))).toBe("change span");
  expect(wordsAfter((notebook) => rename(notebook, "a1", "width", functions))).toBe("rename span to width");
  expect(wordsAfter((notebook) => setTitle(notebook, "end"))).toBe("change the title");
});

test("what was undone is told as what can be done again, and nothing where nothing is", () => {
  const session = after((notebook) => removeCell(notebook, "a3"));
  session.undo();
  expect(session.steps.undo).toBeUndefined();
  expect(session.steps.redo && stepWords(session.steps.redo)).toBe("delete half");
});

test("a step is seen in the first cell that it changed and that is there", () => {
  const session = after((notebook) => editCell(notebook, "a3", { formula: "span / 4" }));
  const step = session.steps.undo;
  if (!step) throw new Error("got no step");
  expect(seenIn(step, () => true)).toBe("a3");
  expect(seenIn(step, () => false)).toBeUndefined();
});
