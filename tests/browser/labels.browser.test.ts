import type { Page } from "playwright-core";
import { openNotebook, trainer } from "./notebooks.ts";
import { expect, test } from "./page.ts";

/**
 * Runs in the page: every text of a drawing that touches a line, another text or the edge, measured as the browser has
 * set it in the real font.
 */
function touchingInPage(): string[] {
  return [...document.querySelectorAll<SVGSVGElement>("#board svg.drawing")].flatMap((svg) => {
    const { width, height } = svg.viewBox.baseVal;
    const texts = [...svg.querySelectorAll<SVGTextElement>("text")].map((element) => {
      const size = Number.parseFloat(getComputedStyle(element).fontSize);
      const { x, width: wide } = element.getBBox();
      const baseline = Number(element.getAttribute("y"));
      return { text: element.textContent, left: x, right: x + wide, top: baseline - 0.68 * size, bottom: baseline };
    });
    const points = [...svg.querySelectorAll<SVGGeometryElement>("path, circle")].flatMap((element) => {
      const shift = element.parentElement instanceof SVGGElement ? element.parentElement.transform.baseVal : null;
      const matrix = shift?.consolidate()?.matrix;
      const length = element.getTotalLength();
      return Array.from({ length: Math.ceil(length) }, (_, along) => {
        const { x, y } = element.getPointAtLength(along);
        return { x: x + (matrix?.e ?? 0), y: y + (matrix?.f ?? 0), of: element.getAttribute("class") };
      });
    });
    return texts.flatMap((text, index) => {
      const inside = points.find(({ x, y }) => x > text.left && x < text.right && y > text.top && y < text.bottom);
      const other = texts
        .slice(index + 1)
        .find(
          (each) =>
            each.left < text.right && text.left < each.right && each.top < text.bottom && text.top < each.bottom,
        );
      const isOut = text.left < 0 || text.top < 0 || text.right > width || text.bottom > height;
      return [
        ...(inside ? [`"${text.text}" touches a ${inside.of}`] : []),
        ...(other ? [`"${text.text}" touches "${other.text}"`] : []),
        ...(isOut ? [`"${text.text}" leaves the sheet`] : []),
      ];
    });
  });
}

const views = ["Front view", "Plan view", "Side view"];
async function drawn(page: Page): Promise<void> {
  for (const name of views) await page.getByRole("img", { name }).first().waitFor();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.waitForTimeout(200);
}

test("a label put on a line would be found out", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  await drawn(page);
  await page.evaluate(() => {
    const svg = document.querySelector("#board svg.drawing");
    const datum = svg?.querySelector<SVGGeometryElement>(".datum")?.getPointAtLength(40);
    const figure = svg?.querySelector(".figure");
    figure?.setAttribute("x", String((datum?.x ?? 0) - 5));
    figure?.setAttribute("y", String((datum?.y ?? 0) + 4));
  });
  expect((await page.evaluate(touchingInPage)).join()).toContain("touches a datum");
});

test.for([1440, 1024, 820, 390, 320])(
  "at %i px no label of Plover's drawings touches anything",
  async (width, { open }) => {
    const { page } = await open({ viewport: { width, height: 900 } });
    await drawn(page);
    expect(await page.locator("#board svg.drawing text").count()).toBeGreaterThan(20);
    expect(await page.evaluate(touchingInPage)).toEqual([]);
  },
);

test("nor while a knob goes through its range, over the thin line of how it was opened", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  await drawn(page);
  const knob = page.getByRole("slider", { name: "slide tip_break" });
  await knob.focus();
  await page.keyboard.press("Home");
  for (let step = 0; step < 5; step++) {
    await page.waitForTimeout(60);
    expect(await page.evaluate(touchingInPage)).toEqual([]);
    await page.keyboard.press("PageUp");
  }
});

test("nor on a wing of many short panels", async ({ open }) => {
  const { page } = await open({ viewport: { width: 900, height: 900 } });
  const rows = ["12", "30", "9", "40", "25", "14", "60"].map((length, index) => [
    `part ${index}`,
    ...[length, "60", "60", "0", index % 3 === 0 ? "6" : "1", "0", "2"],
  ]);
  const cells = trainer.cells.map((cell) => (cell.kind === "table" ? { ...cell, rows } : cell));
  const more = (["plan", "side"] as const).map(
    (view) => ({ id: view, kind: "drawing", view, of: "main_wing" }) as const,
  );
  await openNotebook(page, { ...trainer, cells: [...cells, ...more] });
  await drawn(page);
  expect(await page.evaluate(touchingInPage)).toEqual([]);
});
