import { hindrances } from "./hindrances.ts";
import { openNotebook, trainer } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const focusName = () => document.activeElement?.ariaLabel ?? "";

test("by keyboard alone a cell is found by its name as it is typed, and gone to", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.keyboard.press("Control+Shift+F");
  const field = page.getByRole("combobox", { name: "Find a cell" });
  await expect.poll(() => field.evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.type("eda");
  const options = page.getByRole("search").getByRole("option");
  await expect.poll(() => options.first().textContent()).toContain("eda");
  expect(await options.nth(1).textContent()).not.toMatch(/^\s*eda/);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowUp");
  expect(await field.getAttribute("aria-activedescendant")).toBe("found-0");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(focusName)).toBe("edit formula of eda");
  expect(await field.count()).toBe(0);
});

test("prose, kinds and values are found too, and how many is said", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "Find a cell" }).click();
  const field = page.getByRole("combobox", { name: "Find a cell" });
  const search = page.getByRole("search");
  const status = search.getByRole("status");
  await expect.poll(() => status.textContent()).toBe("13 cells");
  await field.fill("pull-up");
  await expect.poll(() => status.textContent()).toBe("1 cell");
  expect(await search.getByRole("option").textContent()).toMatch(
    /tip_break\s+given\s+rolls out before the pull-up ends/,
  );
  await field.fill("decision");
  await expect.poll(() => search.getByRole("option").first().textContent()).toContain("V or polyhedral?");
  await field.fill("400 mm");
  await expect.poll(() => search.getByRole("option").first().textContent()).toMatch(/twice\s+derived\s+400 mm/);
  await field.fill("nothing of the kind");
  await expect.poll(() => status.textContent()).toContain("Nothing found");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Escape");
  await expect.poll(() => page.evaluate(focusName)).toBe("Find a cell");
});

test("on a phone it is opened and used by touch, within the screen", async ({ open }) => {
  const { page } = await open({ viewport: { width: 360, height: 640 }, hasTouch: true, isMobile: true });
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "Find a cell" }).tap();
  const field = page.getByRole("combobox", { name: "Find a cell" });
  await field.fill("loss");
  const first = page.getByRole("search").getByRole("option").first();
  const box = await first.boundingBox();
  expect(box && box.x >= 0 && box.x + box.width <= 360 && box.height >= 24).toBe(true);
  await first.tap();
  await expect.poll(() => page.evaluate(focusName)).toBe("edit formula of loss");
});

test("leaving by Escape or Tab gives the focus back to where it was", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit formula of half" }).focus();
  for (const key of ["Escape", "Tab"]) {
    await page.keyboard.press("Control+Shift+F");
    await page.getByRole("combobox", { name: "Find a cell" }).waitFor();
    await page.keyboard.type("w");
    await page.keyboard.press(key);
    await expect.poll(() => page.evaluate(focusName)).toBe("edit formula of half");
  }
});

test("a value that a question hides is not found", async ({ open }) => {
  const { page } = await open();
  const cells = trainer.cells.map((cell) => (cell.kind === "question" ? { ...cell, answer: null } : cell));
  await openNotebook(page, { ...trainer, cells });
  await page.getByRole("group", { name: "question about eda" }).waitFor();
  await page.keyboard.press("Control+Shift+F");
  await page.getByRole("combobox", { name: "Find a cell" }).fill("eda derived");
  await expect
    .poll(() => page.getByRole("search").getByRole("option").first().textContent())
    .toContain("equivalent_dihedral");
  expect(await page.getByRole("search").getByRole("option").first().textContent()).not.toMatch(/\d deg/);
});
