import type { Page } from "playwright-core";
import type { Notebook } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

/** The trainer with its question not answered yet, about `about`. */
const asking = (about: string): Notebook => ({
  ...trainer,
  cells: trainer.cells.map((each) => (each.kind === "question" ? { ...each, about, answer: null } : each)),
});
const text = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).allTextContents()).join(" ").replace(/\s+/g, " ");

test("by keyboard alone: hidden everywhere until a prediction is kept, then both stand side by side and can be told apart", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, asking("eda"));
  await expect.poll(() => value(page, "loss")).toMatch(/%$/);
  await expect.poll(() => value(page, "eda")).toContain("answer the question first");
  expect(await value(page, "enough_dihedral")).toContain("answer the question first");
  expect(await text(page, ".checks")).toContain("1 not known");
  await expect.poll(() => cell(page, "note").textContent()).toContain("The V would be hidden");
  await expect.poll(() => text(page, "#board .problem")).toContain("Hidden until the question about eda is answered.");
  expect(await page.locator("#board svg.drawing").count()).toBe(1);
  expect(await page.locator("#board svg title").allTextContents()).not.toContain("What righting costs");
  // A given that moves tells nothing either.
  await page.getByRole("slider", { name: "slide tip_break", exact: true }).press("ArrowRight");
  await expect.poll(() => cell(page, "loss").locator(".change").count()).toBe(1);
  expect(await cell(page, "eda").locator(".change").count()).toBe(0);
  expect(await text(page, "spanwise-page")).not.toMatch(/10\.\d deg/);
  expect(await hindrances(page)).toEqual([]);

  await cell(page, "eda").getByRole("link", { name: "answer the question first" }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.matches("textarea.answer"))).toBe(true);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => text(page, ".unfinished")).toContain("Write down a prediction first.");
  expect(await value(page, "eda")).toContain("answer the question first");
  await page.getByLabel("your prediction").focus();
  await page.keyboard.type("about 7 deg");
  await page.keyboard.press("Tab");
  await page.keyboard.type("the tips are short");
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => value(page, "eda")).toMatch(/^[\d.]+ deg$/);
  const asked = cell(page, "question about eda");
  await expect.poll(() => asked.textContent()).toContain("about 7 deg");
  expect((await asked.locator("output").textContent())?.trim()).toBe(await value(page, "eda"));
  expect(await asked.textContent()).toContain("the tips are short");
  await expect.poll(() => page.locator("#board svg.drawing").count()).toBe(2);
  expect(await value(page, "enough_dihedral")).toContain("holds");

  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("say why they differ");
  await page.keyboard.press("Enter");
  await page.keyboard.type("far out they have a long arm");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Control+Enter");
  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  const file = JSON.parse(await read(await (await download).createReadStream())) as Notebook;
  expect(file.cells.find(({ kind }) => kind === "question")).toMatchObject({
    answer: "about 7 deg",
    because: "the tips are short\n\nfar out they have a long arm",
  });
});

test("a teacher asks again, and is asked first", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const again = async (answer: string): Promise<void> => {
    await cell(page, "question about eda").hover();
    await page.getByRole("button", { name: "more for question about eda" }).click();
    await page.getByRole("menuitem", { name: "Ask again" }).click();
    await page.getByRole("dialog").getByRole("button", { name: answer }).click();
  };
  await again("Keep it as it is");
  expect(await value(page, "eda")).toMatch(/deg$/);
  await again("Ask again");
  await expect.poll(() => value(page, "eda")).toContain("answer the question first");
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
});

test("a table, a wing or a given asked about shows neither entries, drawing, knob nor formula", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, asking("panels.break"));
  await expect.poll(() => value(page, "panels")).toContain("answer the question first");
  expect(await cell(page, "panels").locator("table").count()).toBe(0);
  await openNotebook(page, asking("main_wing"));
  await expect.poll(() => value(page, "main_wing")).toContain("answer the question first");
  await expect.poll(() => text(page, "#board svg title")).not.toContain("Front view");
  await openNotebook(page, asking("half"));
  await expect.poll(() => value(page, "half")).toContain("answer the question first");
  expect(await cell(page, "half").textContent()).not.toContain("200");
  expect(await cell(page, "half").getByRole("slider").count()).toBe(0);
});

async function read(stream: AsyncIterable<Buffer>): Promise<string> {
  let all = "";
  for await (const part of stream) all += part.toString();
  return all;
}
