/** The first lesson as a pupil works through it, from a clean start and by keyboard alone, to the file that is handed in. */
import { readFileSync } from "node:fs";
import { type Notebook, readNotebook } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const lesson = readNotebook(readFileSync(new URL("../../notebooks/from-flat-to-bent.json", import.meta.url), "utf8"));

const predictions: Readonly<Record<string, string>> = {
  flat_righting: "none",
  v_loss: "15 in a hundred",
  tip_righting: "7 degrees",
  bent_loss: "as much",
  saving: "a half",
};
const values: Readonly<Record<string, string>> = {
  flat_righting: "0 deg",
  v_loss: "6.699%",
  tip_righting: "11.12 deg",
  bent_loss: "5.229%",
  saving: "21.94%",
};

test("a pupil predicts, sees, drags, decides, and hands in a file with all of it", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, lesson);
  await expect.poll(() => value(page, "half")).toBe("240 mm");
  for (const about of Object.keys(predictions)) {
    expect(await value(page, about)).toContain("answer the question first");
  }
  for (const [about, prediction] of Object.entries(predictions)) {
    await cell(page, about).getByRole("link", { name: "answer the question first" }).press("Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.matches("textarea.answer"))).toBe(true);
    await page.keyboard.type(prediction);
    await page.keyboard.press("Tab");
    await page.keyboard.type("so I think");
    await page.keyboard.press("Control+Enter");
    await expect.poll(() => value(page, about)).toBe(values[about]);
  }
  await expect
    .poll(() => page.locator("#board svg.drawing, #board svg.chart, #board figure svg").count())
    .toBeGreaterThan(3);

  // What the note asks for: raise the tips until they right as well as the V.
  const slider = page.getByRole("slider", { name: "slide tip_bend", exact: true });
  for (let degrees = 16; degrees <= 20; degrees++) {
    await slider.press("ArrowRight");
    await expect.poll(() => value(page, "tip_bend")).toBe(`${degrees} deg`);
  }
  await expect.poll(() => value(page, "tip_righting")).toBe("14.68 deg");
  await page.getByRole("slider", { name: "slide panel_count", exact: true }).press("ArrowLeft");
  await expect.poll(() => value(page, "saving")).toBe("19.16%");

  const decision = cell(page, "decision");
  await decision.getByRole("button", { name: /^more for/ }).press("Enter");
  await page.getByRole("menuitem", { name: "Details" }).press("Enter");
  await page.getByRole("textbox", { name: "chosen" }).fill("two");
  await page.keyboard.press("Enter");
  expect(await hindrances(page)).toEqual([]);

  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  let text = "";
  for await (const part of await (await download).createReadStream()) text += String(part);
  const handedIn = JSON.parse(text) as Notebook;
  const answers = handedIn.cells.flatMap((each) => (each.kind === "question" ? [[each.about, each.answer]] : []));
  expect(Object.fromEntries(answers)).toEqual(predictions);
  expect(handedIn.cells.find(({ kind }) => kind === "decision")).toMatchObject({ chosen: "two" });
}, 60_000);
