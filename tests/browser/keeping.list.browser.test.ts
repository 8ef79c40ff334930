import type { Locator, Page } from "playwright-core";
import { hindrances } from "./hindrances.ts";
import { openNotebook, title, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const list = (page: Page): Locator => page.getByRole("dialog", { name: "Notebooks" });

/** Opens the list and waits for all that stands in it. */
async function openList(page: Page): Promise<Locator> {
  await page.getByRole("button", { name: "Notebooks", exact: true }).click();
  await list(page).getByRole("button", { name: "Plover, a club glider", exact: true }).waitFor();
  return list(page);
}

const titles = (page: Page): Promise<string[]> => list(page).locator(".notebook-title").allTextContents();

/** Opens the trainer, and another like it under the title "Second". */
async function openTwo(page: Page): Promise<void> {
  await openNotebook(page, trainer);
  await expect.poll(() => title(page)).toBe("Trainer");
  await openNotebook(page, { ...trainer, title: "Second", cells: trainer.cells.slice(0, 3) }, "second.json");
  await expect.poll(() => title(page)).toBe("Second");
}

test("kept notebooks stand in a list with front view, time and file, and are opened from it by keyboard", async ({
  open,
}) => {
  const { page } = await open();
  await openTwo(page);
  const dialog = await openList(page);
  expect(await titles(page)).toEqual(["Second", "Trainer"]);
  const [second, first] = await dialog.locator(".meta").allTextContents();
  expect(second).toMatch(/^open now · changed (just now|\d min ago) · as in second\.json$/);
  expect(first).toMatch(/^changed (just now|\d min ago) · as in trainer\.json$/);
  // Two panels a side; the other has no wing.
  expect(await dialog.locator("li", { hasText: "Trainer" }).locator("svg path").count()).toBe(4);
  expect(await dialog.locator("li", { hasText: "Second" }).locator("svg").count()).toBe(0);
  await page.keyboard.press("Escape");
  expect(await page.locator("dialog").count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe("Notebooks");
  await page.keyboard.press("Enter");
  const entry = dialog.getByRole("button", { name: /^Trainer changed/ });
  await entry.waitFor();
  for (let step = 0; step < 9 && !(await entry.evaluate((each) => each === document.activeElement)); step++) {
    await page.keyboard.press("Tab");
  }
  await page.keyboard.press("Enter");
  await expect.poll(() => title(page)).toBe("Trainer");
  await expect.poll(() => value(page, "half")).toBe("200 mm");
  expect(await page.locator(".saving").textContent()).toBe("saved");
  // The one that was open last comes up again, though the other was changed later.
  await page.reload();
  await expect.poll(() => title(page)).toBe("Trainer");
});

test("one that ships is begun as a copy of one's own, and unchanged not twice", async ({ open }) => {
  const { page } = await open();
  const begin = async (): Promise<void> => {
    await (await openList(page)).getByRole("button", { name: "A new glider", exact: true }).click();
    await expect.poll(() => title(page)).toBe("A new glider");
    await expect.poll(() => page.locator(".kept").textContent()).toBe("kept");
  };
  await expect.poll(() => title(page)).toBe("Plover, a club glider");
  const empty = await openList(page);
  expect(await empty.textContent()).toContain("A notebook is kept as soon as you change something in it.");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await begin();
  await begin();
  await openList(page);
  expect(await titles(page)).toEqual(["A new glider"]);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "edit the title" }).click();
  await page.keyboard.type("Mine");
  await page.keyboard.press("Enter");
  await begin();
  await openList(page);
  expect(await titles(page)).toEqual(["A new glider", "Mine"]);
});

test("a notebook is duplicated, deleted and brought back, and where the open one is deleted the one before opens", async ({
  open,
}) => {
  const { page } = await open({ colorScheme: "dark", viewport: { width: 390, height: 760 } });
  await openTwo(page);
  const dialog = await openList(page);
  await dialog.getByRole("button", { name: "Duplicate Trainer" }).click();
  await expect.poll(() => titles(page)).toEqual(["Trainer (copy)", "Second", "Trainer"]);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Trainer (copy)");
  await dialog.getByRole("button", { name: "Delete Trainer", exact: true }).click();
  await expect.poll(() => titles(page)).toEqual(["Trainer (copy)", "Second"]);
  expect(await dialog.getByRole("status").textContent()).toBe("Deleted “Trainer”.");
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Enter");
  await expect.poll(() => titles(page)).toContain("Trainer");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Trainer");
  await dialog.getByRole("button", { name: "Delete Second" }).click();
  await expect.poll(() => titles(page)).toEqual(["Trainer (copy)", "Trainer"]);
  await page.keyboard.press("Escape");
  // The copy has never been open.
  await expect.poll(() => title(page)).toBe("Trainer");
  await expect.poll(() => value(page, "half")).toBe("200 mm");
});

test("a damaged notebook is told, the open one stays, and what is left of it can be saved as a file", async ({
  open,
}) => {
  const { page } = await open();
  await openTwo(page);
  await expect.poll(() => page.locator(".kept").textContent()).toBe("kept");
  await page.evaluate(async () => {
    const opening = indexedDB.open("spanwise");
    await new Promise((resolve) => opening.addEventListener("success", resolve));
    const store = opening.result.transaction("texts", "readwrite").objectStore("texts");
    const all = store.getAll();
    await new Promise((resolve) => all.addEventListener("success", resolve));
    for (const each of all.result) {
      if (each.text.includes("Trainer")) store.put({ ...each, text: each.text.slice(0, 90) });
    }
    await new Promise((resolve) => store.transaction.addEventListener("complete", resolve));
    opening.result.close();
  });
  await (await openList(page)).getByRole("button", { name: /^Trainer changed/ }).click();
  await expect.poll(() => page.getByRole("alert").textContent()).toContain("“Trainer” could not be opened.");
  expect(await title(page)).toBe("Second");
  const dialog = await openList(page);
  const download = page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Save as file: Trainer" }).click();
  expect((await download).suggestedFilename()).toBe("trainer.json");
});
