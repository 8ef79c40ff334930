import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { History } from "../../src/cells/history.ts";
import { editCell, insertCell, moveCell, removeCell, setTitle } from "../../src/cells/notebook.ts";

const given = (id: string, formula: string) => ({ id, kind: "given" as const, name: id, formula });
const start: Notebook = {
  title: "start",
  cells: [given("a1", "1"), given("a2", "2"), given("a3", "3")],
  trials: [],
};

/** Takes edits one after another, as a session does. */
function statesOf(history: History, edits: readonly ((notebook: Notebook) => Notebook)[]): Notebook[] {
  const states = [start];
  for (const edit of edits) {
    const before = states.at(-1) as Notebook;
    const next = edit(before);
    history.remember(before, next);
    states.push(next);
  }
  return states;
}

const edit: fc.Arbitrary<(notebook: Notebook) => Notebook> = fc
  .tuple(fc.constantFrom("edit", "insert", "remove", "move", "title"), fc.nat(20), fc.nat(20))
  .map(([what, a, b]) => (notebook) => {
    const at = notebook.cells[a % Math.max(1, notebook.cells.length)];
    if (what === "title") return setTitle(notebook, `title ${a}`);
    if (what === "insert" || !at) {
      const id = `n${a}x${b}x${notebook.cells.length}`;
      if (notebook.cells.some((cell) => cell.id === id)) return notebook;
      return insertCell(notebook, b % (notebook.cells.length + 1), given(id, `${b}`));
    }
    if (what === "remove") return removeCell(notebook, at.id);
    if (what === "move") return moveCell(notebook, at.id, b % notebook.cells.length);
    return editCell(notebook, at.id, { formula: `${a} + ${b}` });
  });

describe("history", () => {
  test("undoing every step leads back through every state to the first, and redoing forth again", () => {
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 25 }), (edits) => {
        const history = new History();
        const states = statesOf(history, edits).filter((state, index, all) => index === 0 || state !== all[index - 1]);
        let now = states.at(-1) as Notebook;
        for (const state of [...states].reverse().slice(1)) {
          now = history.undo(now);
          expect(now).toEqual(state);
        }
        expect(history.canUndo).toBe(false);
        for (const state of states.slice(1)) {
          now = history.redo(now);
          expect(now).toEqual(state);
        }
        expect(history.canRedo).toBe(false);
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  test("an edit after undoing forgets what could have been redone", () => {
    const history = new History();
    const [, , last] = statesOf(history, [(n) => setTitle(n, "one"), (n) => setTitle(n, "two")]);
    const back = history.undo(last as Notebook);
    history.remember(back, setTitle(back, "other"));
    expect(history.canRedo).toBe(false);
    expect(history.undo(setTitle(back, "other")).title).toBe("one");
  });

  test("the steps of one gesture are one step, until it ends", () => {
    const history = new History();
    let now = start;
    const drag = (formula: string, gesture: string | null) => {
      const next = editCell(now, "a2", { formula });
      history.remember(now, next, gesture);
      now = next;
    };
    for (const formula of ["2.1", "2.2", "2.3"]) drag(formula, "drag a2");
    history.endGesture();
    for (const formula of ["2.4", "2.5"]) drag(formula, "drag a2");
    now = history.undo(now);
    expect(now.cells[1]).toMatchObject({ formula: "2.3" });
    now = history.undo(now);
    expect(now).toEqual(start);
    expect(history.canUndo).toBe(false);
  });

  test("a gesture that comes back to where it began leaves no step", () => {
    const history = new History();
    const there = editCell(start, "a1", { formula: "9" });
    history.remember(start, there, "drag");
    const back = { ...there, cells: [start.cells[0] as (typeof start.cells)[number], ...there.cells.slice(1)] };
    history.remember(there, back, "drag");
    expect(history.canUndo).toBe(false);
  });

  test("keeps what changed, not whole notebooks: 10,000 edits of one among 2,000 cells stay small", () => {
    const history = new History();
    let now: Notebook = {
      ...start,
      cells: Array.from({ length: 2000 }, (_, index) => given(`c${index}`, `${index}`)),
    };
    for (let step = 0; step < 10_000; step++) {
      const next = { ...now, cells: now.cells.with(7, given("c7", `${step}.5`)) };
      history.remember(now, next);
      now = next;
    }
    // Each step holds one cell before and one after; whole notebooks would take 20 million references.
    expect(JSON.stringify(history).length).toBeLessThan(10_000 * 400);
  });

  test("what is rewritten is so in every state that undoing and redoing lead to, and each cell is rewritten once", () => {
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 20 }), fc.nat(20), (edits, back) => {
        const marked = <C extends { readonly id: string }>(cell: C): C =>
          cell.id === "a2" ? { ...cell, reason: "printed" } : cell;
        const history = new History();
        const states = statesOf(history, edits).filter((state, index, all) => index === 0 || state !== all[index - 1]);
        const right = states.map((state) => ({ ...state, cells: state.cells.map(marked) }));
        let at = states.length - 1;
        let now = states[at] as Notebook;
        for (let step = 0; step < back && history.canUndo; step++) {
          now = history.undo(now);
          at--;
        }
        now = history.rewrite(now, marked);
        expect(now).toEqual(right[at]);
        while (history.canUndo) {
          now = history.undo(now);
          expect(now).toEqual(right[--at]);
        }
        while (history.canRedo) {
          now = history.redo(now);
          expect(now).toEqual(right[++at]);
        }
        expect(at).toBe(right.length - 1);
      }),
    );
  });
  test("a rewriting that changes nothing gives the very same notebook", () => {
    expect(new History().rewrite(start, (cell) => cell)).toBe(start);
  });
});
