import { expect, test } from "vitest";
import { type Notebook, Session } from "../../src/cells/index.ts";
import { functionsAtFirst } from "../../src/library/at-first.ts";
import { type FunctionTable, functions } from "../../src/library/index.ts";
import { LateFunctions } from "../../src/views/late-functions.ts";

const matrix = "longitudinal_roots([-0.045, 0.036, 0, -9.81, -0.369, -2.02, 54, 0, 0.002, -0.04, -2.5, 0, 0, 0, 1, 0])";
const notebookOf = (formula: string): Notebook => ({
  title: "",
  cells: [
    { id: "n", kind: "note", text: "Cut the strip(s) first." },
    { id: "a", kind: "derived", name: "a", formula },
  ],
  trials: [],
});

/** A session that knows the functions of the page, and how often the others were loaded. */
function sessionAtFirst() {
  const session = new Session(functionsAtFirst);
  const loads: FunctionTable[] = [];
  const late = new LateFunctions(
    async () => {
      loads.push(functions);
      return functions;
    },
    (all) => session.learn(all),
  );
  return { session, late, loads };
}

test("every function of the library is there at first or follows", () => {
  expect([...functionsAtFirst.keys()].filter((name) => !functions.has(name))).toEqual([]);
  expect(functionsAtFirst.size).toBeLessThan(functions.size);
});

test("a notebook that calls only what is known waits for nothing", async () => {
  const { late, loads } = sessionAtFirst();
  const { cells, ...rest } = notebookOf("sqrt(2) * (3 + 1)");
  await late.calledIn({ ...rest, cells: cells.slice(1) }, functionsAtFirst);
  expect(loads).toEqual([]);
});

test("one that calls a function of the others waits for them, and they are loaded once", async () => {
  const { session, late, loads } = sessionAtFirst();
  await Promise.all([late.calledIn(notebookOf(matrix), session.functions), late.all()]);
  await late.calledIn(notebookOf(matrix), session.functions);
  expect(loads.length).toBe(1);
  session.open(notebookOf(matrix));
  await session.settled();
  expect(session.result("a")).toMatchObject({ ok: true });
});

test("a formula that was written before they came has its value once they are there", async () => {
  const { session, late } = sessionAtFirst();
  session.open(notebookOf(matrix));
  await session.settled();
  expect(session.result("a")).toMatchObject({ ok: false, error: { code: "unknown_name" } });
  const note = session.result("n");
  await late.all();
  await session.settled();
  expect(session.result("a")).toMatchObject({ ok: true });
  // What did not call them is not computed again.
  expect(session.result("n")).toBe(note);
});

test("a cell that has the name of one of them is told so once they are there", async () => {
  const { session, late } = sessionAtFirst();
  session.open({ title: "", cells: [{ id: "a", kind: "given", name: "modes", formula: "2" }], trials: [] });
  await session.settled();
  expect(session.result("a")).toMatchObject({ ok: true });
  await late.all();
  await session.settled();
  expect(session.result("a")).toMatchObject({ ok: false, error: { code: "reserved_name" } });
});

test("where they cannot be loaded who asked is told, and the next who asks has them", async () => {
  let tries = 0;
  const late = new LateFunctions(
    async () => {
      if (++tries === 1) throw new Error("there is no connection");
      return functions;
    },
    () => undefined,
  );
  await expect(late.all()).rejects.toThrow("no connection");
  await expect(late.all()).resolves.toBeUndefined();
  expect(tries).toBe(2);
});
