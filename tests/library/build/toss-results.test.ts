import { describe, expect, test } from "vitest";
import { median, studentT } from "../../../src/library/build/median.ts";
import { type TossResults, tossResults } from "../../../src/library/build/toss-results.ts";
import { call } from "../call.ts";

type Toss = readonly [change: string, distance: number, did: string, time?: number];
const log = (tosses: readonly Toss[], given: Record<string, unknown> = {}) =>
  call(tossResults, {
    tosses: {
      change: tosses.map(([change]) => change),
      distance: tosses.map(([, distance]) => distance),
      height: tosses.map(() => 1.8),
      did: tosses.map(([, , did]) => did),
      ...(tosses.every(([, , , time]) => time !== undefined) && { time: tosses.map(([, , , time]) => time ?? 0) }),
    },
    ...given,
  }) as TossResults;
const three = (change: string, distances: readonly number[], did: string): Toss[] =>
  distances.map((distance) => [change, distance, did] as const);

describe("a toss log", () => {
  test("takes the median, which one bad toss does not move", () => {
    const good = log(three("a", [12, 12.4, 11.8, 12.2], "straight"));
    const bad = log([...three("a", [12, 12.4, 11.8, 12.2], "straight"), ["a", 2, "dives"]]);
    expect(Math.abs(good.glide_ratio - bad.glide_ratio)).toBeLessThan(0.1);
    expect(bad.changes.did).toEqual(["straight"]);
    expect(bad.changes.ratio_least[0]).toBeCloseTo(2 / 1.8, 12);
  });
  test("keeps each change apart, and says whether it made a difference that so few tosses can tell", () => {
    const small = log([
      ...three("as built", [11, 12.4, 13], "straight"),
      ...three("shim", [11.4, 12.8, 13.4], "straight"),
    ]);
    expect(small.changes.verdict[1]).toMatch(/no difference .* 3 tosses could tell/);
    const large = log([
      ...three("as built", [8, 8.1, 8.2], "straight"),
      ...three("shim", [12, 12.1, 12.2], "straight"),
    ]);
    expect(large.changes.verdict[1]).toMatch(/better than before/);
  });
  test("can tell less with more spread and more with more tosses", () => {
    const few = log(three("a", [11, 12, 13], "straight"));
    const many = log(three("a", [11, 12, 13, 11, 12, 13], "straight"));
    expect(few.tell_apart).toBeCloseTo(2.776 * (1 / 1.8) * Math.sqrt(2 / 3), 3);
    expect(many.tell_apart).toBeLessThan(few.tell_apart);
  });
  test("changes one thing at a time: stall and dive first, then turn, then nothing", () => {
    expect(log(three("a", [9, 9.2, 9.1], "stalls")).next).toMatch(/^stalls: add a little nose clay/);
    expect(log(three("a", [9, 9.2, 9.1], "dives")).next).toMatch(/^dives: take/);
    expect(log(three("a", [9, 9.2, 9.1], "turns left")).next).toMatch(/to the right$/);
    expect(log(three("a", [9, 9.2, 9.1], "straight"), { wanted_turn: "turns left" }).next).toMatch(/to the left$/);
    expect(log(three("a", [9, 9.2, 9.1], "straight")).next).toMatch(/^trimmed/);
    expect(log(three("a", [5, 9, 14], "straight")).next).toMatch(/^tosses differ/);
    expect(log(three("a", [9], "stalls")).next).toBe("toss it 2 more times before anything is changed");
  });
  test("holds ratio and sink against the prediction", () => {
    const { changes, sink } = log(
      [
        ["a", 12, "straight", 2.4],
        ["a", 12.2, "straight", 2.5],
        ["a", 11.9, "straight", 2.3],
      ],
      { expected_ratio: 8, expected_sink: 0.6 },
    );
    expect(sink).toBeCloseTo(1.8 / 2.4, 12);
    expect(changes.verdict[0]).toMatch(/worse than predicted; sinks 25% faster than predicted/);
  });
  test("calls no sink slow or fast that so few tosses cannot tell, and says nothing of it from fewer than three", () => {
    const tosses = (times: readonly number[]) => times.map((time): Toss => ["a", 12, "straight", time]);
    const wide = log(tosses([2.2, 2.5, 2.7]), { expected_sink: 0.7 }).changes;
    expect(wide.verdict[0]).toBe("sinks as predicted, as far as they can tell");
    // Three of 1.8 m: Student's t is 4.303 at two degrees of freedom.
    const sinks = [2.2, 2.5, 2.7].map((time) => 1.8 / time);
    const mean = sinks.reduce((sum, each) => sum + each, 0) / 3;
    const spread = Math.sqrt(sinks.reduce((sum, each) => sum + (each - mean) ** 2, 0) / 2);
    expect(wide.sink_doubt[0]).toBeCloseTo((4.303 * spread) / Math.sqrt(3), 9);
    expect(log(tosses([2.44, 2.45, 2.46]), { expected_sink: 0.7 }).changes.verdict[0]).toMatch(/^sinks 4\.96% faster/);
    expect(log(tosses([2.4, 0, 0]), { expected_sink: 0.7 }).changes.verdict[0]).not.toMatch(/sinks/);
  });
  test("is refused without a toss, and for what no toss does", () => {
    expect(() => log([])).toThrow(/No toss is logged/);
    expect(() => log([...three("a", [9], "stalls"), ...three("a", [9], "stall")])).toThrow(
      /Row 2, column did: .*Did you mean "stalls"/,
    );
  });
});

test("a median of an even number lies between the two in the middle, and Student's t falls to that of a normal law", () => {
  expect(median([4, 1, 3, 2])).toBe(2.5);
  expect(median([3, 1, 2])).toBe(2);
  expect(studentT(11)).toBeCloseTo(2.201, 1);
  expect(studentT(1e6)).toBeCloseTo(1.96, 2);
});
