import type { Page } from "playwright-core";
import { readNotebook } from "../../src/cells/index.ts";
import { looks } from "../../src/views/sheets/marks.ts";
import { blanksNotebook } from "../views/sheets/blanks-notebook.ts";
import { hindrances } from "./hindrances.ts";
import { openNotebook } from "./notebooks.ts";
import { expect, test } from "./page.ts";
import { linesOnPage, type Ruled } from "./printed-page.ts";

const straight = readNotebook(blanksNotebook());
const sheet = (page: Page) => page.getByRole("group", { name: "Blanks", exact: true });

const pages = (page: Page) => sheet(page).getByRole("img", { name: /at true size/ });

/** Lines that are off by no more than 0.2 mm, from the middle of the stroke at one end to that at the other. */
const near = (lines: Ruled["level"], length: number, layer: "frame" | "cut" = "frame") =>
  lines.filter((line) => Math.abs(line.length - looks[layer].width - length) < 0.2);

function expectTrueSize({ level, upright }: Ruled): void {
  // Rules of 100 mm and 4 in both ways.
  for (const lines of [level, upright]) {
    expect(near(lines, 100).length).toBeGreaterThan(0);
    expect(near(lines, 4 * 25.4).length).toBeGreaterThan(0);
  }
  // The blank of 120 mm by 60 mm, right and left: two edges each way, a chord apart and a length apart.
  const edges = near(level, 120, "cut");
  expect(edges).toHaveLength(4);
  const [first] = edges;
  const below = edges.filter(({ x }) => Math.abs(x - (first?.x ?? 0)) < 0.2).map(({ y }) => y - (first?.y ?? 0));
  expect(below.some((gap) => Math.abs(gap - 60) < 0.2)).toBe(true);
  const ends = near(upright, 60, "cut").map(({ x }) => x - (first?.x ?? 0));
  expect(ends.some((gap) => Math.abs(gap - 120) < 0.2)).toBe(true);
}

/** Prints as the button does, into a file in place of the dialog. */
async function printed(page: Page): Promise<Uint8Array> {
  await page.evaluate(() => {
    // The print is held open until it has been taken.
    window.print = () => document.body.classList.add("asked-to-print");
  });
  await sheet(page).getByRole("button", { name: "Print Blanks" }).click();
  await page.locator("body.asked-to-print").waitFor();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  return pdf;
}

test("a sheet is printed at true size and nothing else with it: rules and a blank are measured in its pixels", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, straight);
  await expect.poll(() => pages(page).count()).toBe(1);
  expect(await pages(page).getAttribute("aria-label")).toContain("Blanks, page 1 of 1 at true size");
  expect(await hindrances(page)).toEqual([]);
  const pdf = await printed(page);
  const ruled = await linesOnPage(page, pdf);
  expect(ruled.width).toBeCloseTo(297, 0);
  expect(ruled.height).toBeCloseTo(210, 0);
  expectTrueSize(ruled);
  const text = Buffer.from(pdf).toString("latin1");
  expect(text.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
}, 120_000);

test("files of a sheet are handed over, the PDF at true size too, and a later edit warns of the old sheet", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, straight);
  const take = async (kind: string): Promise<Buffer> => {
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      sheet(page)
        .getByRole("button", { name: `Blanks as ${kind}` })
        .click(),
    ]);
    expect(file.suggestedFilename()).toBe(`a-straight-one-blanks.${kind.toLowerCase()}`);
    const chunks: Buffer[] = [];
    for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks);
  };
  expect((await take("SVG")).toString()).toContain('<g id="cut">');
  expect((await take("DXF")).toString()).toContain("LWPOLYLINE");
  const pdf = await take("PDF");
  await expect.poll(() => sheet(page).textContent()).toContain("As printed or saved on");
  const slider = page.getByRole("slider", { name: "slide tip_length" });
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => sheet(page).locator(".moved-since").textContent()).toContain("do not cut from the old sheet");
  expect(await sheet(page).locator(".moved-since li").first().textContent()).toMatch(
    /right 2: was 80\.0 × 60\.0 × 2 mm, is 8/,
  );
  await page.keyboard.press("ArrowLeft");
  await expect.poll(() => sheet(page).locator(".moved-since").count()).toBe(0);
  expectTrueSize(await linesOnPage(page, pdf));
}, 120_000);

test("after printing the person says whether it came out; only then is the sheet taken as printed", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, straight);
  await printed(page);
  await sheet(page).getByRole("button", { name: "No", exact: true }).click();
  expect(await sheet(page).textContent()).not.toContain("As printed");
  await printed(page);
  await sheet(page).getByRole("button", { name: "Yes, this is the sheet in use" }).click();
  await expect.poll(() => sheet(page).textContent()).toContain("As printed or saved on");
  // The paper is there: nothing takes that back.
  expect(await page.getByRole("button", { name: /^Undo/ }).isDisabled()).toBe(true);
});

test("an edit that is taken back after a print leaves a sheet on the bench that shows it, and the page says so", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, straight);
  await page.getByRole("slider", { name: "slide tip_length" }).focus();
  await page.keyboard.press("ArrowRight");
  // What is still being computed is not printed.
  await expect
    .poll(() => page.getByLabel("value of tip_length", { exact: true }).textContent())
    .not.toMatch(/^\s*80\s*mm/);
  await expect
    .poll(() => sheet(page).locator(".sheet-made").getAttribute("aria-busy"), { timeout: 20_000 })
    .toBe("false");
  await printed(page);
  await sheet(page).getByRole("button", { name: "Yes, this is the sheet in use" }).click();
  await expect.poll(() => sheet(page).textContent()).toContain("As printed or saved on");
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => sheet(page).textContent()).toContain("do not cut from the old sheet");
  await page.getByRole("button", { name: /^Redo/ }).click();
  await expect.poll(() => sheet(page).textContent()).toContain("As printed or saved on");
});

/** Chooses what the menu of the sheet offers. */
async function choose(page: Page, item: string): Promise<void> {
  await sheet(page).getByRole("button", { name: "more for Blanks", exact: true }).click();
  await page.getByRole("menuitem", { name: item }).click();
}
/** A place for files that is not there until `put` is called in the page. */
const slowPlace = (page: Page) =>
  page.evaluate(() => {
    const writable = { write: async () => undefined, close: async () => undefined };
    const place = new Promise((take) => {
      Object.assign(window, { put: () => take({ name: "x", createWritable: async () => writable }) });
    });
    const ask = () => {
      document.body.classList.add("asked-for-a-place");
      return place;
    };
    Object.defineProperty(window, "showSaveFilePicker", { value: ask, configurable: true });
  });
const put = (page: Page) => page.evaluate(() => (window as unknown as { put(): void }).put());

test("a file that is put away after another notebook was opened, or its sheet deleted, leaves no mark there", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, straight);
  for (const leave of [
    () => openNotebook(page, { ...straight, title: "Another" }, "another.json"),
    () => choose(page, "Delete"),
  ]) {
    await page.evaluate(() => document.body.classList.remove("asked-for-a-place"));
    await slowPlace(page);
    await sheet(page).getByRole("button", { name: "Blanks as SVG" }).click();
    await page.locator("body.asked-for-a-place").waitFor();
    await leave();
    await put(page);
  }
  await page.getByRole("button", { name: /^Undo/ }).click();
  await expect.poll(() => pages(page).count()).toBe(1);
  expect(await sheet(page).textContent()).not.toContain("As printed or saved on");
});

test("a place that takes no file is told, and the sheet is not taken as saved", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, straight);
  await page.evaluate(() => {
    const ask = async () => ({ name: "x", createWritable: () => Promise.reject(new Error("the disk is full")) });
    Object.defineProperty(window, "showSaveFilePicker", { value: ask, configurable: true });
  });
  await sheet(page).getByRole("button", { name: "Blanks as SVG" }).click();
  await expect.poll(() => page.locator("body").textContent()).toContain("could not be saved: the disk is full");
  expect(await sheet(page).textContent()).not.toContain("As printed or saved on");
});

test("what a question hides is not printed either, and a sheet with an error says which", async ({ open }) => {
  const { page } = await open();
  const question = {
    id: "q1",
    kind: "question",
    about: "area",
    prompt: "How large?",
    answer: null,
    because: "",
  } as const;
  const area = { id: "d1", kind: "derived", name: "area", formula: "blanks.area", unit: "cm^2" } as const;
  await openNotebook(page, { ...straight, cells: [...straight.cells, area, question] });
  await expect.poll(() => sheet(page).textContent()).toContain("answer the question first");
  await page.evaluate(() => {
    window.print = () => document.body.classList.add("asked-to-print");
  });
  for (const item of ["Print", "Save as PDF"]) {
    await choose(page, item);
    await expect.poll(() => page.locator("body").textContent()).toContain("hidden until the question is answered");
  }
  expect(await page.locator("body.asked-to-print").count()).toBe(0);
  await openNotebook(page, readNotebook(blanksNotebook("nowhere")), "nowhere.json");
  await choose(page, "Print");
  await expect.poll(() => page.locator("spanwise-notice").textContent()).toContain("no cell named nowhere");
});

test("a sheet of what cannot be cut says so at its place", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, readNotebook(blanksNotebook("main_wing")));
  await expect.poll(() => sheet(page).locator(".fault").textContent()).toContain("nothing that can be cut");
});
