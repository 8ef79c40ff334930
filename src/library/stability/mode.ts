import { numberText } from "../number-text.ts";
import type { Root } from "../numerics/small-matrix.ts";
import { number, record, type ValueOf } from "../spec.ts";

/** One way in which a disturbance dies away or grows. */
export const modeRecord = record(
  "mode",
  "one way in which a disturbance dies away or grows",
  {
    rate: number("1/s", "rate at which it grows; below 0 it dies away"),
    half_time: number("s", "time to half", { optional: true, absent: "where the mode does not die away" }),
    double_time: number("s", "time to double", { optional: true, absent: "where the mode does not grow" }),
    period: number("s", "time for one swing", { optional: true, absent: "where the mode does not swing" }),
    frequency: number("rad/s", "undamped natural frequency", { optional: true, absent: "where the mode has none" }),
    damping_ratio: number("1", "damping over what just keeps it from swinging", {
      optional: true,
      absent: "where the mode has none",
    }),
  },
  (mode) => modeText(mode),
);
export type Mode = ValueOf<typeof modeRecord>;

/**
 * The mode of one root, or of two: a pair that swings, or two real ones, of which the slower tells rate and times. As a
 * pair turns into two real roots and back, all that it keeps of these numbers changes without a jump.
 */
export function modeOf(roots: readonly Root[]): Mode {
  const rate = Math.max(...roots.map((root) => root.real)) + 0;
  const [one, two] = roots;
  const turning = Math.abs(one?.imaginary ?? 0);
  const product = one && two ? one.real * two.real + turning ** 2 : 0;
  const frequency = Math.sqrt(product);
  return {
    rate,
    ...(rate < 0 && { half_time: Math.LN2 / -rate }),
    ...(rate > 0 && { double_time: Math.LN2 / rate }),
    ...(turning > 0 && { period: (2 * Math.PI) / turning }),
    ...(product > 0 && one && two && { frequency, damping_ratio: -(one.real + two.real) / (2 * frequency) + 0 }),
  };
}

/** The times of a mode, each only where it has one. */
interface Times {
  readonly half_time?: number | undefined;
  readonly double_time?: number | undefined;
  readonly period?: number | undefined;
}

/** A mode in one line. */
export function modeText({ half_time, double_time, period }: Times): string {
  const change =
    half_time !== undefined
      ? `half in ${numberText(half_time, "s")}`
      : double_time !== undefined
        ? `doubles in ${numberText(double_time, "s")}`
        : "stays as it is";
  return period === undefined ? change : `${change}, one swing in ${numberText(period, "s")}`;
}
