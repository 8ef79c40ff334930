import type { BrowserContext, Page } from "playwright-core";
import { inject, onTestFinished } from "vitest";
import { enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { type OwnBrowser, ownBrowser } from "./own-browser.ts";
import { expect, test } from "./page.ts";

/** A browser that stands open with the trainer in it. */
async function withTrainer(): Promise<{ browser: OwnBrowser; page: Page }> {
  const browser = ownBrowser();
  onTestFinished(() => browser.end());
  const page = await appIn(await browser.start());
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  await expect.poll(() => page.locator(".kept").textContent()).toBe("kept");
  return { browser, page };
}

async function appIn(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject("appUrl"));
  return page;
}

test("a browser killed while a slider is dragged loses nothing older than a second", async () => {
  const { browser, page } = await withTrainer();
  const slider = page.getByRole("slider", { name: "slide tip_break" });
  await slider.focus();
  await page.keyboard.press("Home");
  // From 0 deg on by half a degree, without a rest in which it could be kept.
  const edits: { readonly at: number; readonly degrees: number }[] = [];
  for (let step = 1; step <= 36; step += 1) {
    await page.keyboard.press("ArrowRight");
    edits.push({ at: Date.now(), degrees: step / 2 });
    await page.waitForTimeout(80);
  }
  const killed = Date.now();
  await browser.kill();
  const older = edits.filter(({ at }) => at <= killed - 1000);
  const last = older.at(-1);
  expect(older.length).toBeGreaterThan(8);
  const again = await appIn(await browser.start());
  await expect.poll(() => value(again, "half")).toBe("200 mm");
  const kept = Number.parseFloat(await value(again, "tip_break"));
  expect(kept).toBeGreaterThanOrEqual(last?.degrees ?? Number.NaN);
  expect(kept).toBeLessThanOrEqual(18);
});

test("a browser killed a second after half a formula was typed brings back even that", async () => {
  const { browser, page } = await withTrainer();
  const box = await enterFormula(page, "half");
  await box.fill("230 mm +");
  await page.waitForTimeout(1000);
  await browser.kill();
  const again = await appIn(await browser.start());
  await expect
    .poll(() => again.getByRole("group", { name: "half", exact: true }).locator("code.formula").textContent())
    .toBe("230 mm +");
});

test("after two kills in a row both notebooks are still there", async () => {
  const { browser, page } = await withTrainer();
  await openNotebook(page, { ...trainer, title: "Second" }, "second.json");
  await expect.poll(() => page.locator("h1.title > span").first().textContent()).toContain("Second");
  await page.waitForTimeout(1000);
  await browser.kill();
  await appIn(await browser.start());
  await browser.kill();
  const again = await appIn(await browser.start());
  await expect.poll(() => again.locator("h1.title > span").first().textContent()).toContain("Second");
  await again.getByRole("button", { name: "Notebooks", exact: true }).click();
  await expect.poll(() => again.locator(".kept-list .notebook-title").allTextContents()).toEqual(["Second", "Trainer"]);
});
