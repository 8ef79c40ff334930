import type { Part } from "../sheets/parts.ts";
import type { Box, Point } from "./geometry.ts";

/** A part on the sheet, its label within it, or under it where it has no room. */
export interface PlacedPart {
  readonly part: Part;
  /** Where a point of the part's own frame lies, given in mm. */
  readonly place: (x: number, y: number) => Point;
  readonly middle: Point;
  readonly isLabelWithin: boolean;
  /** The middle of the lower edge of its place in the row. */
  readonly under: Point;
}

/** How parts lie on their sheet: in rows, all in one scale. */
export interface PartsSheet {
  readonly width: number;
  readonly height: number;
  /** px for a millimetre. */
  readonly scale: number;
  readonly placed: readonly PlacedPart[];
  readonly headLine: number;
  /** Where labels may stand. */
  readonly room: Box;
}

const side = 16;
const head = 28;
const gap = 16;
/** Between rows: room for a label under each part. */
const rowGap = 26;
const foot = 14;
const step = 16;
/** Nothing is drawn larger than life: 96 px for an inch. */
const life = 96 / 25.4;

/** Lays parts out in rows on a sheet of a width, as large as a height allows. @throws where there are no parts */
export function partsSheet(
  parts: readonly Part[],
  width: number,
  height: number,
  labelWidth: (part: Part) => number,
): PartsSheet {
  const widest = Math.max(...parts.map((part) => part.width));
  if (!(widest > 0)) throw new Error("got no parts with a size, expected some");
  const room = width - 2 * side;
  let scale = Math.min(life, room / widest);
  const cellWidth = (part: Part, at: number): number =>
    fitsWithin(part, at, labelWidth) ? part.width * at : Math.max(part.width * at, labelWidth(part));
  const rowsAt = (at: number): Part[][] => inRows(parts, room, (part) => cellWidth(part, at));
  let rows = rowsAt(scale);
  for (let tries = 0; heightOf(rows, scale) > height && tries < 20; tries++) {
    scale *= 0.92;
    rows = rowsAt(scale);
  }
  const whole = step * Math.ceil(heightOf(rows, scale) / step);
  const placed: PlacedPart[] = [];
  let top = head;
  for (const row of rows) {
    let left = side;
    const tall = Math.max(...row.map((part) => part.height)) * scale;
    for (const part of row) {
      const [x0, y0] = [left, top + tall];
      placed.push({
        part,
        place: (x, y) => ({ x: x0 + x * scale, y: y0 - y * scale }),
        middle: { x: x0 + (part.width * scale) / 2, y: y0 - (part.height * scale) / 2 },
        isLabelWithin: fitsWithin(part, scale, labelWidth),
        under: { x: x0 + cellWidth(part, scale) / 2, y: y0 },
      });
      left += cellWidth(part, scale) + gap;
    }
    top += tall + rowGap;
  }
  const labels = { left: 4, top: head - 6, right: width - 4, bottom: whole - 4 };
  return { width, height: whole, scale, placed, headLine: 16, room: labels };
}

/** Whether a label stands clear of the outline within a part. */
const fitsWithin = (part: Part, scale: number, labelWidth: (part: Part) => number): boolean =>
  labelWidth(part) + 24 < part.width * scale && part.height * scale > 40;

function inRows(parts: readonly Part[], room: number, widthOf: (part: Part) => number): Part[][] {
  const rows: Part[][] = [];
  let left = Number.POSITIVE_INFINITY;
  for (const part of parts) {
    const width = widthOf(part);
    if (left + width > room + 1e-6) {
      rows.push([]);
      left = 0;
    }
    rows.at(-1)?.push(part);
    left += width + gap;
  }
  return rows;
}

const heightOf = (rows: readonly (readonly Part[])[], scale: number): number =>
  head + foot + rows.reduce((sum, row) => sum + Math.max(...row.map((part) => part.height)) * scale + rowGap, 0);
