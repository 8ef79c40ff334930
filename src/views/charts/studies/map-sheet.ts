import type { MapOutcome } from "../../../cells/index.ts";
import type { Point } from "../../drawings/geometry.ts";
import type { Measure } from "../../drawings/text-size.ts";
import { type Axis, axisFor } from "../axis.ts";
import { small } from "../panels.ts";

/** The field of one result. All in px. */
export interface MapField {
  readonly index: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: Axis;
  readonly y: Axis;
  /** Where a place of the grid lies: column and row from 0, also between them. */
  readonly place: (at: Point) => Point;
  /** Baselines of the result's name and of the words of the axis up; where their texts begin. */
  readonly nameLine: number;
  readonly upLine: number;
  readonly textLeft: number;
}

/** How maps lie on a sheet: side by side where there is room, else one below the other. */
export interface MapSheet {
  readonly width: number;
  readonly right: number;
  readonly fields: readonly MapField[];
  /** Where the last field and its axis end. */
  readonly bottom: number;
}

/** Lays the field of each result on a sheet of a width. */
export function mapSheet(
  { inputs, results }: MapOutcome,
  width: number,
  panelHeight: number | undefined,
  measure: Measure,
): MapSheet {
  const [across, up] = inputs;
  const xs = across?.values ?? [];
  const ys = up?.values ?? [];
  const columns = results.length > 1 && width >= 560 ? 2 : 1;
  const cell = (width - (columns - 1) * between) / columns;
  // The ticks of the axis up are the same in each field, but for how many there is room for.
  const widest = Math.max(
    ...axisFor(ys, [], { range: [1, 0], unit: up?.unit ?? "1", count: 5, isExact: true }).ticks.map(({ text }) =>
      measure(text, small),
    ),
  );
  const gutter = Math.max(36, Math.ceil(widest) + 14);
  const high = panelHeight ?? Math.round(Math.max(170, Math.min(340, 0.72 * (cell - gutter))));
  const fields = results.map((_, index): MapField => {
    const textLeft = (index % columns) * (cell + between) + 4;
    const left = textLeft - 4 + gutter;
    const right = textLeft - 4 + cell - rightEdge;
    const over = Math.floor(index / columns) * (heads + high + axisHeight) + 6;
    const [top, bottom] = [over + heads, over + heads + high];
    const x = axisFor(xs, [], {
      range: [left, right],
      unit: across?.unit ?? "1",
      count: Math.max(2, Math.round((right - left) / 80)),
      room: (text) => 1.5 * measure(text, small) + 8,
      isExact: true,
    });
    const y = axisFor(ys, [], {
      range: [bottom, top],
      unit: up?.unit ?? "1",
      count: Math.max(3, Math.min(6, Math.round(high / 45))),
      isExact: true,
    });
    const place = (at: Point): Point => ({ x: x.place(valueAtPlace(xs, at.x)), y: y.place(valueAtPlace(ys, at.y)) });
    return { index, left, right, top, bottom, x, y, place, nameLine: over + 12, upLine: over + 31, textLeft };
  });
  return { width, right: width - rightEdge, fields, bottom: (fields.at(-1)?.bottom ?? 0) + 37 };
}

/** The value at a place between those of a list. */
function valueAtPlace(values: readonly number[], at: number): number {
  const below = Math.max(0, Math.min(values.length - 1, Math.floor(at)));
  const [from, to] = [values[below] ?? 0, values[Math.min(values.length - 1, below + 1)] ?? 0];
  return from + (at - below) * (to - from);
}

/** The place of a value among those of a list, as `valueAtPlace` takes it; null beyond the ends. */
export function gridPlace(values: readonly number[], value: number): number | null {
  const [first, last] = [values[0], values.at(-1)];
  if (first === undefined || last === undefined) return null;
  const hair = 1e-9 * Math.abs(last - first);
  if (value < first - hair || value > last + hair) return null;
  const after = Math.max(
    1,
    values.findIndex((each) => each >= value - hair),
  );
  const [from, to] = [values[after - 1] ?? first, values[after] ?? last];
  return to === from ? 0 : after - 1 + (value - from) / (to - from);
}

const heads = 40;
const axisHeight = 56;
const between = 10;
const rightEdge = 18;
