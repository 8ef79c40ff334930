import { chromium } from "playwright-core";
import { inject, onTestFinished } from "vitest";
import { browserFlags } from "../../src/tools/browser.js";
import { manyCells } from "../bench/many-cells.ts";
import { cell, openNotebook, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

/** More than any screen shows. */
const large = manyCells(400);
const last = large.cells.findLast((each) => each.kind === "derived");
const [lastId, lastName] = last && "name" in last ? [last.id, last.name] : ["", ""];

test("of many cells those on the screen are drawn first, and the others while nothing else is to do", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, large);
  expect(await value(page, "eda")).toMatch(/^\d/);
  expect(await page.locator("spanwise-page .cell").count()).toBe(400);
  // Now the browser's own search finds all of them.
  await expect.poll(() => page.locator("spanwise-page .cell:empty").count(), { timeout: 60_000 }).toBe(0);
  expect(await value(page, lastName)).toMatch(/^[\d,]+/);
});

test("the browser's search finds what stands far from the screen", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, large);
  await expect.poll(() => page.locator("spanwise-page .cell:empty").count(), { timeout: 60_000 }).toBe(0);
  expect(await page.locator(".stretch").count()).toBeGreaterThan(3);
  // A search that is begun by a script is part of no standard, so it has no type.
  const found = await page.evaluate((name) => {
    (window as unknown as { find(text: string): boolean }).find(name);
    return getSelection()?.anchorNode?.parentElement?.closest(".cell")?.ariaLabel;
  }, lastName);
  expect(found).toBe(lastName);
});

test("a screen reader meets all cells in their order, those far from the screen too", async () => {
  // As a screen reader sets the browser; asked without it, a browser tells what is on the screen only.
  const args = [...browserFlags, "--force-renderer-accessibility"];
  const browser = await chromium.launch({ executablePath: inject("browserPath"), args });
  onTestFinished(() => browser.close());
  const page = await browser.newPage();
  await page.goto(inject("appUrl"));
  await openNotebook(page, large);
  const session = await page.context().newCDPSession(page);
  await session.send("Accessibility.enable");
  const { root } = await session.send("DOM.getDocument", { depth: 0 });
  const names = large.cells.flatMap((each) => ("name" in each ? [each.name] : []));
  const read = async (): Promise<string[]> => {
    const { nodes } = await session.send("Accessibility.queryAXTree", { nodeId: root.nodeId, role: "group" });
    return nodes.map(({ name }) => name?.value as string).filter((name) => names.includes(name));
  };
  await expect.poll(read, { timeout: 20_000 }).toEqual(names);
});

test("a cell far down or up stands in view when it is gone to, and stays there", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, large);
  const height = page.viewportSize()?.height ?? 0;
  for (const name of [lastName, "load_9", "area_14", "eda"]) {
    await page.evaluate(
      (detail) => document.body.dispatchEvent(new CustomEvent("go-to-cell", { detail, bubbles: true })),
      name,
    );
    await page.waitForTimeout(500);
    const box = await cell(page, name).boundingBox();
    expect(box?.y).toBeGreaterThan(0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(height);
  }
});

test("a cell is moved over the bound of a stretch, back again, and the focus goes with it", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, large);
  const shown = () => page.locator("spanwise-page .cell").evaluateAll((all) => all.map(({ id }) => id));
  const before = await shown();
  const bound = await page.locator(".stretch").first().locator(".cell").count();
  await page
    .locator(`[id="${before[bound - 1]}"]`)
    .locator("button")
    .first()
    .focus();
  const moved = before.with(bound - 1, before[bound] ?? "").with(bound, before[bound - 1] ?? "");
  await page.keyboard.press("Alt+ArrowDown");
  await expect.poll(shown).toEqual(moved);
  expect(await page.evaluate(() => document.activeElement?.closest(".cell")?.id)).toBe(before[bound - 1]);
  await page.keyboard.press("Control+z");
  await expect.poll(shown).toEqual(before);
});

test("a cell that is not drawn yet is drawn when it is gone to, and the whole notebook when it is printed", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, large);
  const [atOnce, printed] = await page.evaluate(
    ([id, name]) => {
      const all = [...document.querySelectorAll("spanwise-page .cell")];
      const target = document.getElementById(`cell-${id}`) as HTMLElement;
      const before = target.childElementCount;
      document.body.dispatchEvent(new CustomEvent("go-to-cell", { detail: name ?? "", bubbles: true }));
      return new Promise<(number | boolean)[]>((resolve) => {
        setTimeout(() => {
          const there = before === 0 && target.contains(document.activeElement);
          window.dispatchEvent(new Event("beforeprint"));
          resolve([there, all.filter((each) => each.childElementCount === 0).length]);
        });
      });
    },
    [lastId, lastName],
  );
  expect(atOnce).toBe(true);
  expect(printed).toBe(0);
});

test("a cell that was changed in place is drawn as it was once that is taken back, whatever came between", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, manyCells(20));
  const before = await value(page, "eda");
  const slider = page.getByRole("slider", { name: "slide tip_break" });
  await slider.fill("15");
  await expect.poll(() => value(page, "eda")).not.toBe(before);
  await cell(page, "loss").locator(".more").click();
  await page.getByRole("menuitem", { name: /delete/i }).click();
  await expect.poll(() => page.locator("spanwise-page .cell").count()).toBe(19);
  for (const _ of [1, 2]) await page.keyboard.press("Control+z");
  await expect.poll(() => page.locator("spanwise-page .cell").count()).toBe(20);
  await expect.poll(() => value(page, "eda")).toBe(before);
  expect(await slider.inputValue()).toBe("11");
});
