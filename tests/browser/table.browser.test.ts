import { cell, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const focused = "document.activeElement?.ariaLabel";

test("an entry is edited by click, and values follow", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const eda = await value(page, "eda");
  await page.getByRole("button", { name: "edit panels row 1 break" }).click();
  const box = page.getByRole("textbox", { name: "panels row 1 break" });
  await box.fill("8");
  await expect.poll(() => value(page, "eda")).not.toBe(eda);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(focused)).toBe("edit panels row 2 break");
});

test("entries are reached by arrow keys, replaced by typing, gone through by Tab, called off by Escape", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit panels row 1 length" }).focus();
  await page.keyboard.press("ArrowDown");
  expect(await page.evaluate(focused)).toBe("edit panels row 2 length");
  await page.keyboard.type("95");
  await expect.poll(() => page.getByRole("textbox", { name: "panels row 2 length" }).textContent()).toBe("95");
  await page.keyboard.press("Tab");
  await expect.poll(() => page.evaluate(focused)).toBe("edit panels row 2 root_chord");
  await expect
    .poll(() => cell(page, "panels").locator("tbody tr").nth(1).locator("td").nth(1).textContent())
    .toContain("95");
  await page.keyboard.press("Enter");
  await page.getByRole("textbox", { name: "panels row 2 root_chord" }).fill("60");
  await page.keyboard.press("Escape");
  await expect.poll(() => page.evaluate(focused)).toBe("edit panels row 2 root_chord");
  expect(await cell(page, "panels").locator("tbody tr").nth(1).locator("td").nth(2).textContent()).toContain("66");
});

test("an entry that is a formula tells what it comes to", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const entry = cell(page, "panels").locator("tbody tr").first().locator("td").nth(1);
  await expect.poll(() => entry.locator(".computed").textContent()).toBe("120");
  expect(await entry.locator("code").textContent()).toBe("0.6 * half");
});

test("a faulty entry is marked in its place and the table says which it is", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit panels row 2 thickness" }).click();
  const box = page.getByRole("textbox", { name: "panels row 2 thickness" });
  await box.fill("2 kg");
  await expect.poll(() => cell(page, "panels").locator(".fault").textContent()).toContain("mass");
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "panels").locator("td.wrong mark").allTextContents()).not.toEqual([]);
  await expect.poll(() => cell(page, "panels").locator(".fault").textContent()).toContain("Row 2, column thickness");
  await expect.poll(() => cell(page, "main_wing").locator(".waits").textContent()).toContain("panels");
  expect(await value(page, "half")).toBe("200 mm");
});

test("a text column holds plain text", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit panels row 1 part" }).click();
  await page.getByRole("textbox", { name: "panels row 1 part" }).fill("inner (2 * half");
  await page.keyboard.press("Enter");
  expect(await cell(page, "panels").locator("tbody td").first().textContent()).toContain("inner (2 * half");
  expect(await cell(page, "panels").locator(".fault").count()).toBe(0);
});

test("rows are added and removed beside a table that has the focus", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const rows = cell(page, "panels").locator("tbody tr");
  await page.getByRole("button", { name: "edit panels row 2 length" }).focus();
  await cell(page, "panels").getByRole("button", { name: "add a row" }).click();
  await expect.poll(() => rows.count()).toBe(3);
  await expect.poll(() => page.evaluate(focused)).toBe("edit panels row 3 part");
  await cell(page, "panels").getByRole("button", { name: "remove row 3" }).click();
  await expect.poll(() => rows.count()).toBe(2);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
});
