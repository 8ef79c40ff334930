import type { Page } from "playwright-core";
import { hindrances } from "./hindrances.ts";
import { cell, openNotebook, trainer, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

/** Runs in the page: what has the focus, and whether that can be seen. */
function focusSeen(): { readonly of: string; readonly seen: boolean } {
  const active = document.activeElement as HTMLElement | SVGElement;
  const { outlineStyle, outlineWidth, borderBottomWidth, opacity } = getComputedStyle(active);
  const hasOutline = outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1.5;
  // Texts that are entered have a line under them; a knob has its outline on its thumb; a point has a ring of its own.
  const hasLine = active.matches("input[type=text], textarea") && Number.parseFloat(borderBottomWidth) >= 2;
  const hasRing = active.matches(".choice") && getComputedStyle(active).stroke !== "none";
  const isKnob = active.matches("input[type=range]");
  const { width, height, top, bottom } = active.getBoundingClientRect();
  const isThere = width > 0 && height > 0 && bottom > 0 && top < innerHeight && Number(opacity) > 0.9;
  const name = active.ariaLabel ?? active.textContent?.trim().slice(0, 40);
  return { of: `${active.localName} ${name}`, seen: isThere && (hasOutline || hasLine || hasRing || isKnob) };
}

async function walk(page: Page, most: number): Promise<{ unseen: string[]; stops: string[] }> {
  const [unseen, stops]: [string[], string[]] = [[], []];
  for (let step = 0; step < most; step++) {
    await page.keyboard.press("Tab");
    const { of, seen } = await page.evaluate(focusSeen);
    if (of.startsWith("body")) break;
    stops.push(of);
    if (!seen) unseen.push(of);
  }
  return { unseen, stops };
}

test.for([
  ["wide", { viewport: { width: 1440, height: 900 } }],
  ["dark phone", { viewport: { width: 390, height: 844 }, colorScheme: "dark" as const }],
  ["forced colours", { viewport: { width: 1200, height: 900 }, forcedColors: "active" as const }],
] as const)("by Tab alone every part is reached, and the focus is seen at each: %s", async ([, options], { open }) => {
  const { page } = await open({ ...options, reducedMotion: "reduce" });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  // The very first stop; from there on by Tab.
  await page.getByRole("link", { name: "Go to the page" }).focus();
  const { unseen, stops } = await walk(page, 140);
  expect(unseen).toEqual([]);
  const parts = [
    "Go to the board",
    "edit the title",
    "Find a cell",
    "edit formula of tip_break",
    "slide tip_break",
    "edit reason of tip_break",
    "more for panels",
    "board",
    "more for Front view on the board",
  ];
  expect(parts.filter((part) => !stops.some((stop) => stop.includes(part)))).toEqual([]);
});

test("nothing hinders with forced colours, nor in a menu, in the details and in the find field on a phone", async ({
  open,
}) => {
  const forced = await open({ forcedColors: "active" });
  await openNotebook(forced.page, trainer);
  await expect.poll(() => value(forced.page, "eda")).toMatch(/deg$/);
  expect(await hindrances(forced.page)).toEqual([]);
  const { page } = await open({ viewport: { width: 390, height: 844 }, hasTouch: true, colorScheme: "dark" });
  await openNotebook(page, trainer);
  await cell(page, "half").getByRole("button", { name: "more for half" }).click();
  expect(await hindrances(page)).toEqual([]);
  await page.getByRole("menuitem", { name: "Details" }).click();
  expect(await hindrances(page)).toEqual([]);
  await page.keyboard.press("Control+Shift+F");
  await page.getByRole("combobox", { name: "Find a cell" }).fill("w");
  expect(await hindrances(page)).toEqual([]);
});

test("with less motion asked for, nothing scrolls smoothly or fades", async ({ open }) => {
  const { page } = await open({ reducedMotion: "reduce" });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const moving = await page.evaluate(() =>
    [...document.querySelectorAll("*")]
      .filter((each) => {
        const { scrollBehavior, transitionDuration, animationName } = getComputedStyle(each);
        return scrollBehavior === "smooth" || Number.parseFloat(transitionDuration) > 0 || animationName !== "none";
      })
      .map((each) => each.localName),
  );
  expect(moving).toEqual([]);
});

test("every target of a phone is at least 24 px, in menus, details, notices and the find field too", async ({
  open,
}) => {
  const { page } = await open({ viewport: { width: 360, height: 740 }, hasTouch: true });
  await openNotebook(page, trainer);
  await expect.poll(() => value(page, "eda")).toMatch(/deg$/);
  const small = () =>
    page.locator("button, select, input, textarea, [role=option], [role=menuitem], .choice").evaluateAll((all) =>
      all
        .map((each) => ({ name: each.ariaLabel ?? each.textContent?.trim(), box: each.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.width < 23.9 || box.height < 23.9))
        .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
    );
  expect(await small()).toEqual([]);
  await page.getByRole("button", { name: "more for half" }).click();
  expect(await small()).toEqual([]);
  await page.getByRole("menuitem", { name: "Details" }).click();
  expect(await small()).toEqual([]);
  await page.getByRole("button", { name: "more for twice" }).click();
  await page.getByRole("menuitem", { name: "Delete" }).click();
  await page.locator(".notice button").waitFor();
  expect(await small()).toEqual([]);
  await page.getByRole("button", { name: "Find a cell" }).click();
  await page.getByRole("combobox", { name: "Find a cell" }).fill("w");
  expect(await small()).toEqual([]);
});
