import type { Cell } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, enterFormula, openNotebook, trainer } from "./notebooks.ts";
import { expect, test } from "./page.ts";

/** The trainer with a tail, drawn from above and from the side. */
const glider = {
  ...trainer,
  cells: [
    ...trainer.cells,
    {
      id: "g1",
      kind: "given",
      name: "tail_angle",
      formula: "1 deg",
      unit: "deg",
      range: ["-2 deg", "4 deg", "0.5 deg"],
    },
    {
      id: "g2",
      kind: "derived",
      name: "tail",
      formula: "tailplane(150 mm, 46 mm, 34 mm, 230 mm, 1.5 mm, sweep: 5 mm, incidence: tail_angle)",
    },
    { id: "g3", kind: "derived", name: "keel", formula: "fin(50 mm, 46 mm, 32 mm, 232 mm, 1.5 mm, sweep: 12 mm)" },
    { id: "g4", kind: "derived", name: "boom", formula: "fuselage_stick(-80 mm, 280 mm, 5 mm, 8 mm)" },
    {
      id: "g5",
      kind: "derived",
      name: "bird",
      formula: "glider(main_wing, tail, keel, boom, seat_height: 10 mm, seat_angle: 3 deg)",
    },
    { id: "g6", kind: "drawing", view: "plan", of: "bird" },
    { id: "g7", kind: "drawing", view: "side", of: "bird" },
    { id: "g8", kind: "drawing", view: "plan", of: "main_wing", title: "The wing from above" },
    { id: "g9", kind: "drawing", view: "front", of: "bird" },
    { id: "g10", kind: "drawing", view: "side", of: "half" },
  ] satisfies Cell[],
};

test("a glider is drawn from above, from the side and from the front, each an image with its name", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, glider);
  for (const name of ["Plan view of bird", "Side view of bird", "Plan view of main_wing", "Front view of bird"]) {
    await page.getByRole("img", { name }).waitFor();
  }
  const board = page.getByRole("region", { name: "board" });
  const heads = await board.getByRole("heading", { level: 2 }).allTextContents();
  expect(heads).toEqual(expect.arrayContaining(["Plan view", "Side view", "The wing from above", "Front view"]));
  expect(await board.textContent()).toContain("This view shows a glider or a wing; half is neither.");
  expect(await hindrances(page)).toEqual([]);
});

test("the side view follows an angle in place and keeps a thin line of how it was opened", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, glider);
  const drawing = page.getByRole("img", { name: "Side view of bird" });
  await expect.poll(() => drawing.textContent()).toContain("decalage 2°");
  const before = await drawing.elementHandle();
  const box = await enterFormula(page, "tail_angle");
  await box.fill("-1 deg");
  await page.keyboard.press("Enter");
  await expect.poll(() => drawing.textContent()).toContain("decalage 4°");
  expect(await drawing.locator(".ghost-layer .ghost").count()).toBeGreaterThan(0);
  // What is no picture follows once nothing moves.
  await expect.poll(() => drawing.locator("desc").textContent()).toContain("The thin line is the baseline");
  expect(await before?.evaluate((element) => element.isConnected)).toBe(true);
});

test("what a glider was made without is told at the cell that asks for it, and drawn by no view", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, glider);
  const box = await enterFormula(page, "bird");
  await box.fill("glider(main_wing)");
  await page.keyboard.press("Enter");
  const drawing = page.getByRole("img", { name: "Side view of bird" });
  await expect.poll(() => drawing.textContent()).not.toContain("decalage");
  const eda = await enterFormula(page, "twice");
  await eda.fill("bird.tail_arm");
  await expect.poll(() => cell(page, "twice").textContent()).toContain("There is no tail_arm here");
});
