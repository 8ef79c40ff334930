import { describe, expect, test } from "vitest";
import type { Cell, Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { limits } from "../../src/cells/formula-parse.ts";
import { editCell } from "../../src/cells/notebook.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { Session } from "../../src/cells/session.ts";
import { functions } from "../../src/library/index.ts";

const count = 2000;
const derived = (name: string, formula: string): Cell => ({ id: name, kind: "derived", name, formula });
const cellsOf = (formula: (index: number) => string, name = (index: number) => `c${index}`, many = count): Cell[] =>
  Array.from({ length: many }, (_, index) => ({ ...derived(name(index), formula(index)), id: `c${index}` }));
const notebookOf = (cells: readonly Cell[]): Notebook => ({ title: "", cells, trials: [] });

/** Opens the cells, within seconds on the slowest machine (some tenths as a rule), and gives a session with its results. */
async function opened(cells: readonly Cell[]): Promise<Session> {
  const started = performance.now();
  const session = new Session(functions);
  session.open(notebookOf(cells));
  await session.settled();
  expect(performance.now() - started).toBeLessThan(15_000);
  return session;
}

/** The value of a cell, or its error. */
const resultOf = (session: Session, id: string) => {
  const result = session.result(id);
  return result?.ok ? result.value : result?.error;
};

describe("2,000 cells", () => {
  test("in a chain compute, and follow an edit of the first", async () => {
    const session = await opened(cellsOf((index) => (index === 0 ? "1" : `c${index - 1} + 1`)));
    expect(resultOf(session, "c1999")).toBe(2000);
    session.edit((notebook) => editCell(notebook, "c0", { formula: "101" }));
    await session.settled();
    expect(resultOf(session, "c1999")).toBe(2100);
  });

  test("in a chain written from its end do so too", async () => {
    const session = await opened(cellsOf((index) => (index === 0 ? "1" : `c${index - 1} + 1`)).reverse());
    expect(resultOf(session, "c1999")).toBe(2000);
  });

  test("in a chain behind an error wait for its root", async () => {
    const session = await opened(cellsOf((index) => (index === 0 ? "1 / 0" : `c${index - 1} + 1`)));
    expect(resultOf(session, "c1999")).toMatchObject({ code: "waits", root: "c0", message: "Waits for c0." });
  });

  test("in a loop say so, the way round cut short", async () => {
    const session = await opened(cellsOf((index) => `c${(index + 1) % count}`));
    const error = resultOf(session, "c7") as { message: string };
    expect(error).toMatchObject({ code: "loop", root: "c7" });
    expect(error.message).toContain("These cells need each other in a loop: ");
    expect(error.message.length).toBeLessThan(300);
  });

  test("in one great tangle of loops say so", async () => {
    const tangle = cellsOf((index) => [1, 7, 13, 500].map((step) => `c${(index * step + step) % count}`).join(" + "));
    expect(resultOf(await opened(tangle), "c1000")).toMatchObject({ code: "loop" });
  });

  test("of one name are all told, and who names them waits", async () => {
    const cells = [
      ...cellsOf(
        () => "1",
        () => "same",
      ),
      derived("other", "same + 1"),
    ];
    const session = await opened(cells);
    expect(resultOf(session, "c1999")).toMatchObject({ code: "duplicate_name" });
    expect(resultOf(session, "other")).toMatchObject({ code: "waits", root: "same" });
  });

  test("that all need one, and one that needs many, compute", async () => {
    const sums = derived("total", Array.from({ length: 300 }, (_, index) => `c${index}`).join("+"));
    const session = await opened([derived("first", "2"), ...cellsOf(() => "first * 2"), sums]);
    expect(resultOf(session, "total")).toBe(1200);
  });

  test("that each have a fault of their own are told", async () => {
    const session = await opened(cellsOf((index) => `spam${index} + 1`));
    expect(resultOf(session, "c1999")).toMatchObject({ code: "unknown_name" });
  });
});

describe("function cells", () => {
  const calling = (many: number, body: (name: string) => string) => [
    ...cellsOf(
      (index) => (index === 0 ? "x" : body(`f${index - 1}`)),
      (index) => `f${index}(x)`,
      many,
    ),
    derived("a", `f${many - 1}(1)`),
  ];

  test("that call each other 100 deep compute", async () => {
    expect(resultOf(await opened(calling(100, (name) => `${name}(x) + 1`)), "a")).toBe(100);
  });

  test("that call each other twice compute while they are few, and are refused where they double too often", async () => {
    const twice = (name: string) => `${name}(x) + ${name}(x)`;
    expect(resultOf(await opened(calling(13, twice)), "a")).toBe(2 ** 12);
    const refused = { code: "too_large", root: "a", at: [0, 6] };
    expect(resultOf(await opened(calling(40, twice)), "a")).toMatchObject(refused);
  });

  test("that call each other 2,000 deep are refused where they become too deep, which the next wait for", async () => {
    const session = await opened(calling(2000, (name) => `${name}(x) + 1`));
    const error = resultOf(session, "a") as { root: string };
    expect(error).toMatchObject({ code: "waits" });
    expect(resultOf(session, error.root.replace("f", "c"))).toMatchObject({ code: "too_deep", root: error.root });
  });

  test("that are tall themselves are refused before the stack overflows", async () => {
    const session = await opened(calling(60, (name) => `${name}(x)${" + 1".repeat(490)}`));
    expect(resultOf(session, "a")).toMatchObject({ code: "waits" });
  });

  test("as tall as can be still compute", async () => {
    const session = await opened(calling(4, (name) => `${name}(x)${" + 1".repeat(495)}`));
    expect(resultOf(session, "a")).toBe(1 + 3 * 495);
  });

  test("called with ever other dimensions are refused before all of them were tried", async () => {
    const units = ["m", "kg", "s", "K"];
    const body = (name: string) => units.map((unit) => `${name}(x * 1 ${unit})`).join(" and ");
    const cells = calling(30, body);
    expect(
      resultOf(await opened([{ ...derived("f0(x)", "x > 0 * x"), id: "c0" }, ...cells.slice(1)]), "a"),
    ).toMatchObject({
      code: "too_large",
    });
  });

  test("called by each row of a long table count together", () => {
    const twice = (name: string) => `${name}(x) + ${name}(x)`;
    const rows = Array.from({ length: limits.list }, (_, index) => [`f3(${index})`]);
    const table: Cell = { id: "t", kind: "table", name: "t", columns: [{ name: "x" }], rows };
    const program = compile([...calling(4, twice), table], functions);
    expect(runPlan(program).get("t")).toMatchObject({
      ok: false,
      error: { code: "too_large", place: { column: "x" } },
    });
  });
});

describe("long tables", () => {
  const table = (rows: number): Cell => ({
    id: "t",
    kind: "table",
    name: "t",
    columns: [{ name: "x", unit: "mm" }, { name: "y" }],
    rows: Array.from({ length: rows }, (_, index) => [`${index}`, "a * 2"]),
  });

  test("of 10,000 rows compute", async () => {
    const session = await opened([
      derived("a", "2"),
      table(limits.list),
      derived("b", "sum(t.x)"),
      derived("c", "t.y[10000]"),
    ]);
    expect(resultOf(session, "b")).toBeCloseTo(49_995, 6);
    expect(resultOf(session, "c")).toBe(4);
  });

  test("of one row more are refused without being read", async () => {
    const session = await opened([table(limits.list + 1), derived("b", "sum(t.x)")]);
    expect(resultOf(session, "t")).toMatchObject({ code: "too_large" });
    expect(resultOf(session, "b")).toMatchObject({ code: "waits", root: "t" });
  });
});

test("a chain of sums as long as a formula may be computes", () => {
  const program = compile([derived("a", `1${"+1".repeat(999)}`)], functions);
  expect(runPlan(program).get("a")).toMatchObject({ ok: true, value: 1000 });
});

test("cells that square each other end where no unit can tell the result", () => {
  const cells = cellsOf((index) => (index === 0 ? "1 m" : `c${index - 1} * c${index - 1}`));
  const results = runPlan(compile(cells, functions));
  expect(results.get("c6")).toMatchObject({ ok: true });
  expect(results.get("c7")).toMatchObject({ ok: false, error: { code: "wrong_dimension" } });
  expect(results.get("c1999")).toMatchObject({ ok: false, error: { code: "waits", root: "c7" } });
});
