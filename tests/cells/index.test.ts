import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { editCell, explain, readNotebook, rename, Session, sweep, writeNotebook } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";

const text = readFileSync(new URL("../../notebooks/plover.json", import.meta.url), "utf8");

test("by what the cells offer, a notebook is opened, edited, swept, explained, renamed, undone and kept as it was", async () => {
  const session = new Session(functions);
  session.open(readNotebook(text));
  await session.settled();
  const id = (name: string) => session.program.byName.get(name)?.id ?? "";
  const eda = () => session.result(id("eda"));
  const before = eda();

  session.edit((notebook) => editCell(notebook, id("tip_break"), { formula: "4 deg" }));
  await session.settled();
  expect(eda()).not.toEqual(before);

  const range = session.program.byName.get("tip_break")?.range;
  const rows = sweep(session.program, (each) => session.result(each), id("tip_break"), [range?.from ?? 0], [id("eda")]);
  expect(rows).toMatchObject([[{ ok: true }]]);
  expect(explain(session.program, (each) => session.result(each), { id: id("eda") })?.takes).toHaveLength(1);

  session.edit((notebook) => rename(notebook, id("tip_break"), "outer_break", functions));
  await session.settled();
  expect(id("tip_break")).toBe("");

  session.undo();
  session.undo();
  await session.settled();
  expect(eda()).toEqual(before);
  expect(writeNotebook(session.notebook)).toBe(text);
  expect([session.canUndo, session.canRedo]).toEqual([false, true]);
});
