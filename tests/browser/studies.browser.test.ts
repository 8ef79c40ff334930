import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { type Cell, type Notebook, readNotebook, type StudyCell } from "../../src/cells/index.ts";
import { root } from "../../src/tools/place.js";
import { quickPart } from "../cells/quick-part.ts";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, setFormula, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const study = (
  name: string,
  fields: Partial<StudyCell> & Pick<StudyCell, "study" | "inputs" | "results">,
): StudyCell => ({
  ...{ id: name, kind: "study", name },
  ...fields,
});

/** The demo without its prose and what is slow in it, its givens of the wing and some studies first. */
function studied(studies: readonly StudyCell[], more: readonly Cell[] = []): Notebook {
  const demo = quickPart(readNotebook(readFileSync(join(root, "notebooks", "plover.json"), "utf8")));
  const cells = demo.cells.filter(({ kind }) => kind !== "note" && kind !== "question");
  const first = cells.filter((each) => "name" in each && /^(tip|mid)_break$/.test(each.name));
  const others = cells.filter((each) => !first.includes(each));
  return { ...demo, title: "Studied", cells: [...first, ...studies, ...more, ...others] };
}

const state = (page: Page, name: string): Locator => cell(page, name).locator(".study-state");
const outcome = (page: Page, name: string): Locator => cell(page, name).locator(".study-picture");

const each: readonly StudyCell[] = [
  study("over_tips", { study: "sweep", inputs: [{ input: "tip_break", points: 11 }], results: ["eda", "loss"] }),
  study("over_both", {
    ...{ study: "map", results: ["eda"], checks: [] },
    inputs: [
      { input: "tip_break", points: 5 },
      { input: "mid_break", points: 5 },
    ],
  }),
  study("what_counts", { study: "sensitivity", inputs: [{ input: "tip_break" }, { input: "span" }], results: ["eda"] }),
  study("how_straight", {
    ...{ study: "tolerance", results: ["eda"], builds: 200 },
    inputs: [{ input: "tip_break", plus_minus: "1 deg" }],
  }),
  study("which_tip", { study: "solve", inputs: [{ input: "tip_break" }], results: ["eda"], target: "12 deg" }),
  study("best_tip", { study: "best", inputs: [{ input: "tip_break" }], results: ["loss"], goals: ["least"] }),
];

test("every sort of study runs when it is looked at, and tells what it comes to", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, studied(each));
  for (const { name } of each) {
    await cell(page, name).scrollIntoViewIfNeeded();
    await expect.poll(() => outcome(page, name).textContent(), { timeout: 30_000 }).toMatch(/\d/);
    await expect.poll(() => state(page, name).locator("progress").count(), { timeout: 30_000 }).toBe(0);
  }
  expect(await hindrances(page)).toEqual([]);
  expect(await page.locator(".fault").allTextContents()).toEqual([]);
});

test("a long study tells how far it is, can be stopped and run again, and nothing waits for it", async ({ open }) => {
  const { page } = await open();
  const long = study("long_flight", {
    ...{ study: "sweep", inputs: [{ input: "tip_break", points: 400 }], results: ["fall.height_lost"], checks: [] },
  });
  const fall: Cell = { id: "fall", kind: "derived", name: "fall", formula: "recovery(plover)" };
  await openNotebook(page, studied([long], [fall]));
  await expect.poll(() => state(page, "long_flight").textContent(), { timeout: 20_000 }).toMatch(/% done, about/);
  await expect.poll(() => outcome(page, "long_flight").textContent(), { timeout: 20_000 }).toMatch(/\d m/);
  // Typing goes on meanwhile, and is answered at once.
  await setFormula(page, "mid_break", "8 deg");
  expect(await value(page, "mid_break")).toBe("8 deg");
  await expect.poll(() => state(page, "long_flight").textContent(), { timeout: 20_000 }).toMatch(/% done, about/);
  await page.getByRole("button", { name: "stop long_flight" }).click();
  await expect.poll(() => state(page, "long_flight").textContent()).toContain("stopped");
  expect(await hindrances(page)).toEqual([]);
  await page.getByRole("button", { name: "run long_flight" }).click();
  await expect.poll(() => state(page, "long_flight").textContent()).toMatch(/running|done, about/);
});

test("a study follows the edits that touch it, and no others", async ({ open }) => {
  const { page } = await open();
  const [sweep] = each;
  await openNotebook(page, studied(sweep ? [{ ...sweep, checks: [] }] : []));
  await expect.poll(() => outcome(page, "over_tips").textContent(), { timeout: 20_000 }).toMatch(/\d deg/);
  await expect.poll(() => state(page, "over_tips").locator("progress").count()).toBe(0);
  const before = await outcome(page, "over_tips").textContent();
  await setFormula(page, "mid_break", "9 deg");
  await expect.poll(() => outcome(page, "over_tips").textContent(), { timeout: 20_000 }).not.toBe(before);
  await expect.poll(() => outcome(page, "over_tips").getAttribute("aria-busy")).toBe("false");
});

test("a chart whose sweep is slow gets its curve from elsewhere", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  const cells: Cell[] = [
    { id: "f1", kind: "derived", name: "glides", formula: "trim(plover)" },
    { id: "f2", kind: "derived", name: "sinks", formula: "glides.sink", unit: "m/s" },
    { id: "f3", kind: "chart", view: "trade_off", sweep: "tip_break", x: "sinks", y: ["eda"], title: "Sink" },
  ];
  const notebook = studied([], cells);
  await openNotebook(page, { ...notebook, board: ["f3"] });
  const points = page.locator("#board svg .point, #board svg [role=button]");
  await expect.poll(() => page.locator("#board .sheet").getAttribute("aria-busy"), { timeout: 20_000 }).toBe("false");
  await expect.poll(() => page.locator("#board svg desc").first().textContent()).toMatch(/sinks/);
  await expect.poll(() => points.count(), { timeout: 20_000 }).toBeGreaterThan(10);
});
