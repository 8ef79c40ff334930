import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Wing } from "../../../src/library/index.ts";
import { made, plover, stepped } from "../../../src/views/drawings/example-gliders.ts";
import { type GliderOnPaper, wingAlone } from "../../../src/views/drawings/glider.ts";
import type { GliderDrawingOptions } from "../../../src/views/drawings/glider-options.ts";
import { planViewExamples } from "../../../src/views/drawings/plan-view.example.ts";
import { livePlanView, planView } from "../../../src/views/drawings/plan-view.ts";
import { anyGlider, anyOptions, likelyGlider } from "./any-glider.ts";
import { inkOf, linesOf, touching } from "./ink.ts";
import { document, plain } from "./page.ts";
import { expectPicture } from "./snapshot.ts";

const draw = (glider: GliderOnPaper, options: Partial<GliderDrawingOptions> = {}, baseline?: GliderOnPaper) =>
  planView(
    { glider, baseline: baseline && { glider: baseline, name: "as flown" } },
    { name: "plover", ...options },
    { document },
  );

const figuresOf = (svg: SVGSVGElement) => [...svg.querySelectorAll(".figure")].map((text) => text.textContent);

/** The corners of the outline that is drawn as the n-th piece of wood. */
const outlineOf = (svg: SVGSVGElement, index: number) =>
  (svg.querySelectorAll(".wood-layer .wood")[index]?.getAttribute("d") ?? "")
    .replace("Z", "")
    .slice(1)
    .split("L")
    .map((pair) => pair.split(",").map(Number) as [number, number]);

describe("the plan view", () => {
  it.each(planViewExamples.map((example, index) => [example.title, example, index + 1] as const))(
    "draws %s as kept, at 660 and 330 px",
    (_, { data, options }, number) => {
      for (const width of [660, 330]) {
        const kept = new URL(`plan-view-${number}-${width}.svg`, import.meta.url);
        expectPicture(planView(data, { ...options, width }, { document }), kept);
      }
    },
  );

  it("is an image whose title and description say what it shows", () => {
    const svg = draw(plover);
    expect(svg.getAttribute("role")).toBe("img");
    expect(svg.querySelector("title")?.textContent).toBe("Plan view of plover");
    expect(svg.querySelector("desc")?.textContent).toBe(
      "Seen from above, nose up. Span 479 mm, three panels a side, 105, 80 and 60 mm along the wood, chord 74 mm at the " +
        "root and 40 mm at the tip. Mean aerodynamic chord 65.9 mm, 110.7 mm from the middle. Balance point 31.4 mm " +
        "behind the root's leading edge, at 44% of the mean aerodynamic chord. Neutral point 42.8 mm behind the root's " +
        "leading edge, at 61.4% of the mean aerodynamic chord. Static margin 17.3%. Tailplane 150 mm span, tail arm " +
        "226 mm. Fin 46 mm long at its foot. Stick 380 mm long.",
    );
  });
  it("tells of a wing alone and of both halves where they differ", () => {
    const mended = planViewExamples[2]?.data.glider as GliderOnPaper;
    expect(draw(wingAlone(stepped)).querySelector("desc")?.textContent).toBe(
      "Seen from above, nose up. Span 451 mm, two panels a side, 140 and 90 mm along the wood, chord 80 mm at the root " +
        "and 36 mm at the tip. Mean aerodynamic chord 67 mm, 99.7 mm from the middle.",
    );
    expect(draw(mended, {}, wingAlone(stepped)).querySelector("desc")?.textContent).toBe(
      "Seen from above, nose up. Span 369 mm, two panels on the right, 110 and 85 mm along the wood, chord 72 mm at the " +
        "root and 42 mm at the tip; two panels on the left, 110 and 70 mm along the wood, chord 72 mm at the root and " +
        "46 mm at the tip. Mean aerodynamic chord 64.3 mm, 86 mm from the middle. Tailplane 130 mm span. Fin 38 mm " +
        "long at its foot. The thin line is as flown: span 451 mm, two panels a side, 140 and 90 mm along the wood, " +
        "chord 80 mm at the root and 36 mm at the tip.",
    );
  });
  it("tells span, chords, lengths of panels, mean chord and tail arm, and names both points", () => {
    expect(figuresOf(draw(plover)).toSorted()).toEqual([
      "105",
      "150",
      "226 tail arm",
      "40",
      "479 mm span",
      "60",
      "74",
      "80",
      "balance point",
      "mac 65.9",
      "neutral point",
    ]);
    expect(figuresOf(draw(plover, { unit: "in", fraction: 16 }))).toContain("≈ 18 7/8 in span");
  });

  it("is at true proportion, the right wing on the right, in one scale", () => {
    const svg = draw(plover, { width: 700, height: 2000 });
    const scale = (700 - 92) / plover.wing.span;
    const wing = outlineOf(svg, 0);
    const { x, y, chord } = plover.wing.stations;
    // Left tip to root to right tip along the leading edge.
    const [rootX, rootY] = wing[3] ?? [0, 0];
    wing.slice(3, 7).forEach(([px, py], index) => {
      expect(px - rootX).toBeCloseTo((y[index] ?? 0) * scale, 1);
      expect(py - rootY).toBeCloseTo((x[index] ?? 0) * scale, 1);
    });
    const [tipX, tipY] = wing[7] ?? [0, 0];
    expect(tipX - rootX).toBeCloseTo((y[3] ?? 0) * scale, 1);
    expect(tipY - rootY).toBeCloseTo(((x[3] ?? 0) + (chord[3] ?? 0)) * scale, 1);
    const [tailX, tailY] = outlineOf(svg, 1)[1] ?? [0, 0];
    expect(tailX - rootX).toBeCloseTo(0, 1);
    expect(tailY - rootY).toBeCloseTo((plover.tailplane?.x ?? 0) * scale, 1);
  });
  it("is no higher than asked for, as far as it can be read then", () => {
    const height = (most: number) => Number(draw(plover, { height: most }).getAttribute("height"));
    expect(height(600)).toBeLessThanOrEqual(600 + 16);
    expect(height(420)).toBeLessThanOrEqual(420 + 16);
    expect(height(100)).toBeGreaterThan(250);
  });
  it("puts the mean chord and both points where they are", () => {
    const svg = draw(plover, { width: 700, height: 2000 });
    const scale = (700 - 92) / plover.wing.span;
    const [rootX, rootY] = outlineOf(svg, 0)[3] ?? [0, 0];
    const [[fromX, fromY], [, toY]] = linesOf(svg, "angle")[0] as [[number, number], [number, number]];
    expect(rootX - fromX).toBeCloseTo(plover.wing.mac_y * scale, 1);
    expect(fromY - rootY).toBeCloseTo(plover.wing.mac_x * scale, 1);
    expect(toY - fromY).toBeCloseTo(plover.wing.mac * scale, 1);
    const circle = svg.querySelector("circle.mark");
    expect(Number(circle?.getAttribute("cy")) - rootY).toBeCloseTo((plover.balance?.x ?? 0) * scale, 1);
    const point = svg.querySelector("circle.mark-filled");
    expect(Number(point?.getAttribute("cy")) - rootY).toBeCloseTo((plover.neutral_x ?? 0) * scale, 1);
  });
  it("turns a skew joint line so that its rear end lies farther out", () => {
    const lines = linesOf(draw(wingAlone(stepped)), "joint-line");
    const middle = 330;
    expect(lines).toHaveLength(2);
    for (const line of lines) {
      const [front, back] = line as [[number, number], [number, number]];
      const [out, aft] = [Math.abs(back[0] - middle) - Math.abs(front[0] - middle), back[1] - front[1]];
      expect((Math.atan2(out, aft) * 180) / Math.PI).toBeCloseTo(6, 0);
    }
  });
  it("keeps a ring where the balance point was, and thin lines of what has moved alone", () => {
    const moved = { ...plover, balance: { ...plover.balance, x: 0.02, y: 0, z: 0 } } as GliderOnPaper;
    expect(draw(moved, {}, plover).querySelectorAll(".ghost-layer .ghost")).toHaveLength(1);
    expect(draw(plover, {}, plover).querySelectorAll(".ghost-layer .ghost")).toHaveLength(0);
  });

  it.each([".datum", ".edge", ".joint-line", ".tick", ".angle", ".ghost", ".dimension", ".mark", ".mark-filled"])(
    "would be found out with a label on its %s, by the check of the next test",
    (line) => {
      const svg = draw(plover, {}, planViewExamples[0]?.data.baseline?.glider);
      const of = inkOf(svg).find((point) => point.of === line.slice(1));
      const figure = svg.querySelector(".figure");
      figure?.setAttribute("x", String((of?.x ?? 0) - 5));
      figure?.setAttribute("y", String((of?.y ?? 0) + 4));
      expect(touching(svg).join()).toContain(`"${figure?.textContent}" touches`);
    },
  );
  it("has no label that touches a line, another label or the edge, whatever the glider and the sheet", () => {
    fc.assert(
      fc.property(
        anyGlider,
        fc.option(anyGlider, { nil: undefined, freq: 3 }),
        anyOptions,
        (glider, baseline, options) => {
          expect(touching(draw(glider, options, baseline))).toEqual([]);
        },
      ),
      { seed: 31, numRuns: 100, endOnFailure: true },
    );
  });
  it("leaves no figure out of a glider that somebody might build, and says so where it must", () => {
    const note = (svg: SVGSVGElement) => svg.querySelector(".note")?.textContent;
    fc.assert(
      fc.property(likelyGlider, fc.integer({ min: 320, max: 900 }), (glider, width) => {
        expect(note(draw(glider, { width }))).not.toContain("without room");
      }),
      { seed: 32, numRuns: 60, endOnFailure: true },
    );
    const panels = {
      root_chord: 0.03,
      tip_chord: 0.03,
      sweep: 0,
      break: 0,
      washout: 0,
      thickness: 0.002,
      length: 0.004,
    };
    const many = Object.entries(panels).map(([column, value]) => [column, Array.from({ length: 40 }, () => value)]);
    const crowded = made<Wing>("wing", { panels: Object.fromEntries(many) });
    expect(note(draw(wingAlone(crowded), { width: 240 }))).toMatch(/^mm, \d+ figures? without room$/);
  });

  it("redrawn in place is the same as drawn afresh", () => {
    fc.assert(
      fc.property(anyGlider, anyGlider, anyGlider, anyOptions, (before, after, baseline, options) => {
        const first = { glider: before, baseline: { glider: baseline, name: "as flown" } };
        const live = livePlanView(first, { name: "a" }, { document });
        live.update({ glider: after }, { name: "plover", ...options });
        expect(plain(live.element)).toEqual(plain(draw(after, options)));
      }),
      { seed: 33, numRuns: 30, endOnFailure: true },
    );
  });
  it("refuses an option it does not know", () => {
    // @ts-expect-error an unknown option is a type error too
    expect(() => planView({ glider: plover }, { name: "a", colour: "red" }, { document })).toThrow(
      'got the option "colour" for the plan view, expected one of name, width, unit, fraction, measure, height',
    );
  });
});
