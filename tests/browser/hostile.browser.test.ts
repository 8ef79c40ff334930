/** A stranger's notebook shows its texts and nothing more: no markup of it becomes part of the page, no script of it runs. */
import type { Notebook } from "../../src/cells/index.ts";
import { cell, openNotebook, value } from "./notebooks.ts";
import { expect, test } from "./page.ts";

const markup = `<img src="x" onerror="window.ran = true"><script>window.ran = true</script>&lt;b&gt;`;

const hostile: Notebook = {
  title: `Title ${markup}`,
  cells: [
    {
      id: "a1",
      kind: "note",
      text: `# ${markup}\n\n[link](javascript:window.ran=true) [data](data:text/html,x) ![picture](https://example.org/x.png) <${"b>"}`,
    },
    { id: "a2", kind: "given", name: "constructor", formula: "12 deg", unit: "deg", reason: markup },
    {
      id: "a3",
      kind: "table",
      name: "panels",
      columns: [
        { name: "part", text: true },
        { name: "length", unit: "mm" },
        { name: "root_chord", unit: "mm" },
        { name: "tip_chord", unit: "mm" },
        { name: "sweep", unit: "mm" },
        { name: "break", unit: "deg" },
        { name: "washout", unit: "deg" },
        { name: "thickness", unit: "mm" },
      ],
      rows: [[markup, "200", "60", "60", "0", "constructor", "0", "3"]],
    },
    { id: "a4", kind: "derived", name: "main_wing", formula: "wing(panels)" },
    { id: "a5", kind: "derived", name: "eda", formula: "equivalent_dihedral(main_wing)", unit: "deg" },
    { id: "a6", kind: "derived", name: "text_of", formula: `"${markup.replaceAll('"', "'")}"` },
    { id: "a7", kind: "drawing", view: "front", of: "main_wing", title: markup },
    { id: "a8", kind: "chart", view: "trade_off", sweep: "constructor", x: "eda", y: ["eda"], title: markup },
    {
      id: "a9",
      kind: "decision",
      question: markup,
      chosen: markup,
      why: markup,
      alternatives: [{ option: markup, why_not: markup }],
      revisit: markup,
    },
    { id: "a10", kind: "question", about: "text_of", prompt: markup, answer: markup, because: markup },
  ],
  trials: [{ name: markup, set: { constructor: "8 deg" } }],
};

test("markup in every text of a notebook stays text, on page and board, at rest and while it is edited", async ({
  open,
}) => {
  const { page } = await open();
  await openNotebook(page, hostile);
  await expect.poll(() => value(page, "eda")).toBe("12 deg");
  await page.locator("[role=figure], [role=img]").first().waitFor();
  for (const name of ["edit reason of constructor", "edit note", "edit formula of text_of"]) {
    await page.getByRole("button", { name }).first().click();
    await page.keyboard.press("End");
    await page.keyboard.type(" <i>more</i>");
    await page.keyboard.press("Escape");
  }
  const found = await page.evaluate(() => ({
    ran: (window as unknown as { ran?: boolean }).ran ?? false,
    pictures: document.querySelectorAll("main img, main script, main i, main iframe").length,
    addresses: [...document.querySelectorAll("a[href]")]
      .map((link) => link.getAttribute("href") ?? "")
      .filter((address) => !/^(#|https?:|\.|\/)/.test(address)),
  }));
  expect(found).toEqual({ ran: false, pictures: 0, addresses: [] });
  expect(await cell(page, "constructor").textContent()).toContain("<script>window.ran = true</script>&lt;b&gt;");
});

test("a table of ten thousand rows, a note of a hundred thousand marks and a list of thousands leave the page usable", async ({
  open,
}) => {
  const { page } = await open();
  const large: Notebook = {
    title: "Large",
    cells: [
      { id: "a1", kind: "given", name: "step", formula: "2 g", unit: "g", range: ["1 g", "5 g", "1 g"] },
      { id: "a2", kind: "derived", name: "total", formula: "sum(rows.mass) + step", unit: "g" },
      { id: "a3", kind: "note", text: "*a **b ".repeat(20_000) },
      { id: "a4", kind: "note", text: "> ".repeat(20_000) },
      { id: "a5", kind: "derived", name: "list", formula: "rows.mass * 2", unit: "g" },
      {
        id: "a6",
        kind: "table",
        name: "rows",
        columns: [{ name: "mass", unit: "g" }],
        rows: Array.from({ length: 10_000 }, () => ["1"]),
      },
    ],
    trials: [],
  };
  await openNotebook(page, large);
  await expect.poll(() => value(page, "total"), { timeout: 20_000 }).toBe("10002 g");
  await page.getByRole("slider", { name: "slide step" }).focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => value(page, "total"), { timeout: 10_000 }).toBe("10003 g");
  await cell(page, "rows").scrollIntoViewIfNeeded();
  expect((await value(page, "list")).length).toBeLessThan(400);
}, 60_000);
