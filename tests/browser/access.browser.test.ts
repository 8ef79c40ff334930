import { hindrances } from "./hindrances.ts";
import { cell, enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const screens = {
  wide: { viewport: { width: 1440, height: 900 }, colorScheme: "light" },
  dark: { viewport: { width: 1440, height: 900 }, colorScheme: "dark" },
  phone: { viewport: { width: 390, height: 844 }, colorScheme: "light" },
} as const;

for (const [name, options] of Object.entries(screens)) {
  test(`nothing hinders on a ${name} screen: at rest, while entering, and with errors`, async ({ open }) => {
    const { page } = await open(options);
    await openNotebook(page, trainer);
    await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
    expect(await hindrances(page)).toEqual([]);
    const box = await enterFormula(page, "half");
    await box.fill("210 kg");
    await expect.poll(() => cell(page, "half").locator(".fault").count()).toBe(1);
    expect(await hindrances(page)).toEqual([]);
    await page.keyboard.press("Enter");
    await expect.poll(() => cell(page, "twice").locator(".waits").count()).toBe(1);
    expect(await hindrances(page)).toEqual([]);
  });
}

test("the demo opens without an error in any cell, and nothing hinders in it", async ({ open }) => {
  const { page } = await open();
  await page.getByRole("slider").first().waitFor();
  await expect.poll(() => page.locator(".fault, .waits").count()).toBe(0);
  expect(await page.locator("#board svg.drawing").count()).toBeGreaterThan(0);
  expect(await hindrances(page)).toEqual([]);
});

test("every button and knob of the page can be hit by a finger: at least 24 px", async ({ open }) => {
  const { page } = await open({ viewport: { width: 390, height: 844 }, hasTouch: true });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const small = await page.locator("button, select, input[type=range]").evaluateAll((all) =>
    all
      .map((each) => ({ name: each.ariaLabel ?? each.textContent, box: each.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
      .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
  );
  expect(small).toEqual([]);
});

test("nothing sticks out sideways on a phone", async ({ open }) => {
  const { page } = await open({ viewport: { width: 390, height: 844 } });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await page.evaluate(() => document.querySelector("main")?.scrollWidth)).toBeLessThanOrEqual(390);
});

test("on paper there is the page, then the board, and nothing to press", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  await page.emulateMedia({ media: "print" });
  const shown = await page
    .locator("button, select, input")
    .evaluateAll((all) => all.filter((each) => each.checkVisibility() && !each.classList.contains("to-sheet")).length);
  expect(shown).toBe(0);
  const [main, board] = await Promise.all([page.locator("main").boundingBox(), page.locator("#board").boundingBox()]);
  expect((main?.y ?? 0) + (main?.height ?? 0)).toBeLessThanOrEqual((board?.y ?? 0) + 1);
  expect(await cell(page, "enough_dihedral").isVisible()).toBe(true);
});

test("on paper an open question leaves room to write, and a figure's line says where it is drawn", async ({ open }) => {
  const { page } = await open();
  const cells = trainer.cells.map((each) => (each.kind === "question" ? { ...each, answer: null } : each));
  await openNotebook(page, { ...trainer, cells, board: ["a10"] });
  const question = cell(page, "question about eda");
  await question.locator("textarea").first().waitFor();
  await page.emulateMedia({ media: "print" });
  const room = await question.locator("textarea").evaluateAll((all) => all.map((each) => each.clientHeight));
  expect(room).toHaveLength(2);
  expect(Math.min(...room)).toBeGreaterThan(20);
  expect(await question.getByRole("button", { name: "Keep it" }).isVisible()).toBe(false);
  const said = (name: string) => cell(page, name).locator(".on-paper").allTextContents();
  expect(await said("drawing of main_wing")).toEqual(["drawn after the text"]);
  expect(await cell(page, "drawing of main_wing").locator(".on-paper").isVisible()).toBe(true);
  expect(await said("chart of What righting costs")).toEqual([]);
  expect((await page.pdf({ preferCSSPageSize: true })).length).toBeGreaterThan(10_000);
});
