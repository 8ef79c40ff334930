/** Figures copied and saved: what comes out is read back. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DOMParser } from "linkedom";
import type { Page } from "playwright-core";
import { type Notebook, readNotebook } from "../../src/cells/index.ts";
import { root } from "../../src/tools/place.js";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, trainer } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const notebook: Notebook = {
  ...trainer,
  title: "Trainer, bent",
  cells: [
    ...trainer.cells,
    {
      ...{
        id: "s1",
        kind: "study",
        name: "over_tips",
        study: "sweep",
        results: ["eda"],
        title: "Righting, by the tips",
      },
      inputs: [{ input: "tip_break", points: 5 }],
    },
  ],
};

/** Saves by a menu's item and gives what the file holds. */
async function saved(page: Page, open: () => Promise<void>, item: string): Promise<{ name: string; content: Buffer }> {
  await open();
  await page.getByRole("menuitem", { name: /^Copy or save this figure/ }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("menuitem", { name: item }).click();
  const file = await download;
  const parts: Buffer[] = [];
  for await (const part of await file.createReadStream()) parts.push(part as Buffer);
  return { name: file.suggestedFilename(), content: Buffer.concat(parts) };
}

test("a chart is saved as SVG, PNG and CSV, with title, units and notebook in each", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, notebook);
  const menu = page.getByRole("button", { name: /^more for .*What righting costs/ }).last();
  const openMenu = () => menu.click();
  const svg = await saved(page, openMenu, "Save as SVG");
  expect(svg.name).toBe("trainer-bent-what-righting-costs.svg");
  const text = svg.content.toString("utf8");
  for (const part of ["What righting costs", "from the notebook “Trainer, bent”", "eda, deg", "loss, %"])
    expect(text).toContain(part);
  expect(text).not.toMatch(/var\(|tabindex|choose a point/);
  const read = new DOMParser().parseFromString(text, "image/svg+xml");
  expect(read.querySelectorAll("svg svg path").length).toBeGreaterThan(3);

  const png = await saved(page, openMenu, "Save as PNG");
  expect(png.name).toBe("trainer-bent-what-righting-costs.png");
  // The width of the picture stands in its head: two dots for each px of the SVG.
  const width = Number(/width="(\d+)"/.exec(text)?.[1]);
  expect(png.content.subarray(1, 4).toString()).toBe("PNG");
  expect(png.content.readUInt32BE(16)).toBe(2 * width);
  const colors = await page.evaluate(
    async (bytes) => {
      const picture = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: "image/png" }));
      const context = new OffscreenCanvas(picture.width, picture.height).getContext("2d");
      context?.drawImage(picture, 0, 0);
      const data = context?.getImageData(0, 0, picture.width, picture.height).data ?? [];
      const found = new Set<string>();
      for (let at = 0; at < data.length; at += 4) found.add(`${data[at]},${data[at + 1]},${data[at + 2]}`);
      return [found.has("251,252,250"), found.has("194,65,12"), found.size > 20];
    },
    [...png.content],
  );
  // Paper, the warm colour of the present design, and the shades of lines and letters.
  expect(colors).toEqual([true, true, true]);

  const csv = await saved(page, openMenu, "Save its values as CSV");
  const lines = csv.content.toString("utf8").split("\r\n");
  expect(lines.slice(0, 3)).toEqual([
    "title,What righting costs",
    "shows,tip_break over its range",
    'notebook,"Trainer, bent"',
  ]);
  expect(lines).toContain("tip_break (deg),loss (%),eda (deg),why there is none");
  expect(lines.filter((line) => /^\d+(\.\d+)?,\d+\.\d+,\d+\.\d+,$/.test(line)).length).toBeGreaterThan(10);
});

test("a drawing is saved as a picture, and has no values to save", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, notebook);
  await page.locator("spanwise-sheet .more").first().click();
  await page.getByRole("menuitem", { name: /^Copy or save this figure/ }).click();
  expect(await hindrances(page)).toEqual([]);
  const items = await page.getByRole("menuitem").allTextContents();
  expect(items.map((each) => each.replace(/\s+/g, " ").trim())).toEqual([
    "Save as SVG lines, for print",
    "Save as PNG dots, for a page",
    "Copy as SVG",
    "Copy as PNG",
  ]);
});

test("a study is saved with its values, and they are copied, too", async ({ open }) => {
  const { page } = await open({ permissions: ["clipboard-read", "clipboard-write"] });
  await openNotebook(page, notebook);
  await cell(page, "over_tips").scrollIntoViewIfNeeded();
  await expect.poll(() => cell(page, "over_tips").locator("svg").count(), { timeout: 20_000 }).toBe(1);
  await expect.poll(() => cell(page, "over_tips").locator("progress").count(), { timeout: 20_000 }).toBe(0);
  const openMenu = () => cell(page, "over_tips").getByRole("button", { name: "more for over_tips" }).click();
  const csv = await saved(page, openMenu, "Save its values as CSV");
  expect(csv.name).toBe("trainer-bent-righting-by-the-tips.csv");
  const text = csv.content.toString("utf8");
  expect(text).toContain('title,"Righting, by the tips"');
  expect(text).toMatch(/tip_break \(deg\),eda \(deg\)/);
  expect(text.split("\r\n").filter((line) => /^(0|5|10|15|20),/.test(line))).toHaveLength(5);
  await openMenu();
  await page.getByRole("menuitem", { name: /^Copy or save this figure/ }).click();
  await page.getByRole("menuitem", { name: "Copy its values as CSV" }).click();
  await page.getByText("Copied the values.").waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied.replaceAll("\r\n", "\n")).toBe(text.replaceAll("\r\n", "\n"));
  await openMenu();
  await page.getByRole("menuitem", { name: /^Copy or save this figure/ }).click();
  await page.getByRole("menuitem", { name: "Copy as PNG" }).click();
  await page.getByText("Copied the picture.").waitFor();
  const types = await page.evaluate(async () => (await navigator.clipboard.read()).flatMap((item) => item.types));
  expect(types).toContain("image/png");
});

test("the pictures of every figure of the demo can be painted", async ({ open }) => {
  const { page } = await open();
  const demo = readNotebook(readFileSync(join(root, "notebooks", "from-flat-to-bent.json"), "utf8"));
  await openNotebook(page, { ...demo, cells: demo.cells.filter(({ kind }) => kind !== "question") });
  const all = page.locator("spanwise-sheet .more");
  await expect.poll(() => all.count(), { timeout: 20_000 }).toBeGreaterThan(2);
  for (let index = 0; index < (await all.count()); index++) {
    const png = await saved(page, () => all.nth(index).click(), "Save as PNG");
    expect(png.content.length).toBeGreaterThan(4000);
  }
});
