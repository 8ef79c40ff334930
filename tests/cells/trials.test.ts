import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { Session } from "../../src/cells/session.ts";
import { applyTrial, trialNamed } from "../../src/cells/trials.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf } from "./notebook-text.ts";

const flatter = { name: "flatter tips", set: { tip: "7 deg", "panels[1].length": "120" } };
const notebook: Notebook = {
  title: "",
  trials: [flatter, { name: "shorter", set: { "panels[2].length": "80" } }],
  cells: cellsOf(`given tip [deg] = 11 deg
table panels | length mm | break deg
| 110 | 5
| 90 | tip
half [mm] = sum(panels.length * cos(panels.break))`),
};

describe("a trial", () => {
  test("sets its givens and entries, and leaves all other cells and the trials shared", () => {
    const changed = applyTrial(notebook, flatter);
    expect(changed.cells[0]).toMatchObject({ formula: "7 deg", unit: "deg" });
    expect(changed.cells[1]).toMatchObject({
      rows: [
        ["120", "5"],
        ["90", "tip"],
      ],
    });
    expect(changed.cells[2]).toBe(notebook.cells[2]);
    expect(changed.trials).toBe(notebook.trials);
    expect(notebook.cells[0]).toMatchObject({ formula: "11 deg" });
  });

  test("that changes nothing is the notebook itself", () => {
    expect(applyTrial(notebook, { name: "", set: {} })).toBe(notebook);
    expect(applyTrial(notebook, { name: "", set: { tip: "11 deg" } })).toBe(notebook);
  });

  test.each([
    [{ tipp: "1 deg" }, "Trial “x” sets tipp: There is no cell named tipp. Did you mean tip?"],
    [{ half: "1 mm" }, "Trial “x” sets half: half is computed. Only givens and table entries can be set."],
    [{ "panels[3].break": "1" }, "Trial “x” sets panels[3].break: panels has no row 3: it has 2, counted from 1."],
  ])("of %j says which change cannot be made", (set, message) => {
    expect(() => applyTrial(notebook, { name: "x", set })).toThrow(message);
  });

  test("put on and taken back leaves every result and the notebook as they were", async () => {
    const target = fc.constantFrom("tip", "panels[1].length", "panels[2].break", "panels[1].break");
    const formula = fc.constantFrom("7 deg", "0", "spam", "", "12", "1 / 0", "5 mm");
    const set = fc.dictionary(target, formula, { maxKeys: 4 });
    const property = fc.asyncProperty(set, async (changes) => {
      const session = new Session(functions);
      session.open(notebook);
      await session.settled();
      const results = () => notebook.cells.map(({ id }) => session.result(id));
      const before = results();
      session.edit((now) => applyTrial(now, { name: "x", set: changes }));
      await session.settled();
      session.undo();
      await session.settled();
      expect(session.notebook).toEqual(notebook);
      expect(results()).toEqual(before);
      session.dispose();
    });
    await fc.assert(property, { seed: 61, numRuns: 100 });
  });

  test("comes to the same whatever the order of its changes", () => {
    const entries = Object.entries({
      tip: "7 deg",
      "panels[1].length": "120",
      "panels[2].break": "4",
      "panels[2].length": "1",
    });
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
        const set = Object.fromEntries(shuffled);
        expect(applyTrial(notebook, { name: "", set })).toEqual(
          applyTrial(notebook, { name: "", set: Object.fromEntries(entries) }),
        );
      }),
      { seed: 62, numRuns: 30 },
    );
  });
});

describe("a trial asked for by name", () => {
  test("is found", () => {
    expect(trialNamed(notebook, "flatter tips")).toBe(flatter);
  });

  test.each([
    ["flater tips", "There is no trial “flater tips”. Did you mean “flatter tips”?"],
    ["zzz", "There is no trial “zzz”. There are “flatter tips” and “shorter”."],
  ])("%s is told where it is not there", (name, message) => {
    expect(() => trialNamed(notebook, name)).toThrow(message);
  });

  test("in a notebook without trials says so", () => {
    expect(() => trialNamed({ ...notebook, trials: [] }, "a")).toThrow("There is no trial “a”. The notebook has none.");
  });
});
