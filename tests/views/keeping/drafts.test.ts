import { expect, test } from "vitest";
import { editCell, type Notebook } from "../../../src/cells/index.ts";
import { Drafts } from "../../../src/views/keeping/drafts.ts";

const notebook: Notebook = {
  title: "Arm",
  trials: [],
  cells: [{ id: "a1", kind: "given", name: "arm", formula: "2 m" }],
};

const session = { own: notebook, afterEdit: (edit: (before: Notebook) => Notebook) => edit(notebook) };

test("an answer is held by its question until nothing of it is left", () => {
  const drafts = new Drafts();
  expect(drafts.answer("q1")).toEqual({ answer: "", reason: "" });
  drafts.setAnswer("q1", { answer: "9", reason: "as before" });
  drafts.setAnswer("q2", { answer: "", reason: "a guess" });
  expect(drafts.answer("q1")).toEqual({ answer: "9", reason: "as before" });
  drafts.setAnswer("q1", { answer: "", reason: "" });
  expect(drafts.answers).toEqual({ q2: { answer: "", reason: "a guess" } });
  expect(drafts.areEmpty).toBe(false);
});

test("a question named like a part of every object has no answer by that", () => {
  expect(new Drafts().answer("constructor")).toEqual({ answer: "", reason: "" });
});

test("text that is held back changes the notebook that is kept, until it is let go", () => {
  const drafts = new Drafts();
  expect(drafts.appliedTo(session)).toBe(notebook);
  drafts.hold((before) => editCell(before, "a1", { formula: "2 m +" }));
  expect(drafts.appliedTo(session).cells[0]).toMatchObject({ formula: "2 m +" });
  drafts.hold(null);
  expect(drafts.appliedTo(session)).toBe(notebook);
});

test("text that is held back for a cell that is gone leaves the notebook as it is", () => {
  const drafts = new Drafts();
  drafts.hold(() => {
    throw new Error("no such cell");
  });
  expect(drafts.appliedTo(session)).toBe(notebook);
});

test("each change is told, and no longer to who has left", () => {
  const drafts = new Drafts();
  let told = 0;
  const leave = drafts.onChange(() => {
    told += 1;
  });
  drafts.hold(null);
  expect(told).toBe(0);
  drafts.hold((before) => before);
  drafts.setAnswer("q1", { answer: "9", reason: "" });
  leave();
  drafts.hold(null);
  expect(told).toBe(2);
});
