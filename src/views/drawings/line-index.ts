import type { Box, Line } from "./geometry.ts";

/** Lines of a sheet by where they lie, so that a place is held against those near it and not against all. */
export interface LineIndex {
  /** True where one of the lines that may reach into the box passes the test. */
  some(box: Box, test: (line: Line) => boolean): boolean;
}

/** The side of the squares in which lines are kept, px: about as wide as a label. */
const size = 32;

/** Sorts lines into the squares of a sheet; what lies beyond its edges counts as at the edge. */
export function indexLines(lines: readonly Line[], sheet: Box): LineIndex {
  const columns = squares(sheet.right - sheet.left);
  const rows = squares(sheet.bottom - sheet.top);
  const kept: Line[][] = Array.from({ length: columns * rows }, () => []);
  const reach = (box: Box) => ({
    left: square(box.left - sheet.left, columns),
    right: square(box.right - sheet.left, columns),
    top: square(box.top - sheet.top, rows),
    bottom: square(box.bottom - sheet.top, rows),
  });
  for (const line of lines) {
    const { left, right, top, bottom } = reach(boxAround(line));
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) kept[row * columns + column]?.push(line);
    }
  }
  return {
    some(box, test) {
      const { left, right, top, bottom } = reach(box);
      for (let row = top; row <= bottom; row++) {
        for (let column = left; column <= right; column++) if (kept[row * columns + column]?.some(test)) return true;
      }
      return false;
    },
  };
}

/** The smallest box with the whole line in it. */
export const boxAround = ({ from, to }: Line): Box => ({
  left: Math.min(from.x, to.x),
  right: Math.max(from.x, to.x),
  top: Math.min(from.y, to.y),
  bottom: Math.max(from.y, to.y),
});

const squares = (length: number): number => Math.max(1, Math.ceil(length / size));
const square = (at: number, count: number): number => Math.max(0, Math.min(count - 1, Math.floor(at / size)));
