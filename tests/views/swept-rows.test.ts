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
  ],
};

async function sweeping() {
  const session = new Session(functions);
  session.open(notebook);
  await session.settled();
  const swept = new SweptRows();
  const take = () => {
    const given = session.program.byName.get("angle");
    if (!given) throw new Error("got no step of angle, expected one");
    return swept.take(session.program, (id) => session.result(id), given, [0, Math.PI / 6], "a4");
  };
  const set = async (id: string, formula: string) => {
    session.edit((before) => editCell(before, id, { formula }));
    await session.settled();
  };
  return { take, set };
}

const values = (rows: readonly unknown[]) => rows.map((row) => (row as { value: number }).value);

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
  expect(take()).toBe(before);
});

test("another given, or another formula on the way, is followed", async () => {
  const { take, set } = await sweeping();
  take();
  await set("a2", "3 m");
  expect(values(take())[1]).toBeCloseTo(3, 12);
  await set("a4", "4 * height");
  expect(values(take())[1]).toBeCloseTo(6, 12);
});
