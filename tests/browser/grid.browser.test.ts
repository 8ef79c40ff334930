import type { Page } from "playwright-core";
import type { Notebook } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const focused = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.ariaLabel);
const heads = (page: Page): Promise<string[]> =>
  cell(page, "panels")
    .locator("thead th")
    .evaluateAll((all) =>
      all.map((each) => (each.firstChild?.nextSibling ?? each.firstChild)?.textContent?.trim() ?? ""),
    );

/** The texts of the entries, row by row. */
const entries = (page: Page): Promise<string[][]> =>
  cell(page, "panels")
    .locator("tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.querySelectorAll("td .cover")].map((each) => each.getAttribute("aria-description") ?? ""),
      ),
    );

/** What the browser's own copy or paste hands over, without the system's clipboard, which a test shares with others. */
const clipboard = (page: Page, type: "copy" | "cut" | "paste", text = ""): Promise<string> =>
  page.evaluate(
    ([kind, given]) => {
      const clipboardData = new DataTransfer();
      if (kind === "paste") clipboardData.setData("text/plain", given);
      const event = new ClipboardEvent(kind, { clipboardData, bubbles: true, cancelable: true });
      (document.activeElement ?? document.body).dispatchEvent(event);
      return event.defaultPrevented ? clipboardData.getData("text/plain") : "not taken";
    },
    [type, text] as const,
  );

test("a block is chosen with Shift and arrows, copied, cleared, and put in elsewhere as one step; rows grow", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const before = await entries(page);
  await page.getByRole("button", { name: "edit panels row 1 root_chord" }).focus();
  await page.keyboard.press("Shift+ArrowRight");
  await page.keyboard.press("Shift+ArrowDown");
  await expect.poll(() => cell(page, "panels").locator("td.chosen").count()).toBe(4);
  expect(await cell(page, "panels").getByRole("status").allTextContents()).toContain("2 rows by 2 columns chosen");
  expect(await hindrances(page)).toEqual([]);
  expect(await clipboard(page, "copy")).toBe("70\t66\n66\t44");
  await page.keyboard.press("Delete");
  await expect
    .poll(async () => (await entries(page)).map((row) => row.slice(2, 4)))
    .toEqual([
      ["", ""],
      ["", ""],
    ]);
  await page.keyboard.press("Control+z");
  await expect.poll(() => entries(page)).toEqual(before);
  await page.getByRole("button", { name: "edit panels row 2 root_chord" }).focus();
  await clipboard(page, "paste", "71\t67\r\n65\t43\r\n60\t40\r\n");
  await expect
    .poll(async () => (await entries(page)).map((row) => row.slice(2, 4)))
    .toEqual([
      ["70", "66"],
      ["71", "67"],
      ["65", "43"],
      ["60", "40"],
    ]);
  await expect.poll(() => focused(page)).toBe("edit panels row 4 tip_chord");
  await page.keyboard.press("Control+z");
  await expect.poll(() => entries(page)).toEqual(before);
});

test("while an entry is open, and elsewhere on the page, the clipboard is the browser's own", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit formula of half" }).focus();
  expect(await clipboard(page, "copy")).toBe("not taken");
  await page.getByRole("button", { name: "edit panels row 1 part" }).click();
  await page.getByRole("textbox", { name: "panels row 1 part" }).waitFor();
  expect((await entries(page))[1]).toHaveLength(8);
});

test("by keyboard alone: a column is reached by arrows, renamed, given another unit, moved, put in, taken out", async ({
  open,
}) => {
  const { page } = await open();
  page.setDefaultTimeout(6000);
  const using: Notebook = {
    ...trainer,
    cells: [...trainer.cells, { id: "b1", kind: "derived", name: "cuts", formula: "sum(panels.part_mass)" }],
    trials: [{ name: "long", set: { "panels[2].length": "90" } }],
  };
  await openNotebook(page, using);
  await page.getByRole("button", { name: "edit panels row 1 thickness" }).focus();
  await page.keyboard.press("ArrowUp");
  expect(await focused(page)).toBe("column thickness of panels");
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.matches(".details input"))).toBe(true);
  await page.keyboard.type("length");
  await page.keyboard.press("Enter");
  await expect
    .poll(() => cell(page, "panels").locator(".details .fault").textContent())
    .toContain("named length already");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Control+a");
  await page.keyboard.type("part_mass");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("g");
  await page.keyboard.press("Enter");
  await expect.poll(() => focused(page)).toBe("column part_mass of panels");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.type("5.5");
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "cuts")).toBe("5.5 g");

  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  await expect.poll(() => focused(page)).toBe("column part_mass of panels");
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: "Move the column left" }).press("Enter");
  await expect.poll(() => focused(page)).toBe("column part_mass of panels");
  await page.getByRole("button", { name: "column part_mass of panels" }).press("Enter");
  await page.getByRole("menuitem", { name: "Name and unit" }).press("Enter");
  await page.keyboard.type("mass_each");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "cuts").locator("code").textContent()).toBe("sum(panels.mass_each)");
  await page.getByRole("button", { name: "column mass_each of panels" }).press("Enter");
  await page.getByRole("menuitem", { name: "Remove the column" }).press("Enter");
  await expect.poll(() => focused(page)).toBe("column thickness of panels");
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  expect(await heads(page)).toHaveLength(8);
});

test("rows are moved and taken out by the menu of their number, and trials follow in the file", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, { ...trainer, trials: [{ name: "long", set: { "panels[2].length": "90" } }] });
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  await page.getByRole("button", { name: "row 2 of panels" }).click();
  await page.getByRole("menuitem", { name: "Move the row up" }).click();
  await expect.poll(async () => (await entries(page)).map(([part]) => part)).toEqual(["outer", "inner"]);
  await expect.poll(() => focused(page)).toBe("row 1 of panels");
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: "Insert a row above" }).press("Enter");
  await expect.poll(() => focused(page)).toBe("edit panels row 1 part");
  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  let text = "";
  for await (const part of await (await download).createReadStream()) text += String(part);
  expect(JSON.parse(text).trials).toEqual([{ name: "long", set: { "panels[2].length": "90" } }]);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(async () => (await entries(page)).map(([part]) => part)).toEqual(["inner", "outer"]);
});

test("a table that lost its last row and column is still reached and filled again", async ({ open }) => {
  const { page } = await open();
  const small: Notebook = {
    title: "Small",
    cells: [{ id: "a1", kind: "table", name: "panels", columns: [{ name: "length", unit: "mm" }], rows: [["1"]] }],
    trials: [],
  };
  await openNotebook(page, small);
  await page.getByRole("button", { name: "row 1 of panels" }).click();
  await page.getByRole("menuitem", { name: "Remove the row" }).click();
  await expect.poll(() => focused(page)).toBe("column length of panels");
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: "Remove the column" }).press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement !== document.body)).toBe(true);
  expect(await hindrances(page)).toEqual([]);
  await cell(page, "panels").getByRole("button", { name: "add a column" }).press("Enter");
  await page.keyboard.press("Escape");
  await cell(page, "panels").getByRole("button", { name: "add a row" }).press("Enter");
  await expect.poll(() => focused(page)).toBe("edit panels row 1 new_column");
});
