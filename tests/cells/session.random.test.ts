import fc from "fast-check";
import { expect, test } from "vitest";
import { Session } from "../../src/cells/session.ts";
import { functions } from "../../src/library/index.ts";
import { editedNotebook, told } from "./random-edits.ts";

test("any edits undone one by one lead back through every notebook and its results, and redone forth again", async () => {
  const property = fc.asyncProperty(editedNotebook, async ({ notebook, edits }) => {
    const session = new Session(functions);
    const state = async (): Promise<object> => {
      await session.settled();
      return {
        notebook: session.notebook,
        results: session.notebook.cells.map(({ id }) => told(session.result(id))),
      };
    };
    session.open(notebook);
    const states = [await state()];
    for (const edit of edits) {
      const before = session.notebook.cells;
      session.edit(edit);
      const { cells } = session.notebook;
      // What leaves every cell as it stands is no step.
      if (cells.length !== before.length || cells.some((cell, at) => cell !== before[at])) states.push(await state());
    }
    for (const before of states.slice(0, -1).reverse()) {
      session.undo();
      expect(await state()).toEqual(before);
    }
    expect(session.canUndo).toBe(false);
    for (const after of states.slice(1)) {
      session.redo();
      expect(await state()).toEqual(after);
    }
    expect(session.canRedo).toBe(false);
    session.dispose();
  });
  await fc.assert(property, { seed: 43, numRuns: 150 });
});
