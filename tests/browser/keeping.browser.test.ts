import type { Page } from "playwright-core";
import { inject } from "vitest";
import { cell, enterFormula, openNotebook, setFormula, title, trainer, value, withoutDialogs } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const kept = (page: Page) => page.locator(".kept").textContent();

/** True where leaving the page would ask the person. */
const warns = (page: Page): Promise<boolean> =>
  page.evaluate(() => !window.dispatchEvent(new Event("beforeunload", { cancelable: true })));

test("an edit is kept within a second, and a reload brings the notebook back as it was", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  await setFormula(page, "half", "215 mm");
  await expect.poll(() => value(page, "half")).toBe("215 mm");
  await page.waitForTimeout(1000);
  expect(await kept(page)).toBe("kept");
  // So that leaving the page cannot be what keeps it.
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new Error("too late");
    };
  });
  await page.reload();
  await expect.poll(() => title(page)).toBe("Trainer");
  await expect.poll(() => value(page, "half")).toBe("215 mm");
  await expect.poll(() => page.locator(".saving").textContent()).toBe("changed since saved");
});

test("the first notebook is kept only once it is edited, and a fresh browser shows it as it comes", async ({
  open,
}) => {
  const { page } = await open();
  await expect.poll(() => title(page)).not.toBe("");
  const first = await title(page);
  await page.waitForTimeout(800);
  expect(await kept(page)).toBe("");
  await page.getByRole("button", { name: "edit the title" }).click();
  await page.keyboard.type("Mine");
  await page.keyboard.press("Enter");
  await expect.poll(() => kept(page)).toBe("kept");
  const other = await page.context().newPage();
  await page.close();
  await other.goto(inject("appUrl"));
  await expect.poll(() => title(other)).toBe("Mine");
  expect(first).not.toBe("Mine");
});

test("leaving right after an edit keeps it, and so does a half-typed formula that had no effect yet", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => kept(page)).toBe("kept");
  await setFormula(page, "half", "220 mm");
  const box = await enterFormula(page, "tip_break");
  await box.fill("9 deg +");
  await page.reload();
  await expect.poll(() => value(page, "half")).toBe("220 mm");
  await expect.poll(() => cell(page, "tip_break").locator("code.formula").textContent()).toBe("9 deg +");
});

test("leaving while the storage is still busy with the edit before keeps both", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => kept(page)).toBe("kept");
  // A storage that is asked what it has, and does not come to an end with its answer.
  await page.evaluate(() => {
    const get = IDBObjectStore.prototype.get;
    const again = (store: IDBObjectStore, key: IDBValidKey | IDBKeyRange): void => {
      get.call(store, key).onsuccess = () => again(store, key);
    };
    IDBObjectStore.prototype.get = function (key) {
      document.documentElement.dataset.asked = "";
      const request = get.call(this, key);
      request.addEventListener("success", (event) => {
        event.stopImmediatePropagation();
        again(this, key);
      });
      return request;
    };
  });
  await setFormula(page, "half", "220 mm");
  await page.locator("html[data-asked]").waitFor();
  await setFormula(page, "tip_break", "8 deg");
  await page.reload();
  await expect.poll(() => value(page, "half")).toBe("220 mm");
  await expect.poll(() => value(page, "tip_break")).toBe("8 deg");
});

test("half-typed text and a half-written answer come back after the tab is closed without a word", async ({ open }) => {
  const { page } = await open();
  const asking = trainer.cells.map((each) => (each.kind === "question" ? { ...each, answer: null } : each));
  await openNotebook(page, { ...trainer, cells: asking });
  await page.getByRole("textbox", { name: "your prediction" }).fill("more than 8");
  const box = await enterFormula(page, "half");
  await box.fill("200 mm *");
  await page.waitForTimeout(1000);
  const other = await page.context().newPage();
  // No event of leaving is sent.
  await page.close({ runBeforeUnload: false });
  await other.goto(inject("appUrl"));
  await expect.poll(() => other.getByRole("textbox", { name: "your prediction" }).inputValue()).toBe("more than 8");
  await expect.poll(() => cell(other, "half").locator("code.formula").textContent()).toBe("200 mm *");
});

test("leaving warns only where changes would be lost", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => kept(page)).toBe("kept");
  expect(await warns(page)).toBe(false);
  await setFormula(page, "half", "220 mm");
  expect(await warns(page)).toBe(false);
  await expect.poll(() => kept(page)).toBe("kept");
  expect(await warns(page)).toBe(false);
});

test("where nothing can be stored the person is told, leaving warns, and saving to a file works", async ({ open }) => {
  const { page } = await open({ storage: false });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  await expect.poll(() => kept(page)).toBe("✕ not kept");
  await expect.poll(() => page.getByRole("alert").textContent()).toContain("save them to a file");
  // As it stands in its file.
  expect(await warns(page)).toBe(false);
  await setFormula(page, "half", "220 mm");
  expect(await warns(page)).toBe(true);
  await withoutDialogs(page);
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  expect((await download).suggestedFilename()).toBe("trainer.json");
  await expect.poll(() => warns(page)).toBe(false);
});

test("where the storage is full the person is told, nothing is lost, and once there is room all is kept", async ({
  open,
}) => {
  const { page } = await open();
  await expect.poll(() => title(page)).toBe("Plover, a club glider");
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(inject("appUrl"));
  await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  await openNotebook(page, trainer);
  await expect
    .poll(() => page.getByRole("alert").textContent(), { timeout: 10_000 })
    .toContain("The storage of this browser is full");
  expect(await kept(page)).toBe("✕ not kept");
  await setFormula(page, "half", "220 mm");
  await expect.poll(() => value(page, "half")).toBe("220 mm");
  expect(await warns(page)).toBe(true);
  await withoutDialogs(page);
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  expect((await download).suggestedFilename()).toBe("trainer.json");
  await devtools.send("Storage.overrideQuotaForOrigin", { origin });
  await setFormula(page, "half", "225 mm");
  await expect.poll(() => kept(page)).toBe("kept");
  expect(await page.getByRole("alert").textContent()).not.toContain("full");
  await page.reload();
  await expect.poll(() => value(page, "half")).toBe("225 mm");
  expect(await title(page)).toBe("Trainer");
});
