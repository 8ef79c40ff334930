import { MaxRectsPacker } from "maxrects-packer";
import type { Paper } from "./paper.ts";
import type { Part } from "./parts.ts";

/** A part on a page: where its frame's origin lies from the lower left corner of the page's area, mm, y up. */
export interface Placed {
  readonly part: Part;
  readonly x: number;
  readonly y: number;
}

/** Which piece of a part a page shows that is larger than a page; rows are counted from below. */
export interface Piece {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** What is on one page: parts as a whole, or a piece of a larger one. */
export interface Page {
  readonly placed: readonly Placed[];
  readonly piece: Piece | null;
}

/** Two pages that are glued together show the same over this width, mm. */
export const overlap = 12;
const gap = 5;
/** Kept free along the edge of the area, so that no cut runs along its frame, mm. */
const inset = 3;
/** The largest number of pages of one sheet: more is a mistake, not a plan. */
export const mostPages = 60;

/**
 * The pages of parts at true size. What fits on one page is never cut: such parts are packed, unturned; a larger one goes
 * over as many pages as it needs, which overlap, and shares them with others that are as long. Null where that would be more than `mostPages`.
 */
export function pagesOf(parts: readonly Part[], { area }: Paper): Page[] | null {
  const [roomAcross, roomUp] = [area.width - 2 * inset, area.height - 2 * inset];
  const fits = ({ width, height }: Part) => width <= roomAcross && height <= roomUp;
  const packer = new MaxRectsPacker<PackedPart>(roomAcross, roomUp, gap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: false,
  });
  packer.addArray(parts.filter(fits).map((part) => ({ width: part.width, height: part.height, x: 0, y: 0, part })));
  const pages: Page[] = packer.bins.map(({ rects }) => ({
    // From the upper left corner down.
    placed: rects.map(({ part, x, y }) => ({ part, x: inset + x, y: area.height - inset - y - part.height })),
    piece: null,
  }));
  for (const group of groupsOf(
    parts.filter((part) => !fits(part)),
    [roomAcross, roomUp],
  )) {
    const columns = piecesFor(group.width + 2 * inset, area.width);
    const rows = piecesFor(group.height + 2 * inset, area.height);
    if (pages.length + columns * rows > mostPages) return null;
    for (let row = rows - 1; row >= 0; row--) {
      for (let column = 0; column < columns; column++) {
        const [left, below] = [column * (area.width - overlap), row * (area.height - overlap)];
        const placed = group.placed
          .map(({ part, x, y }) => ({ part, x: inset + x - left, y: inset + y - below }))
          .filter(({ part, x, y }) => x < area.width && x + part.width > 0 && y < area.height && y + part.height > 0);
        pages.push({ placed, piece: { column, row, columns, rows } });
      }
    }
  }
  return pages.length > mostPages ? null : pages;
}

/** Parts too large for a page that share a row or a column of pages. */
interface Group {
  readonly placed: Placed[];
  width: number;
  height: number;
}

/** Long narrow parts above each other, or beside each other where they are tall, as many as a page has room for. */
function groupsOf(parts: readonly Part[], [roomAcross, roomUp]: readonly [number, number]): Group[] {
  const groups: Group[] = [];
  for (const part of parts) {
    const above = groups.find(({ height }) => height + gap + part.height <= roomUp);
    const beside = groups.find(({ width }) => width + gap + part.width <= roomAcross);
    if (above) {
      above.placed.push({ part, x: 0, y: above.height + gap });
      above.height += gap + part.height;
      above.width = Math.max(above.width, part.width);
    } else if (beside) {
      beside.placed.push({ part, x: beside.width + gap, y: 0 });
      beside.width += gap + part.width;
      beside.height = Math.max(beside.height, part.height);
    } else groups.push({ placed: [{ part, x: 0, y: 0 }], width: part.width, height: part.height });
  }
  return groups;
}

interface PackedPart {
  width: number;
  height: number;
  x: number;
  y: number;
  readonly part: Part;
}

const piecesFor = (size: number, window: number): number =>
  size <= window ? 1 : Math.ceil((size - overlap) / (window - overlap));
