import { enterFormula, figureText, openNotebook, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const matrix = "[-0.045, 0.036, 0, -9.81, -0.369, -2.02, 54, 0, 0.002, -0.04, -2.5, 0, 0, 0, 1, 0]";

/** Functions and charts load first, and a description waits until nothing moves. */
const patient = { timeout: 15_000 };

test("a chart of one result comes with the functions that load later, and follows", async ({ open }) => {
  const { page } = await open({ viewport: { width: 1440, height: 900 } });
  await openNotebook(page, {
    title: "A textbook's aeroplane",
    cells: [
      { id: "a", kind: "derived", name: "swings", formula: `longitudinal_roots(${matrix})` },
      { id: "b", kind: "chart", view: "modes", of: "swings", title: "How it swings" },
      { id: "c", kind: "derived", name: "phugoid", formula: "swings.phugoid.period", unit: "s" },
    ],
    trials: [],
  });
  await expect.poll(() => figureText(page, "How it swings"), patient).toMatch(/phugoid/i);
  const [before, told] = [await value(page, "phugoid"), await figureText(page, "How it swings")];
  await enterFormula(page, "swings");
  await page.keyboard.press("Control+a");
  await page.keyboard.insertText(`longitudinal_roots(${matrix.replace("-0.369", "-0.5")})`);
  await page.keyboard.press("Enter");
  await expect.poll(() => value(page, "phugoid"), patient).not.toBe(before);
  await expect.poll(() => figureText(page, "How it swings"), patient).not.toBe(told);
});
