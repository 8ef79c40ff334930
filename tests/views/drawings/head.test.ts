import { expect, test } from "vitest";
import { mended, plover, ploverBefore } from "../../../src/views/drawings/example-gliders.ts";
import { ghostsInWords, headMarks } from "../../../src/views/drawings/head.ts";
import { planView } from "../../../src/views/drawings/plan-view.ts";
import { sideView } from "../../../src/views/drawings/side-view.ts";
import { estimateWidth } from "../../../src/views/drawings/text-size.ts";
import { textsOf } from "./ink.ts";
import { document } from "./page.ts";

const seen = { seen: "seen from the front, mm", unit: "mm", leftOut: 0 };
const room = (width: number) => ({ left: 4, top: 0, right: width - 4, bottom: 100 });
const textsIn = (width: number, names: readonly string[], baseline?: string): string[] =>
  headMarks({ ...seen, baseline, further: names }, 16, room(width), estimateWidth).flatMap(({ text }) => text ?? []);

test("every thin line has its name over the drawing, the baseline last", () => {
  expect(textsIn(660, ["steep", "flat"], "the baseline").slice(1).toReversed()).toEqual([
    "steep",
    "flat",
    "the baseline",
  ]);
  expect(textsIn(660, [])).toEqual(["seen from the front, mm"]);
});

test("on a narrow sheet names are cut short, and none reaches over the edge", () => {
  const marks = headMarks(
    { ...seen, baseline: "the baseline", further: ["with tips of fifteen degrees", "a flat middle", "long"] },
    16,
    room(330),
    estimateWidth,
  );
  for (const { text, attributes } of marks)
    if (text !== undefined) expect(Number(attributes.x)).toBeGreaterThanOrEqual(4);
});

test("lines are told in words by their names", () => {
  expect(ghostsInWords({ name: "the baseline", told: "span 480 mm" }, [{ name: "long", told: "span 500 mm" }])).toEqual(
    ["The thin line is the baseline: span 480 mm.", "A dashed line is long: span 500 mm."],
  );
});

test.each([
  ["plan", planView],
  ["side", sideView],
])("a %s view draws each further glider in dashes of its own, and says so", (_, draw) => {
  const further = [
    { glider: ploverBefore, name: "long tail" },
    { glider: mended, name: "mended" },
  ];
  const svg = draw({ glider: plover, further }, { name: "plover" }, { document });
  expect(svg.querySelectorAll(".ghost-layer .further-1, .ghost-layer .further-2")).toHaveLength(2);
  expect(textsOf(svg).map(({ text }) => text)).toEqual(expect.arrayContaining(["long tail", "mended"]));
  expect(svg.querySelector("desc")?.textContent).toContain("A dashed line is mended:");
});
