import type { Page } from "playwright-core";
import { inject } from "vitest";
import { openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

/** The trainer in a second tab, where it can only be read. */
async function reading(first: Page): Promise<Page> {
  await openNotebook(first, trainer);
  await expect.poll(() => first.locator(".kept").textContent()).toBe("kept");
  const page = await first.context().newPage();
  await page.goto(inject("appUrl"));
  await page.getByRole("button", { name: "Edit it here" }).waitFor();
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  return page;
}

const sheets = (page: Page) => page.locator("#board spanwise-sheet h2").allTextContents();
const said = async (page: Page) => (await page.locator(".notice").getByRole("status").textContent()) ?? "";

test("where it can only be read, the board stays in its order, and nothing is told that did not happen", async ({
  open,
}) => {
  const { page: first } = await open();
  const page = await reading(first);
  const before = await sheets(page);
  expect(before.length).toBe(2);
  const sheet = page.locator("#board spanwise-sheet").first();
  await sheet.focus();
  await page.keyboard.press("Alt+ArrowDown");
  await expect.poll(() => said(page)).toContain("It can only be read here");
  expect(await sheets(page)).toEqual(before);
  expect(await page.locator("#board .more:visible").count()).toBe(0);
  // Dragged by its head to below the other.
  const head = await sheet.locator("header").boundingBox();
  const other = await page.locator("#board spanwise-sheet").nth(1).boundingBox();
  if (!head || !other) throw new Error("got no boxes, expected two sheets on the screen");
  await page.mouse.move(head.x + head.width / 2, head.y + head.height / 2);
  await page.mouse.down();
  await page.mouse.move(head.x + head.width / 2, other.y + other.height - 10, { steps: 8 });
  await page.mouse.up();
  expect(await sheets(page)).toEqual(before);
  expect(await said(page)).not.toContain("place");
});

test("where it can only be read, finding a cell and asking why go on", async ({ open }) => {
  const { page: first } = await open();
  const page = await reading(first);
  await page.getByRole("button", { name: "why eda" }).click();
  await page.locator("spanwise-why").getByRole("heading", { level: 2 }).waitFor();
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+Shift+F");
  await page.keyboard.type("twice");
  await page.keyboard.press("Enter");
  expect(await said(page)).toBe("");
});

test("where it can only be read, neither typing nor the knob of a slider changes anything in either tab", async ({
  open,
}) => {
  const { page: first } = await open();
  const page = await reading(first);
  const slider = page.getByRole("slider", { name: "slide half" });
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  await page.getByRole("button", { name: "edit formula of tip_break" }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.type("7");
  await page.keyboard.press("Control+Z");
  expect(await page.getByRole("textbox", { name: "formula of tip_break" }).count()).toBe(0);
  await page.waitForTimeout(700);
  for (const each of [page, first]) {
    expect(await value(each, "half")).toBe("200 mm");
    expect(await value(each, "tip_break")).toBe("9 deg");
  }
});
