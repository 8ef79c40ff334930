/** Studies put in and said on the page. */
import { readNotebook, type StudyCell } from "../../src/cells/index.ts";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook } from "./notebooks.ts";
import { expect, test } from "./page.ts";

test("a study is put in, said by its details, and stands in the file", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, {
    title: "Study",
    cells: [
      { id: "a1", kind: "given", name: "lean", formula: "4 deg", range: ["0 deg", "9 deg"] },
      { id: "a2", kind: "given", name: "reach", formula: "30 mm" },
      { id: "a3", kind: "derived", name: "rise", formula: "sin(lean) * reach", unit: "mm" },
    ],
    trials: [],
  });
  await cell(page, "rise").getByRole("button", { name: "edit formula of rise" }).press("Control+Enter");
  await page.getByRole("menuitem", { name: /^Study/ }).click();
  const details = page.locator(".details");
  const field = (label: string) => details.getByRole("textbox", { name: label, exact: true });
  const choice = (label: string) => details.getByRole("combobox", { name: label, exact: true });
  await field("name").fill("how high");
  await page.keyboard.press("Tab");
  await choice("what is asked").selectOption("best");
  await choice("is to be").selectOption("most");
  await choice("another given").fill("reach");
  await page.keyboard.press("Tab");
  await field("highest").nth(1).fill("50 mm");
  await page.keyboard.press("Tab");
  await field("lowest").nth(1).fill("20 mm");
  await page.keyboard.press("Enter");
  expect(await hindrances(page)).toEqual([]);

  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  let text = "";
  for await (const part of await (await download).createReadStream()) text += String(part);
  const study = readNotebook(text).cells.at(-1) as StudyCell;
  expect(study).toMatchObject({ name: "how_high", study: "best", results: ["rise"], goals: ["most"] });
  expect(study.inputs).toEqual([{ input: "lean" }, { input: "reach", range: ["20 mm", "50 mm"] }]);
});

test("how builds differ is said in full: the other half, the checks, the seed; what is wrong is said at its field", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, {
    title: "Halves",
    cells: [
      { id: "a1", kind: "given", name: "left", formula: "8 deg" },
      { id: "a2", kind: "given", name: "right", formula: "8 deg" },
      { id: "a3", kind: "derived", name: "apart", formula: "left - right", unit: "deg" },
      { id: "a4", kind: "check", name: "even", formula: "apart < 1 deg" },
      { id: "a5", kind: "check", name: "steep", formula: "left > 7 deg" },
      { id: "s", kind: "study", name: "halves", study: "tolerance", inputs: [], results: ["apart"], builds: 300 },
    ],
    trials: [],
  });
  await cell(page, "halves").getByRole("button", { name: "more for halves" }).click();
  await page.getByRole("menuitem", { name: /^Details/ }).click();
  const details = page.locator(".details");
  const field = (label: string) =>
    details
      .getByRole("textbox", { name: label })
      .or(details.getByRole("combobox", { name: label }))
      .first();
  const fill = async (label: string, text: string): Promise<void> => {
    await field(label).fill(text);
    await page.keyboard.press("Tab");
  };
  // No input says how far it may be off, so that is said where one can be named.
  await expect
    .poll(() => details.locator("label", { hasText: "given that is changed" }).locator(".fault").textContent())
    .toMatch(/how far/);
  await fill("given that is changed", "left");
  await expect
    .poll(() => details.locator("label", { hasText: "± as built" }).locator(".fault").textContent())
    .toMatch(/± ?\./);
  await fill("± as built", "1 deg");
  await fill("same of the other half", "right");
  await fill("how far they go together", "0.5");
  await field("checks that count").selectOption("even");
  await fill("seed of chance", "7");
  await expect.poll(() => details.locator(".fault").count()).toBe(0);
  // The study runs while its form is open; what is being typed stays.
  await field("how many are built").focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("40");
  await page.waitForTimeout(900);
  await page.keyboard.type("0");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "halves").textContent()).toMatch(/of 400 builds pass/);
  expect(await hindrances(page)).toEqual([]);
  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  let text = "";
  for await (const part of await (await download).createReadStream()) text += String(part);
  expect(readNotebook(text).cells.at(-1)).toMatchObject({
    inputs: [{ input: "left", plus_minus: "1 deg", pair: "right", correlation: 0.5 }],
    checks: ["even"],
    builds: 400,
    seed: 7,
  });
});
