import { mkdtemp, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Download, Page } from "playwright-core";
import { writeNotebook } from "../../src/cells/index.ts";
import { enterFormula, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const trainerText = writeNotebook(trainer);

/** Saves by download and gives the file's name and text. */
async function save(page: Page): Promise<{ name: string; text: string }> {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const file = await download;
  return { name: file.suggestedFilename(), text: await textOf(file) };
}

async function textOf(file: Download): Promise<string> {
  const path = join(await mkdtemp(join(tmpdir(), "spanwise-")), "saved.json");
  await file.saveAs(path);
  return readFile(path, "utf8");
}

const saving = (page: Page) => page.locator(".saving").textContent();

test("a notebook that is opened and saved is the same, byte by byte, edits aside", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainerText);
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  expect(await save(page)).toEqual({ name: "trainer.json", text: trainerText });
  const box = await enterFormula(page, "tip_break");
  await box.fill("14 deg");
  await expect.poll(() => saving(page)).toBe("changed since saved");
  const edited = await save(page);
  expect(edited.text).toBe(trainerText.replace('"formula": "9 deg"', '"formula": "14 deg"'));
  await expect.poll(() => saving(page)).toBe("saved");
  await openNotebook(page, edited.text, "edited.json");
  await expect.poll(() => value(page, "tip_break")).toBe("14 deg");
  expect((await save(page)).text).toBe(edited.text);
});

test("what is still being entered is part of what is saved, by Ctrl S too", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainerText);
  const box = await enterFormula(page, "half");
  await box.fill("210 mm *");
  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  expect(await textOf(await download)).toContain('"formula": "210 mm *"');
});

test("an edit that is taken back leaves nothing to save", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainerText);
  const box = await enterFormula(page, "half");
  await box.fill("210 mm");
  await expect.poll(() => saving(page)).toBe("changed since saved");
  await page.keyboard.press("Escape");
  await expect.poll(() => saving(page)).toBe("saved");
});

test("a broken or a later file leaves the open notebook as it is, and a message names the place", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainerText);
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  const alarm = page.getByRole("alert");
  await openNotebook(page, trainerText.replace('"kind": "check"', '"kind": "chek"'), "broken.json");
  await expect.poll(() => alarm.textContent()).toMatch(/broken\.json was not opened.*cells\[8\]/s);
  await openNotebook(page, trainerText.replace('"version": 1', '"version": 99'), "later.json");
  await expect.poll(() => alarm.textContent()).toContain("later Spanwise");
  await openNotebook(page, "half a not", "letter.txt");
  await expect.poll(() => alarm.textContent()).toContain("letter.txt");
  expect(await value(page, "tip_break")).toBe("9 deg");
  expect(await saving(page)).toBe("saved");
  await alarm.getByRole("button", { name: "Dismiss" }).click();
  await expect.poll(() => alarm.textContent()).not.toContain("letter.txt");
});

test("opening over changes that are neither kept nor saved asks first", async ({ open }) => {
  const { page } = await open({ storage: false });
  await openNotebook(page, trainerText);
  const box = await enterFormula(page, "half");
  await box.fill("210 mm");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Open", exact: true }).click();
  const dialog = page.getByRole("dialog", { name: "Save your changes first?" });
  await dialog.getByRole("button", { name: "Keep this one open" }).click();
  expect(await dialog.count()).toBe(0);
  expect(await value(page, "half")).toBe("210 mm");
  await page.keyboard.press("Control+o");
  const chooser = page.waitForEvent("filechooser");
  await dialog.getByRole("button", { name: "Open without saving" }).click();
  await (await chooser).setFiles({ name: "x.json", mimeType: "application/json", buffer: Buffer.from(trainerText) });
  await expect.poll(() => value(page, "half")).toBe("200 mm");
});

test("a file that is dropped on the window is opened", async ({ open }) => {
  const { page } = await open();
  const drop = (kind: string) =>
    page.evaluate(
      ([name, text]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text ?? ""], "dropped.json", { type: "application/json" }));
        window.dispatchEvent(new DragEvent(name ?? "", { dataTransfer: transfer, cancelable: true, bubbles: true }));
      },
      [kind, trainerText],
    );
  await drop("dragover");
  await expect.poll(() => page.locator(".drop").textContent()).toContain("Drop the notebook");
  await drop("drop");
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  expect(await page.locator(".drop").count()).toBe(0);
});

test("leaving the page, where nothing can be kept, warns only of changes since the file", async ({ open }) => {
  const { page } = await open({ storage: false });
  await openNotebook(page, trainerText);
  const isWarned = () =>
    page.evaluate(() => {
      const event = new Event("beforeunload", { cancelable: true });
      window.dispatchEvent(event);
      return event.defaultPrevented;
    });
  expect(await isWarned()).toBe(false);
  const box = await enterFormula(page, "half");
  await box.fill("210 mm");
  expect(await isWarned()).toBe(true);
  await page.keyboard.press("Escape");
  expect(await isWarned()).toBe(false);
});
