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
