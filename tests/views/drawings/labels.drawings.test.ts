import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Wing } from "../../../src/library/index.ts";
import { made } from "../../../src/views/drawings/example-gliders.ts";
import { frontView } from "../../../src/views/drawings/front-view.ts";
import { wingAlone } from "../../../src/views/drawings/glider.ts";
import { planView } from "../../../src/views/drawings/plan-view.ts";
import { sideView } from "../../../src/views/drawings/side-view.ts";
import { touching } from "./ink.ts";
import { document } from "./page.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const degrees = (min: number, max: number) => between((min * Math.PI) / 180, (max * Math.PI) / 180);

/** Slivers of 2 mm beside long panels; joints that are flat, hardly bent, bent back or folded by 30 degrees. */
const panel = fc.record({
  length: fc.oneof(between(0.002, 0.02), between(0.02, 0.2)),
  root_chord: between(0.01, 0.1),
  tip_chord: between(0.01, 0.1),
  sweep: between(-0.02, 0.03),
  break: fc.oneof(fc.constant(0), degrees(0, 1), degrees(-6, 6), degrees(5, 30)),
  washout: degrees(-1, 1),
  thickness: between(0.0008, 0.005),
});

/** One to nine panels a side; a break that would turn a panel over is turned round. */
const oddWing: fc.Arbitrary<Wing> = fc.array(panel, { minLength: 1, maxLength: 9 }).map((rows) => {
  let cant = 0;
  const bent = rows.map((row) => {
    const turn = cant + row.break > 1.2 || cant + row.break < -0.3 ? -row.break : row.break;
    cant += turn;
    return { ...row, break: turn };
  });
  const columns = Object.keys(bent[0] ?? {}) as (keyof (typeof bent)[number])[];
  return made<Wing>("wing", {
    panels: Object.fromEntries(columns.map((column) => [column, bent.map((row) => row[column])])),
  });
});
const anyWidth = fc.constantFrom(240, 300, 330, 390, 500, 620, 660, 800);

const drawings = {
  front: (wing: Wing, width: number) => frontView({ wing }, { name: "odd", width }, { document }),
  plan: (wing: Wing, width: number) => planView({ glider: wingAlone(wing) }, { name: "odd", width }, { document }),
  side: (wing: Wing, width: number) => sideView({ glider: wingAlone(wing) }, { name: "odd", width }, { document }),
};

describe("on odd wings, with slivers for panels and wild folds", () => {
  it.each(Object.entries(drawings))("no label of a %s view touches a line, a label or the edge", (_, draw) => {
    fc.assert(
      fc.property(oddWing, anyWidth, (wing, width) => {
        expect(touching(draw(wing, width))).toEqual([]);
      }),
      { seed: 5, numRuns: 160, endOnFailure: true },
    );
  });
});
