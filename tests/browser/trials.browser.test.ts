import type { Locator, Page } from "playwright-core";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, setFormula, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const strip = (page: Page, name: string): Locator => page.locator(".strips").getByRole("button", { name, exact: true });
const isOn = async (page: Page, name: string): Promise<boolean> =>
  (await strip(page, name).getAttribute("aria-pressed")) === "true";
const change = async (page: Page, name: string): Promise<string> =>
  ((await cell(page, name).locator(".change > [aria-hidden]").textContent()) ?? "").trim();

/** Makes a trial of what is on the screen under a name. */
async function makeTrial(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: "Trial", exact: true }).click();
  await page.getByRole("textbox", { name: /^name of the trial/ }).fill(name);
  await page.keyboard.press("Enter");
  await expect.poll(() => isOn(page, name)).toBe(true);
}

test("what was edited becomes a trial, the baseline is given back, and each turns on by click and by one key", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await setFormula(page, "tip_break", "12 deg");
  await setFormula(page, "half", "220 mm");
  const moved = await value(page, "eda");
  await makeTrial(page, "steep");
  expect(await value(page, "eda")).toBe(moved);
  expect(await change(page, "tip_break")).toBe("+3 deg, +33%");
  expect(await cell(page, "tip_break").locator(".trial-line").textContent()).toBe(
    "in “steep” only; the baseline has 9 deg",
  );
  await strip(page, "baseline").click();
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  expect(await value(page, "half")).toBe("200 mm");
  expect(await cell(page, "eda").locator(".change").count()).toBe(0);
  await page.keyboard.press("F8");
  await expect.poll(() => value(page, "eda")).toBe(moved);
  await page.keyboard.press("Shift+F8");
  await expect.poll(() => isOn(page, "baseline")).toBe(true);
  expect(await hindrances(page)).toEqual([]);
});

test("an edit in a trial changes it alone, in a table too, and undo brings it on again", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await makeTrial(page, "longer");
  await page.getByRole("button", { name: "edit panels row 2 length" }).click();
  await page.getByRole("textbox", { name: "panels row 2 length" }).fill("95");
  await page.keyboard.press("Enter");
  await expect
    .poll(() => cell(page, "panels").locator(".trial-line").textContent())
    .toBe("in “longer” only; the baseline has row 2 length 80");
  await strip(page, "baseline").click();
  await expect
    .poll(() => page.getByRole("button", { name: "edit panels row 2 length" }).getAttribute("aria-description"))
    .toBe("80");
  await page.getByRole("button", { name: "Undo: change panels[2].length in longer" }).click();
  await expect.poll(() => isOn(page, "longer")).toBe(true);
  expect(await cell(page, "panels").locator(".trial-line").count()).toBe(0);
});

test("what no trial can hold says that it changes the notebook itself", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await makeTrial(page, "any");
  await page.getByRole("button", { name: "edit formula of twice" }).click();
  await expect
    .poll(() => cell(page, "twice").locator(".trial-line").textContent())
    .toBe("This changes the notebook itself, under all trials.");
  await page.getByRole("textbox", { name: "formula of twice" }).fill("3 * half");
  await page.keyboard.press("Enter");
  await strip(page, "baseline").click();
  await expect.poll(() => value(page, "twice")).toBe("600 mm");
});

test("trials are renamed, duplicated, moved and deleted, and each can be taken back", async ({ open }) => {
  const { page } = await open();
  const bends = { id: "s1", kind: "study", name: "bends", study: "sweep", trials: ["one"] } as const;
  const study = { ...bends, inputs: [{ input: "tip_break" }], results: ["eda"] };
  const set = { tip_break: "6 deg" };
  await openNotebook(page, {
    ...trainer,
    cells: [...trainer.cells, study],
    trials: [
      { name: "one", set },
      { name: "two", set: {} },
    ],
  });
  const names = async (): Promise<string[]> =>
    (await page.locator(".strips .strip").allTextContents()).map((each) => each.trim());
  const choose = async (name: string, item: string): Promise<void> => {
    await page.getByRole("button", { name: `more for the trial ${name}` }).click();
    await page.getByRole("menuitem", { name: item, exact: true }).click();
  };
  await strip(page, "one").click();
  await choose("one", "Rename");
  const box = page.getByRole("textbox", { name: "name of the trial one" });
  await box.fill("two");
  await expect
    .poll(() => page.locator(".strip-fault").textContent())
    .toBe("Another trial is called “two”. Choose another name.");
  await box.fill("shallow");
  await page.keyboard.press("Enter");
  await expect.poll(names).toEqual(["baseline", "shallow", "two"]);
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent?.trim())).toBe("shallow");
  await choose("shallow", "Duplicate");
  await page.keyboard.press("Enter");
  await expect.poll(names).toEqual(["baseline", "shallow", "shallow (2)", "two"]);
  await choose("shallow (2)", "Move after");
  await expect.poll(names).toEqual(["baseline", "shallow", "two", "shallow (2)"]);
  await choose("shallow (2)", "Delete");
  await expect.poll(names).toEqual(["baseline", "shallow", "two"]);
  await expect.poll(() => isOn(page, "baseline")).toBe(true);
  await page.getByRole("button", { name: "Bring it back" }).click();
  await expect.poll(() => isOn(page, "shallow (2)")).toBe(true);
  for (let step = 0; step < 3; step++)
    await page.locator("spanwise-bar").getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(names).toEqual(["baseline", "one", "two"]);
});

test("on a phone the trials stand in a line of their own, the one that is on in view, and nothing is cut off", async ({
  open,
}) => {
  const { page } = await open({ viewport: { width: 390, height: 844 } });
  const trials = ["a first one", "a second one", "a third one", "a fourth one"].map((name) => ({ name, set: {} }));
  await openNotebook(page, { ...trainer, trials });
  await page.keyboard.press("Shift+F8");
  await expect.poll(() => isOn(page, "a fourth one")).toBe(true);
  const box = await strip(page, "a fourth one").boundingBox();
  expect(box && box.x >= 0 && box.x + box.width <= 390).toBe(true);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
});
