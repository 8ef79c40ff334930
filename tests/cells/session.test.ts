import { afterEach, describe, expect, test, vi } from "vitest";
import type { Cell, Notebook } from "../../src/cells/cell.ts";
import { editCell, insertCell, moveCell, removeCell, setEntry, setTitle } from "../../src/cells/notebook.ts";
import { Session } from "../../src/cells/session.ts";
import { countedFunctions } from "./counted-functions.ts";
import { cellsOf } from "./notebook-text.ts";

const notebookOf = (text: string): Notebook => ({ title: "", cells: cellsOf(text), trials: [] });
const derived = (id: string, name: string, formula: string): Cell => ({ id, kind: "derived", name, formula });

/** A session over cells written short, settled; ids count from 1. */
async function opened(text: string) {
  const { table, ran } = countedFunctions();
  const session = new Session(table);
  session.open(notebookOf(text));
  await session.settled();
  return { session, ran, valueAt: (id: string) => valueAt(session, id) };
}

function valueAt(session: Session, id: string): unknown {
  const result = session.result(id);
  if (!result) return undefined;
  return result.ok ? result.value : result.error.code;
}

const change = (id: string, formula: string) => (notebook: Notebook) => editCell(notebook, id, { formula });

describe("an edit runs only what it has to", () => {
  const text = `given a = 1
given b = 2
c = tick(a + 1, "c")
d = tick(b + 1, "d")
e = tick(c + d, "e")
f = tick(round(c, 10), "f")
k = tick(f + 1, "k")
note {k}`;

  test("all of a notebook just opened, once each", async () => {
    const { ran, valueAt } = await opened(text);
    expect(ran()).toBe("c d e f k");
    expect(["3", "4", "5", "6", "7"].map(valueAt)).toEqual([2, 3, 5, 0, 1]);
  });

  test("then what depends on the given that changed", async () => {
    const { session, ran, valueAt } = await opened(text);
    ran();
    session.edit(change("2", "12"));
    await session.settled();
    expect(ran()).toBe("d e");
    expect(valueAt("5")).toBe(15);
  });

  test("and no further than a value that comes out as it was", async () => {
    const { session, ran, valueAt } = await opened(text);
    ran();
    session.edit(change("1", "2"));
    await session.settled();
    expect(ran()).toBe("c e f");
    expect(valueAt("6")).toBe(0);
    session.edit(change("1", "7"));
    await session.settled();
    expect(ran()).toBe("c e f k");
    expect(valueAt("7")).toBe(11);
  });

  test("nothing downstream where a given is written otherwise but says the same", async () => {
    const { session, ran } = await opened(text);
    ran();
    session.edit(change("1", "2 / 2"));
    await session.settled();
    expect(ran()).toBe("");
  });

  test("nothing where a title, a note or the order changes", async () => {
    const { session, ran } = await opened(text);
    ran();
    session.edit((notebook) => setTitle(notebook, "Plover"));
    session.edit((notebook) => editCell(notebook, "8", { text: "Now {e}." }));
    session.edit((notebook) => moveCell(notebook, "1", 6));
    session.edit((notebook) => insertCell(notebook, 0, derived("9", "x", "a + 1")));
    session.edit((notebook) => removeCell(notebook, "9"));
    await session.settled();
    expect(ran()).toBe("");
  });

  test("several edits at once run everything once", async () => {
    const { session, ran, valueAt } = await opened(text);
    ran();
    for (let value = 1; value <= 50; value++) session.edit(change("2", `${value}`));
    session.edit(change("1", "3"));
    await session.settled();
    expect(ran()).toBe("c d e f");
    expect(valueAt("5")).toBe(4 + 51);
  });

  test("a table's entry runs what takes the table", async () => {
    const { session, ran, valueAt } = await opened(
      `table t | x mm\n| 1\n| 2\na = tick(sum(t.x), "a")\nb = tick(3, "b")`,
    );
    ran();
    session.edit((notebook) => setEntry(notebook, "1", 1, 0, "5"));
    await session.settled();
    expect(ran()).toBe("a");
    expect(valueAt("2")).toBeCloseTo(0.006);
  });

  test("an error that is mended, and one that is made, run only what waits", async () => {
    const { session, ran, valueAt } = await opened(
      `a = 1 / 0\nb = tick(a, "b")\nc = tick(1, "c")\nd = tick(b + c, "d")`,
    );
    expect(ran()).toBe("c");
    expect(["1", "2", "4"].map(valueAt)).toEqual(["not_finite", "waits", "waits"]);
    session.edit(change("1", "2"));
    await session.settled();
    expect(ran()).toBe("b d");
    session.edit(change("1", "2 +"));
    await session.settled();
    expect(ran()).toBe("");
    expect(["1", "2", "4"].map(valueAt)).toEqual(["syntax", "waits", "waits"]);
  });
});

describe("the results of a session", () => {
  test("come and go with their cells, and what needs them is told", async () => {
    const { session, valueAt } = await opened("a = 1\nb = a + 1");
    session.edit((notebook) => removeCell(notebook, "1"));
    await session.settled();
    expect(session.result("1")).toBe(undefined);
    expect(valueAt("2")).toBe("unknown_name");
    session.edit((notebook) => insertCell(notebook, 0, derived("1", "a", "5")));
    await session.settled();
    expect(["1", "2"].map(valueAt)).toEqual([5, 6]);
  });

  test("come back where a unit made a cell fail and another mends it, though every name stays", async () => {
    const { session, valueAt } = await opened("given a = 1\nb = a + 1\nc = b + 1\ng1 = a + b");
    for (const [formula, values] of [
      ["1 mm", [0.001, "wrong_dimension", "waits", "waits"]],
      ["2", [2, 3, 4, 5]],
    ] as const) {
      session.edit(change("1", formula));
      await session.settled();
      expect(["1", "2", "3", "4"].map(valueAt)).toEqual(values);
    }
  });

  test("are computed where a cell failed from the first and is mended, though every name stays", async () => {
    const { session, valueAt } = await opened("given a = 1 kg\nb = a + 1\nc = b + a / 1 kg");
    session.edit(change("1", "2"));
    session.edit(change("3", "b + a / 1"));
    await session.settled();
    expect(["2", "3"].map(valueAt)).toEqual([3, 5]);
  });

  test("are told anew where the unit changes and the number stays", async () => {
    const { session, valueAt } = await opened("given a [mm] = 3 mm\nb = a");
    const heard: unknown[] = [];
    for (const id of ["1", "2"]) {
      session.onResult(id, (result) => heard.push(result?.ok && result.shape.kind === "number" && result.shape.unit));
    }
    session.edit((notebook) => editCell(notebook, "1", { unit: "cm" }));
    await session.settled();
    expect(valueAt("1")).toBe(0.003);
    expect(heard).toEqual(["cm", "cm"]);
  });

  test("follow a name to another cell", async () => {
    const { session, valueAt } = await opened("a = 1\nx = 7\nb = a + 1");
    session.edit((notebook) => editCell(editCell(notebook, "1", { name: "old" }), "2", { name: "a" }));
    await session.settled();
    expect(valueAt("3")).toBe(8);
  });

  test("follow another notebook that is opened, with the same ids", async () => {
    const { session, valueAt } = await opened("a = 1\nb = a + 1\nc = b + 1");
    session.open(notebookOf("c = 3\nb = c + 1"));
    await session.settled();
    expect(["1", "2", "3"].map(valueAt)).toEqual([3, 4, undefined]);
  });

  test("are those of the last edit, where an edit comes while cells run", async () => {
    const { session, valueAt } = await opened("given a = 1\nb = a + 1\nc = a + b");
    for (let microtasks = 0; microtasks < 12; microtasks++) {
      session.edit(change("1", `${microtasks}`));
      session.edit(change("2", microtasks % 2 ? "a +" : "a + 1"));
      for (let step = 0; step < microtasks; step++) await Promise.resolve();
      session.edit(change("1", `${100 + microtasks}`));
      session.edit(change("2", "a + 1"));
      await session.settled();
      expect(["2", "3"].map(valueAt)).toEqual([101 + microtasks, 201 + 2 * microtasks]);
    }
  });

  test("are those of the last edit, where a cell is taken out and put back while cells run", async () => {
    const { session, valueAt } = await opened("a = 1\nb = a + 1\nc = a + b");
    for (let microtasks = 0; microtasks < 12; microtasks++) {
      session.edit(change("1", `${microtasks}`));
      for (let step = 0; step < microtasks; step++) await Promise.resolve();
      session.edit((notebook) => removeCell(notebook, "1"));
      session.edit((notebook) => insertCell(notebook, 0, derived("1", "a", `${100 + microtasks}`)));
      await session.settled();
      expect(["2", "3"].map(valueAt)).toEqual([101 + microtasks, 201 + 2 * microtasks]);
    }
  });
});

describe("settled", () => {
  afterEach(() => void vi.useRealTimers());

  test("needs no frame and no timer", async () => {
    vi.useFakeTimers();
    const { session, valueAt } = await opened("given a = 1\nb = a + 1");
    session.edit(change("1", "2"));
    await session.settled();
    expect(valueAt("2")).toBe(3);
    expect(vi.getTimerCount()).toBe(0);
  });

  test("is at once where nothing is under way, and for an empty notebook", async () => {
    const { session } = await opened("a = 1");
    await session.settled();
    session.edit((notebook) => removeCell(notebook, "1"));
    await session.settled();
    await new Session(countedFunctions().table).settled();
  });

  test("does not come before the results of an edit made just now", async () => {
    const { session, valueAt } = await opened("given a = 1\nb = a + 1");
    const first = session.settled();
    session.edit(change("1", "5"));
    const second = session.settled();
    await first;
    await second;
    expect(valueAt("2")).toBe(6);
  });

  test("comes to all who wait", async () => {
    const { session } = await opened("given a = 1\nb = a + 1");
    session.edit(change("1", "5"));
    await Promise.all([session.settled(), session.settled(), session.settled()]);
  });
});

describe("listeners", () => {
  test("hear of each new result of their cell, and of no other", async () => {
    const { session } = await opened("given a = 1\nb = a + 1\nc = round(a, 10)");
    const heard: unknown[] = [];
    const stop = session.onResult("2", (result) => heard.push(result?.ok && result.value));
    session.onResult("3", () => heard.push("c"));
    session.edit(change("1", "2"));
    await session.settled();
    session.edit(change("1", "3"));
    await session.settled();
    expect(heard).toEqual([3, 4]);
    stop();
    session.edit(change("1", "4"));
    await session.settled();
    expect(heard).toEqual([3, 4]);
  });

  test("hear of a cell that comes later, and of one that comes back", async () => {
    const { session } = await opened("a = 1");
    const heard: unknown[] = [];
    session.onResult("9", (result) => heard.push(result?.ok && result?.value));
    session.edit((notebook) => insertCell(notebook, 1, derived("9", "b", "a + 1")));
    await session.settled();
    session.edit((notebook) => removeCell(notebook, "9"));
    await session.settled();
    session.edit((notebook) => insertCell(notebook, 1, derived("9", "b", "a + 1")));
    await session.settled();
    expect(heard).toEqual([2, 2]);
  });

  test("hear the notebook first, then results, then that all are there, once a wave", async () => {
    const { session } = await opened("given a = 1\nb = a + 1\nc = b + 1");
    const heard: string[] = [];
    session.onNotebook(() => heard.push(`notebook ${(session.notebook.cells[0] as { formula: string }).formula}`));
    for (const id of ["1", "2", "3"])
      session.onResult(id, (result) => heard.push(`${id}: ${result?.ok && result?.value}`));
    const stop = session.onSettled(() => heard.push("settled"));
    session.edit(change("1", "2"));
    await session.settled();
    expect(heard[0]).toBe("notebook 2");
    expect(heard.slice(1, -1).sort()).toEqual(["1: 2", "2: 3", "3: 4"]);
    expect(heard.at(-1)).toBe("settled");
    expect(heard.filter((each) => each === "settled")).toHaveLength(1);
    stop();
    session.edit(change("1", "3"));
    await session.settled();
    expect(heard.filter((each) => each === "settled")).toHaveLength(1);
  });

  test("hear nothing of an edit that changes nothing", async () => {
    const { session } = await opened("given a = 1");
    let heard = 0;
    session.onNotebook(() => heard++);
    session.onSettled(() => heard++);
    session.edit((notebook) => notebook);
    session.edit(change("1", "1"));
    await session.settled();
    expect(heard).toBe(0);
  });

  test("may edit in their turn, and those who wait go on waiting", async () => {
    const { session, valueAt } = await opened("given a = 1\nb = a + 1");
    const stop = session.onSettled(() => {
      if (valueAt("2") !== 6) session.edit(change("1", "5"));
      else stop();
    });
    session.edit(change("1", "2"));
    await session.settled();
    expect(valueAt("2")).toBe(6);
  });

  test("may end themselves and others while they are told", async () => {
    const { session } = await opened("given a = 1");
    const heard: string[] = [];
    const stops = ["x", "y", "z"].map((name) =>
      session.onResult("1", () => {
        heard.push(name);
        for (const stop of stops) stop();
      }),
    );
    session.edit(change("1", "2"));
    await session.settled();
    session.edit(change("1", "3"));
    await session.settled();
    expect(heard).toEqual(["x"]);
  });
});

describe("a listener that throws", () => {
  test("is reported, and holds up neither the other cells nor those who wait", async () => {
    const others = process.listeners("unhandledRejection");
    process.removeAllListeners("unhandledRejection");
    const reported: unknown[] = [];
    process.on("unhandledRejection", (error) => reported.push(error));
    try {
      const { session, valueAt } = await opened("given a = 1\nb = a + 1\nc = a + b");
      const fault = new Error("a fault of the view");
      session.onResult("1", () => {
        throw fault;
      });
      session.edit(change("1", "5"));
      await session.settled();
      expect(["1", "2", "3"].map(valueAt)).toEqual([5, 6, 11]);
      await new Promise((resolve) => setImmediate(resolve));
      expect(reported).toEqual([fault]);
    } finally {
      process.removeAllListeners("unhandledRejection");
      for (const listener of others) process.on("unhandledRejection", listener);
    }
  });
});

describe("a disposed session", () => {
  test("tells nobody any more, and lets go of those who wait", async () => {
    const { session } = await opened("given a = 1\nb = a + 1");
    let heard = 0;
    session.onResult("2", () => heard++);
    session.onSettled(() => heard++);
    session.edit(change("1", "2"));
    const waiting = session.settled();
    session.dispose();
    await waiting;
    await session.settled();
    for (let step = 0; step < 50; step++) await Promise.resolve();
    expect(heard).toBe(0);
  });
});
