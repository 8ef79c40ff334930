import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Cell, type Notebook, readNotebook } from "../../src/cells/index.ts";
import { root } from "../../src/tools/place.js";
import { openNotebook, setFormula, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

test("without a connection a part of the page that is not there yet says so, and nothing else is disturbed", async ({
  open,
  complaintsExpected,
}) => {
  complaintsExpected();
  const { page, complaints } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  // What the page loads by itself while nothing is to do has come.
  await page.waitForTimeout(4000);
  await page.context().setOffline(true);
  await page.keyboard.press("F1");
  await expect.poll(() => page.locator(".notice").textContent()).toMatch(/could not be loaded.*the notebook is kept/);
  await setFormula(page, "tip_break", "12 deg");
  await expect.poll(() => value(page, "tip_break")).toBe("12 deg");
  // The browser itself tells of what it could not fetch.
  expect(complaints.filter((each) => !/ERR_INTERNET_DISCONNECTED|net::|Failed to load resource/.test(each))).toEqual(
    [],
  );
});

/** Plover in one cell that takes longer than is waited for once nobody wants it any more. */
function heavy(): Notebook {
  const demo = readNotebook(readFileSync(join(root, "notebooks", "plover.json"), "utf8"));
  const upTo = demo.cells.findIndex((each) => "name" in each && each.name === "air");
  const cells = demo.cells.slice(0, upTo).filter(({ kind }) => ["given", "derived", "table"].includes(kind));
  const isFirst = (each: Cell) => "name" in each && each.name === "tip_break";
  const flows = [3, 4, 5].map((angle) => `flow(plover, ${angle} deg, strips: 60, rows: 12).lift_slope`);
  const slope: Cell = { id: "s1", kind: "derived", name: "slope", formula: flows.join(" + ") };
  return {
    ...demo,
    title: "Heavy",
    cells: [...cells.filter(isFirst), slope, ...cells.filter((each) => !isFirst(each))],
  };
}

test("slow cells go on without a connection, however quickly they are edited, and no old value passes for new", {
  timeout: 120_000,
}, async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, heavy());
  const busy = () => page.getByLabel("value of slope", { exact: true }).getAttribute("aria-busy");
  await expect.poll(() => value(page, "slope"), { timeout: 50_000 }).toMatch(/^[\d.]+ 1\/rad$/);
  const before = await value(page, "slope");
  await page.context().setOffline(true);
  await setFormula(page, "tip_break", "3 deg");
  await page.waitForTimeout(300);
  await setFormula(page, "tip_break", "2 deg");
  expect(await busy()).toBe("true");
  await expect.poll(busy, { timeout: 50_000 }).toBe("false");
  expect(await value(page, "slope")).toMatch(/^[\d.]+ 1\/rad$/);
  expect(await value(page, "slope")).not.toBe(before);
});
