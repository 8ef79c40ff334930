import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bodyDragArea } from "../../../src/library/air/body-drag-area.ts";
import { bestGlide } from "../../../src/library/glide/best-glide.ts";
import { glide } from "../../../src/library/glide/glide.ts";
import { type Glide, glideRecord } from "../../../src/library/glide/glide-record.ts";
import { leastSink } from "../../../src/library/glide/least-sink.ts";
import { turn } from "../../../src/library/glide/turn.ts";
import { buildFin } from "../../../src/library/shape/fin.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { call, faultOf, Refusal } from "../call.ts";
import { runs } from "../panel-arbitraries.ts";
import { ploverFin, ploverTailplane, ploverWing } from "../plover.ts";

const freeFall = 9.80665;
const polar = { mass: 0.017, area: 0.031, aspect_ratio: 7.5, zero_lift_drag: 0.045 };
const best = (change: Record<string, unknown> = {}) => call(bestGlide, { ...polar, ...change }) as Glide;
const least = (change: Record<string, unknown> = {}) => call(leastSink, { ...polar, ...change }) as Glide;

const stick = call(bodyDragArea, { length: 0.38, width: 0.005, height: 0.007, speed: 4 }) as number;
const plover = (change: Record<string, unknown> = {}) =>
  call(glide, {
    mass: 0.0173,
    wing: ploverWing,
    lift_coefficient: 0.6,
    tailplane: buildTailplane(ploverTailplane),
    fin: buildFin(ploverFin),
    other_area: stick + 1e-4,
    ...change,
  }) as Glide;

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyPolar = fc.record({
  mass: positive(0.005, 0.1),
  area: positive(0.01, 0.2),
  aspect_ratio: positive(3, 20),
  zero_lift_drag: positive(0.01, 0.1),
  efficiency: positive(0.7, 1),
});

describe("a steady glide", () => {
  test("balances: lift and drag together are the weight, and the path falls by their angle", () => {
    fc.assert(
      fc.property(anyPolar, (given) => {
        for (const found of [best(given), least(given)]) {
          const force = 0.5 * 1.225 * found.speed ** 2 * given.area;
          const carried = Math.hypot(force * found.lift_coefficient, force * found.drag_coefficient);
          expect(carried / (given.mass * freeFall)).toBeCloseTo(1, 6);
          expect(found.sink / found.speed).toBeCloseTo(Math.sin(found.angle), 12);
          expect(Math.tan(found.angle) * found.glide_ratio).toBeCloseTo(1, 12);
        }
      }),
      runs,
    );
  });
  test("loses as much energy to drag as height gives: drag times speed is weight times sink", () => {
    const { speed, sink, drag_coefficient } = plover();
    const drag = 0.5 * 1.225 * speed ** 2 * ploverWing.area * drag_coefficient;
    expect((drag * speed) / (0.0173 * freeFall * sink)).toBeCloseTo(1, 6);
  });
});

describe("best glide and least sink", () => {
  test("are the best and the least of all lifts on their polar", () => {
    fc.assert(
      fc.property(anyPolar, positive(0.5, 0.98), (given, share) => {
        const [far, long] = [best(given), least(given)];
        const slower = far.lift_coefficient + (long.lift_coefficient - far.lift_coefficient) * share;
        const [faster, between] = [
          best({ ...given, max_lift: far.lift_coefficient * share }),
          least({ ...given, max_lift: slower }),
        ];
        expect(between.lift_coefficient).toBeCloseTo(slower, 12);
        for (const other of [faster, between]) expect(other.glide_ratio).toBeLessThan(far.glide_ratio);
        // Where the path is steep, the least sink lies a little above the lift of the shallow path.
        expect(between.sink).toBeGreaterThan(long.sink * 0.995);
      }),
      runs,
    );
  });
  test("stand in the ratios of the theory: lift √3, and speed the fourth root of 3 on a shallow path", () => {
    const slender = { zero_lift_drag: 0.001, aspect_ratio: 30 };
    expect(least(slender).lift_coefficient / best(slender).lift_coefficient).toBeCloseTo(Math.sqrt(3), 12);
    expect(least(slender).speed / best(slender).speed).toBeCloseTo(3 ** -0.25, 3);
  });
  test("stop at the largest lift, and take their spread from the drag without lift alone", () => {
    const stalled = least({ max_lift: 0.8, spread: 0.2 });
    expect(stalled.lift_coefficient).toBe(0.8);
    expect(least({ max_lift: 5 }).lift_coefficient).toBe(least().lift_coefficient);
    const shallow = (drag: number) => drag / 0.8 ** 1.5;
    expect(stalled.sink_high / stalled.sink_low).toBeCloseTo(
      shallow(0.054 + stalled.induced_drag) / shallow(0.036 + stalled.induced_drag),
      2,
    );
  });
});

describe("the glide of Plover", () => {
  test("is that of a small balsa glider: 6 to 10 to 1 at about 4 m/s", () => {
    const found = plover();
    expect(faultOf(glideRecord, found, "glide")).toBe(null);
    expect(found.glide_ratio).toBeGreaterThan(6);
    expect(found.glide_ratio).toBeLessThan(10);
    expect(found.speed).toBeGreaterThan(3.5);
    expect(found.speed).toBeLessThan(4.3);
    expect(found.sink_low).toBeLessThan(found.sink);
    expect(found.sink_high).toBeGreaterThan(found.sink);
  });
  test("has its best ratio and its least sink inside the lifts that its section can give", () => {
    const lifts = Array.from({ length: 61 }, (_, i) => 0.3 + 0.015 * i);
    const glides = lifts.map((lift_coefficient) => plover({ lift_coefficient }));
    const [ratios, sinks] = [glides.map((each) => each.glide_ratio), glides.map((each) => each.sink)];
    const farthest = lifts[ratios.indexOf(Math.max(...ratios))] ?? 0;
    const longest = lifts[sinks.indexOf(Math.min(...sinks))] ?? 0;
    expect(farthest).toBeGreaterThan(0.4);
    expect(longest).toBeGreaterThanOrEqual(farthest);
    expect(longest).toBeLessThan(0.95);
  });
  test("is better without tail and body, and worse in a heavier glider by its speed alone", () => {
    expect(plover({ tailplane: undefined, fin: undefined, other_area: 0 }).sink).toBeLessThan(plover().sink);
    const [light, heavy] = [plover({ lift_coefficient: 0.5 }), plover({ lift_coefficient: 0.5, mass: 4 * 0.0173 })];
    expect(heavy.speed / light.speed).toBeCloseTo(2, 2);
    expect(heavy.drag_coefficient).toBeLessThan(light.drag_coefficient);
  });
  test("is refused for an unknown section and where chords fly too slowly for the sections", () => {
    expect(() => plover({ shape: "flat bottom" })).toThrow(/Did you mean "flat-bottomed"\?/);
    expect(() => plover({ mass: 0.001 })).toThrow(/Reynolds number/);
    expect(() => plover({ lift_coefficient: 0 })).toThrow(Refusal);
  });
});

describe("a turn", () => {
  test("is as wide either way and is refused without bank", () => {
    const straight = plover();
    const [right, left] = [0.5, -0.5].map((bank) => call(turn, { glide: straight, bank }));
    expect(right).toEqual(left);
    expect(() => call(turn, { glide: straight, bank: 0 })).toThrow(/flies straight/);
  });
});
