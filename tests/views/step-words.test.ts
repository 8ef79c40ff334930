import { expect, test } from "vitest";
import {
  adoptTrial,
  type Cell,
  editCell,
  insertCell,
  insertTrial,
  moveCell,
  moveTrial,
  type Notebook,
  removeCell,
  removeTrial,
  rename,
  renameTrial,
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

test("a step of trials is told by the trial and by what was set in it", () => {
  const steep = { name: "steep", set: { span: "2 m" } };
  const flat = { name: "flat", set: {} };
  const of = (change: (notebook: Notebook) => Notebook): string | undefined => {
    const session = new Session(functions);
    session.open({ ...start, trials: [steep, flat] });
    session.turnOn(0);
    session.edit(change);
    return session.steps.undo && stepWords(session.steps.undo);
  };
  expect(of((now) => editCell(now, "a1", { formula: "3 m" }))).toBe("change span in steep");
  expect(of((now) => insertTrial(now, { name: "long", set: {} }))).toBe("make the trial long");
  expect(of((now) => removeTrial(now, 1))).toBe("delete the trial flat");
  expect(of((now) => renameTrial(now, 1, "level"))).toBe("rename the trial flat to level");
  expect(of((now) => moveTrial(now, 0, 1))).toBe("move a trial");
  const decision = { id: "d1", kind: "decision", question: "", chosen: "", why: "" } as const;
  expect(of((now) => adoptTrial(now, 0, decision))).toBe("take over the trial steep");
  expect(of((now) => rename(now, "a1", "width", functions))).toBe("rename span to width");
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
