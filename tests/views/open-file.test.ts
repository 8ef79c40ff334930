import { expect, test } from "vitest";
import { editCell, type Notebook, Session } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { OpenFile } from "../../src/views/open-file.ts";

const notebook: Notebook = {
  title: "",
  trials: [],
  cells: [{ id: "a1", kind: "given", name: "arm", formula: "2 m" }],
};

function opened() {
  const session = new Session(functions);
  session.open(notebook);
  const file = new OpenFile(session);
  const set = (formula: string) => session.edit((before) => editCell(before, "a1", { formula }));
  return { session, file, set };
}

test("nothing has changed until something is edited", () => {
  const { file, set } = opened();
  expect([file.touched, file.changed]).toEqual([false, false]);
  set("3 m");
  expect([file.touched, file.changed]).toEqual([true, true]);
});

test("an edit that is taken back is no change, and counts as touched only until it was compared", () => {
  const { file, set } = opened();
  set("3 m");
  set("2 m");
  expect(file.touched).toBe(true);
  expect(file.changed).toBe(false);
  expect(file.touched).toBe(false);
});

test("what was saved is what later edits are held against", () => {
  const { session, file, set } = opened();
  set("3 m");
  file.isSaved(session.notebook, "arm.json", null);
  expect([file.touched, file.changed, file.name]).toEqual([false, false, "arm.json"]);
  set("2 m");
  expect(file.changed).toBe(true);
});
