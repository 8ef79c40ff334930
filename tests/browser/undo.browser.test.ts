import { hindrances } from "./hindrances.ts";
import { cell, enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

test("the buttons say what they undo and do again, and that there is nothing", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const bar = page.locator("spanwise-bar");
  const undo = bar.getByRole("button", { name: /^Undo/ });
  const redo = bar.getByRole("button", { name: /^Redo/ });
  await expect.poll(() => undo.getAttribute("aria-label")).toBe("Undo");
  expect(await undo.getAttribute("aria-disabled")).toBe("true");
  const box = await enterFormula(page, "half");
  await box.fill("230 mm");
  await page.keyboard.press("Enter");
  await expect.poll(() => undo.getAttribute("aria-label")).toBe("Undo: change half");
  expect(await undo.getAttribute("aria-disabled")).toBe("false");
  expect(await redo.getAttribute("aria-disabled")).toBe("true");
  // By keyboard alone.
  await undo.focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "twice")).toBe("400 mm");
  await expect.poll(() => redo.getAttribute("aria-label")).toBe("Redo: change half");
  await redo.focus();
  await page.keyboard.press("Space");
  await expect.poll(() => value(page, "twice")).toBe("460 mm");
});

test("deleting a cell says so and offers to bring it back", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await cell(page, "twice").hover();
  await page.getByRole("button", { name: "more for twice" }).click();
  await page.getByRole("menuitem", { name: "Delete" }).click();
  await expect.poll(() => cell(page, "twice").count()).toBe(0);
  const notice = page.locator(".notice");
  expect(await notice.getByRole("status").textContent()).toBe("Deleted twice.");
  // While it has the focus or the pointer it stays, so that nobody has to hurry.
  await notice.getByRole("button", { name: "Bring it back" }).focus();
  expect(await hindrances(page)).toEqual([]);
  await notice.getByRole("button", { name: "Bring it back" }).click();
  await expect.poll(() => value(page, "twice")).toBe("400 mm");
  await expect.poll(() => page.evaluate(() => document.activeElement?.ariaLabel)).toBe("edit formula of twice");
  expect(await page.locator("spanwise-bar").getByRole("button", { name: "Redo: delete twice" }).count()).toBe(1);
});

test("what was done after a deletion stays when the cell is brought back", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await cell(page, "twice").hover();
  await page.getByRole("button", { name: "more for twice" }).click();
  await page.getByRole("menuitem", { name: "Delete" }).click();
  const box = await enterFormula(page, "half");
  await box.fill("210 mm");
  await page.keyboard.press("Enter");
  await page.locator(".notice").getByRole("button", { name: "Bring it back" }).click();
  await expect.poll(() => value(page, "twice")).toBe("420 mm");
});

test("what is undone is brought into view", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1200, height: 500 } });
  await openNotebook(page, trainer);
  const box = await enterFormula(page, "tip_break");
  await box.fill("4 deg");
  await page.keyboard.press("Enter");
  await page.locator("main").evaluate((main) => main.scrollTo({ top: main.scrollHeight, behavior: "instant" }));
  await page.locator("spanwise-bar").getByRole("button", { name: /^Undo/ }).click();
  const isSeen = () =>
    cell(page, "tip_break").evaluate((element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    });
  await expect.poll(isSeen).toBe(true);
});
