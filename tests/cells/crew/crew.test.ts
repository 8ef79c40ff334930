import { describe, expect, test } from "vitest";
import { Crew } from "../../../src/cells/crew/crew.ts";
import { editCell, removeCell, setEntry } from "../../../src/cells/notebook.ts";
import { Session } from "../../../src/cells/session.ts";
import { countedFunctions } from "../counted-functions.ts";
import { cellsOf } from "../notebook-text.ts";
import { FakePort, settle } from "./fake-port.ts";
import { withSlow } from "./slow-functions.ts";

type LoadHand = () => Promise<typeof import("../../../src/cells/crew/hand.ts")>;

/** A session over cells written short whose slow cells, those that call `tick`, are computed when the test says so. */
async function opened(text: string, { canOpen = true, loadHand = undefined as LoadHand | undefined } = {}) {
  const { table, ran } = countedFunctions();
  const functions = withSlow(table, ["tick"]);
  const port = new FakePort(functions);
  port.canOpen = canOpen;
  const crew = new Crew(port, functions, loadHand);
  const session = new Session(functions, crew.compute);
  session.open({ title: "", cells: cellsOf(text), trials: [] });
  await session.settled();
  const told = (id: string): unknown => {
    const result = session.result(id);
    const value = result?.ok ? result.value : result?.error.code;
    return session.isPending(id) ? { before: value } : value;
  };
  const edit = async (id: string, formula: string): Promise<void> => {
    session.edit((notebook) => editCell(notebook, id, { formula }));
    await session.settled();
  };
  return { session, crew, port, ran, told, edit, all: (...ids: string[]) => ids.map(told) };
}

const text = `given a = 1
given b = 10
slow = tick(a, "slow")
after = slow + a
aside = b + 1
note {after}`;

describe("a slow cell", () => {
  test("is not computed here, and has no value until the answer is there, nor has what depends on it", async () => {
    const { port, ran, all, session } = await opened(text);
    expect(ran()).toBe("");
    expect(all("1", "3", "4", "5", "6")).toEqual([1, { before: undefined }, { before: undefined }, 11, pending()]);
    expect(session.pendingCount).toBe(3);
    await port.work();
    expect(ran()).toBe("slow");
    expect(all("3", "4", "5")).toEqual([1, 2, 11]);
    expect(session.pendingCount).toBe(0);
  });

  test("on the screen is computed before those that were asked for behind it", async () => {
    const { port, crew, ran, session } = await opened(text);
    await port.workAll();
    ran();
    const behind = new Session(session.functions, crew.computeBehind);
    const cells = cellsOf('given c = 5\nfar = tick(c, "far")\nfarther = tick(c + 1, "farther")');
    behind.open({ title: "", cells, trials: [] });
    await behind.settled();
    session.edit((notebook) => editCell(notebook, "1", { formula: "3" }));
    await session.settled();
    const order: string[] = [];
    for (let step = 0; step < 3; step++) {
      await port.work();
      order.push(ran());
    }
    // What has begun is not broken off.
    expect(order[1]).toBe("slow");
    expect([...order].sort()).toEqual(["far", "farther", "slow"]);
    expect(behind.pendingCount).toBe(0);
  });

  test("keeps its old value while it is computed anew, as does what depends on it, whatever else that takes", async () => {
    const { port, all, edit } = await opened(text);
    await port.workAll();
    await edit("1", "2");
    expect(all("1", "3", "4", "5")).toEqual([2, { before: 1 }, { before: 2 }, 11]);
    await port.workAll();
    expect(all("3", "4")).toEqual([2, 4]);
  });

  test("is left alone by an edit that it does not depend on", async () => {
    const { port, all, edit, session } = await opened(text);
    await port.workAll();
    await edit("2", "20");
    expect(all("3", "4", "5")).toEqual([1, 2, 21]);
    expect(await port.work()).toBe(false);
    expect(session.pendingCount).toBe(0);
  });

  test("tells its listeners that it waits, and that it no longer does", async () => {
    const { port, edit, session } = await opened(text);
    await port.workAll();
    const heard: unknown[] = [];
    session.onResult("4", (result) => heard.push([result?.ok && result.value, session.isPending("4")]));
    await edit("1", "5");
    await port.workAll();
    expect(heard).toEqual([
      [2, true],
      [10, false],
    ]);
  });

  test("is computed for the newest notebook only: what was asked for in between is left out", async () => {
    const { port, all, edit, ran } = await opened(text);
    await port.workAll();
    ran();
    for (const value of ["2", "3", "4", "5"]) await edit("1", value);
    await port.work();
    // It had been begun for the first of them, and says nothing any more.
    expect(all("3", "4")).toEqual([{ before: 1 }, { before: 2 }]);
    await port.workAll();
    expect(ran()).toBe("slow slow");
    expect(all("3", "4")).toEqual([5, 10]);
  });

  test("is begun four times a second at most while edits call it off, and soon once none does", async () => {
    const { port, all, edit, ran } = await opened(text);
    await port.workAll();
    ran();
    // Two seconds of a drag; what is begun takes longer than the time between two edits.
    for (let step = 1; step <= 120; step++) {
      await edit("1", String(step));
      if (step % 3 === 0) while (await port.work());
      port.pass(16);
    }
    const begun = ran().split(" ").length;
    expect(begun).toBeGreaterThan(4);
    expect(begun).toBeLessThanOrEqual(9);
    port.pass(80);
    while (await port.work());
    expect(all("3", "4")).toEqual([120, 240]);
  });

  test("has an answer that an edit of something else does not spoil", async () => {
    const { port, all, edit } = await opened(text);
    await edit("2", "30");
    await port.workAll();
    expect(all("3", "4", "5")).toEqual([1, 2, 31]);
  });

  test("that fails has an ordinary error, and those that depend on it wait for it", async () => {
    const { port, all, edit } = await opened(text.replace("tick(a,", "tick(1 / a,"));
    await port.workAll();
    await edit("1", "0");
    await port.workAll();
    expect(all("3", "4")).toEqual(["not_finite", "waits"]);
    await edit("1", "0.5");
    await port.workAll();
    expect(all("3", "4")).toEqual([2, 2.5]);
  });

  test("waits at once for an input that failed, without being asked for", async () => {
    const { port, all, edit } = await opened(text);
    await port.workAll();
    await edit("1", "1 / 0");
    expect(all("3", "4")).toEqual(["waits", "waits"]);
    expect(await port.work()).toBe(false);
  });

  test("behind another is asked for once that one is there; what they share is computed once", async () => {
    const { port, all, ran, edit } = await opened('given a = 1\nb = tick(a, "b")\nc = b + 1\nd = tick(c, "d")');
    expect(all("2", "3", "4")).toEqual([pending(), pending(), pending()]);
    await port.work();
    expect(all("2", "3", "4")).toEqual([1, 2, pending()]);
    await port.work();
    expect(all("4")).toEqual([2]);
    expect(ran()).toBe("b d");
    await edit("3", "b + 2");
    await port.workAll();
    expect(all("4")).toEqual([3]);
    expect(ran()).toBe("d");
  });

  test("by way of a function cell, in a table and in a check is slow as well", async () => {
    const { port, all, ran } = await opened(
      'twice(x) = 2 * tick(x, "twice")\na = twice(4)\ntable t | x\n| tick(3, "t")\nb = sum(t.x)\ncheck c = tick(1, "c") > 0',
    );
    expect(ran()).toBe("");
    expect(all("2", "4", "5")).toEqual([pending(), pending(), pending()]);
    await port.workAll();
    expect(all("2", "4", "5")).toEqual([8, 3, true]);
  });

  test("can be deleted, and its inputs, while it is computed", async () => {
    const { port, all, session } = await opened(text);
    await settle();
    session.edit((notebook) => removeCell(notebook, "3"));
    await session.settled();
    await port.workAll();
    expect(session.pendingCount).toBe(0);
    expect(all("3", "4")).toEqual([undefined, "unknown_name"]);
    session.undo();
    await session.settled();
    await port.workAll();
    expect(all("3", "4")).toEqual([1, 2]);
  });

  test("of one notebook is never taken for that of another with the same id", async () => {
    const { port, told, session } = await opened(text);
    await port.workAll();
    session.open({ title: "", cells: cellsOf('a = 7\nb = 8\nc = tick(a, "c")'), trials: [] });
    await session.settled();
    expect(told("3")).toEqual(pending());
    await port.workAll();
    expect(told("3")).toBe(7);
    expect(session.result("4")).toBeUndefined();
  });

  test("of a notebook that is opened again is computed again", async () => {
    const { port, told, session } = await opened(text);
    session.open(session.notebook);
    await session.settled();
    await port.workAll();
    expect(told("4")).toBe(2);
  });

  test("follows a table entry", async () => {
    const { port, told, session } = await opened('table t | x\n| 1\n| 2\na = tick(sum(t.x), "a")');
    await port.workAll();
    session.edit((notebook) => setEntry(notebook, "1", 1, 0, "5"));
    await session.settled();
    await port.workAll();
    expect(told("2")).toBe(6);
  });
});

describe("the hand", () => {
  test("is told only of the cells that say something else", async () => {
    const { port, edit } = await opened(text);
    await port.workAll();
    await edit("1", "2");
    await settle();
    const [order] = port.lines[0]?.messages ?? [];
    expect(order).toMatchObject({ change: { changed: [[0, { id: "1", formula: "2" }]] } });
  });

  test("that goes on for long with what nobody wants any more is replaced", async () => {
    const { port, all, edit } = await opened(text);
    await settle();
    await edit("1", "2");
    port.pass(900);
    expect(port.lines.map(({ isOpen }) => isOpen)).toEqual([true]);
    port.pass(200);
    await settle();
    expect(port.lines.map(({ isOpen }) => isOpen)).toEqual([false, true]);
    await port.workAll();
    expect(all("3", "4")).toEqual([2, 4]);
  });

  test("that cannot be had is done without: cells are computed here, between frames", async () => {
    const { port, all, ran, edit } = await opened(text, { canOpen: false });
    await settle();
    expect(ran()).toBe("");
    expect(all("3", "4")).toEqual([pending(), pending()]);
    port.pass(100);
    await settle();
    expect(all("3", "4")).toEqual([1, 2]);
    await edit("1", "3");
    await settle();
    port.pass(100);
    await settle();
    expect(all("3", "4")).toEqual([3, 6]);
  });

  test("that breaks in the middle is done without, too", async () => {
    const { port, all } = await opened(text);
    await settle();
    port.lines[0]?.broke();
    await settle();
    port.pass(100);
    await settle();
    expect(all("3", "4")).toEqual([1, 2]);
    expect(port.lines).toHaveLength(1);
  });

  test("that breaks while nothing can be loaded is asked for again, until there is one", async () => {
    let tries = 0;
    const loadHand: LoadHand = async () => {
      tries++;
      throw new Error("there is no connection");
    };
    const { port, all } = await opened(text, { loadHand });
    await settle();
    for (let time = 1; time < 3; time++) {
      port.lines.at(-1)?.broke();
      await settle();
      expect(tries).toBe(time);
      expect(all("3", "4")).toEqual([pending(), pending()]);
      port.pass(2000);
      await settle();
      expect(port.lines).toHaveLength(time + 1);
    }
    await port.workAll();
    expect(all("3", "4")).toEqual([1, 2]);
  });

  test("is not broken off where another could not be had: what is wanted comes after what nobody wants", async () => {
    const { port, all, edit } = await opened(text);
    await settle();
    port.isReplaceable = false;
    await edit("1", "2");
    port.pass(5000);
    await settle();
    expect(port.lines.map(({ isOpen }) => isOpen)).toEqual([true]);
    await port.workAll();
    expect(all("3", "4")).toEqual([2, 4]);
    expect(port.lines).toHaveLength(1);
  });

  test("of a session that has ended disturbs nobody", async () => {
    const { port, crew, session } = await opened(text);
    await settle();
    session.dispose();
    crew.dispose();
    await port.workAll();
    expect(port.lines[0]?.isOpen).toBe(false);
  });
});

const pending = (before?: unknown): object => ({ before });
