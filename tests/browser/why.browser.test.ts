import type { Locator, Page } from "playwright-core";
import type { Notebook } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const panel = (page: Page): Locator => page.getByRole("dialog");

const focused = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.ariaLabel ?? document.activeElement?.textContent?.trim());

/** The lines of the working, in words. */
const working = (page: Page): Promise<(string | null)[]> =>
  panel(page)
    .locator("math")
    .evaluateAll((all) => all.map((each) => each.getAttribute("alttext")));

const result = async (page: Page): Promise<string> =>
  ((await panel(page).locator("header output").textContent()) ?? "").replace(/\s+/g, " ").trim();

async function ask(page: Page, name: string): Promise<void> {
  await cell(page, name).hover();
  await page.getByRole("button", { name: `why ${name}`, exact: true }).click();
  await panel(page)
    .getByRole("heading", { name: `Why ${name}` })
    .waitFor();
}

const step = (page: Page, name: string): Promise<void> =>
  panel(page).getByRole("button", { name, exact: true }).first().click();

/** Names under a heading of the panel. */
const under = (page: Page, heading: string): Promise<string[]> =>
  panel(page).locator(`h3:text-is("${heading}") + ul button`).allTextContents();

async function opened(page: Page, notebook: Notebook = trainer): Promise<void> {
  await openNotebook(page, notebook);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
}

const screens = {
  wide: { viewport: { width: 1440, height: 900 }, colorScheme: "light" },
  dark: { viewport: { width: 1440, height: 900 }, colorScheme: "dark" },
  phone: { viewport: { width: 390, height: 844 }, colorScheme: "light", hasTouch: true },
} as const;

for (const [name, options] of Object.entries(screens)) {
  test(`on a ${name} screen the button beside a value shows its working, and nothing hinders`, async ({ open }) => {
    const { page } = await open(options);
    await opened(page);
    await ask(page, "twice");
    expect(await working(page)).toEqual(["twice = 2 · half", "= 2 · 200 mm", "= 400 mm"]);
    const width = options.viewport.width;
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await ask(page, name === "wide" ? "panels" : "eda");
    expect(await hindrances(page)).toEqual([]);
    const small = await panel(page)
      .locator("button, summary")
      .evaluateAll((all) =>
        all.filter((each) => each.getBoundingClientRect().height < 24).map((each) => each.textContent),
      );
    expect(small).toEqual([]);
  });
}

test("by keyboard alone: asked by Alt Enter, stepped down to a given and back, closed by Escape", async ({ open }) => {
  const { page } = await open();
  await opened(page);
  await page.getByRole("button", { name: "edit formula of eda" }).focus();
  await page.keyboard.press("Alt+Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why eda/);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await expect.poll(() => focused(page)).toBe("main_wing");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why main_wing/);
  await panel(page).getByRole("button", { name: "panels", exact: true }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why panels/);
  await panel(page).getByRole("button", { name: "half", exact: true }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why half/);
  expect(await panel(page).getByRole("navigation").locator("li").allTextContents()).toEqual([
    "eda",
    "main_wing",
    "panels",
    "half",
  ]);
  await panel(page).getByRole("navigation").getByRole("button", { name: "main_wing" }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why main_wing/);
  expect(await panel(page).getByRole("navigation").locator("li").allTextContents()).toEqual(["eda", "main_wing"]);
  await page.keyboard.press("Escape");
  await expect.poll(() => focused(page)).toBe("edit formula of eda");
  expect(await panel(page).count()).toBe(0);
});

test("the menu of a cell asks too, and Alt Enter in the panel goes back to the page and leaves it open", async ({
  open,
}) => {
  const { page } = await open();
  await opened(page);
  await page.getByRole("button", { name: "more for loss", exact: true }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("w");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why loss/);
  await page.keyboard.press("Alt+Enter");
  await expect.poll(() => focused(page)).toBe("edit formula of loss");
  expect(await panel(page).count()).toBe(1);
});

test("while it is open it follows what is dragged and typed", async ({ open }) => {
  const { page } = await open();
  await opened(page);
  await ask(page, "twice");
  const slider = page.getByRole("slider", { name: "slide half" });
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => value(page, "half")).not.toBe("200 mm");
  const half = Number.parseFloat(await value(page, "half"));
  await expect.poll(() => working(page)).toEqual(["twice = 2 · half", `= 2 · ${half} mm`, `= ${2 * half} mm`]);
  expect(await result(page)).toBe(`${2 * half} mm`);
  const box = await enterFormula(page, "twice");
  await box.fill("half / 4");
  await expect
    .poll(() => working(page))
    .toEqual(["twice = half / 4", `= (${half} mm) / 4`, expect.stringContaining("=")]);
});

test("a library function tells its own formula, what it was given, what it assumes, and its sources with their marks", async ({
  open,
}) => {
  const { page } = await open();
  await opened(page);
  await ask(page, "eda");
  const call = panel(page).locator("details.call");
  const text = (await call.textContent()) ?? "";
  expect(text).toContain("equivalent_dihedral");
  expect(text).toContain("∫ Γ·c·y dy / ∫ c·y dy");
  expect(text).toContain("A rule for small angles");
  expect(text).toContain("verified");
  await expect.poll(() => call.locator(".gives td").textContent()).toBe(await value(page, "eda"));
});

test("it tells what a cell goes into: cells, checks, drawings, charts, notes; each can be stepped to", async ({
  open,
}) => {
  const { page } = await open();
  await opened(page);
  await ask(page, "eda");
  const into = await under(page, "Goes into");
  expect(into).toEqual(
    expect.arrayContaining([
      "enough_dihedral",
      "What righting costs",
      "question about eda",
      expect.stringMatching(/^note/),
    ]),
  );
  await step(page, "What righting costs");
  expect(await under(page, "Made from")).toEqual(["tip_break", "loss", "eda"]);
  await step(page, "tip_break");
  expect(await working(page)).toEqual(["tip break = 9 deg"]);
  expect(await panel(page).textContent()).toContain("rolls out before the pull-up ends");
});

test("every entry of a table can be asked, where it stands or from its table", async ({ open }) => {
  const { page } = await open();
  await opened(page);
  await page.getByRole("button", { name: "edit panels row 1 length" }).focus();
  await page.keyboard.press("Alt+Enter");
  await expect.poll(() => focused(page)).toMatch(/^Why panels, row 1, length/);
  expect(await working(page)).toEqual(["length [1] = 0.6 · half", "= 0.6 · 200 mm", "= 120 mm"]);
  await step(page, "panels");
  await panel(page)
    .getByRole("button", { name: /why panels, row 2, break/ })
    .click();
  expect(await working(page)).toEqual(["break [2] = tip break", "= 9 deg"]);
});

test("a value in a note can be asked from its menu", async ({ open }) => {
  const { page } = await open();
  await opened(page);
  await page.getByRole("button", { name: "more for note", exact: true }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: "Why main_wing …" }).click();
  await expect.poll(() => focused(page)).toMatch(/^Why main_wing/);
});

test("an error is told, with the cell where it began, and leads there", async ({ open }) => {
  const { page } = await open();
  await opened(page);
  const box = await enterFormula(page, "half");
  await box.fill("210 kg");
  await page.keyboard.press("Enter");
  await ask(page, "twice");
  expect(await panel(page).textContent()).toContain("Waits for half");
  expect(await under(page, "It began in")).toEqual(["half"]);
  await step(page, "half");
  expect(await panel(page).locator(".fault").textContent()).toContain("mm");
  expect(await hindrances(page)).toEqual([]);
});

test("what an open question hides is nowhere given away", async ({ open }) => {
  const { page } = await open();
  const asking: Notebook = {
    ...trainer,
    cells: [
      ...trainer.cells.map((each) => (each.kind === "question" ? { ...each, answer: null } : each)),
      { id: "b1", kind: "derived", name: "more", formula: "eda + abs(equivalent_dihedral(main_wing))", unit: "deg" },
    ],
  };
  await opened(page);
  const secret = await value(page, "eda");
  await openNotebook(page, asking);
  await expect.poll(() => value(page, "loss")).toMatch(/%$/);
  await ask(page, "eda");
  expect(await result(page)).toContain("answer the question first");
  expect(await panel(page).textContent()).not.toContain(secret);
  expect(await working(page)).toEqual([]);
  await ask(page, "enough_dihedral");
  expect(await panel(page).textContent()).not.toMatch(/holds|fails|to spare/);
  await ask(page, "more");
  // What is reckoned from it would give it away.
  expect(await result(page)).toContain("answer the question first");
  expect(await working(page)).toEqual([]);
  expect(await panel(page).locator(".gives").count()).toBe(0);
  const told = await panel(page).locator("li", { hasText: "eda" }).first().locator(".told").textContent();
  expect(told).toBe("hidden");
});

test("it is closed when another notebook is opened, and steps back when what it shows is deleted", async ({ open }) => {
  const { page } = await open();
  await opened(page);
  await ask(page, "half");
  await step(page, "twice");
  await page.getByRole("button", { name: "more for twice", exact: true }).focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await panel(page).getByRole("heading", { name: "Why half" }).waitFor();
  await page.locator("spanwise-bar").getByRole("button", { name: /^Undo/ }).click();
  await page.getByText("changed since saved").waitFor({ state: "detached" });
  await openNotebook(page, { title: "Other", cells: [], trials: [] });
  await expect.poll(() => panel(page).count()).toBe(0);
});
