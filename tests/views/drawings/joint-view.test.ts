import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type JointInSection, jointView } from "../../../src/views/drawings/joint-view.ts";
import { touching } from "./ink.ts";
import { document } from "./page.ts";

const degrees = Math.PI / 180;

function joint(name: string, fold: number, inner: number, outer: number): JointInSection {
  const edge = (panel: string, thickness: number) => ({
    panel,
    thickness,
    bevel: fold / 2,
    off: thickness * Math.tan(Math.abs(fold) / 2),
  });
  return { name, fold, edges: [edge("left 1", inner), edge("right 1", outer)] };
}
const plovers = [
  joint("root", 6 * degrees, 0.0032, 0.0032),
  joint("right 1–2", 7 * degrees, 0.0032, 0.0024),
  joint("right 2–3", -11 * degrees, 0.0024, 0.002),
];
const draw = (joints: readonly JointInSection[], width = 660) =>
  jointView({ joints }, { name: "bevels", width }, { document });

/** The corners of each piece of wood. */
const wood = (svg: SVGSVGElement) =>
  [...svg.querySelectorAll(".wood")].map((each) =>
    (each.getAttribute("d") ?? "")
      .replace("Z", "")
      .slice(1)
      .split("L")
      .map((pair) => pair.split(",").map(Number) as [number, number]),
  );

describe("the view of joints", () => {
  it("is an image whose title and description say folds, bevels and the wood that comes off", () => {
    const svg = draw(plovers);
    expect(svg.getAttribute("role")).toBe("img");
    expect(svg.querySelector("title")?.textContent).toBe("Joints of bevels");
    expect(svg.querySelector("desc")?.textContent).toContain(
      "root: fold 6 degrees, bevels 3 degrees, 0.168 mm off on left 1 and 3 degrees, 0.168 mm off on right 1.",
    );
  });
  it("has the panel's name on the wood of each edge, the left one on the left", () => {
    const texts = [...draw(plovers.slice(0, 1)).querySelectorAll(".figure-layer text")];
    const placeOf = (text: string) => Number(texts.find((each) => each.textContent === text)?.getAttribute("x"));
    expect(placeOf("left 1")).toBeLessThan(placeOf("root") - 20);
    expect(placeOf("right 1")).toBeGreaterThan(placeOf("root") + 20);
  });
  it("draws both edges bevelled by half the fold, so that they meet in one upright line, whichever way it folds", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        fc.double({ min: 0.001, max: 0.006, noNaN: true }),
        (fold, t) => {
          const [left = [], right = []] = wood(draw([joint("root", fold * degrees, t, t)]));
          // First and last corner are the ends of the glued face.
          for (const corner of [0, 3]) {
            expect(left[corner]?.[0]).toBeCloseTo(right[corner]?.[0] ?? Number.NaN, 1);
            expect(left[corner]?.[1]).toBeCloseTo(right[corner]?.[1] ?? Number.NaN, 1);
          }
          expect(left[0]?.[0]).toBeCloseTo(left[3]?.[0] ?? Number.NaN, 1);
          // Between the lower faces stands the fold.
          const slope = (piece: [number, number][]) =>
            Math.atan2(
              (piece[1]?.[1] ?? 0) - (piece[0]?.[1] ?? 0),
              Math.abs((piece[1]?.[0] ?? 0) - (piece[0]?.[0] ?? 0)),
            );
          expect(-(slope(left) + slope(right)) / degrees).toBeCloseTo(fold, 0);
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });
  it("has no label that touches a line, another label or the edge, whatever the joints and the sheet", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.integer({ min: -40, max: 40 }),
            fc.integer({ min: 10, max: 60 }),
            fc.integer({ min: 10, max: 60 }),
          ),
          {
            minLength: 1,
            maxLength: 9,
          },
        ),
        fc.integer({ min: 240, max: 900 }),
        (all, width) => {
          const joints = all.map(([fold, a, b], i) => joint(`right ${i}–${i + 1}`, fold * degrees, a * 1e-4, b * 1e-4));
          expect(touching(draw(joints, width))).toEqual([]);
        },
      ),
      { seed: 4, numRuns: 60 },
    );
  });
});
