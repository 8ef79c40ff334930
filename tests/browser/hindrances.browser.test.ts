import { hindrances } from "./hindrances.ts";
import { expect, test } from "./page.ts";

test("a field without a name is found, also inside a shadow root, while the page's policy stands", async ({ open }) => {
  const { page } = await open();
  const before = await hindrances(page);
  await page.evaluate(() => {
    const host = document.body.appendChild(document.createElement("div"));
    host.attachShadow({ mode: "open" }).append(document.createElement("input"));
  });
  const found = (await hindrances(page)).filter((each) => !before.includes(each));
  expect(found).toEqual([expect.stringMatching(/^label: .*,input$/)]);
});
