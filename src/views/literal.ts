/** A given that can be dragged: its formula is a number with a unit, and it has a range. All in the given's own unit. */

import { parseFormula, type Step, type Tree } from "../cells/index.ts";
import { unitOf } from "../library/at-first.ts";
import { joinUnit } from "./format.ts";

/** What a slider runs over, as numbers of `unit`. */
export interface Track {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** Decimals that a position is written with. */
  readonly decimals: number;
  readonly unit: string;
  /** Inches are written as shop fractions with this denominator. */
  readonly fraction: number | null;
}

/** The track of a given that can be dragged; null where it has no range or its formula is more than a literal. */
export const trackOf = (step: Step | undefined): Track | null =>
  step?.cell.kind === "given" && readLiteral(step.cell.formula) ? rangeTrackOf(step) : null;

/** The track of a given with a range, whatever its formula; null for any other cell. */
export function rangeTrackOf(step: Step | undefined): Track | null {
  if (!step?.range || step.cell.kind !== "given") return null;
  const shown = step.shape?.kind === "number" ? step.shape.unit : "1";
  const unit = step.cell.unit ?? readLiteral(step.cell.formula)?.unit ?? shown;
  const { factor, offset } = unitOf(unit);
  const [from, to] = [tidy((step.range.from - offset) / factor), tidy((step.range.to - offset) / factor)];
  const fraction = unit === "in" ? (step.cell.fraction ?? null) : null;
  const size = step.range.step === null ? roundStep(to - from, fraction) : tidy(step.range.step / factor);
  return { from, to, step: size, decimals: Math.max(decimalsOf(size), decimalsOf(from)), unit, fraction };
}

/** The number and unit of a formula that is nothing but a literal, sign included; null for any other. */
export function readLiteral(formula: string): { readonly number: number; readonly unit: string | null } | null {
  const tree = treeOf(formula);
  const sign = tree?.type === "negate" ? -1 : 1;
  const of = tree?.type === "negate" ? tree.of : tree;
  return of?.type === "number" ? { number: sign * of.number, unit: of.unit } : null;
}

/** The formula of a position on the track: "11.5 deg", "25%", "3/32 in". */
export function formulaAt(track: Track, position: number): string {
  const { fraction, unit, decimals } = track;
  const bounded = Math.min(track.to, Math.max(track.from, position));
  if (fraction !== null) return `${shopFraction(bounded, fraction)} in`;
  const number = String(Number(bounded.toFixed(decimals)));
  return joinUnit({ number, unit: unit === "1" ? "" : unit });
}

/** The position of a value in SI, in the track's unit. */
export const positionOf = ({ unit }: Track, value: number): number => {
  const { factor, offset } = unitOf(unit);
  return tidy((value - offset) / factor);
};

/** Where a given that is a literal stands on its track, by what is written: its result may still be on the way. */
export function writtenPosition(track: Track, formula: string): number | null {
  const literal = readLiteral(formula);
  if (!literal) return null;
  const { factor, offset } = unitOf(literal.unit ?? "1");
  return positionOf(track, literal.number * factor + offset);
}

/** The value in SI of a position. */
export const valueAt = ({ unit }: Track, position: number): number => {
  const { factor, offset } = unitOf(unit);
  return position * factor + offset;
};

/** Positions over the whole track, its ends included, on its steps, about `count` of them at most. */
export function positionsOver(track: Track, count: number): number[] {
  const { from, to, step } = track;
  const each = step * Math.max(1, Math.ceil(Math.round((to - from) / step) / (count - 1)));
  const positions: number[] = [];
  for (let index = 0; from + index * each < to - each * 1e-6; index++) positions.push(tidy(from + index * each));
  return [...positions, to];
}

function treeOf(formula: string): Tree | null {
  try {
    return parseFormula(formula);
  } catch {
    return null;
  }
}

/** A two-hundredth of the range, rounded to 1, 2 or 5 of its decade. */
function roundStep(range: number, fraction: number | null): number {
  if (fraction !== null) return 1 / fraction;
  const rough = range / 200;
  const decade = 10 ** Math.floor(Math.log10(rough));
  const size = [1, 2, 5, 10].find((each) => each * decade >= rough * 0.999) ?? 10;
  return tidy(size * decade);
}

function decimalsOf(number: number): number {
  const [digits = "", exponent = "0"] = String(number).split("e");
  return Math.min(12, Math.max(0, (digits.split(".")[1]?.length ?? 0) - Number(exponent)));
}

function shopFraction(value: number, parts: number): string {
  const count = Math.round(Math.abs(value) * parts);
  const whole = Math.floor(count / parts);
  let [over, under] = [count % parts, parts];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const sign = value < 0 && count > 0 ? "-" : "";
  return sign + (over === 0 ? String(whole) : `${whole > 0 ? `${whole} ` : ""}${over}/${under}`);
}

/** Without the rounding errors of a change of units. */
const tidy = (number: number): number => Number(number.toPrecision(12));
