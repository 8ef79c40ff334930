import { expect, test } from "vitest";
import { Crew, editCell, insertTrial, Session } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { Baseline } from "../../src/views/baseline.ts";
import { FakePort } from "../cells/crew/fake-port.ts";
import { withSlow } from "../cells/crew/slow-functions.ts";
import { cellsOf } from "../cells/notebook-text.ts";

/** A notebook whose `b`, `c` are slow, just opened; `tell` gives what the baseline has of its cells. */
async function opened() {
  const table = withSlow(functions, ["round"]);
  const port = new FakePort(table);
  const crew = new Crew(port, table);
  const session = new Session(table, crew.compute);
  const baseline = new Baseline(session, () => new Session(table, crew.compute));
  session.open({ title: "", cells: cellsOf("given a = 2.4\nb = round(a)\nc = b + a"), trials: [] });
  await session.settled();
  baseline.capture();
  const tell = () =>
    ["1", "2", "3"].map((id) => {
      const result = baseline.result(id);
      return result?.ok ? result.value : undefined;
    });
  return { port, session, baseline, tell };
}

test("results that are still computed are kept once they are there, and that is told", async () => {
  const { port, baseline, tell } = await opened();
  let heard = 0;
  baseline.onCapture(() => heard++);
  expect(tell()).toEqual([2.4, undefined, undefined]);
  await port.workAll();
  expect(tell()).toEqual([2.4, 2, 4.4]);
  expect(heard).toBeGreaterThan(0);
});

test("they are those of the notebook as it was opened, even where it is edited before they are there", async () => {
  const { port, session, tell } = await opened();
  session.edit((notebook) => editCell(notebook, "1", { formula: "7.9" }));
  await port.workAll();
  expect(session.result("2")).toMatchObject({ value: 8 });
  expect(tell()).toEqual([2.4, 2, 4.4]);
});

test("an edit after they are there changes nothing of them", async () => {
  const { port, session, tell } = await opened();
  await port.workAll();
  session.edit((notebook) => editCell(notebook, "1", { formula: "7.9" }));
  await port.workAll();
  expect(tell()).toEqual([2.4, 2, 4.4]);
});

test("while a trial is on they are those of the notebook's own, and afterwards those of before", async () => {
  const { port, session, tell } = await opened();
  await port.workAll();
  session.edit((notebook) =>
    insertTrial(editCell(notebook, "1", { formula: "7.9" }), { name: "x", set: { a: "1.4" } }),
  );
  await port.workAll();
  expect(tell()).toEqual([2.4, 2, 4.4]);
  session.turnOn(0);
  expect(tell()).toEqual([7.9, 8, 15.9]);
  await port.workAll();
  expect(tell()).toEqual([7.9, 8, 15.9]);
  session.turnOn(null);
  expect(tell()).toEqual([2.4, 2, 4.4]);
});

test("they follow an edit of the notebook's own while a trial is on, and a trial that is turned on by taking back", async () => {
  const { port, session, tell } = await opened();
  await port.workAll();
  session.edit((notebook) => insertTrial(notebook, { name: "x", set: { a: "1.4" } }));
  session.turnOn(0);
  session.edit((notebook) => editCell(notebook, "3", { formula: "b - a" }));
  await port.workAll();
  expect(tell()[2]).toBeCloseTo(-0.4, 12);
  session.turnOn(null);
  session.edit((notebook) => editCell(notebook, "1", { formula: "5.5" }));
  session.turnOn(0);
  await port.workAll();
  expect(tell()[0]).toBe(5.5);
});

test("made anew by a step they are those after it, and those before it where it is taken back", async () => {
  const { port, session, baseline, tell } = await opened();
  await port.workAll();
  session.edit((notebook) => editCell(notebook, "1", { formula: "7.9" }));
  await port.workAll();
  await baseline.renew();
  expect(tell()).toEqual([7.9, 8, 15.9]);
  session.undo();
  expect(tell()).toEqual([2.4, 2, 4.4]);
  session.redo();
  expect(tell()).toEqual([7.9, 8, 15.9]);
});

test("one that has ended has nothing computed any more: another notebook is opened while its results are on their way", async () => {
  const { port, session, baseline } = await opened();
  const other = { title: "Other", cells: cellsOf("given z = 5.2\ny = round(z)"), trials: [] };
  baseline.dispose();
  session.open(other);
  await port.workAll();
  expect(session.result("2")).toMatchObject({ value: 5 });
  const orders = port.lines.flatMap(({ sent }) => sent).filter((kind) => kind === "cell");
  // One of the first notebook, which had begun, and one of the other.
  expect(orders.length).toBeLessThanOrEqual(2);
});

test("one that ends while it computes what was edited away leaves that too", async () => {
  const { port, session, baseline, tell } = await opened();
  session.edit((notebook) => editCell(notebook, "1", { formula: "7.9" }));
  await session.settled();
  baseline.dispose();
  await port.workAll();
  expect(tell()).toEqual([2.4, undefined, undefined]);
});
