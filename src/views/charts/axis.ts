import { nice, ticks as roundValues } from "d3";
import { unitOf } from "../../library/at-first.ts";
import { formatNumber } from "../format.ts";

/** One axis of a chart: from SI to px, with its ticks. */
export interface Axis {
  /** Where an SI value lies, px. */
  readonly place: (value: number) => number;
  readonly ticks: readonly Tick[];
}

/** One tick: where it lies, px, and what it says. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** Where an axis lies and in which unit it tells. */
export interface AxisOptions {
  /** px of its beginning and its end. */
  readonly range: readonly [number, number];
  readonly unit: string;
  /** About how many ticks; at least two are drawn. */
  readonly count: number;
  /** px that a tick's text needs along the axis, with some room; fewer ticks are drawn where they would run together. */
  readonly room?: (text: string) => number;
  /** Runs just over its values, without rounding its ends, as time does. */
  readonly isExact?: boolean;
}

/**
 * The axis for some SI values, in round numbers of its unit. Values that are all the same stand in the middle; without
 * any it runs from 0 to 1. `limits` are shown too where they lie near the values.
 */
export function axisFor(values: readonly number[], limits: readonly number[], options: AxisOptions): Axis {
  const { factor, offset } = unitOf(options.unit || "1");
  const shown = (value: number) => (value - offset) / factor;
  const exact = withLimits(spread(values.map(shown)), limits.map(shown));
  let count = Math.max(2, options.count);
  const scale = scaleOf(options.isExact ? exact : nice(...exact, count), options.range);
  const place = (value: number) => scale.at(shown(value));
  let ticks = ticksOf(scale, count);
  while (count > 2 && areCrowded(ticks, options.room)) ticks = ticksOf(scale, --count);
  return { place, ticks: areCrowded(ticks, options.room) ? ticks.slice(0, 1) : ticks };
}

/** The lines of the title of an axis: "tilt loss, %". */
export const axisTitle = (label: string, unit: string): string => (unit ? `${label}, ${unit}` : label);

/** From the least to the greatest value; of a single value, or of values that differ by rounding only, some way about. */
function spread(values: readonly number[]): [number, number] {
  if (values.length === 0) return [0, 1];
  const least = Math.min(...values);
  const most = Math.max(...values);
  const size = Math.max(Math.abs(least), Math.abs(most));
  if (most - least > 1e-9 * size) return [least, most];
  const about = size === 0 ? 1 : 0.1 * size;
  return [least - about, most + about];
}

/** A limit farther off than a third of the values' range would squeeze the curve: it is left outside. */
function withLimits([least, most]: [number, number], limits: readonly number[]): [number, number] {
  const room = (most - least) / 3;
  const near = limits.filter((limit) => limit > least - room && limit < most + room);
  return [Math.min(least, ...near), Math.max(most, ...near)];
}

/** Values in the unit of the axis, from its one end to the other, and where they lie, px. */
interface Scale {
  readonly ends: readonly [number, number];
  at(value: number): number;
}

const scaleOf = ([least, most]: readonly [number, number], [start, end]: readonly [number, number]): Scale => ({
  ends: [least, most],
  at: (value) => start + ((value - least) / (most - least)) * (end - start),
});

function ticksOf(scale: Scale, count: number): Tick[] {
  const round = roundValues(...scale.ends, count);
  const values = round.length >= 2 ? round : scale.ends;
  const step = Math.abs((values[1] ?? 1) - (values[0] ?? 0));
  const largest = Math.max(...values.map(Math.abs));
  const decimals = step > 1e-4 && largest < 1e7 ? decimalsFor(step) : null;
  return values.map((value) => ({
    at: scale.at(value),
    text: decimals === null ? formatNumber(value, "1").number : fixed(value, decimals),
  }));
}

/** As many decimals as tell multiples of a step apart; a step that is no power of ten by rounding only counts as one. */
export const decimalsFor = (step: number): number => Math.max(0, -Math.floor(Math.log10(step) + 1e-9));

function areCrowded(ticks: readonly Tick[], room: AxisOptions["room"]): boolean {
  if (!room) return false;
  return ticks.slice(1).some(({ at, text }, index) => {
    const before = ticks[index];
    return before !== undefined && Math.abs(at - before.at) < (room(text) + room(before.text)) / 2;
  });
}

const fixed = (value: number, decimals: number): string => {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
};
