import fc from "fast-check";
import { expect, test } from "vitest";
import type { Notebook } from "../../../src/cells/cell.ts";
import { compile } from "../../../src/cells/compile.ts";
import { Crew } from "../../../src/cells/crew/crew.ts";
import { editCell } from "../../../src/cells/notebook.ts";
import { runPlan } from "../../../src/cells/plan.ts";
import { Session } from "../../../src/cells/session.ts";
import { functions } from "../../../src/library/index.ts";
import { type Edit, editedNotebook, told } from "../random-edits.ts";
import { FakePort } from "./fake-port.ts";
import { withSlow } from "./slow-functions.ts";

const table = withSlow(functions, ["sum", "round", "min", "sin", "sqrt"]);

/** A formula over the cells before this one, often a slow one, sometimes one that fails. */
const formulaAt = (index: number) =>
  fc.tuple(fc.nat(), fc.nat(), fc.integer({ min: 0, max: 5 })).chain(([first, second, value]) =>
    index === 0
      ? fc.constant(`${value}`)
      : fc.constantFrom(
          ...["round(N + M, 1)", "min(N, M)", "sqrt(N)", "N + M", "M - N", "2 * N", "M / N", "sum([N, M, V])", "V"].map(
            (text) =>
              text
                .replaceAll("N", `c${first % index}`)
                .replaceAll("M", `c${second % index}`)
                .replace("V", `${value}`),
          ),
        ),
  );

/** Cells that mostly compute, and edits of their formulas. */
const computing = fc.integer({ min: 4, max: 12 }).chain((count) =>
  fc.record({
    notebook: fc.tuple(...Array.from({ length: count }, (_, index) => formulaAt(index))).map(
      (formulas): Notebook => ({
        title: "",
        trials: [],
        cells: formulas.map((formula, index) => ({ id: `i${index}`, kind: "derived", name: `c${index}`, formula })),
      }),
    ),
    edits: fc.array(
      fc.nat(count - 1).chain((index) =>
        formulaAt(index).map(
          (formula): Edit =>
            (notebook) =>
              editCell(notebook, `i${index}`, { formula }),
        ),
      ),
      { minLength: 1, maxLength: 10 },
    ),
  }),
);

const pauses = fc.array(fc.nat(9), { minLength: 12, maxLength: 12 });

for (const [what, edited, numRuns, least] of [
  ["that compute", computing, 150, 300],
  // Few of these come to anything slow at all.
  ["that are full of faults", editedNotebook, 500, 1],
] as const) {
  test(`once all answers are there the graph has what the plan gives, for cells ${what}, whenever edits came`, async () => {
    let answers = 0;
    const property = fc.asyncProperty(edited, pauses, async ({ notebook, edits }, pauses) => {
      const port = new FakePort(table);
      const session = new Session(table, new Crew(port, table).compute);
      session.open(notebook);
      for (const [index, edit] of edits.entries()) {
        session.edit(edit);
        for (let count = pauses[index] ?? 0; count > 6; count--) {
          port.pass(40);
          if (await port.work()) answers++;
        }
      }
      await session.settled();
      await port.workAll();
      expect(session.pendingCount).toBe(0);
      const results = runPlan(compile(session.notebook.cells, functions));
      for (const { id } of session.notebook.cells) {
        expect(session.isPending(id)).toBe(false);
        expect(told(session.result(id))).toEqual(told(results.get(id)));
      }
      session.dispose();
    });
    await fc.assert(property, { seed: 51, numRuns });
    expect(answers).toBeGreaterThanOrEqual(least);
  });
}
