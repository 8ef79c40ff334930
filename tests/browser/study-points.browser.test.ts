/** Points of studies: chosen, taken over, made a trial. */
import type { Locator, Page } from "playwright-core";
import type { Notebook } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, setFormula, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const design: Notebook = {
  title: "Points",
  cells: [
    { id: "a1", kind: "given", name: "lean", formula: "4 deg", range: ["0 deg", "10 deg"] },
    { id: "a2", kind: "given", name: "reach", formula: "30 mm", range: ["20 mm", "40 mm"] },
    { id: "a3", kind: "derived", name: "rise", formula: "sin(lean) * reach", unit: "mm" },
    { id: "a4", kind: "check", name: "low", formula: "rise < 5 mm" },
    {
      id: "s1",
      kind: "study",
      name: "along",
      study: "sweep",
      inputs: [{ input: "lean", points: 6 }],
      results: ["rise"],
    },
    {
      ...{ id: "s2", kind: "study", name: "field", study: "map", results: ["rise"] },
      inputs: [
        { input: "lean", points: 6 },
        { input: "reach", points: 5 },
      ],
    },
  ],
  trials: [],
};

/** A point of a study's chart, by what it says, brought into view: what stands above grows while it is computed. */
async function pointOf(page: Page, name: string, says: RegExp): Promise<Locator> {
  const point = cell(page, name).getByRole("button", { name: says }).first();
  const seen = async (): Promise<boolean> => {
    await cell(page, name).scrollIntoViewIfNeeded();
    if ((await point.count()) === 0 || (await page.locator("progress").count()) > 0) return false;
    await point.scrollIntoViewIfNeeded();
    return true;
  };
  await expect.poll(seen, { timeout: 20_000 }).toBe(true);
  return point;
}

/** Chooses it by the keyboard. */
async function choose(page: Page, name: string, says: RegExp): Promise<void> {
  await (await pointOf(page, name, says)).focus();
  await page.keyboard.press("Enter");
}

test("a point of a sweep is taken over by one click, and taken back by another", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, design);
  await choose(page, "along", /lean 8 deg/);
  await cell(page, "along").getByRole("button", { name: "Take these values" }).click();
  expect(await value(page, "lean")).toBe("8 deg");
  await page.getByRole("button", { name: "Take it back" }).click();
  expect(await value(page, "lean")).toBe("4 deg");
});

test("a point of a map becomes a trial, which the map then marks; the notebook stays as it is", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, design);
  await choose(page, "field", /lean 8 deg.*reach 35 mm/);
  await cell(page, "field").getByRole("button", { name: "Make a trial of it" }).click();
  expect(await value(page, "lean")).toBe("4 deg");
  await page
    .getByRole("button", { name: /lean 8 deg, reach 35 mm/ })
    .first()
    .waitFor();
  await expect
    .poll(() => cell(page, "field").locator("svg text").allTextContents())
    .toContain("lean 8 deg, reach 35 mm");
});

test("a click into a map takes the place nearest to it, also in both values", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, design);
  const point = await pointOf(page, "field", /lean 2 deg.*reach 25 mm/);
  const box = await point.boundingBox();
  if (!box) throw new Error("got a point without a place, expected one on the screen");
  await page.mouse.click(box.x + box.width / 2 + 30, box.y + box.height / 2 - 25);
  await cell(page, "field").getByRole("button", { name: "Take these values" }).click();
  expect([await value(page, "lean"), await value(page, "reach")]).toEqual(["2 deg", "25 mm"]);
});

test("a study is put on the board, follows edits there, and is taken off again", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  await openNotebook(page, design);
  await cell(page, "along").getByRole("button", { name: "more for along" }).click();
  await page.getByRole("menuitem", { name: "Put on the board" }).click();
  const sheet = page.locator("#board spanwise-sheet");
  await expect.poll(() => sheet.locator("svg.sweep").count(), { timeout: 20_000 }).toBe(1);
  const words = () => sheet.locator("svg.sweep desc").textContent();
  const before = await words();
  await setFormula(page, "reach", "25 mm");
  await expect.poll(words, { timeout: 20_000 }).not.toBe(before);
  expect(await hindrances(page)).toEqual([]);
  await sheet
    .getByRole("button", { name: /^more for/ })
    .first()
    .click();
  expect(await page.getByRole("menuitem", { name: /^Copy or save/ }).count()).toBe(1);
  await page.getByRole("menuitem", { name: "Take off the board" }).click();
  await expect.poll(() => sheet.count()).toBe(0);
});
