import fc from "fast-check";
import { expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { Session } from "../../src/cells/session.ts";
import { functions } from "../../src/library/index.ts";
import { type Edit, editedNotebook, told } from "./random-edits.ts";

const planned = (notebook: Notebook): Record<string, unknown> => {
  const results = runPlan(compile(notebook.cells, functions));
  return Object.fromEntries(notebook.cells.map(({ id }) => [id, told(results.get(id))]));
};
const shown = (session: Session): Record<string, unknown> =>
  Object.fromEntries(session.notebook.cells.map(({ id }) => [id, told(session.result(id))]));

test("graph and plan give the same results after any edits, settled in between or not", async () => {
  const property = fc.asyncProperty(editedNotebook, fc.array(fc.nat(9), { minLength: 12 }), async (given, pauses) => {
    const session = new Session(functions);
    const heard = new Map<string, unknown>();
    session.open(given.notebook);
    for (let id = 0; id < 40; id++) {
      for (const name of [`c${id}`, `n${id}`]) session.onResult(name, (result) => heard.set(name, told(result)));
    }
    for (const [index, edit] of given.edits.entries()) {
      session.edit(edit);
      const pause = pauses[index] ?? 9;
      if (pause < 6) {
        for (let step = 0; step < pause; step++) await Promise.resolve();
        continue;
      }
      await session.settled();
      expect(shown(session)).toEqual(planned(session.notebook));
    }
    await session.settled();
    const results = planned(session.notebook);
    expect(shown(session)).toEqual(results);
    for (const { id, kind } of session.notebook.cells)
      if (kind !== "decision") expect(heard.get(id)).toEqual(results[id]);
    session.dispose();
  });
  await fc.assert(property, { seed: 31, numRuns: 200 });
});

test("edits of different cells come to the same results in any order", async () => {
  const edits = fc.tuple(editedNotebook, editedNotebook).chain(([{ notebook }, other]) => {
    const changes = notebook.cells.flatMap((cell, index): Edit[] => {
      const now = other.notebook.cells[index];
      if (!now) return [];
      return [
        (of) => ({ ...of, cells: of.cells.map((each) => (each.id === cell.id ? { ...now, id: cell.id } : each)) }),
      ];
    });
    const all = { minLength: changes.length, maxLength: changes.length };
    return fc.tuple(fc.constant(notebook), fc.constant(changes), fc.shuffledSubarray(changes, all));
  });
  const property = fc.asyncProperty(edits, async ([notebook, ...orders]) => {
    const results = [];
    for (const changes of orders) {
      const session = new Session(functions);
      session.open(notebook);
      for (const each of changes) {
        session.edit(each);
        await session.settled();
      }
      results.push(shown(session));
      session.dispose();
    }
    expect(results[1]).toEqual(results[0]);
  });
  await fc.assert(property, { seed: 32, numRuns: 40 });
});
