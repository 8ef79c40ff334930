import { anyNumber } from "../spec.ts";

/** The step that `round`, `floor` and `ceil` take; without one they go to whole numbers. */
export const step = anyNumber("goes to whole multiples of this", { above: 0, default: 1 });

/** What those functions take for granted. */
export const stepAssumptions = [
  "A value with a unit needs a step: round(span, 1 mm).",
  "A value within a millionth of a millionth of a step's multiple counts as that multiple: 0.29 m is 29 steps of 1 cm.",
] as const;

/** How many steps a value is. Decimal fractions are no exact floats, so a count next to a whole or half is taken for it. */
export function stepCount(value: number, step: number): number {
  const count = value / step;
  const near = Math.round(2 * count) / 2;
  return Math.abs(count - near) <= 1e-12 * Math.max(1, Math.abs(near)) ? near : count;
}
