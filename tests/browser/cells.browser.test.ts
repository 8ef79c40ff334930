import type { Page } from "playwright-core";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const focused = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.ariaLabel ?? document.activeElement?.textContent?.trim());

/** Names of the groups on the page, in order. */
const order = (page: Page): Promise<string[]> =>
  page.locator("spanwise-page .cell").evaluateAll((all) => all.map((each) => each.ariaLabel ?? ""));

async function choose(page: Page, name: string, item: string): Promise<void> {
  await cell(page, name).hover();
  await page.getByRole("button", { name: `more for ${name}`, exact: true }).click();
  await page.getByRole("menuitem", { name: item }).click();
}

test("by keyboard alone: a given is put in, named, given a value, moved, duplicated and deleted", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  await page.getByRole("button", { name: "edit formula of half" }).focus();
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => focused(page)).toMatch(/^Given/);
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("name of new_value");
  await page.keyboard.type("wing_load");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("rename wing_load");
  expect((await order(page)).slice(2, 4)).toEqual(["half", "wing_load"]);
  expect(await value(page, "wing_load")).toBe("1 mm");

  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(async () => (await order(page)).slice(2, 4)).toEqual(["wing_load", "half"]);
  expect(await focused(page)).toBe("rename wing_load");
  await page.keyboard.press("Alt+ArrowDown");
  await expect.poll(async () => (await order(page)).slice(2, 4)).toEqual(["half", "wing_load"]);
  expect(await focused(page)).toBe("rename wing_load");

  await page.getByRole("button", { name: "more for wing_load", exact: true }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.type("dd");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("name of wing_load_2");
  await page.keyboard.press("Escape");
  expect((await order(page)).slice(2, 5)).toEqual(["half", "wing_load", "wing_load_2"]);

  await page.getByRole("button", { name: "more for wing_load_2", exact: true }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await expect.poll(async () => (await order(page)).slice(2, 5)).toEqual(["half", "wing_load", "panels"]);
  expect(await focused(page)).toBe("edit panels row 1 part");
  expect(await page.getByRole("status").allTextContents()).toContainEqual(
    expect.stringContaining("Deleted wing_load_2"),
  );
  await page.keyboard.press("Control+z");
  await expect.poll(async () => (await order(page)).slice(3, 5)).toEqual(["wing_load", "wing_load_2"]);
});

test("a cell of every kind is put in by the mouse, without an error, and its details can be entered", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const count = (await order(page)).length;
  const kinds = ["Given", "Derived", "Table", "Note", "Check", "Decision", "Drawing", "Chart", "Question"];
  for (const [index, kind] of kinds.entries()) {
    await cell(page, "loss").hover();
    await page.getByRole("button", { name: "insert a cell after loss", exact: true }).click();
    await page.getByRole("menuitem", { name: kind }).click();
    await expect.poll(async () => (await order(page)).length).toBe(count + index + 1);
    await expect.poll(() => page.evaluate(() => document.activeElement?.matches("input, textarea, select"))).toBe(true);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("BUTTON");
  }
  await expect.poll(() => page.locator(".fault, .waits").allTextContents()).toEqual([]);
  expect(await hindrances(page)).toEqual([]);
});

test("a name is changed in the margin, and formulas and prose follow; what is refused says why at its place", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "rename half", exact: true }).click();
  const name = page.getByRole("textbox", { name: "name of half" });
  await name.fill("eda");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "half").locator(".fault").textContent()).toContain("named eda already");
  expect(await name.getAttribute("aria-invalid")).toBe("true");
  expect(await hindrances(page)).toEqual([]);
  await name.fill("half_span");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "twice").locator("code").textContent()).toBe("2 * half_span");
  expect(await value(page, "twice")).toBe("400 mm");
  await page.getByRole("button", { name: "rename eda", exact: true }).click();
  await page.getByRole("textbox", { name: "name of eda" }).fill("worth");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "enough_dihedral").locator("code").textContent()).toBe("worth > 8 deg");
  await expect.poll(() => cell(page, "note").textContent()).toMatch(/The V would be [\d.]+ deg/);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => cell(page, "twice").locator("code").textContent()).toBe("2 * half");
  await page.getByRole("button", { name: /^Redo/ }).click();
  await expect.poll(() => cell(page, "twice").locator("code").textContent()).toBe("2 * half_span");
});

test("unit, range, what a drawing shows and what a decision says are changed on screen", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  await choose(page, "half", "Details");
  const details = page.getByRole("group", { name: "details of half" });
  await details.getByLabel("unit").fill("cm");
  await expect.poll(() => value(page, "half")).toBe("20 cm");
  await details.getByLabel("highest").fill("300 mm");
  await page.keyboard.press("Escape");
  await expect.poll(() => focused(page)).toBe("more for half");
  const slider = page.getByRole("slider", { name: "slide half", exact: true });
  await expect.poll(() => slider.getAttribute("max")).toBe("30");

  await choose(page, "decision", "Details");
  const decision = page.getByRole("group", { name: "details of decision" });
  await decision.getByLabel("chosen").fill("three panels");
  await decision.getByLabel("instead of").nth(1).fill("an elliptic wing");
  await decision.getByRole("button", { name: "Done" }).click();
  await expect.poll(() => cell(page, "decision").textContent()).toContain("three panels");
  expect(await cell(page, "decision").textContent()).toContain("an elliptic wing");

  await choose(page, "drawing of main_wing", "Details");
  const drawing = page.getByRole("group", { name: "details of drawing of main_wing" });
  await drawing.getByLabel("title").fill("From ahead");
  await expect.poll(() => page.locator("#board h2").allTextContents()).toContain("From ahead");
});

test("the last cell deleted leaves a place to begin again, with the focus on it", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, {
    title: "One",
    cells: [{ id: "a1", kind: "given", name: "one", formula: "1" }],
    trials: [],
  });
  await choose(page, "one", "Delete");
  await expect.poll(() => focused(page)).toBe("Add a cell");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("name of new_value");
});

test("on a touch screen the menu of a cell is reached by a tap, and nothing hinders", async ({ open }) => {
  const { page } = await open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  await page.getByRole("button", { name: "more for half", exact: true }).tap();
  await page.getByRole("menuitem", { name: "Insert below" }).tap();
  await expect.poll(() => page.getByRole("menu", { name: "insert a cell" }).count()).toBe(1);
  expect(await hindrances(page)).toEqual([]);
  await page.getByRole("menuitem", { name: "Note" }).tap();
  await expect.poll(() => focused(page)).toBe("text of note");
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
