import { hindrances } from "./hindrances.ts";
import { cell, figureText, openNotebook, trainer } from "./notebooks.ts";
import { expect, test } from "./page.ts";

test("by keyboard alone a decision is rewritten and given another alternative; each field is one step to undo", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const decision = cell(page, "decision");
  await decision.getByRole("button", { name: "edit decision" }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.localName)).toBe("textarea");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("three flat panels a side");
  // On to the empty place for another alternative, behind why, instead of and why not.
  for (let step = 0; step < 4; step++) await page.keyboard.press("Tab");
  await page.keyboard.type("a bent tip");
  await page.keyboard.press("Tab");
  await page.keyboard.type("one steep fold");
  await page.keyboard.press("Enter");
  await expect.poll(() => decision.locator(".decided").textContent()).toContain("three flat panels a side");
  expect(await decision.locator(".decided").textContent()).toContain("a bent tip: one steep fold");
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("edit decision");
  for (const told of ["a bent tip", "three flat panels a side"]) {
    expect(await decision.textContent()).toContain(told);
    await page.keyboard.press("Control+z");
    if (told === "a bent tip") await page.keyboard.press("Control+z");
    await expect.poll(() => decision.locator(".decided").textContent()).not.toContain(told);
  }
  expect(await page.locator("spanwise-bar").getByRole("button", { name: "Undo", exact: true }).count()).toBe(1);
});

test("a drawing is turned to a part of a glider by its path, when the field is left", async ({ open }) => {
  const { page } = await open();
  const bird = { id: "b1", kind: "derived", name: "bird", formula: "glider(main_wing)" } as const;
  await openNotebook(page, { ...trainer, cells: [...trainer.cells, bird] });
  await expect.poll(() => figureText(page, "Front view of main_wing")).toContain("Span");
  const line = cell(page, "drawing of main_wing");
  await line.hover();
  await line.getByRole("button", { name: "more for drawing of main_wing" }).click();
  await page.getByRole("menuitem", { name: "Details" }).click();
  const field = page.getByRole("combobox", { name: "what it shows" });
  await field.fill("bird.wing");
  await page.keyboard.press("Enter");
  await expect.poll(() => figureText(page, "Front view of bird.wing")).toContain("Span");
  expect(await hindrances(page)).toEqual([]);
});

test("a question is asked of something else, in other words", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await cell(page, "question about eda").getByRole("button", { name: "edit question" }).click();
  await page.getByRole("combobox", { name: "about" }).fill("main_wing.span");
  await page.keyboard.press("Tab");
  await page.getByRole("textbox", { name: "what is asked" }).fill("How wide is it?");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "question about main_wing.span").textContent()).toContain("How wide is it?");
});
