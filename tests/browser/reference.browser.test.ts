import type { Locator, Page } from "playwright-core";
import { inject } from "vitest";
import { functions } from "../../src/library/index.ts";
import { hindrances } from "./hindrances.ts";
import { enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const dialog = (page: Page): Locator => page.getByRole("dialog", { name: "Functions" });
const focused = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(
    () => document.activeElement?.ariaLabel ?? document.activeElement?.textContent?.replace(/\s+/g, " ").trim(),
  );
const listed = (page: Page): Promise<string[]> => dialog(page).locator("summary code").allTextContents();
const openOnes = (page: Page): Promise<(string | null)[]> =>
  dialog(page)
    .locator("details[open]")
    .evaluateAll((all) => all.map((each) => each.getAttribute("data-function")));

async function openIt(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Functions" }).click();
  await dialog(page).waitFor();
}

const screens = {
  wide: { viewport: { width: 1440, height: 900 }, colorScheme: "light" },
  dark: { viewport: { width: 1440, height: 900 }, colorScheme: "dark" },
  phone: { viewport: { width: 390, height: 844 }, colorScheme: "light", hasTouch: true },
} as const;

for (const [name, options] of Object.entries(screens)) {
  test(`on a ${name} screen every function is listed and opens, and nothing hinders`, async ({ open }) => {
    const { page } = await open(options);
    await openIt(page);
    expect((await listed(page)).sort()).toEqual([...functions.keys()].sort());
    await dialog(page).locator("summary", { hasText: "equivalent_dihedral" }).first().click();
    await dialog(page).locator(".example").first().waitFor();
    expect(await hindrances(page)).toEqual([]);
    const sideways = await dialog(page).evaluate((each) => each.scrollWidth - each.clientWidth);
    expect(sideways).toBeLessThanOrEqual(0);
  });
}

test("by keyboard alone: opened by F1, searched, gone through by arrows, opened, closed, and the focus is back", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  await page.getByRole("button", { name: "edit formula of eda" }).focus();
  await page.keyboard.press("F1");
  await expect.poll(() => focused(page)).toBe("find a function");
  await page.keyboard.type("square root");
  await expect.poll(() => listed(page)).toContain("sqrt");
  expect(await dialog(page).getByRole("status").textContent()).toMatch(/^\d+ of \d+ functions$/);
  await page.keyboard.press("ArrowDown");
  await expect.poll(() => focused(page)).toMatch(/^\w+ /);
  const name = (await focused(page))?.split(" ")[0];
  await page.keyboard.press("Enter");
  await expect.poll(() => openOnes(page)).toEqual([name]);
  await page.keyboard.press("ArrowUp");
  await expect.poll(() => focused(page)).toBe("find a function");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("nosuchword");
  await expect.poll(() => dialog(page).getByRole("status").textContent()).toBe("No function fits.");
  expect(await hindrances(page)).toEqual([]);
  // In a field for searching the first Escape empties it.
  await page.keyboard.press("Escape");
  if ((await dialog(page).count()) > 0) await page.keyboard.press("Escape");
  await expect.poll(() => dialog(page).count()).toBe(0);
  await expect.poll(() => focused(page)).toBe("edit formula of eda");
});

test("while a formula is entered F1 opens the function around the caret, and entering goes on afterwards", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const box = await enterFormula(page, "loss");
  await box.fill("tilt_loss(main_wing");
  await page.keyboard.press("F1");
  await dialog(page).waitFor();
  await expect.poll(() => openOnes(page)).toEqual(["tilt_loss"]);
  await page.keyboard.press("Escape");
  await expect.poll(() => dialog(page).count()).toBe(0);
  await expect.poll(() => box.count()).toBe(1);
  await page.keyboard.type(")");
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "loss")).toMatch(/%$/);
});

test("from the why view it opens at the function, and gives the focus back", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  await page.getByRole("button", { name: "edit formula of eda" }).focus();
  await page.keyboard.press("Alt+Enter");
  const link = page.getByRole("button", { name: "equivalent_dihedral in the reference" });
  await link.focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => openOnes(page)).toEqual(["equivalent_dihedral"]);
  await expect.poll(() => focused(page)).toMatch(/^equivalent_dihedral/);
  await page.keyboard.press("Escape");
  await expect.poll(() => focused(page)).toBe("equivalent_dihedral in the reference");
  expect(await page.getByRole("heading", { name: /^Why eda/ }).count()).toBe(1);
});

test("the manual is a page beside the app, linked from the reference at the function", async ({ open }) => {
  const { page } = await open();
  await openIt(page);
  const [address, place] = await Promise.all([
    dialog(page).getByRole("link", { name: "all on one page, to print" }).getAttribute("href"),
    dialog(page).locator("[data-function=glide] a").getAttribute("href"),
  ]);
  expect(place).toBe(`${address}#function-glide`);
  await page.goto(new URL(place ?? "", page.url()).href);
  expect(await page.locator("h3:target").textContent()).toBe("glide");
});

for (const [name, options] of Object.entries(screens)) {
  test(`the manual page on a ${name} screen works without a script, in our typefaces, and nothing hinders`, async ({
    open,
  }) => {
    const { page } = await open({ ...options, url: `${inject("appUrl")}functions.html` });
    expect(await page.locator("article").count()).toBe(functions.size);
    expect(await page.locator("script").count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(options.viewport.width);
    const fonts = await page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.fonts].filter(({ status }) => status === "loaded").map(({ family }) => family);
    });
    expect(fonts.join()).toMatch(/Atkinson Hyperlegible Next/);
    const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(paper).toBe(options.colorScheme === "dark" ? "rgb(16, 25, 30)" : "rgb(251, 252, 250)");
    // All articles are made by one function; looking through each of them would take minutes.
    await page
      .locator("article:not([aria-labelledby=function-glide], [aria-labelledby=function-sqrt])")
      .evaluateAll((all) => {
        for (const each of all) each.remove();
      });
    expect(await page.locator("article").count()).toBe(2);
    expect(await hindrances(page)).toEqual([]);
  });
}

test("the manual also stands beside the app below a path of several steps", async ({ open }) => {
  const { page } = await open({ url: `${inject("appUrlBelow")}functions.html`, javaScriptEnabled: false });
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("Spanwise: all functions");
});
