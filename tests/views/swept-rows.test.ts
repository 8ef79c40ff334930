import { expect, test } from "vitest";
import { editCell, type Notebook, Session } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { SweptRows } from "../../src/views/swept-rows.ts";

const notebook: Notebook = {
  title: "",
  trials: [],
  cells: [
    { id: "a1", kind: "given", name: "angle", formula: "9 deg", range: ["0 deg", "20 deg"] },
    { id: "a2", kind: "given", name: "arm", formula: "2 m" },
    { id: "a3", kind: "derived", name: "height", formula: "arm * sin(angle)" },
    { id: "a4", kind: "derived", name: "twice", formula: "2 * height" },
    { id: "a5", kind: "chart", view: "trade_off", sweep: "angle", x: "height", y: ["twice"] },
    { id: "a6", kind: "chart", view: "trade_off", sweep: "angle", x: "height", y: ["arm"] },
    { id: "a7", kind: "chart", view: "trade_off", sweep: "arm", x: "height", y: ["arm"] },
  ],
};

async function sweeping() {
  const session = new Session(functions);
  session.open(notebook);
  await session.settled();
  const swept = new SweptRows();
  const take = (chart = "a5") => {
    const given = session.program.byName.get("angle");
    if (!given) throw new Error("got no step of angle, expected one");
    return swept.take(session.program, (id) => session.result(id), given, [0, Math.PI / 6], chart);
  };
  const set = async (id: string, formula: string) => {
    session.edit((before) => editCell(before, id, { formula }));
    await session.settled();
  };
  return { take, set };
}

/** What is drawn upwards: after the swept given and what stands along the axis. */
const values = (rows: ReturnType<SweptRows["take"]>) =>
  rows.map((row) => {
    const part = row?.parts?.[2];
    return part?.ok ? part.value : null;
  });

test("the rows are those of whole designs", async () => {
  const { take } = await sweeping();
  const [first, second] = values(take());
  expect(first).toBe(0);
  expect(second).toBeCloseTo(2, 12);
});

test("while the swept given alone moves, nothing is computed again", async () => {
  const { take, set } = await sweeping();
  const before = take();
  await set("a1", "12 deg");
  expect(take().map((row, index) => row === before[index])).toEqual([true, true]);
});

test("another given, or another formula on the way, is followed", async () => {
  const { take, set } = await sweeping();
  take();
  await set("a2", "3 m");
  expect(values(take())[1]).toBeCloseTo(3, 12);
  await set("a4", "4 * height");
  expect(values(take())[1]).toBeCloseTo(6, 12);
});

test("charts of one given share its rows, each with its own results", async () => {
  const { take, set } = await sweeping();
  expect(values(take("a6"))).toEqual([2, 2]);
  expect(values(take("a5"))[1]).toBeCloseTo(2, 12);
  await set("a2", "5 m");
  expect(values(take("a6"))).toEqual([5, 5]);
  expect(values(take("a5"))[1]).toBeCloseTo(5, 12);
});
