import { expect, test } from "vitest";
import { type Notebook, Session } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import { pictureOf, takePicture } from "../../../src/views/keeping/small-picture.ts";

const panels = (tipBreak: string, id: string): Notebook["cells"] => [
  {
    id: `${id}1`,
    kind: "table",
    name: `panels_${id}`,
    columns: [
      { name: "length", unit: "mm" },
      { name: "root_chord", unit: "mm" },
      { name: "tip_chord", unit: "mm" },
      { name: "sweep", unit: "mm" },
      { name: "break", unit: "deg" },
      { name: "washout", unit: "deg" },
      { name: "thickness", unit: "mm" },
    ],
    rows: [
      ["120", "70", "66", "0", "0", "0", "3"],
      ["90", "66", "44", "8", tipBreak, "1", "2.5"],
    ],
  },
  { id: `${id}2`, kind: "derived", name: `wing_${id}`, formula: `wing(panels_${id})` },
];

async function pictureOfCells(cells: Notebook["cells"]) {
  const session = new Session(functions);
  session.open({ title: "", cells, trials: [] });
  await session.settled();
  return takePicture(session);
}

test("the picture is of the first wing that a front view shows, tip to tip in mm", async () => {
  const view = { id: "v", kind: "drawing", view: "front", of: "wing_b" } as const;
  const picture = await pictureOfCells([...panels("10", "a"), ...panels("30", "b"), view]);
  expect(picture?.length).toBe(4);
  // The lower corner of the left tip comes first: 120 mm flat, then 90 mm up at 30 deg.
  const xs = picture?.flatMap((panel) => [panel[0], panel[2]]) ?? [];
  const ys = picture?.flatMap((panel) => [panel[1], panel[3]]) ?? [];
  expect(Math.max(...xs.map(Number))).toBeCloseTo(120 + 90 * Math.cos(Math.PI / 6), 1);
  expect(Math.max(...ys.map(Number))).toBeCloseTo(45, 1);
});

test("without a front view it is of the first wing, and without a wing there is none", async () => {
  expect((await pictureOfCells(panels("10", "a")))?.length).toBe(4);
  expect(await pictureOfCells([{ id: "g", kind: "given", name: "g", formula: "2" }])).toBeNull();
});

test("a wing that a question hides is not given away", async () => {
  const question = { id: "q", kind: "question", about: "wing_a", prompt: "?", answer: null, because: "" } as const;
  expect(await pictureOfCells([...panels("10", "a"), question])).toBeNull();
  expect(await pictureOfCells([...panels("10", "a"), { ...question, answer: "bent" }])).not.toBeNull();
});

test("what stands in the storage and is no picture is none", () => {
  expect(pictureOf([[0, 0, 1, 0, 1, 1, 0, 1]])).toEqual([[0, 0, 1, 0, 1, 1, 0, 1]]);
  for (const wrong of [null, [], {}, "x", [[0, 1]], [[0, 0, 1, 0, 1, 1, 0, "1"]], [[0, 0, 1, 0, 1, 1, 0, Number.NaN]]])
    expect(pictureOf(wrong)).toBeNull();
});
