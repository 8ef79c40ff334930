import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { functions, type Panels, type Wing } from "../../../src/library/index.ts";
import { frontViewExamples } from "../../../src/views/drawings/front-view.example.ts";
import { type FrontViewOptions, frontView, liveFrontView } from "../../../src/views/drawings/front-view.ts";
import { inkOf, linesOf, touching } from "./ink.ts";
import { document, plain } from "./page.ts";
import { expectPicture } from "./snapshot.ts";

const draw = (wing: Wing, options: Partial<FrontViewOptions> = {}, baseline?: Wing) =>
  frontView(
    { wing, baseline: baseline && { wing: baseline, name: "as flown" } },
    { name: "main_wing", ...options },
    { document },
  );

/** Lengths and thicknesses in mm, breaks in degrees. */
const panels = (length: readonly number[], breaks: readonly number[], thickness: readonly number[]): Panels => ({
  length: length.map((mm) => mm / 1000),
  root_chord: length.map(() => 0.07),
  tip_chord: length.map(() => 0.06),
  sweep: length.map(() => 0),
  break: breaks.map((degrees) => (degrees * Math.PI) / 180),
  washout: length.map(() => 0),
  thickness: thickness.map((mm) => mm / 1000),
});

function wingOf(right: Panels, left?: Panels): Wing {
  const refuse = (_: string | null, message: string): never => {
    throw new Error(message);
  };
  return functions.get("wing")?.compute({ panels: right, left }, refuse) as Wing;
}
const plover = wingOf(panels([105, 80, 60], [3, 7, 11], [3.2, 2.4, 2]));

/** One to six panels a side, cants from 0 to 30 degrees rising or falling, thin and thick, short and long. */
const anyPanels = fc
  .integer({ min: 1, max: 6 })
  .chain((count) => {
    const list = (min: number, max: number) =>
      fc.array(fc.double({ min, max, noNaN: true }), { minLength: count, maxLength: count });
    return fc.record({ length: list(15, 300), cant: list(0, 30), thickness: list(0.8, 12), sorted: fc.boolean() });
  })
  .map(({ length, cant, thickness, sorted }) => {
    const cants = sorted ? cant.toSorted((a, b) => a - b) : cant;
    return panels(
      length,
      cants.map((each, index) => each - (cants[index - 1] ?? 0)),
      thickness,
    );
  });
const anyWing = fc.oneof(
  { weight: 3, arbitrary: anyPanels.map((right) => wingOf(right)) },
  { weight: 1, arbitrary: fc.tuple(anyPanels, anyPanels).map(([right, left]) => wingOf(right, left)) },
);
const anyOptions = fc.record({
  width: fc.integer({ min: 320, max: 900 }),
  unit: fc.constantFrom("mm", "in", "m"),
});

describe("the front view", () => {
  it.each(frontViewExamples.map((example, index) => [example.title, example, index + 1] as const))(
    "draws %s as kept, at 660 and 330 px",
    (_, { data, options }, number) => {
      for (const width of [660, 330]) {
        const kept = new URL(`front-view-${number}-${width}.svg`, import.meta.url);
        expectPicture(frontView(data, { ...options, width }, { document }), kept);
      }
    },
  );

  it("is an image whose title and description say what it shows", () => {
    const svg = draw(plover);
    expect(svg.getAttribute("role")).toBe("img");
    expect(svg.querySelector("title")?.textContent).toBe("Front view of main_wing");
    expect(svg.querySelector("desc")?.textContent).toBe(
      "Span 479 mm, three panels a side at 3, 10 and 21 degrees, breaks 5.5 and 19.4 mm high, tips 40.9 mm high.",
    );
  });
  it("tells of both halves where they differ, and of the baseline", () => {
    const uneven = wingOf(panels([110, 85], [5, 9], [3, 3]), panels([120], [6], [3]));
    expect(draw(uneven, {}, plover).querySelector("desc")?.textContent).toBe(
      "Span 311 mm, two panels on the right at 5 and 14 degrees, breaks 9.6 mm high, that tip 30.2 mm high; " +
        "one panel on the left at 6 degrees, that tip 12.5 mm high. The thin line is as flown: " +
        "span 479 mm, three panels a side at 3, 10 and 21 degrees, breaks 5.5 and 19.4 mm high, tips 40.9 mm high.",
    );
  });

  it("is at true proportion: the wood's outline is the wing's, in one scale", () => {
    const svg = draw(plover, { width: 700 });
    const points = linesOf(svg, "edge").at(-1) ?? [];
    const [first = [0, 0], last = [0, 0]] = [points[0], points.at(-1)];
    const scale = (first[0] - last[0]) / plover.span;
    const { y, z } = plover.right.stations;
    // From the left tip, at the reader's right, to the right tip.
    const right = points.slice(-4);
    const root = right[0] ?? [0, 0];
    right.forEach(([px, py], index) => {
      expect(root[0] - px).toBeCloseTo((y[index] ?? 0) * scale, 1);
      expect(root[1] - py).toBeCloseTo((z[index] ?? 0) * scale, 1);
    });
  });
  it("gives the wood its true thickness, square to each panel", () => {
    const svg = draw(plover, { width: 900 });
    const scale = (900 - 88) / plover.span;
    const tip = svg.querySelectorAll(".wood")[2]?.getAttribute("d") ?? "";
    const [, outboard, above] = tip
      .replace("Z", "")
      .slice(1)
      .split("L")
      .map((pair) => pair.split(",").map(Number));
    const [x = 0, y = 0] = outboard ?? [];
    const [upX = 0, upY = 0] = above ?? [];
    expect(Math.hypot(upX - x, upY - y)).toBeCloseTo(0.002 * scale, 1);
    expect((Math.atan2(Math.abs(upX - x), y - upY) * 180) / Math.PI).toBeCloseTo(21, 0);
  });
  it("marks each joint, but none in the middle of a level centre panel", () => {
    expect(draw(plover).querySelectorAll(".joint")).toHaveLength(5);
    expect(draw(wingOf(panels([140, 90], [0, 18], [3, 3]))).querySelectorAll(".joint")).toHaveLength(2);
  });
  it("tells heights on one half and cants on the other, in the unit asked for", () => {
    const figures = (options: Partial<FrontViewOptions>) =>
      [...draw(plover, options).querySelectorAll(".figure")].map((text) => text.textContent);
    expect(figures({}).toSorted()).toEqual(["10°", "19.4", "21°", "3°", "40.9 mm", "479 mm span", "5.5"]);
    expect(figures({ unit: "in", fraction: 16 })).toContain("≈ 18 7/8 in span");
  });

  it.each([".datum", ".edge", ".joint", ".tick", ".angle", ".ghost", ".dimension"])(
    "would be found out with a label on its %s, by the check of the next test",
    (line) => {
      const svg = draw(plover, {}, wingOf(panels([105, 80, 60], [3, 7, 7], [3.2, 2.4, 2])));
      const of = inkOf(svg).find((point) => point.of === line.slice(1));
      const figure = svg.querySelector(".figure");
      figure?.setAttribute("x", String((of?.x ?? 0) - 5));
      figure?.setAttribute("y", String((of?.y ?? 0) + 4));
      expect(touching(svg).join()).toContain(`"${figure?.textContent}" touches`);
    },
  );
  it("has no label that touches a line, another label or the edge, whatever the wing and the width", () => {
    fc.assert(
      fc.property(anyWing, fc.option(anyWing, { nil: undefined, freq: 3 }), anyOptions, (wing, baseline, options) => {
        expect(touching(draw(wing, options, baseline))).toEqual([]);
      }),
      { seed: 3, numRuns: 150 },
    );
  });
  it("leaves no figure out of wings of up to four panels a side, and says so where it must", () => {
    fc.assert(
      fc.property(anyWing, fc.integer({ min: 320, max: 900 }), (wing, width) => {
        const svg = draw(wing, { width });
        const note = svg.querySelector(".note")?.textContent ?? "";
        if (wing.panels <= 4 && wing.left.length.length <= 4) expect(note).not.toContain("without room");
      }),
      { seed: 4, numRuns: 120 },
    );
  });

  it("redrawn in place is the same as drawn afresh", () => {
    fc.assert(
      fc.property(anyWing, anyWing, anyWing, anyOptions, (before, after, baseline, options) => {
        const live = liveFrontView(
          { wing: before, baseline: { wing: baseline, name: "as flown" } },
          { name: "a" },
          { document },
        );
        const { element } = live;
        live.update({ wing: after }, { name: "b", ...options });
        expect(live.element).toBe(element);
        expect(plain(element)).toEqual(plain(draw(after, { ...options, name: "b" })));
      }),
      { seed: 5, numRuns: 40 },
    );
  });
  it("keeps its elements while a number changes", () => {
    const live = liveFrontView({ wing: plover }, { name: "main_wing" }, { document });
    const before = [...live.element.querySelectorAll("*")];
    live.update({ wing: wingOf(panels([105, 80, 60], [3, 7, 10.5], [3.2, 2.4, 2])) }, { name: "main_wing" });
    expect([...live.element.querySelectorAll("*")]).toEqual(before);
  });
  it("refuses an option it does not know", () => {
    // @ts-expect-error an unknown option is a type error too
    expect(() => frontView({ wing: plover }, { name: "a", colour: "red" }, { document })).toThrow(
      'got the option "colour" for the front view, expected one of name, width, unit, fraction, measure',
    );
  });
  it("carries no style of its own, which the page's policy would block", () => {
    const svg = draw(plover, {}, plover);
    expect(svg.querySelectorAll("style, [style], script")).toHaveLength(0);
  });
});
