import { expect, test } from "vitest";
import { flow } from "../../../src/library/flow/flow.ts";
import type { Flow } from "../../../src/library/flow/flow-record.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { plainWing } from "./sample-flows.ts";

const flowOf = (glider: unknown): Flow => call(flow, { glider, angle_of_attack: degrees(4) }) as Flow;

/** The area under a column of the loading, each strip as wide as its share of the arc from tip to tip. */
function areaUnder({ loading, span }: Flow, column: "load" | "ellipse"): number {
  const edges = [-span / 2, ...loading.y.slice(1).map((y, i) => (y + (loading.y[i] ?? y)) / 2), span / 2];
  return loading[column].reduce((sum, each, i) => sum + each * ((edges[i + 1] ?? 0) - (edges[i] ?? 0)), 0);
}

test("load and ellipse lift as much as the wing does, whatever its plan form and cant", () => {
  for (const glider of [plainWing(8), plainWing(6, { taper: 0.4 }), plainWing(7, { cant: degrees(15), sweep: 0.05 })]) {
    const about = flowOf(glider);
    for (const column of ["load", "ellipse"] as const) {
      expect(areaUnder(about, column) / (about.lift_coefficient * about.span)).toBeCloseTo(1, 1);
    }
    expect(areaUnder(about, "load") / areaUnder(about, "ellipse")).toBeCloseTo(1, 1);
  }
});

test("the load of a flat elliptical wing is its ellipse, but for the tips, as lifting-line theory has it", () => {
  const about = flowOf({ wing: ellipticalWing(), seat_height: 0, seat_angle: 0 });
  about.loading.y.forEach((y, i) => {
    if (Math.abs(y) > 0.4 * about.span) return;
    expect((about.loading.load[i] ?? 0) / (about.loading.ellipse[i] ?? 1)).toBeCloseTo(1, 1);
  });
  expect(about.span_efficiency).toBeCloseTo(1, 1);
});

/** Ten panels a side of aspect ratio 10, quarter chords in one line. */
function ellipticalWing() {
  const places = Array.from({ length: 11 }, (_, i) => Math.sin((i * Math.PI) / 20) * 0.5);
  const chord = places.map((y) => Math.max(0.004, (4 / Math.PI) * 0.1 * Math.sqrt(1 - (2 * y) ** 2)));
  const of = <T>(value: (i: number) => T): T[] => Array.from({ length: 10 }, (_, i) => value(i));
  const panels: Panels = {
    length: of((i) => (places[i + 1] ?? 0) - (places[i] ?? 0)),
    root_chord: of((i) => chord[i] ?? 0),
    tip_chord: of((i) => chord[i + 1] ?? 0),
    sweep: of((i) => ((chord[i] ?? 0) - (chord[i + 1] ?? 0)) / 4),
    break: of(() => 0),
    washout: of(() => 0),
    thickness: of(() => 0.003),
  };
  return buildWing(panels, undefined, refuse);
}
