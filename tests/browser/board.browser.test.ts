import { cell, enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

test("a point of the chart that is clicked becomes the design", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const point = page.locator("#board").getByRole("button", { name: /^tip_break 4 deg/ });
  // The chart of the notebook before may still be going.
  await expect.poll(() => point.first().boundingBox()).not.toBeNull();
  const box = await point.first().boundingBox();
  if (!box) throw new Error("got no place of the point, expected one");
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect.poll(() => value(page, "tip_break")).toBe("4 deg");
  expect(await cell(page, "tip_break").locator("code").textContent()).toBe("4 deg");
});

test("a point of the chart is chosen by keyboard", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const points = page.locator("#board .choice");
  await points.first().waitFor();
  await page.locator('#board .choice[tabindex="0"]').focus();
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "tip_break")).toBe("20 deg");
});

test("an unknown view, and a front view of what is no wing, are told in a sentence in place of the figure", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, {
    ...trainer,
    cells: [
      ...trainer.cells,
      { id: "b1", kind: "drawing", view: "upside_down", of: "main_wing" },
      { id: "b2", kind: "drawing", view: "front", of: "half" },
      { id: "b3", kind: "chart", view: "trade_off", sweep: "tip_break" },
    ],
  });
  const board = page.getByRole("region", { name: "board" });
  await expect.poll(() => board.textContent()).toContain("no view named “upside_down”");
  await expect.poll(() => board.textContent()).toContain("A front view shows a wing; half is none.");
  await expect.poll(() => board.textContent()).toContain("A trade-off chart needs three names");
  expect(await board.locator("svg.drawing").count()).toBe(2);
});

test("a figure whose cell fails says what it waits for, and comes back", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const box = await enterFormula(page, "main_wing");
  await box.fill("wing(panels) +");
  await page.keyboard.press("Enter");
  const board = page.getByRole("region", { name: "board" });
  await expect.poll(() => board.textContent()).toContain("Waits for main_wing");
  const again = await enterFormula(page, "main_wing");
  await again.fill("wing(panels)");
  await page.keyboard.press("Enter");
  await expect.poll(() => board.textContent()).not.toContain("Waits for");
});

test("the line of a drawing on the page brings its sheet into view", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page
    .getByRole("group", { name: "chart of What righting costs" })
    .getByRole("button", { name: /show on the board/ })
    .click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("sheet-a11");
});

test("how many checks hold is told by number, sign and word", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const checks = page.locator(".checks");
  await expect.poll(() => checks.textContent()).toMatch(/✓\s+1 of 1 check holds/);
  expect(await value(page, "enough_dihedral")).toMatch(/^✓ holds .* to spare$/);
  const box = await enterFormula(page, "enough_dihedral");
  await box.fill("eda > 80 deg");
  await expect.poll(() => checks.textContent()).toMatch(/✕\s+0 of 1 check holds/);
  await expect.poll(() => value(page, "enough_dihedral")).toMatch(/^✕ ?fails by [\d.]+ deg$/);
  await expect.poll(() => cell(page, "enough_dihedral").textContent()).toContain("held before");
});

test("light and dark can be chosen and are remembered", async ({ open }) => {
  const { page } = await open({ colorScheme: "light" });
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const light = await paper();
  await page.getByRole("combobox", { name: "colours" }).selectOption("dark");
  const dark = await paper();
  expect(dark).not.toBe(light);
  await page.reload();
  await page.getByRole("combobox", { name: "colours" }).waitFor();
  expect(await paper()).toBe(dark);
});
