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
