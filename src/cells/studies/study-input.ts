/** An input of a study: where it is set, what it is now, and over what range, or by how much, it moves. */
import type { NumberShape } from "../../library/spec.ts";
import type { StudyInput } from "../cell.ts";
import { readPlusMinus, readRange } from "../given.ts";
import { placeOfTarget } from "../override.ts";
import { describe, fieldOf } from "../shapes.ts";
import type { PlusMinus, Program, Step } from "../step.ts";
import type { RecordValue, Result } from "../value.ts";
import type { Place } from "../variants.ts";
import { studyMessages } from "./study-messages.ts";
import { inField, refusalAt, type StudyField } from "./study-refusal.ts";

/** An input that was found. */
export interface Input {
  /** As it is written: a given, or `panels[2].break`. */
  readonly target: string;
  readonly place: Place;
  readonly shape: NumberShape;
  /** What it is in the present design, in SI; NaN where that cannot be computed. */
  readonly nominal: number;
  /** Of the given itself, where it has one. */
  readonly ownRange: Step["range"];
  readonly ownPlusMinus: PlusMinus | null;
  /** Bare numbers in its range and ± take its unit, as they do in a table. */
  readonly takesUnit: boolean;
}

/** Finds an input. Says in an Error, which names it, what is wrong. */
export function inputOf(program: Program, results: (id: string) => Result | undefined, target: string): Input {
  return inInput("input", target, () => {
    const { cell, entry } = placeOfTarget(program.cells, target);
    const step = program.byId.get(cell.id);
    if (!step?.shape) throw new Error(studyMessages.waits(target, step?.error?.root ?? target));
    const result = results(cell.id);
    if (cell.kind === "table" && entry) {
      const column = cell.columns[entry.column]?.name ?? "";
      const list = step.shape.kind === "record" ? fieldOf(step.shape, column) : undefined;
      const shape = list?.kind === "list" ? list.of : undefined;
      if (shape?.kind !== "number") throw new Error(studyMessages.textColumn(target));
      const nominal = result?.ok ? (result.value as RecordValue)[column] : undefined;
      return {
        target,
        place: { id: cell.id, entry: { row: entry.row, column } },
        shape,
        nominal: Array.isArray(nominal) ? (nominal[entry.row] as number) : Number.NaN,
        ownRange: null,
        ownPlusMinus: null,
        takesUnit: true,
      };
    }
    if (step.shape.kind !== "number") throw new Error(studyMessages.notNumber(target, describe(step.shape)));
    return {
      target,
      place: { id: cell.id, entry: null },
      shape: step.shape,
      nominal: result?.ok ? (result.value as number) : Number.NaN,
      ownRange: step.range,
      ownPlusMinus: step.plusMinus,
      takesUnit: false,
    };
  });
}

/** The range over which an input moves: the one stated in the study, else its own; step null where none is stated here. */
export function rangeOfInput(input: Input, { range }: StudyInput, program: Program): NonNullable<Step["range"]> {
  return inInput("range", input.target, () => {
    const { unit } = input.shape;
    if (range) return readRange(range, unit, unit, program.functions, input.takesUnit);
    if (!input.ownRange) throw new Error(studyMessages.noRange(input.target));
    return { ...input.ownRange, step: null };
  });
}

/** By how much an input may be off, in SI: as stated in the study, else its own; null where neither says. */
export function plusMinusOfInput(input: Input, stated: string | undefined, program: Program): number | null {
  return inInput("plus_minus", input.target, () => {
    const { shape, ownPlusMinus, takesUnit, nominal } = input;
    const plusMinus =
      stated === undefined ? ownPlusMinus : readPlusMinus(stated, shape, shape.unit, program.functions, takesUnit);
    if (!plusMinus) return null;
    return plusMinus.isShare ? plusMinus.size * Math.abs(nominal) : plusMinus.size;
  });
}

/** The values of a range: so many points evenly, else by the range's step, else `otherwise` points; both ends among them. */
export function valuesOver(
  { from, to, step }: NonNullable<Step["range"]>,
  points: number | undefined,
  otherwise: number,
  most: number,
): number[] {
  const steps = step === null ? 0 : (to - from) / step;
  const whole = Math.round(steps);
  const isEven = Math.abs(steps - whole) < 1e-9 * Math.max(1, whole);
  const count = points ?? (step === null ? otherwise : isEven ? whole + 1 : Math.floor(steps) + 2);
  if (count > most) throw refusalAt("points", null, studyMessages.tooMany(count, most));
  return Array.from({ length: count }, (_, index) => {
    if (index === count - 1) return to;
    return (
      from + (points === undefined && step !== null && !isEven ? index * step : (index * (to - from)) / (count - 1))
    );
  });
}

const inInput = <T>(field: StudyField, target: string, find: () => T): T =>
  inField(field, target, find, (message) => studyMessages.inInput(target, message));
