import type { Page } from "playwright-core";
import { inject } from "vitest";
import { hindrances } from "./hindrances.ts";
import { enterFormula, openNotebook, setFormula, title, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const banner = (page: Page) => page.locator("spanwise-reading");
const said = async (page: Page): Promise<string> => (await banner(page).getByRole("status").textContent()) ?? "";
const edits = (page: Page) => page.getByRole("button", { name: "edit formula of half", exact: true });

/** Opens the trainer in a first tab, and a second tab beside it. */
async function openBoth(first: Page): Promise<Page> {
  await openNotebook(first, trainer);
  await expect.poll(() => value(first, "half")).toBe("200 mm");
  await expect.poll(() => first.locator(".kept").textContent()).toBe("kept");
  const second = await first.context().newPage();
  await second.goto(inject("appUrl"));
  await expect.poll(() => value(second, "half")).toBe("200 mm");
  return second;
}

test("a second tab is told, can only read, and follows along", async ({ open }) => {
  const { page: first } = await open();
  const second = await openBoth(first);
  expect(await said(second)).toContain("Another tab edits this notebook. Here it can only be read");
  expect(await said(first)).toBe("");
  expect(await hindrances(second)).toEqual([]);
  // Pointer, keys on an entry of the table, the knob and the title: nothing opens, and the person is told why.
  await edits(second).click();
  expect(await second.getByRole("textbox", { name: "formula of half" }).count()).toBe(0);
  await expect.poll(() => second.locator(".notice").textContent()).toContain("It can only be read here");
  await second.locator("[data-place='0:1']").focus();
  await second.keyboard.press("9");
  expect(await second.locator("spanwise-formula-entry").count()).toBe(0);
  await second.getByRole("slider", { name: "slide half" }).focus();
  await second.keyboard.press("ArrowRight");
  await second.getByRole("button", { name: "edit the title" }).click();
  expect(await second.getByRole("textbox", { name: "title of the notebook" }).count()).toBe(0);
  await second.locator(".prose").first().dblclick();
  expect(await second.getByRole("textbox", { name: "text of note" }).count()).toBe(0);
  await second.keyboard.press("Control+z");
  expect(await value(second, "half")).toBe("200 mm");
  await setFormula(first, "half", "214 mm");
  await expect.poll(() => value(second, "half")).toBe("214 mm");
  await expect.poll(() => value(second, "twice")).toBe("428 mm");
});

test("a tab that takes over gets the last edit of the other, half-typed too, which then can only read", async ({
  open,
}) => {
  const { page: first } = await open();
  const second = await openBoth(first);
  const box = await enterFormula(first, "half");
  await box.fill("222 mm");
  await second.getByRole("button", { name: "Edit it here" }).focus();
  await second.keyboard.press("Enter");
  await expect.poll(() => said(second)).toBe("");
  expect(await value(second, "half")).toBe("222 mm");
  await expect.poll(() => said(first)).toContain("Your last change is kept; here it can only be read.");
  expect(await first.getByRole("textbox", { name: "formula of half" }).count()).toBe(0);
  await setFormula(second, "half", "230 mm");
  await expect.poll(() => value(first, "half")).toBe("230 mm");
  // And back again.
  await first.getByRole("button", { name: "Edit it here" }).click();
  await expect.poll(() => said(first)).toBe("");
  await setFormula(first, "half", "240 mm");
  await expect.poll(() => value(second, "half")).toBe("240 mm");
  expect(await said(second)).toContain("Another tab edits this notebook now");
});

test("a tab that is loaded again goes on writing, and once it is closed the other one can", async ({ open }) => {
  const { page: first } = await open();
  const second = await openBoth(first);
  await first.reload();
  await expect.poll(() => value(first, "half")).toBe("200 mm");
  expect(await said(first)).toBe("");
  expect(await said(second)).not.toBe("");
  await setFormula(first, "half", "205 mm");
  await first.close();
  await expect.poll(() => said(second), { timeout: 10_000 }).toBe("");
  expect(await value(second, "half")).toBe("205 mm");
  await setFormula(second, "half", "206 mm");
  await expect.poll(() => value(second, "half")).toBe("206 mm");
});

test("from a tab that does not answer the notebook is taken, and what only that one has is told and not written over", async ({
  open,
}) => {
  const { page: first } = await open();
  const second = await openBoth(first);
  await first.evaluate(() => {
    // What it has not kept yet is what it cannot keep any more.
    IDBDatabase.prototype.transaction = () => {
      throw new Error("no more");
    };
    BroadcastChannel.prototype.postMessage = () => undefined;
  });
  await setFormula(first, "half", "111 mm");
  await expect.poll(() => first.locator(".kept").textContent()).toBe("✕ not kept");
  await second.getByRole("button", { name: "Edit it here" }).click();
  await expect.poll(() => said(second)).toBe("Asking the other tab for it …");
  await expect.poll(() => said(second), { timeout: 15_000 }).toBe("");
  await setFormula(second, "half", "222 mm");
  await expect.poll(() => said(first)).toContain("your last changes here are not in it");
  expect(await value(first, "half")).toBe("111 mm");
  expect(await banner(first).getByRole("button", { name: "Edit it here" }).count()).toBe(0);
  expect(await hindrances(first)).toEqual([]);
  expect(await value(second, "half")).toBe("222 mm");
});

test("a tab whose changes cannot be kept goes on writing, and the one that asked is told so", async ({ open }) => {
  const { page: first } = await open();
  const second = await openBoth(first);
  await first.evaluate(() => {
    IDBDatabase.prototype.transaction = () => {
      throw new Error("no more");
    };
  });
  await setFormula(first, "half", "111 mm");
  await second.getByRole("button", { name: "Edit it here" }).click();
  await expect.poll(() => second.locator(".notice").textContent()).toContain("changes that it cannot keep");
  expect(await said(second)).toContain("can only be read");
  expect(await said(first)).toBe("");
  await setFormula(first, "half", "112 mm");
  await expect.poll(() => value(first, "half")).toBe("112 mm");
});

test("a reader can go on with a copy, which both tabs list", async ({ open }) => {
  const { page: first } = await open();
  const second = await openBoth(first);
  await second.getByRole("button", { name: "Edit a copy" }).click();
  await expect.poll(() => title(second)).toBe("Trainer (copy)");
  await setFormula(second, "half", "190 mm");
  await expect.poll(() => value(second, "half")).toBe("190 mm");
  expect(await value(first, "half")).toBe("200 mm");
  await first.getByRole("button", { name: "Notebooks", exact: true }).click();
  const dialog = first.getByRole("dialog", { name: "Notebooks" });
  await expect
    .poll(() => dialog.locator(".notebook-title").allTextContents())
    .toEqual(expect.arrayContaining(["Trainer", "Trainer (copy)"]));
  await dialog.getByRole("button", { name: "Delete Trainer (copy)" }).click();
  await expect.poll(() => dialog.getByRole("status").textContent()).toContain("is being edited in another tab");
});
