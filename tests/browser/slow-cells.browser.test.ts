import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { type Cell, type Notebook, readNotebook } from "../../src/cells/index.ts";
import { root } from "../../src/tools/place.js";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const derived = (id: string, name: string, formula: string): Cell => ({ id, kind: "derived", name, formula });

/** The demo's givens of the wing, then all the rest of it, and cells that fly the glider out of one bank or several. */
function flown(banks: readonly number[] = [30]): Notebook {
  const demo = readNotebook(readFileSync(join(root, "notebooks", "plover.json"), "utf8"));
  // What is looked at stands first: cells far from the screen are drawn again only when nothing moves any more.
  const flight: Cell[] = [
    derived("s2", "lost", "fall.height_lost"),
    { id: "s3", kind: "check", name: "low_loss", formula: "lost < 100 m" },
    { id: "s4", kind: "note", text: "From a bank it loses {lost} with tips of {tip_break}." },
    ...banks.map((bank, index) =>
      derived(
        `b${index}`,
        index === 0 ? "fall" : `fall_${index}`,
        `recovery(plover, bank: ${bank} deg, seconds: 60 s)`,
      ),
    ),
  ];
  const cells = demo.cells.filter(({ kind }) => kind !== "note" && kind !== "question");
  const first = cells.filter((each) => "name" in each && /_break$/.test(each.name));
  return { ...demo, title: "Flown", cells: [...first, ...flight, ...cells.filter((each) => !first.includes(each))] };
}

const isBusy = (page: Page, name: string): Promise<string | null> =>
  page.getByLabel(`value of ${name}`, { exact: true }).getAttribute("aria-busy");

test("a slow cell is computed elsewhere: its value dims, says so, and comes, while a slider moves on", async ({
  open,
}) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  await openNotebook(page, flown([30, -30, 50, -50, 70, -70]));
  await expect.poll(() => value(page, "lost"), { timeout: 25_000 }).toMatch(/^[\d.]+ m$/);
  const before = await value(page, "lost");
  await page.waitForTimeout(500);
  const seen = await page
    .getByRole("slider", { name: "slide tip_break" })
    .evaluate(async (slider: HTMLInputElement) => {
      const states = new Set<string>();
      const output = [...document.querySelectorAll("output")].find((each) => each.ariaLabel === "value of lost");
      for (let index = 0; index < 40; index++) {
        slider.value = String(Number(slider.min) + 10 + (index % 10));
        slider.dispatchEvent(new Event("input", { bubbles: true }));
        await new Promise(requestAnimationFrame);
        states.add(
          `${output?.ariaBusy ?? output?.getAttribute("aria-busy")} ${output?.textContent?.replace(/\s+/g, " ").trim()}`,
        );
      }
      slider.dispatchEvent(new Event("change", { bubbles: true }));
      return [...states];
    });
  expect(seen).toContain(`true ${before}, being computed`);
  await expect.poll(() => isBusy(page, "lost"), { timeout: 25_000 }).toBe("false");
  const after = await value(page, "lost");
  expect(after).toMatch(/^[\d.]+ m$/);
  expect(after).not.toBe(before);
  expect(await value(page, "low_loss")).toContain("holds");
  expect(await cell(page, "note").first().textContent()).toContain(after);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => value(page, "lost"), { timeout: 25_000 }).toBe(before);
});

test("a slow cell that fails says so at its place, and what waits for it links there", async ({ open }) => {
  const { page } = await open();
  const notebook = flown();
  await openNotebook(page, {
    ...notebook,
    cells: [...notebook.cells, derived("s9", "bad", "trim(glider(main_wing))"), derived("s10", "worse", "bad.speed")],
  });
  await expect.poll(() => cell(page, "bad").locator(".fault").textContent(), { timeout: 25_000 }).toMatch(/balance/);
  await expect.poll(() => cell(page, "worse").locator(".waits").textContent()).toContain("bad");
});

test("where no worker is allowed all is computed here, and nothing breaks", async ({ open, complaintsExpected }) => {
  complaintsExpected();
  const { page } = await open();
  await page.addInitScript(() => {
    Object.defineProperty(window, "Worker", {
      value: class {
        constructor() {
          throw new Error("no workers here");
        }
      },
    });
  });
  await page.reload();
  await openNotebook(page, flown());
  await expect.poll(() => value(page, "lost"), { timeout: 25_000 }).toMatch(/^[\d.]+ m$/);
});

test("while slow cells are computed for the first time that stands in their place, and nothing hinders", async ({
  open,
}) => {
  const { page } = await open();
  // An order that is never carried out.
  await page.addInitScript(() => {
    Worker.prototype.postMessage = () => undefined;
  });
  await page.reload();
  await openNotebook(page, flown());
  await expect.poll(() => value(page, "fall")).toBe("computing …");
  expect(await value(page, "low_loss")).toBe("computing …");
  await expect.poll(() => page.locator(".computing").textContent()).toMatch(/computing \d+ values …/);
  expect(await hindrances(page)).toEqual([]);
  await cell(page, "lost").hover();
  await page.getByRole("button", { name: "why lost", exact: true }).click();
  await expect.poll(() => page.locator(".why header output").textContent()).toBe("computing …");
});
