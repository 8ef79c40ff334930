import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  flightHistoryExamples,
  modesExamples,
  sinkPolarExamples,
  spanLoadingExamples,
} from "../../../src/views/charts/flights.example.ts";
import { livePlot, type PlotOptions, plot } from "../../../src/views/charts/plot.ts";
import type { PlotData, PlotPanel } from "../../../src/views/charts/plot-data.ts";
import { textsOf, touching } from "../drawings/ink.ts";
import { document, plain } from "../drawings/page.ts";
import { expectPicture } from "../drawings/snapshot.ts";

const draw = (data: PlotData, options: PlotOptions = {}) => plot(data, options, { document });
const texts = (svg: Element) => textsOf(svg).map(({ text }) => text);
/** Areas are no lines: labels may stand on them. */
const areas = ["area", "band"];

const examples = [
  ...spanLoadingExamples.map((each, index) => [`span-loading-${index + 1}`, each] as const),
  ...sinkPolarExamples.map((each, index) => [`sink-polar-${index + 1}`, each] as const),
  ...modesExamples.map((each, index) => [`modes-${index + 1}`, each] as const),
  ...flightHistoryExamples.map((each, index) => [`flight-history-${index + 1}`, each] as const),
];

const data: PlotData = {
  view: "some-plot",
  title: "Some plot",
  x: { label: "time", unit: "s" },
  panels: [
    {
      y: { label: "bank", unit: "deg" },
      curves: [
        { look: "ghost", places: [at(0, 0.3), at(4, 0.1)] },
        { look: "curve", name: "now", places: [at(0, 0.5), at(2, 0.1), at(4, 0.05)] },
      ],
      spots: [{ look: "point", x: 2, y: 0.1, text: "turns here" }],
      limits: [{ axis: "x", at: 3, text: "settled", look: "holds" }],
      bands: [{ low: [at(0, 0), at(4, 0)], high: [at(0, 0.2), at(4, 0.2)] }],
    },
  ],
  description: () => "It falls.",
};

function at(x: number, y: number) {
  return { x, y };
}

const anyCurve = fc
  .record({
    slope: fc.double({ min: -2, max: 2, noNaN: true }),
    swing: fc.double({ min: 0, max: 1, noNaN: true }),
    turns: fc.double({ min: 0, max: 30, noNaN: true }),
    look: fc.constantFrom("curve", "aside", "ghost"),
    name: fc.option(fc.constantFrom("load", "ellipse of the same lift", "a curve whose name goes on and on and on")),
    count: fc.integer({ min: 0, max: 120 }),
  })
  .map(({ slope, swing, turns, look, name, count }) => ({
    look,
    name: name ?? undefined,
    places: Array.from({ length: count }, (_, i) => {
      const x = (4 * i) / Math.max(1, count - 1);
      return at(x, slope * x + swing * Math.sin(turns * x));
    }),
  }));
const anyPanel: fc.Arbitrary<PlotPanel> = fc.record({
  y: fc.constantFrom(
    { label: "bank to the right", unit: "deg" },
    { label: "lift coefficient of the section", unit: "" },
  ),
  isDown: fc.boolean(),
  curves: fc.array(anyCurve, { maxLength: 3 }),
  spots: fc.array(
    fc.record({
      look: fc.constantFrom("point", "root", "before"),
      x: fc.double({ min: -1, max: 5, noNaN: true }),
      y: fc.double({ min: -3, max: 3, noNaN: true }),
      text: fc.constantFrom("", "stall 3.1 m/s", "Dutch roll: half in 0.327 s, swing of 0.829 s"),
    }),
    { maxLength: 5 },
  ),
  limits: fc.array(
    fc.record({
      axis: fc.constantFrom("x", "y"),
      at: fc.double({ min: -2, max: 6, noNaN: true }),
      text: fc.constantFrom("stall", "settled 2.96 s", ""),
      look: fc.constantFrom("holds", "moved"),
    }),
    { maxLength: 3 },
  ),
});
const anyData = fc
  .record({
    panels: fc.array(anyPanel, { minLength: 1, maxLength: 5 }),
    note: fc.option(fc.constantFrom("a short note", "a note that goes on and on ".repeat(6).trim())),
    before: fc.option(fc.constantFrom("the baseline", "the one that was flown at the autumn meeting")),
    isExact: fc.boolean(),
  })
  .map(({ panels, note, before, isExact }): PlotData => {
    const x = { label: "time since it was let go", unit: "s", ...(isExact && { isExact: true as const }) };
    return { ...data, x, panels, before: before ?? undefined, ...(note !== null && { note }) };
  });

const anyHeight = fc.option(fc.integer({ min: 150, max: 700 }), { nil: undefined });

describe("a plot", () => {
  it.each(examples)("draws %s as kept, at 660 and 330 px", (name, example) => {
    for (const width of [660, 330]) {
      const svg = draw(example.data, { ...example.options, width });
      expectPicture(svg, new URL(`${name}-${width}.svg`, import.meta.url));
    }
  });
  it.each(examples)("has no label of %s that touches a line, another label or the edge, at any width", (_, example) => {
    for (const width of [240, 290, 330, 390, 470, 560, 660, 740, 900]) {
      expect(touching(draw(example.data, { ...example.options, width }), areas), `at ${width} px`).toEqual([]);
    }
  });
  it("has none whatever it shows", () => {
    fc.assert(
      fc.property(anyData, fc.integer({ min: 320, max: 900 }), anyHeight, (shown, width, height) => {
        expect(touching(draw(shown, { width, height }), areas)).toEqual([]);
      }),
      { seed: 5, numRuns: 80 },
    );
  });
  it("is a picture with a title and a description in words, without anything that is no word", () => {
    for (const [, example] of examples) {
      const svg = draw(example.data);
      expect(svg.getAttribute("role")).toBe("img");
      expect(svg.querySelector("title")?.textContent).not.toBe("");
      expect(svg.querySelector("desc")?.textContent).toMatch(/^[A-Z].{40}/);
      expect(svg.outerHTML).not.toMatch(/NaN|undefined|Infinity|\[object/);
    }
  });
  it("says on each axis what and in which unit, and names curve, point and limit where they are", () => {
    expect(texts(draw(data))).toEqual(expect.arrayContaining(["bank, deg", "time, s", "now", "turns here", "settled"]));
  });
  it("says what the thin line is", () => {
    const svg = draw({ ...data, before: "the baseline" });
    expect(texts(svg)).toContain("the baseline");
    expect(svg.querySelectorAll("path.ghost").length).toBe(2);
  });
  it("draws greater values lower where that is how they go", () => {
    const [panel] = data.panels as [PlotPanel];
    const last = (svg: Element) => Number(svg.querySelector(".curve")?.getAttribute("d")?.split(",").at(-1));
    const first = (svg: Element) =>
      Number(
        svg
          .querySelector(".curve")
          ?.getAttribute("d")
          ?.match(/,([\d.]+)/)?.[1],
      );
    const [up, down] = [draw(data), draw({ ...data, panels: [{ ...panel, isDown: true }] })];
    expect(last(up)).toBeGreaterThan(first(up));
    expect(last(down)).toBeLessThan(first(down));
  });
  it("breaks a long note into lines", () => {
    const note = "the band is how far the sections leave it open, which nobody knows better than that";
    expect(draw({ ...data, note }, { width: 300 }).querySelectorAll(".note-layer text").length).toBeGreaterThan(1);
  });
  it("names every mode also on the strip above the page of a telephone", () => {
    const [{ data: all }] = modesExamples as [(typeof modesExamples)[0]];
    const alone = all.panels.map((panel) => ({
      ...panel,
      spots: panel.spots?.filter(({ look }) => look !== "before"),
    }));
    const svg = draw({ ...all, panels: alone, before: undefined } as PlotData, { width: 346, height: 207 });
    expect(texts(svg)).toEqual(expect.arrayContaining(["short period", "phugoid", "roll", "spiral", "Dutch roll"]));
  });
  it("tells the best glide at the line that touches the polar, and its speed at the point", () => {
    const [{ data: polar }] = sinkPolarExamples as [(typeof sinkPolarExamples)[0]];
    const [glide, speed] = [/^best glide [\d.]+ to 1$/, /^flattest at [\d.]+ m\/s$/];
    const labels = texts(draw(polar, { width: 660 }));
    expect(labels.filter((text) => glide.test(text))).toHaveLength(1);
    expect(labels.filter((text) => speed.test(text))).toHaveLength(1);
    expect(labels.filter((text) => text.startsWith("least sink"))).toHaveLength(1);
  });
  it("takes less height where there is less, and where it is little leaves minor panels and notes out", () => {
    const [panel] = data.panels as [PlotPanel];
    const minor = { ...panel, isMinor: true };
    const five = { ...data, panels: [panel, minor, panel, minor, panel], note: "and so it goes" };
    const [free, less, little] = [draw(five), draw(five, { height: 600 }), draw(five, { height: 210 })] as const;
    const heightOf = (svg: Element) => Number(svg.getAttribute("height"));
    expect(heightOf(less)).toBeLessThanOrEqual(600);
    expect(heightOf(free)).toBeGreaterThan(heightOf(less));
    expect(heightOf(little)).toBeLessThan(250);
    const count = (svg: Element) => texts(svg).filter((text) => text === "bank, deg").length;
    expect([free, less, little].map(count)).toEqual([5, 5, 3]);
    expect(texts(less)).toContain("and so it goes");
    expect(texts(little)).not.toContain("and so it goes");
  });
  it("redrawn in place is the same as drawn afresh", () => {
    for (const [, before] of examples) {
      for (const [, after] of examples) {
        const drawing = livePlot(before.data, before.options, { document });
        drawing.update(after.data, { width: 420 });
        expect(plain(drawing.element)).toEqual(plain(draw(after.data, { width: 420 })));
      }
    }
  });
  it("refuses an option it does not know", () => {
    // @ts-expect-error an unknown option is a type error too
    expect(() => draw(data, { colour: "red" })).toThrow('got the option "colour"');
  });
});
