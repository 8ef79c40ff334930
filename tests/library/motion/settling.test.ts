import { describe, expect, test } from "vitest";
import {
  bankedIntegral,
  type Flight,
  heightLost,
  settledFrom,
  verdictOf,
} from "../../../src/library/motion/settling.ts";

const aim = { bank: 0.1, speed: 4, sink: 0.5 };
const seconds = 12;
const time = Array.from({ length: seconds * 50 + 1 }, (_, i) => i / 50);

/** A flight whose bank is off the aim by a law of time, at trim speed unless told. */
const flight = (off: (t: number) => number, speed: (t: number) => number = () => 4): Flight => ({
  time,
  bank: time.map((t) => aim.bank + off(t)),
  speed: time.map(speed),
  height: time.map((t) => 10 - 0.5 * t - 0.3 * (1 - Math.exp(-t))),
});
const dying = flight((t) => 0.6 * Math.exp(-t / 1.5));

describe("a bank that dies out", () => {
  test("has settled when it comes within 5° of the aim for good", () => {
    const from = settledFrom(dying, aim) ?? Number.NaN;
    // 0.6·exp(−t/1.5) = π/36.
    expect(time[from]).toBeCloseTo(1.5 * Math.log(0.6 / (Math.PI / 36)), 1);
    expect(verdictOf(dying, aim, false)).toBe("settles");
  });

  test("has the integral of its exponential", () => {
    expect(bankedIntegral(dying, aim)).toBeCloseTo(1.5 * (1 - Math.exp(-seconds / 1.5)), 4);
  });

  test("has none where it begins at its aim: a share of next to nothing says nothing", () => {
    expect(
      bankedIntegral(
        flight((t) => 1e-9 * t),
        aim,
      ),
    ).toBeNull();
  });

  test("loses height beyond the steady glide, told at any time", () => {
    expect(heightLost(dying, aim, 50)).toBeCloseTo(0.3 * (1 - Math.exp(-1)), 12);
    expect(heightLost(dying, aim, 1e6)).toBeCloseTo(0.3, 5);
  });

  test("has not settled while the speed is off", () => {
    const slow = flight(
      (t) => 0.6 * Math.exp(-t / 1.5),
      () => 4.5,
    );
    expect(settledFrom(slow, aim)).toBeNull();
  });
});

test("each other end has its word", () => {
  const words = [
    verdictOf(
      flight(
        (t) => 0.5 * Math.exp(t / 8),
        (t) => 4 + t,
      ),
      aim,
      false,
    ),
    verdictOf(
      flight(() => 0.5),
      aim,
      false,
    ),
    verdictOf(
      flight((t) => 0.5 * Math.cos(3 * t)),
      aim,
      false,
    ),
    verdictOf(
      flight((t) => 0.5 * Math.cos(3 * t)),
      aim,
      true,
    ),
    verdictOf(
      flight(() => 0),
      aim,
      true,
    ),
    verdictOf(
      flight(
        () => 0,
        (t) => 4 + Math.cos(2 * t),
      ),
      aim,
      false,
    ),
  ];
  expect(words).toEqual(["spirals in", "keeps circling", "swings", "stalls", "settles", "swings"]);
});

test("a steep spiral that grows no more has spiralled in all the same, but not one that slows down", () => {
  const at = (speed: (t: number) => number) =>
    verdictOf(
      flight(() => 0.7, speed),
      aim,
      false,
    );
  expect(at(() => 6.4)).toBe("spirals in");
  // It still swings a little.
  expect(at((t) => 6.4 + 0.1 * Math.cos(t))).toBe("spirals in");
  expect(at((t) => 12 - 0.45 * t)).toBe("keeps circling");
  expect(at(() => 5.5)).toBe("keeps circling");
});

test("near the aim in the last moments only is not settled", () => {
  expect(
    settledFrom(
      flight((t) => (t > seconds - 0.3 ? 0 : 0.5)),
      aim,
    ),
  ).toBeNull();
});
