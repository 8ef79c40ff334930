import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { type Cell, readNotebook } from "../../src/cells/index.ts";
import { root } from "../../src/tools/place.js";
import { hindrances } from "./hindrances.ts";
import { cell, enterFormula, openNotebook, setFormula, trainer, value } from "./notebooks.ts";
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
  const prose = async () => (await cell(page, "note").first().textContent())?.replace(/\s+/g, " ");
  expect(await prose()).toMatch(/The V would be [\d.]+ deg \(\+[\d.]+ deg, \+[\d.]+%\), the tips stand [\d.]+ mm \(\+/);
  await strip(page, "baseline").click();
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  expect(await value(page, "half")).toBe("200 mm");
  expect(await cell(page, "eda").locator(".change").count()).toBe(0);
  expect(await prose()).not.toContain("(+");
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

const compared = (page: Page): Promise<string[][]> =>
  page
    .locator(".compared tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.querySelectorAll("th code, td")].map((each) => (each.textContent ?? "").replace(/\s+/g, " ").trim()),
      ),
    );

test("three trials are made and compared, and one is taken over with its reason; one step takes all back", async ({
  open,
}) => {
  const { page } = await open({
    viewport: { width: 1440, height: 900 },
    permissions: ["clipboard-read", "clipboard-write"],
  });
  await openNotebook(page, trainer);
  await makeTrial(page, "steep");
  await setFormula(page, "tip_break", "14 deg");
  await strip(page, "baseline").click();
  await makeTrial(page, "flat");
  await setFormula(page, "tip_break", "1 deg");
  await strip(page, "baseline").click();
  await makeTrial(page, "long");
  await setFormula(page, "half", "240 mm");
  await page.getByRole("button", { name: "Compare" }).click();
  const heads = page.locator(".compared thead th");
  await expect
    .poll(() => heads.allTextContents().then((all) => all.map((each) => each.replace(/\s+/g, " ").trim())))
    .toEqual([
      "baseline 1 of 1 check holds",
      "steep 1 of 1 check holds",
      "flat 0 of 1 check holds",
      "long on 1 of 1 check holds",
    ]);
  await expect.poll(async () => (await compared(page)).flat()).not.toContain("computing …");
  const rows = await compared(page);
  expect(rows.map(([label]) => label)).toEqual(["tip_break", "half", "eda", "enough_dihedral"]);
  expect(rows[0]).toEqual(["tip_break", "9 deg", "14 deg +5 deg, +56%", "1 deg −8 deg, −89%", "9 deg as the baseline"]);
  expect(rows[2]?.[2]).toMatch(/^[\d.]+ deg best \+[\d.]+ deg, \+\d+%$/);
  expect(rows[3]?.[3]).toMatch(/^✕\s?fails by [\d.]+ deg$/);
  expect(await hindrances(page)).toEqual([]);
  // Another row, and none that is not wanted.
  await page.getByRole("combobox", { name: "add a row" }).selectOption("loss");
  await page.getByRole("button", { name: "leave out half" }).click();
  await expect
    .poll(async () => (await compared(page)).map(([label]) => label))
    .toEqual(["tip_break", "eda", "loss", "enough_dihedral"]);
  await page.getByRole("button", { name: "Copy as text" }).click();
  await expect.poll(() => page.locator(".notice").textContent()).toContain("is copied");
  const text = await page.evaluate(() => navigator.clipboard.readText());
  const lines = text.split("\n").map((line) => line.split("\t"));
  expect(lines[0]).toEqual(["", "unit", "baseline", "steep", "flat", "long"]);
  expect(lines[1]).toEqual(["tip_break", "deg", "9", "14", "1", "9"]);
  expect(lines[4]?.[4]).toMatch(/^fails by [\d.]+ deg$/);
  // Taken over.
  await page.locator(".compared").getByRole("button", { name: "steep", exact: true }).click();
  await expect.poll(() => isOn(page, "steep")).toBe(true);
  const steep = await value(page, "eda");
  await page.getByRole("button", { name: "more for the trial steep" }).click();
  await page.getByRole("menuitem", { name: /^Take over/ }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: "Take it over" }).click();
  expect(await dialog.count()).toBe(1);
  await dialog.getByLabel("why", { exact: true }).fill("rights itself sooner");
  expect(await hindrances(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Take it over" }).click();
  await expect.poll(() => isOn(page, "baseline")).toBe(true);
  expect(await value(page, "eda")).toBe(steep);
  await expect.poll(() => cell(page, "eda").locator(".change").count()).toBe(0);
  const decision = page.getByRole("group", { name: "decision" }).first();
  expect(await decision.textContent()).toContain("rights itself sooner");
  expect(await decision.textContent()).toContain("as it was: tip_break 9 deg");
  expect(await page.locator(".strips .strip").allTextContents()).toEqual(["baseline", "flat", "long"]);
  await page.getByRole("button", { name: "Undo: take over the trial steep" }).click();
  await expect.poll(() => isOn(page, "steep")).toBe(true);
  expect(await page.getByRole("group", { name: "decision" }).count()).toBe(1);
  await strip(page, "baseline").click();
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  expect(await cell(page, "tip_break").locator(".change").count()).toBe(0);
});

test("slow values of trials that are not on come one by one, and nothing that is typed waits for them", async ({
  open,
}) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  const demo = readNotebook(readFileSync(join(root, "notebooks", "plover.json"), "utf8"));
  const slow: Cell[] = [
    { id: "s1", kind: "derived", name: "fall", formula: "recovery(plover, bank: 30 deg, seconds: 60 s)" },
    { id: "s2", kind: "derived", name: "lost", formula: "fall.height_lost" },
    { id: "s3", kind: "check", name: "low_loss", formula: "lost < 100 m" },
  ];
  const trials = [8, 12, 14].map((angle) => ({ name: `tips of ${angle}`, set: { tip_break: `${angle} deg` } }));
  await openNotebook(page, { ...demo, title: "Flown", cells: [...demo.cells, ...slow], trials });
  await expect.poll(() => value(page, "lost"), { timeout: 25_000 }).toMatch(/^[\d.]+ m$/);
  await page.getByRole("button", { name: "Compare" }).click();
  const lost = async (): Promise<string[] | undefined> => (await compared(page)).find(([label]) => label === "lost");
  await expect.poll(async () => (await lost())?.[1]).toMatch(/^[\d.]+ m/);
  expect((await lost())?.slice(2)).toContain("computing …");
  // Of what is typed meanwhile each letter is there at once.
  const box = await enterFormula(page, "span");
  await box.fill("470 mm");
  await expect.poll(() => value(page, "span")).toBe("470 mm");
  await expect
    .poll(async () => (await lost())?.slice(1).every((each) => /^[\d.]+ m/.test(each) && !each.includes("computed")), {
      timeout: 60_000,
    })
    .toBe(true);
  expect(new Set(await lost()).size).toBe(5);
});

test("a difference smaller than what the givens may be off is told as none that could be seen", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  const cells = trainer.cells.map((each) =>
    each.kind === "given" && each.name === "tip_break" ? { ...each, plus_minus: "1 deg" } : each,
  );
  const trials = [
    { name: "a hair steeper", set: { tip_break: "9.1 deg" } },
    { name: "steep", set: { tip_break: "14 deg" } },
  ];
  await openNotebook(page, { ...trainer, cells, trials });
  await page.getByRole("button", { name: "Compare" }).click();
  const eda = async (): Promise<string[] | undefined> => (await compared(page)).find(([label]) => label === "eda");
  await expect.poll(async () => (await eda())?.[2], { timeout: 15_000 }).toContain("no difference you could see");
  await expect.poll(async () => (await eda())?.[3]).toMatch(/\+[\d.]+ deg/);
});

test("trials are drawn as thin lines under their names, checks tell which of them pass, and a drag moves on", async ({
  open,
}) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  const trials = [
    { name: "steep", set: { tip_break: "14 deg" } },
    { name: "flat", set: { tip_break: "1 deg" } },
    { name: "wide", set: { half: "240 mm" } },
  ];
  await openNotebook(page, { ...trainer, trials });
  expect(await cell(page, "enough_dihedral").locator(".passes").count()).toBe(0);
  await strip(page, "steep").click();
  await expect
    .poll(async () =>
      (await cell(page, "enough_dihedral").locator(".passes-one").allTextContents()).map((each) =>
        each.replace(/\s+/g, " ").trim(),
      ),
    )
    .toEqual(["✓ baseline holds,", "✕ flat fails,", "✓ wide holds,"]);
  for (const name of ["flat", "wide"])
    await page.getByRole("button", { name: `draw “${name}” as a thin line` }).click();
  const front = page.locator("#board svg.front-view");
  await expect.poll(() => front.locator(".ghost-layer path").count()).toBe(3);
  expect(await front.locator(".head").textContent()).toContain("wide");
  const chart = page.locator("#board svg", { has: page.locator(".present") });
  await expect.poll(() => chart.locator(".design-ring").count()).toBe(2);
  // What sets the swept given alone lies on the curve that is there; a wider wing has one of its own.
  await expect.poll(() => chart.locator("path.trial-1").count()).toBeGreaterThan(0);
  expect(await chart.locator("path.trial-2").count()).toBe(0);
  await expect.poll(() => chart.locator("desc").textContent()).toContain("Of wide ");
  expect(await hindrances(page)).toEqual([]);
  // A drag in the trial that is on: the lines of the others are left alone, as the widest of them gives the scale.
  const touched = await page
    .getByRole("slider", { name: "slide tip_break" })
    .evaluate(async (slider: HTMLInputElement) => {
      let count = 0;
      const dashed = [...document.querySelectorAll(".front-view .ghost-layer .ghost[class*=further]")];
      const seen = new MutationObserver((changes) => {
        count += changes.length;
      });
      for (const line of dashed) seen.observe(line, { attributes: true });
      for (let position = 13; position < 14; position += 0.5) {
        slider.value = String(position);
        slider.dispatchEvent(new Event("input", { bubbles: true }));
        await new Promise(requestAnimationFrame);
        await new Promise(requestAnimationFrame);
      }
      slider.dispatchEvent(new Event("change", { bubbles: true }));
      return count;
    });
  expect(touched).toBe(0);
  expect(await value(page, "tip_break")).toBe("13.5 deg");
  await strip(page, "baseline").click();
  await page.getByRole("button", { name: "draw “flat” as a thin line" }).click();
  await expect.poll(() => front.locator(".ghost-layer path").count()).toBe(1);
});
