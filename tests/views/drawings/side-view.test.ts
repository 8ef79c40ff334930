import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mended, plover, stepped } from "../../../src/views/drawings/example-gliders.ts";
import { type GliderOnPaper, wingAlone } from "../../../src/views/drawings/glider.ts";
import type { GliderDrawingOptions } from "../../../src/views/drawings/glider-options.ts";
import { sideViewExamples } from "../../../src/views/drawings/side-view.example.ts";
import { liveSideView, sideView } from "../../../src/views/drawings/side-view.ts";
import { anyGlider, anyOptions, likelyGlider } from "./any-glider.ts";
import { inkOf, touching } from "./ink.ts";
import { document, plain } from "./page.ts";
import { expectPicture } from "./snapshot.ts";

const draw = (glider: GliderOnPaper, options: Partial<GliderDrawingOptions> = {}, baseline?: GliderOnPaper) =>
  sideView(
    { glider, baseline: baseline && { glider: baseline, name: "as flown" } },
    { name: "plover", ...options },
    { document },
  );

const figuresOf = (svg: SVGSVGElement) => [...svg.querySelectorAll(".figure")].map((text) => text.textContent);

/** The corners of the n-th piece of wood, in the order in which they lie one over the other. */
const outlineOf = (svg: SVGSVGElement, index: number) =>
  ([...svg.querySelectorAll(".wood")][index]?.getAttribute("d") ?? "")
    .replace("Z", "")
    .slice(1)
    .split("L")
    .map((pair) => pair.split(",").map(Number) as [number, number]);

describe("the side view", () => {
  it.each(sideViewExamples.map((example, index) => [example.title, example, index + 1] as const))(
    "draws %s as kept, at 660 and 330 px",
    (_, { data, options }, number) => {
      for (const width of [660, 330]) {
        const kept = new URL(`side-view-${number}-${width}.svg`, import.meta.url);
        expectPicture(sideView(data, { ...options, width }, { document }), kept);
      }
    },
  );

  it("is an image whose title and description say what it shows", () => {
    const svg = draw(plover);
    expect(svg.getAttribute("role")).toBe("img");
    expect(svg.querySelector("title")?.textContent).toBe("Side view of plover");
    expect(svg.querySelector("desc")?.textContent).toBe(
      "Seen from the left, nose to the left. Wing root 12 mm up, at 2 degrees, its tip 52.3 mm up. Tailplane 245 mm " +
        "behind the root's leading edge, at 0.9 degrees. Decalage 1.1 degrees. Fin 50 mm high. Stick 380 mm long, from " +
        "85 mm ahead of the root's leading edge. Balance point 31.4 mm behind the root's leading edge, at 44% of the " +
        "mean aerodynamic chord. Neutral point 42.8 mm behind the root's leading edge, at 61.4% of the mean aerodynamic " +
        "chord. Static margin 17.3%.",
    );
  });
  it("tells of a wing alone, and of the angles of a baseline", () => {
    expect(draw(wingAlone(stepped), {}, plover).querySelector("desc")?.textContent).toBe(
      "Seen from the left, nose to the left. Wing root at 0 degrees, its tip 27.8 mm up. The thin line is as flown: wing " +
        "at 2 degrees, tailplane at 0.9 degrees.",
    );
  });
  it("tells lengths, heights, angles and margin, and names both points", () => {
    expect(figuresOf(draw(plover)).toSorted()).toEqual([
      "0.9°",
      "12",
      "245",
      "2°",
      "31.4",
      "380 mm long",
      "52.3",
      "54",
      "85",
      "balance point",
      "decalage 1.1°",
      "neutral point",
      "static margin 17.3%",
    ]);
    expect(figuresOf(draw(mended)).toSorted()).toEqual([
      "0°",
      "200",
      "240 mm long",
      "37.6",
      "3°",
      "45",
      "8",
      "decalage 3°",
    ]);
    expect(figuresOf(draw(wingAlone(stepped))).toSorted()).toEqual(["0°", "27.8", "80"]);
  });

  it("is at true proportion, nose to the left, in one scale", () => {
    const svg = draw(plover, { width: 700, height: 2000 });
    const scale = (700 - 46 - 64) / 0.38;
    const [front = [0, 0], rear = [0, 0], , low = [0, 0]] = outlineOf(svg, 0);
    expect(rear[0] - front[0]).toBeCloseTo(0.38 * scale, 1);
    expect(low[1] - front[1]).toBeCloseTo(0.009 * scale, 1);
    const [foot = [0, 0], top = [0, 0]] = outlineOf(svg, 1);
    expect(foot[1] - top[1]).toBeCloseTo(0.05 * scale, 1);
    expect(top[0] - foot[0]).toBeCloseTo(0.012 * scale, 1);
  });
  it("turns the root about its leading edge by the angle of the seat", () => {
    const svg = draw({ ...plover, seat_angle: 0.1 }, { width: 700 });
    const section = outlineOf(svg, svg.querySelectorAll(".wood").length - 1);
    const [leading = [0, 0], trailing = [0, 0]] = [section[0], section.at(-1)];
    expect(Math.atan2(trailing[1] - leading[1], trailing[0] - leading[0])).toBeCloseTo(0.1, 2);
    expect(leading[0] - (outlineOf(svg, 0)[0]?.[0] ?? 0)).toBeCloseTo((0.085 * (700 - 46 - 64)) / 0.38, 0);
  });
  it("lets washed-out panels point nose-down, their rear edge higher", () => {
    const wing = { ...plover.wing, left: { ...plover.wing.left, twist: [0, 0, 0.3] } };
    const rear = (glider: GliderOnPaper) =>
      Math.min(...outlineOf(draw(glider), 5).map(([, y]) => y)) -
      Math.min(...outlineOf(draw(glider), 0).map(([, y]) => y));
    expect(rear({ ...plover, wing })).toBeLessThan(rear(plover) - 10);
  });
  it("draws nothing larger than life", () => {
    const svg = draw(wingAlone(stepped), { width: 900 });
    const x = outlineOf(svg, svg.querySelectorAll(".wood").length - 1).map(([px]) => px);
    expect(Math.max(...x) - Math.min(...x)).toBeCloseTo((0.08 * 96) / 0.0254, 1);
  });
  it("keeps a ring where the balance point was, and thin lines of what has moved alone", () => {
    const moved = { ...plover, balance: { ...plover.balance, x: 0.02, y: 0, z: 0 } } as GliderOnPaper;
    expect(draw(moved, {}, plover).querySelectorAll(".ghost-layer .ghost")).toHaveLength(1);
    expect(draw(plover, {}, plover).querySelectorAll(".ghost-layer .ghost")).toHaveLength(0);
  });

  it.each([".datum", ".edge", ".tick", ".angle", ".guide", ".ghost", ".dimension", ".extension", ".mark"])(
    "would be found out with a label on its %s, by the check of the next test",
    (line) => {
      const svg = draw(plover, {}, sideViewExamples[0]?.data.baseline?.glider);
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
      { seed: 41, numRuns: 100, endOnFailure: true },
    );
  });
  it("leaves no figure out of a glider that somebody might build", () => {
    const note = (svg: SVGSVGElement) => svg.querySelector(".note")?.textContent;
    fc.assert(
      fc.property(likelyGlider, fc.integer({ min: 320, max: 900 }), (glider, width) => {
        expect(note(draw(glider, { width }))).not.toContain("without room");
      }),
      { seed: 42, numRuns: 60, endOnFailure: true },
    );
  });

  it("redrawn in place is the same as drawn afresh", () => {
    fc.assert(
      fc.property(anyGlider, anyGlider, anyGlider, anyOptions, (before, after, baseline, options) => {
        const first = { glider: before, baseline: { glider: baseline, name: "as flown" } };
        const live = liveSideView(first, { name: "a" }, { document });
        live.update({ glider: after }, { name: "plover", ...options });
        expect(plain(live.element)).toEqual(plain(draw(after, options)));
      }),
      { seed: 43, numRuns: 30, endOnFailure: true },
    );
  });
  it("refuses an option it does not know", () => {
    // @ts-expect-error an unknown option is a type error too
    expect(() => sideView({ glider: plover }, { name: "a", colour: "red" }, { document })).toThrow(
      'got the option "colour" for the side view, expected one of name, width, unit, fraction, measure, height',
    );
  });
});
