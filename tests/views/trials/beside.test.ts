import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { Crew, editCell, type Notebook, Session } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import { Beside } from "../../../src/views/trials/beside.ts";
import { FakePort, settle } from "../../cells/crew/fake-port.ts";
import { withSlow } from "../../cells/crew/slow-functions.ts";
import { cellsOf } from "../../cells/notebook-text.ts";

const notebook: Notebook = {
  title: "",
  cells: cellsOf("given a = 2.4\nb = round(a)\nc = b + a\nd = 2 * a"),
  trials: [
    { name: "more", set: { a: "7.9" } },
    { name: "none", set: { nothing: "1" } },
    { name: "less", set: { a: "-3.2" } },
  ],
};

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
});
afterEach(() => {
  vi.useRealTimers();
});

async function opened() {
  const table = withSlow(functions, ["round"]);
  const port = new FakePort(table);
  const crew = new Crew(port, table);
  const another = vi.fn((isQuick = false) => new Session(table, isQuick ? () => () => undefined : crew.compute));
  const session = another();
  session.open(notebook);
  await session.settled();
  await port.workAll();
  const beside = new Beside(session, another);
  const work = async (): Promise<void> => {
    for (let turn = 0; turn < 12; turn++) {
      await vi.advanceTimersByTimeAsync(200);
      await port.workAll();
    }
  };
  const told = () =>
    beside.columns.map(({ trial, error, result, isPending }) => {
      const value = (id: string) => {
        const known = result(id);
        return known?.ok ? known.value : undefined;
      };
      return [trial, error === null ? [value("3"), value("4")] : error, isPending("3")];
    });
  return { session, beside, work, told, another, port };
}

test("nothing is computed until somebody looks, and then all that can be made", async () => {
  const { beside, work, told, another } = await opened();
  await work();
  expect(another).toHaveBeenCalledTimes(1);
  expect(told()[1]).toEqual(["more", [undefined, undefined], true]);
  const heard = vi.fn();
  const stop = beside.watch(heard);
  await work();
  expect(told()).toEqual([
    [null, [4.4, 4.8], false],
    ["more", [15.9, 15.8], false],
    ["none", "Trial “” sets nothing: There is no cell named nothing.", false],
    ["less", [-6.2, -6.4], false],
  ]);
  expect(heard).toHaveBeenCalled();
  stop();
});

test("what is quick of all is there before what is slow of any, which is pending", async () => {
  const { beside, told } = await opened();
  beside.watch(() => undefined);
  for (let turn = 0; turn < 5; turn++) {
    await vi.advanceTimersByTimeAsync(200);
    await settle();
  }
  expect(told()[1]).toEqual(["more", [undefined, 15.8], true]);
  expect(told()[3]).toEqual(["less", [undefined, -6.4], true]);
});

test("a trial that is turned on and off keeps what the screen had, without computing it again", async () => {
  const { session, beside, work, told, another } = await opened();
  beside.watch(() => undefined);
  await work();
  session.turnOn(0);
  await work();
  const made = another.mock.calls.length;
  expect(told()[0]).toEqual([null, [4.4, 4.8], false]);
  session.edit((now) => editCell(now, "1", { formula: "8.9" }));
  await work();
  session.turnOn(null);
  await work();
  expect(told()[1]).toEqual(["more", [17.9, 17.8], false]);
  expect(another).toHaveBeenCalledTimes(made);
});

test("an edit of the notebook itself has all computed again; until then they are pending", async () => {
  const { session, beside, work, told } = await opened();
  beside.watch(() => undefined);
  await work();
  session.edit((now) => editCell(now, "4", { formula: "3 * a" }));
  await vi.advanceTimersByTimeAsync(0);
  expect(told()[3]).toEqual(["less", [-6.2, -6.4], true]);
  await work();
  expect(told()[3]?.[2]).toBe(false);
  const [, values] = told()[3] as [unknown, number[]];
  expect(values[1]).toBeCloseTo(-9.6, 12);
});
