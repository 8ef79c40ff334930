import type { Page } from "playwright-core";
import { figuresOnBoard, readNotebook } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { openNotebook, trainer } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const heads = (page: Page): Promise<string[]> => page.locator("#board h2").allTextContents();
const three = {
  ...trainer,
  cells: [...trainer.cells, { id: "p1", kind: "drawing", view: "plan", of: "main_wing" } as const],
};
const inOrder = ["Front view", "What righting costs", "Plan view"];
const menuOf = (page: Page, title: string) => page.getByRole("button", { name: `more for ${title} on the board` });

test("a sheet is taken off the board and put back, from its own menu and from its line on the page", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, three);
  await expect.poll(() => heads(page)).toEqual(inOrder);
  await menuOf(page, "Front view").click();
  expect(await hindrances(page)).toEqual([]);
  await page.getByRole("menuitem", { name: "Take off the board" }).click();
  await expect.poll(() => heads(page)).toEqual(["What righting costs", "Plan view"]);
  await expect.poll(() => page.locator(".notice [role=status]").textContent()).toContain("Front view is off the board");
  const line = page.getByRole("button", { name: "Front view main_wing, put on the board" });
  await line.click();
  await expect.poll(() => heads(page)).toEqual(["What righting costs", "Plan view", "Front view"]);
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("sheet-a10");
  expect(await page.getByRole("button", { name: "Front view main_wing, show on the board" }).count()).toBe(1);
});

test("by keyboard alone sheets are moved, the focus going along, and taken off; all of it is undone step by step", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, three);
  await expect.poll(() => heads(page)).toEqual(inOrder);
  await menuOf(page, "Plan view").focus();
  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(() => heads(page)).toEqual(["Front view", "Plan view", "What righting costs"]);
  const focused = () => page.evaluate(() => document.activeElement?.ariaLabel);
  await expect.poll(focused).toBe("more for Plan view on the board");
  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(() => heads(page)).toEqual(["Plan view", "Front view", "What righting costs"]);
  await expect.poll(focused).toBe("more for Plan view on the board");
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: "Move after" }).waitFor();
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await expect.poll(() => heads(page)).toEqual(["Front view", "What righting costs"]);
  await expect.poll(focused).toBe("more for Front view on the board");
  for (let step = 0; step < 3; step++) await page.keyboard.press("Control+z");
  await expect.poll(() => heads(page)).toEqual(inOrder);
});

test("a sheet is dragged by its head; Escape calls the drag off", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1400, height: 1000 } });
  await openNotebook(page, three);
  await expect.poll(() => heads(page)).toEqual(inOrder);
  await page.getByRole("img", { name: "Front view of main_wing" }).waitFor();
  const head = page.locator("#board h2", { hasText: "Front view" });
  const drag = async (): Promise<void> => {
    const from = await head.boundingBox();
    const chart = await page.locator("#sheet-a11").boundingBox();
    if (!from || !chart) throw new Error("got no place of the sheets, expected both");
    await page.mouse.move(from.x + 20, from.y + 8);
    await page.mouse.down();
    await page.mouse.move(from.x + 30, from.y + 60, { steps: 3 });
    await page.mouse.move(from.x + 30, chart.y + chart.height - 60, { steps: 5 });
  };
  await drag();
  expect(await page.locator(".drop-before").getAttribute("id")).toBe("sheet-p1");
  await page.keyboard.press("Escape");
  await page.mouse.up();
  expect(await heads(page)).toEqual(inOrder);
  await drag();
  await page.mouse.up();
  await expect.poll(() => heads(page)).toEqual(["What righting costs", "Front view", "Plan view"]);
  expect(await page.locator(".drop-before, .drop-after, .dragged").count()).toBe(0);
});

test("the board is kept in the file and opens as it was", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, { ...three, board: ["p1", "a10"] });
  await expect.poll(() => heads(page)).toEqual(["Plan view", "Front view"]);
  await menuOf(page, "Plan view").focus();
  await page.keyboard.press("Alt+ArrowDown");
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const stream = await (await download).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  const saved = readNotebook(Buffer.concat(chunks).toString("utf8"));
  expect(saved.board).toEqual(["a10", "p1"]);
  expect(figuresOnBoard(saved).map(({ id }) => id)).toEqual(["a10", "p1"]);
});

test("a board with nothing pinned says how to pin", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, { ...three, board: [] });
  await expect.poll(() => page.locator("#board").textContent()).toContain("No drawing or chart is pinned here");
  expect(await hindrances(page)).toEqual([]);
});
