import { cell, enterFormula, figureText, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

test("a formula that is typed takes effect with each key: values, front view and chart follow", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  const before = { eda: await value(page, "eda"), front: await figureText(page, "Front view of main_wing") };
  const chart = await figureText(page, "What righting costs");
  expect(before.front).toContain("Span");
  const box = await enterFormula(page, "tip_break");
  await box.fill("14 deg");
  await expect.poll(() => value(page, "tip_break")).toBe("14 deg");
  await expect.poll(() => value(page, "eda")).not.toBe(before.eda);
  await expect.poll(() => figureText(page, "Front view of main_wing")).not.toBe(before.front);
  await expect.poll(() => figureText(page, "What righting costs")).not.toBe(chart);
  // Still being entered: nothing had to be confirmed.
  expect(await box.isVisible()).toBe(true);
});

test("Escape brings the old formula back and gives the focus back to the button", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const box = await enterFormula(page, "half");
  await box.fill("230 mm");
  await expect.poll(() => value(page, "twice")).toBe("460 mm");
  await page.keyboard.press("Escape");
  await expect.poll(() => value(page, "twice")).toBe("400 mm");
  expect(await box.count()).toBe(0);
  await expect.poll(() => page.evaluate(() => document.activeElement?.ariaLabel)).toBe("edit formula of half");
});

test("the knob of a slider sets the formula in the given's own unit, and everything follows while it moves", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const slider = page.getByRole("slider", { name: "slide tip_break", exact: true });
  const eda = await value(page, "eda");
  const front = await figureText(page, "Front view of main_wing");
  const box = await slider.boundingBox();
  if (!box) throw new Error("got no place of the slider, expected one");
  await page.mouse.move(box.x + box.width * 0.45, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height / 2, { steps: 6 });
  await expect.poll(() => value(page, "tip_break")).toBe("15 deg");
  await expect.poll(() => value(page, "eda")).not.toBe(eda);
  await expect.poll(() => figureText(page, "Front view of main_wing")).not.toBe(front);
  await page.mouse.up();
  expect(await cell(page, "tip_break").locator("code").textContent()).toBe("15 deg");
  expect(await slider.getAttribute("aria-valuetext")).toBe("15 deg");
  await expect.poll(() => cell(page, "tip_break").textContent()).toContain("+6 on the baseline");
  await slider.press("ArrowLeft");
  await expect.poll(() => value(page, "tip_break")).toBe("14.5 deg");
});

test("a key moves the knob on, never back, also while its cell is off the screen and its result waits", async ({
  open,
}) => {
  const { page } = await open();
  const slider = page.getByRole("slider", { name: "slide tip_break", exact: true });
  const before = Number(await slider.inputValue());
  await slider.evaluate((knob) => knob.closest("main, [id=page], .page")?.scrollTo(0, 1e6));
  await expect.poll(async () => (await slider.boundingBox())?.y ?? 0).toBeLessThan(-1000);
  const reached = await slider.evaluate(async (knob: HTMLInputElement) => {
    for (let press = 0; press < 8; press++) {
      knob.stepUp();
      knob.dispatchEvent(new Event("input", { bubbles: true }));
      knob.dispatchEvent(new Event("change", { bubbles: true }));
      await new Promise((pressed) => setTimeout(pressed));
    }
    return knob.value;
  });
  expect(Number(reached)).toBe(before + 4);
  await expect.poll(() => value(page, "tip_break")).toBe(`${before + 4} deg`);
});

test("keys pressed faster than the screen is drawn all count, one step each", async ({ open }) => {
  const { page } = await open();
  const slider = page.getByRole("slider", { name: "slide tip_break", exact: true });
  const before = Number(await slider.inputValue());
  await slider.focus();
  const keyboard = await page.context().newCDPSession(page);
  const send = (type: "rawKeyDown" | "keyUp", key: string, code: number) =>
    keyboard.send("Input.dispatchKeyEvent", { type, key, code: key, windowsVirtualKeyCode: code });
  const burst = async (key: string, code: number, presses: number): Promise<void> => {
    const events = Array.from({ length: presses }, () => [send("rawKeyDown", key, code), send("keyUp", key, code)]);
    await Promise.all(events.flat());
  };
  for (let turn = 1; turn <= 6; turn++) {
    await burst("ArrowRight", 39, 5);
    await expect.poll(() => value(page, "tip_break")).toBe(`${before + 2.5} deg`);
    expect(Number(await slider.inputValue())).toBe(before + 2.5);
    await burst("ArrowLeft", 37, 5);
    await expect.poll(() => value(page, "tip_break")).toBe(`${before} deg`);
  }
});

test("a knob that is dragged stays in the hand where its cell is drawn before the notebook has followed", async ({
  open,
}) => {
  const { page } = await open();
  const slider = page.getByRole("slider", { name: "slide tip_break", exact: true });
  const before = Number(await slider.inputValue());
  const held = await slider.evaluate(async (knob: HTMLInputElement) => {
    const cell = knob.closest(".cell") as HTMLElement & { requestUpdate(): void; updateComplete: Promise<unknown> };
    knob.stepUp(3);
    knob.dispatchEvent(new Event("input", { bubbles: true }));
    cell.requestUpdate();
    await cell.updateComplete;
    return knob.valueAsNumber;
  });
  expect(held).toBe(before + 1.5);
  await expect.poll(() => value(page, "tip_break")).toBe(`${before + 1.5} deg`);
});

test("a move of a knob draws its cell, what follows from it and the bar once, and no sheet around its figure", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const slider = page.getByRole("slider", { name: "slide tip_break", exact: true });
  const drawn = await slider.evaluate(async (knob: HTMLInputElement) => {
    interface Drawn extends HTMLElement {
      update(changed: unknown): void;
    }
    const counts: Record<string, number> = {};
    const all = [...document.querySelectorAll<Drawn>(".cell, spanwise-bar, spanwise-board, spanwise-sheet")];
    for (const each of all) {
      const { update } = each;
      const name = each.ariaLabel ?? each.localName;
      each.update = (changed) => {
        counts[name] = (counts[name] ?? 0) + 1;
        update.call(each, changed);
      };
    }
    knob.stepUp();
    knob.dispatchEvent(new Event("input", { bubbles: true }));
    for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
    return counts;
  });
  expect(drawn).toMatchObject({ tip_break: 1, eda: 1, "spanwise-bar": 1 });
  expect(Object.keys(drawn).filter((name) => /sheet|board/.test(name))).toEqual([]);
});

test("a wrong unit is marked at its term while it is typed, and the rest stays alive", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const before = await value(page, "twice");
  const box = await enterFormula(page, "twice");
  await box.fill("2 * half + 3 kg");
  await expect.poll(() => cell(page, "twice").locator(".fault").textContent()).toMatch(/length.*mass/s);
  const marked = () => page.locator("spanwise-formula-entry .faulty").allTextContents();
  await expect.poll(async () => (await marked()).join("")).toContain("3 kg");
  expect(await box.getAttribute("aria-invalid")).toBe("true");
  // The notebook keeps what it had until the formula is mended or left.
  expect(await value(page, "twice")).toBe(before);
  await page.keyboard.press("Enter");
  await expect.poll(() => cell(page, "twice").locator("mark").allTextContents()).not.toEqual([]);
  expect(await value(page, "twice")).toContain("no value");
  expect(await value(page, "eda")).toMatch(/deg$/);
  const again = await enterFormula(page, "twice");
  await again.fill("2 * half + 3 mm");
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "twice")).toBe("403 mm");
  expect(await cell(page, "twice").locator("mark, .fault").count()).toBe(0);
});

test("a text that cannot be read is kept as it is when the focus goes elsewhere", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const box = await enterFormula(page, "half");
  await box.fill("200 mm *");
  await page.getByRole("slider", { name: "slide tip_break", exact: true }).focus();
  await expect.poll(() => box.count()).toBe(0);
  expect(await cell(page, "half").locator("code").textContent()).toContain("200 mm *");
  await expect.poll(() => cell(page, "half").locator(".fault").textContent()).toContain("ends");
  const waiting = cell(page, "twice").locator(".waits");
  await expect.poll(() => waiting.textContent()).toContain("half");
  await waiting.getByRole("link", { name: "half" }).click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.ariaLabel)).toBe("edit formula of half");
});

test("a formula is entered, completed and left by keyboard alone", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit formula of eda" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("textbox", { name: "formula of eda" }).waitFor();
  // All is selected: typing replaces it.
  await page.keyboard.type("equ");
  const list = page.getByRole("listbox");
  await list.waitFor();
  expect(await list.getByRole("option").first().textContent()).toContain("equivalent_dihedral");
  await page.keyboard.press("Tab");
  await page.keyboard.type("main_w");
  await list.waitFor();
  await page.keyboard.press("Tab");
  await expect
    .poll(() => page.getByRole("textbox", { name: "formula of eda" }).textContent())
    .toBe("equivalent_dihedral(main_wing)");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.ariaLabel)).toBe("edit formula of eda");
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
});

test("fields of a record and units are offered where they can stand", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const box = await enterFormula(page, "twice");
  await box.fill("");
  await page.keyboard.type("main_wing.sp");
  const list = page.getByRole("listbox");
  await list.waitFor();
  expect(await list.getByRole("option").first().textContent()).toContain("span");
  await page.keyboard.press("Tab");
  await expect.poll(() => box.textContent()).toBe("main_wing.span");
  await page.keyboard.type(" + 12 m");
  await list.waitFor();
  expect((await list.getByRole("option").allTextContents()).join(" ")).toContain("mm");
  await page.keyboard.type("m");
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "twice")).toMatch(/mm$/);
  expect(await cell(page, "twice").locator("code").textContent()).toBe("main_wing.span + 12 mm");
});

test("a given is never offered the names of cells", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const box = await enterFormula(page, "half");
  await box.fill("");
  await page.keyboard.type("m");
  const list = page.getByRole("listbox");
  await list.waitFor();
  const offered = (await list.getByRole("option").allTextContents()).join(" ");
  expect(offered).toContain("max");
  expect(offered).not.toContain("main_wing");
});

test("a note and a reason are entered as plain text; Escape calls off", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const note = page.getByRole("group", { name: "note" }).first();
  await expect.poll(() => note.textContent()).toMatch(/The V would be [\d.]+ deg/);
  await note.hover();
  await note.getByRole("button", { name: "edit note" }).click();
  const text = page.getByRole("textbox", { name: "text of note" });
  await text.fill(
    "**Loss** is {loss}, <b>not</b> {nothing}. [more](https://example.org/x) [less](javascript:alert(1)) &amp;",
  );
  await text.press("Control+Enter");
  await expect.poll(() => note.textContent()).toMatch(/Loss is [\d.]+%, <b>not<\/b> {nothing}\. more less/);
  expect(await note.locator("strong").textContent()).toBe("Loss");
  expect(await note.textContent()).toContain("&amp;");
  expect(await note.locator("a[target]").evaluateAll((all) => all.map((each) => each.getAttribute("href")))).toEqual([
    "https://example.org/x",
  ]);
  await expect.poll(() => note.locator(".fault").textContent()).toContain("nothing");
  await page.getByRole("button", { name: "edit reason of tip_break" }).click();
  await page.getByRole("textbox", { name: "reason of tip_break" }).fill("for another reason");
  await page.keyboard.press("Escape");
  expect(await cell(page, "tip_break").textContent()).toContain("rolls out before");
});

test("the title is entered in place", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  await page.getByRole("button", { name: "edit the title" }).click();
  await page.getByRole("textbox", { name: "title of the notebook" }).fill("Sparrow");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.getByRole("heading", { level: 1 }).textContent()).toContain("Sparrow");
  await expect.poll(() => page.title()).toContain("Sparrow");
});

test("a drag, and a formula from entering to leaving, are each taken back by one undo", async ({ open }) => {
  const { page } = await open();
  await openNotebook(page, trainer);
  const slider = page.getByRole("slider", { name: "slide tip_break", exact: true });
  const box = await slider.boundingBox();
  if (!box) throw new Error("got no place of the slider, expected one");
  await page.mouse.move(box.x + box.width * 0.45, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height / 2, { steps: 6 });
  await page.mouse.up();
  await expect.poll(() => value(page, "tip_break")).toBe("15 deg");
  const half = await enterFormula(page, "half");
  await half.fill("");
  await page.keyboard.type("215 mm");
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "twice")).toBe("430 mm");
  await page.keyboard.press("Control+z");
  await expect.poll(() => value(page, "twice")).toBe("400 mm");
  await page.keyboard.press("Control+z");
  await expect.poll(() => value(page, "tip_break")).toBe("9 deg");
  await page.keyboard.press("Control+Shift+z");
  await expect.poll(() => value(page, "tip_break")).toBe("15 deg");
});
