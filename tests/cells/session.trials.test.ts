import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { editCell, removeCell, setEntry } from "../../src/cells/notebook.ts";
import { rename } from "../../src/cells/rename.ts";
import { Session } from "../../src/cells/session.ts";
import { insertRowInTrials } from "../../src/cells/table-rows.ts";
import { duplicateTrial, insertTrial, removeTrial, renameTrial } from "../../src/cells/trial-edits.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf } from "./notebook-text.ts";
import { type Edit, editedNotebook, told } from "./random-edits.ts";

const notebook: Notebook = {
  title: "",
  trials: [
    { name: "flatter", set: { tip: "7 deg" } },
    { name: "longer", set: { "panels[ 1 ].length": "130" } },
  ],
  cells: cellsOf(`given tip [deg] = 11 deg
table panels | length mm | break deg
| 110 | 5
| 90 | tip
half [mm] = sum(panels.length)
check steep = tip > 9 deg`),
};

async function opened() {
  const session = new Session(functions);
  session.open(notebook);
  await session.settled();
  const value = (id: string) => {
    const result = session.result(id);
    return result?.ok ? result.value : undefined;
  };
  return { session, value };
}

const setTip = (formula: string) => (now: Notebook) => editCell(now, "1", { formula });

describe("a trial that is on", () => {
  test("is what is shown and computed, while the notebook's own stays as it is", async () => {
    const { session, value } = await opened();
    session.turnOn(0);
    await session.settled();
    expect(session.trial?.name).toBe("flatter");
    expect(value("4")).toBe(false);
    expect(session.own).toBe(notebook);
    expect(session.canUndo).toBe(false);
    session.turnOn(null);
    await session.settled();
    expect(session.notebook).toBe(notebook);
    expect(value("4")).toBe(true);
  });

  test("takes edits of givens and entries, and the notebook itself does not", async () => {
    const { session } = await opened();
    session.turnOn(0);
    session.edit(setTip("6 deg"));
    session.edit((now) => setEntry(now, "2", 0, 0, "120"));
    expect(session.own.cells).toBe(notebook.cells);
    expect(session.own.trials[0]?.set).toEqual({ tip: "6 deg", "panels[1].length": "120" });
    expect(session.notebook.cells[1]).toMatchObject({
      rows: [
        ["120", "5"],
        ["90", "tip"],
      ],
    });
  });

  test("sets no longer what is given back its own text, however its target was written", async () => {
    const { session } = await opened();
    session.turnOn(1);
    session.edit((now) => setEntry(now, "2", 0, 0, "140"));
    expect(session.own.trials[1]?.set).toEqual({ "panels[ 1 ].length": "140" });
    session.edit((now) => setEntry(now, "2", 0, 0, "110"));
    expect(session.own.trials[1]?.set).toEqual({});
  });

  test("leaves every other edit to the notebook itself, and follows it", async () => {
    const { session } = await opened();
    session.turnOn(0);
    session.edit((now) => editCell(now, "3", { formula: "2 * sum(panels.length)" }));
    session.edit((now) => rename(now, "1", "tip_break", functions));
    session.edit((now) => insertRowInTrials(now, "2", 0, ["10", "1"]));
    expect(session.own.cells[0]).toMatchObject({ name: "tip_break", formula: "11 deg" });
    expect(session.own.cells[1]).toMatchObject({
      rows: [
        ["10", "1"],
        ["110", "5"],
        ["90", "tip_break"],
      ],
    });
    expect(session.own.trials.map(({ set }) => set)).toEqual([{ tip_break: "7 deg" }, { "panels[2].length": "130" }]);
    expect(session.notebook.cells[0]).toMatchObject({ name: "tip_break", formula: "7 deg" });
    expect(session.trial?.name).toBe("flatter");
  });

  test("that sets what is no longer there sets the rest", async () => {
    const { session } = await opened();
    session.turnOn(0);
    session.edit((now) => removeCell(now, "1"));
    expect(session.trial?.set).toEqual({ tip: "7 deg" });
    expect(session.notebook.cells).toEqual(session.own.cells);
    session.undo();
    expect(session.notebook.cells[0]).toMatchObject({ formula: "7 deg" });
  });

  test("shows the other trials as the designs they are", async () => {
    const { session } = await opened();
    session.turnOn(0);
    expect(session.notebook.trials).toEqual([
      notebook.trials[0],
      { name: "longer", set: { tip: "11 deg", "panels[1].length": "130" } },
    ]);
  });

  test("has one drag as one step, and keeps cells that it leaves alone", async () => {
    const { session } = await opened();
    session.turnOn(0);
    for (const formula of ["6 deg", "5 deg", "4 deg"]) session.edit(setTip(formula), "slide 1");
    expect(session.notebook.cells[1]).toBe(notebook.cells[1]);
    session.undo();
    expect(session.own).toEqual(notebook);
    expect(session.canUndo).toBe(false);
  });
});

describe("steps of trials", () => {
  test("that are taken back bring on the trial that they changed", async () => {
    const { session } = await opened();
    session.turnOn(0);
    session.edit(setTip("6 deg"));
    session.turnOn(null);
    session.undo();
    expect(session.trial).toEqual(notebook.trials[0]);
    session.turnOn(1);
    session.redo();
    expect(session.trial).toEqual({ name: "flatter", set: { tip: "6 deg" } });
  });

  test("that made or removed one turn it off and on again", async () => {
    const { session } = await opened();
    session.turnOn(1);
    session.editOwn((now) => duplicateTrial(now, 1), 2);
    expect(session.trial?.name).toBe("longer (2)");
    session.undo();
    expect(session.trialIndex).toBe(1);
    session.editOwn((now) => removeTrial(now, 1));
    expect(session.trial).toBeNull();
    session.undo();
    expect(session.trial?.name).toBe("longer");
  });

  test("leave on which is on, whatever is put in before it or called otherwise", async () => {
    const { session } = await opened();
    session.turnOn(1);
    session.editOwn((now) => insertTrial(now, { name: "new", set: {} }, 0));
    expect(session.trial?.name).toBe("longer");
    session.editOwn((now) => renameTrial(now, 2, "long"));
    expect(session.trial?.name).toBe("long");
  });

  test("cannot be made in a notebook that is only read, though its trials can be looked at", async () => {
    const { session } = await opened();
    session.readOnly = true;
    session.turnOn(0);
    session.edit(setTip("6 deg"));
    session.editOwn((now) => removeTrial(now, 0));
    expect(session.own).toBe(notebook);
    expect(session.notebook.cells[0]).toMatchObject({ formula: "7 deg" });
  });
});

/** Turns on one of the trials, or none. */
interface Turn {
  readonly turn: number;
}
const turn = fc.nat(3).map((each): Turn => ({ turn: each }));

test("any edits with trials on or off, undone one by one, lead back through every notebook and its results", async () => {
  const set = fc.dictionary(fc.constantFrom("a", "b", "c", "t[1].x", "t[2].y"), fc.constantFrom("7", "3 mm", "spam"));
  const property = fc.asyncProperty(
    editedNotebook,
    fc.array(set, { minLength: 1, maxLength: 3 }),
    fc.array(turn, { minLength: 3, maxLength: 8 }),
    async ({ notebook: made, edits }, sets, turns) => {
      const session = new Session(functions);
      const first = { ...made, trials: sets.map((each, index) => ({ name: `trial ${index}`, set: each })) };
      session.open(first);
      const states: Notebook[] = [first];
      const acts: (Edit | Turn)[] = edits.flatMap((edit, index) => [turns[index % turns.length] as Turn, edit]);
      for (const act of acts) {
        if ("turn" in act) session.turnOn(act.turn < session.own.trials.length ? act.turn : null);
        else session.edit(act);
        if (JSON.stringify(session.own) !== JSON.stringify(states.at(-1))) states.push(session.own);
      }
      while (session.canUndo) session.undo();
      await session.settled();
      expect(session.own).toEqual(first);
      session.turnOn(null);
      await session.settled();
      const fresh = new Session(functions);
      fresh.open(first);
      await fresh.settled();
      for (const { id } of first.cells) expect(told(session.result(id))).toEqual(told(fresh.result(id)));
      while (session.canRedo) session.redo();
      expect(session.own).toEqual(states.at(-1));
      session.dispose();
      fresh.dispose();
    },
  );
  await fc.assert(property, { seed: 71, numRuns: 150 });
});

test("an edit in a trial shows the same as the edited trial put on anew", async () => {
  const property = fc.asyncProperty(editedNotebook, fc.nat(2), async ({ notebook: made, edits }, index) => {
    const set = { a: "7", b: "3 mm", "t[1].x": "12" };
    const session = new Session(functions);
    session.open({ ...made, trials: [0, 1, 2].map((each) => ({ name: `${each}`, set: each === 1 ? {} : set })) });
    session.turnOn(index);
    for (const edit of edits) session.edit(edit);
    const other = new Session(functions);
    other.open(session.own);
    other.turnOn(index);
    expect(session.notebook).toEqual(other.notebook);
    await Promise.all([session.settled(), other.settled()]);
    for (const { id } of session.notebook.cells) expect(told(session.result(id))).toEqual(told(other.result(id)));
    session.dispose();
    other.dispose();
  });
  await fc.assert(property, { seed: 72, numRuns: 100 });
});
