/** How a result is told beside its cell: the figure large, what follows it smaller; and by how much it changed. */
import { type Margin, numberWithin, type Result } from "../cells/index.ts";
import { unitOf } from "../library/at-first.ts";
import type { Shape } from "../library/index.ts";
import { formatNumber, formatValue, joinUnit, type NumberText } from "./format.ts";

type Ok = Extract<Result, { readonly ok: true }>;

/** What a cell says of how its numbers are shown. */
export interface Telling {
  readonly unit?: string | undefined;
  readonly fraction?: number | undefined;
}

/** The unit a value is told in: the one its cell says, else the one its formula brought. */
export const unitFor = (shape: Shape, { unit }: Telling): string | undefined => unit ?? numberWithin(shape)?.unit;

/** A value as one text. */
export const oneLine = ({ value, shape }: Ok, telling: Telling = {}): string =>
  formatValue(value, shape, unitFor(shape, telling), telling.fraction);

/** A value with its leading figure apart from what follows: "11.6" and "deg", "472" and "mm span, 3 panels a side". */
export function leadAndRest(result: Ok, telling: Telling = {}): NumberText {
  const { value, shape } = result;
  if (shape.kind === "number" || shape.kind === "any") {
    return formatNumber(Number(value), unitFor(shape, telling) ?? "1", fractionOf(telling));
  }
  const text = oneLine(result, telling);
  if (shape.kind === "list") {
    const end = text.lastIndexOf("]") + 1;
    return { number: text.slice(0, end), unit: text.slice(end).trim() };
  }
  const [, number = text, unit = ""] = shape.kind === "record" ? (/^([−\d.]+) ?([^\d. ].*)$/.exec(text) ?? []) : [];
  return { number, unit };
}

/** By how much a number moved, at the decimals it is and was shown with and with its sign: "+0.8"; null where that is nothing. */
export function changeText(now: Result | undefined, then: Result | undefined, telling: Telling = {}): string | null {
  if (!now?.ok || !then?.ok || now.shape.kind !== "number" || then.shape.kind !== "number") return null;
  const unit = unitFor(now.shape, telling) ?? "1";
  const { factor } = unitOf(unit);
  const moved = (Number(now.value) - Number(then.value)) / factor;
  if (telling.fraction !== undefined) {
    return moved === 0 ? null : signed(formatNumber(moved * factor, unit, fractionOf(telling)).number);
  }
  const shown = formatNumber(Number(now.value), unit).number;
  if (shown.includes("e")) return Math.abs(moved) > 0 ? signed(formatNumber(moved, "1", { figures: 2 }).number) : null;
  const before = formatNumber(Number(then.value), unit).number;
  const decimals = Math.max(...[shown, before].map((text) => text.split(".")[1]?.length ?? 0));
  const rounded = Number(moved.toFixed(Math.min(decimals, 12)));
  return rounded === 0 ? null : signed(formatNumber(rounded, "1").number);
}

/**
 * How far a result moved: a number in its unit and in per cent, "+0.8 deg, +7.4%"; anything else by what it was, "was 472
 * mm span, 3 panels a side". Null where it tells the same as before.
 */
export function movedText(now: Result | undefined, then: Result | undefined, telling: Telling = {}): string | null {
  if (!now?.ok || !then?.ok) return null;
  if (now.shape.kind !== "number" || then.shape.kind !== "number") {
    const before = oneLine(then, telling);
    return before === oneLine(now, telling) ? null : `was ${before}`;
  }
  const change = changeText(now, then, telling);
  if (change === null) return null;
  const { unit } = leadAndRest(now, telling);
  const share = shareText(Number(now.value), Number(then.value), unit);
  return `${joinUnit({ number: change, unit })}${share === null ? "" : `, ${share}`}`;
}

/** A change as a share of what it was, to two figures; null from 0, on a scale such as °C, and of what is a share itself. */
export function shareText(now: number, then: number, unit: string): string | null {
  if (then === 0 || unit === "%" || unitOf(unit || "1").offset !== 0) return null;
  const share = (100 * (now - then)) / Math.abs(then);
  return joinUnit({ number: signed(formatNumber(share, "1", { figures: 2 }).number), unit: "%" });
}

/** The distance to a limit without its sign, to three figures: "1.1 g". */
export const gapText = ({ gap, unit }: Margin): string =>
  joinUnit(formatNumber(gapSize(gap, unit), unit, { figures: 3 }));

/** A distance on a scale such as °C is told without the scale's zero. */
const gapSize = (gap: number, unit: string): number => Math.abs(gap) + unitOf(unit).offset;

const fractionOf = ({ fraction }: Telling) => (fraction === undefined ? {} : { fraction });
const signed = (text: string): string => (text.startsWith("−") ? text : `+${text}`);
