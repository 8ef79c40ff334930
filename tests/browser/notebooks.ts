import type { Locator, Page } from "playwright-core";
import { type Notebook, writeNotebook } from "../../src/cells/index.ts";

/** A small notebook with every kind of cell that the page shows. */
export const trainer: Notebook = {
  title: "Trainer",
  cells: [
    { id: "a1", kind: "note", text: "# Trainer\n\nThe V would be {eda}, the tips stand {main_wing.tip_height} high." },
    {
      id: "a2",
      kind: "given",
      name: "tip_break",
      formula: "9 deg",
      unit: "deg",
      range: ["0 deg", "20 deg", "0.5 deg"],
      reason: "rolls out before the pull-up ends",
    },
    { id: "a3", kind: "given", name: "half", formula: "200 mm", unit: "mm", range: ["150 mm", "250 mm"] },
    {
      id: "a4",
      kind: "table",
      name: "panels",
      columns: [
        { name: "part", text: true },
        { name: "length", unit: "mm" },
        { name: "root_chord", unit: "mm" },
        { name: "tip_chord", unit: "mm" },
        { name: "sweep", unit: "mm" },
        { name: "break", unit: "deg" },
        { name: "washout", unit: "deg" },
        { name: "thickness", unit: "mm" },
      ],
      rows: [
        ["inner", "0.6 * half", "70", "66", "0", "5", "0", "3"],
        ["outer", "80", "66", "44", "8", "tip_break", "1", "2.5"],
      ],
    },
    { id: "a5", kind: "derived", name: "main_wing", formula: "wing(panels)" },
    { id: "a6", kind: "derived", name: "eda", formula: "equivalent_dihedral(main_wing)", unit: "deg" },
    { id: "a7", kind: "derived", name: "loss", formula: "tilt_loss(main_wing)", unit: "%" },
    { id: "a8", kind: "derived", name: "twice", formula: "2 * half", unit: "mm" },
    { id: "a9", kind: "check", name: "enough_dihedral", formula: "eda > 8 deg", reason: "common practice" },
    { id: "a10", kind: "drawing", view: "front", of: "main_wing" },
    {
      id: "a11",
      kind: "chart",
      view: "trade_off",
      sweep: "tip_break",
      x: "loss",
      y: ["eda"],
      title: "What righting costs",
    },
    {
      id: "a12",
      kind: "decision",
      question: "V or polyhedral?",
      chosen: "polyhedral",
      why: "rolls out as soon",
      alternatives: [{ option: "plain V", why_not: "more lift lost" }],
      revisit: "if the jig proves too hard",
    },
    {
      id: "a13",
      kind: "question",
      about: "eda",
      prompt: "Will the tips alone give more than 8 deg?",
      answer: "yes",
      because: "",
    },
  ],
  trials: [],
};

/** The page without the browser's own file dialogs, which a test cannot use: files go by upload and download. */
export async function withoutDialogs(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const name of ["showOpenFilePicker", "showSaveFilePicker"])
      Object.defineProperty(window, name, { value: undefined });
  });
}

/** Opens a notebook, or the text of a file, by the Open button and upload. */
export async function openNotebook(page: Page, notebook: Notebook | string, name = "trainer.json"): Promise<void> {
  await withoutDialogs(page);
  const text = typeof notebook === "string" ? notebook : writeNotebook(notebook);
  // Until the notebook that comes up first is there, the page is an empty one.
  await page.waitForFunction(
    () => (document.querySelector("spanwise-page") as { desk?: { serial: number } } | null)?.desk?.serial,
  );
  const before = await page.locator("spanwise-page :is(.cell, .empty-page)").first().elementHandle();
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open", exact: true }).click();
  await (await chooser).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  // What was there is gone, or something is said or asked instead; where just that is open already, nothing happens.
  const isTaken = (cell: Node | null) =>
    !cell?.isConnected || document.querySelector(".alarms p, dialog[open]") !== null;
  await page.waitForFunction(isTaken, before, { timeout: 3000 }).catch(() => undefined);
}

/** The cell of that name. */
export const cell = (page: Page, name: string): Locator => page.getByRole("group", { name, exact: true });

/** What stands as the value of a cell. */
export const value = async (page: Page, name: string): Promise<string> =>
  ((await page.getByLabel(`value of ${name}`, { exact: true }).textContent()) ?? "").replace(/\s+/g, " ").trim();

/** Enters a formula and gives its textbox. */
export async function enterFormula(page: Page, name: string): Promise<Locator> {
  await page.getByRole("button", { name: `edit formula of ${name}`, exact: true }).click();
  return page.getByRole("textbox", { name: `formula of ${name}`, exact: true });
}

/** The title and description of a figure on the board. */
export const figureText = async (page: Page, title: string): Promise<string> =>
  (await page
    .locator("#board svg", { has: page.locator(`title:text-is("${title}")`) })
    .locator("desc")
    .first()
    .textContent()) ?? "";

/** Sets a formula and leaves the editor by Enter. */
export async function setFormula(page: Page, name: string, formula: string): Promise<void> {
  const box = await enterFormula(page, name);
  await box.fill(formula);
  await page.keyboard.press("Enter");
}

/** The title in the bar. */
export const title = async (page: Page): Promise<string> =>
  ((await page.locator("h1.title > span").first().textContent()) ?? "").trim();
