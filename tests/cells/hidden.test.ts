import { expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { hiddenCells } from "../../src/cells/hidden.ts";

const named: readonly Cell[] = [
  { id: "a1", kind: "derived", name: "eda", formula: "1" },
  { id: "a2", kind: "table", name: "panels", columns: [], rows: [] },
  { id: "a3", kind: "derived", name: "lift(v)", formula: "v" },
];
const question = (about: string, answer: string | null): Cell => ({
  id: `q ${about} ${answer}`,
  kind: "question",
  about,
  prompt: "?",
  answer,
  because: "",
});
const hidden = (...questions: Cell[]) => [...hiddenCells({ title: "", cells: [...named, ...questions], trials: [] })];

test("a cell that nobody has answered for is hidden, whole, also when only a part of it is asked about", () => {
  expect(hidden(question("eda", null))).toEqual(["a1"]);
  expect(hidden(question("panels.length[1]", null), question(" lift", null))).toEqual(["a2", "a3"]);
});

test("an answer shows it, even an empty one; a second question that is open hides it still", () => {
  expect(hidden(question("eda", "12 deg"))).toEqual([]);
  expect(hidden(question("eda", ""))).toEqual([]);
  expect(hidden(question("eda", "12 deg"), question("eda", null))).toEqual(["a1"]);
});

test("a question about nothing that is there hides nothing", () => {
  expect(hidden(question("nowhere", null), question("", null))).toEqual([]);
});
