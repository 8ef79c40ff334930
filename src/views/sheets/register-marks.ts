import { line, type Mark, text } from "./marks.ts";
import { overlap, type Page } from "./pages.ts";
import type { Rectangle } from "./paper.ts";

/**
 * Where a page is glued to its neighbours: a line in the middle of what both show, and crosses on it, each with a name.
 * Both pages have the same at the same place of the part, so that crosses lie on crosses when the part is whole.
 */
export function registerMarks({ piece }: Page, area: Rectangle): Mark[] {
  if (!piece) return [];
  const { column, row, columns, rows } = piece;
  const right = area.x + area.width;
  const bottom = area.y + area.height;
  const marks: Mark[] = [];
  // The seam on the right of column c is number c, from below the seam above row r number r.
  const upright = (x: number, seam: number) => {
    marks.push(line("seam", [x, area.y], [x, bottom]));
    for (const [share, which] of crossings) {
      marks.push(...cross(x, bottom - share * area.height, `${letter(seam)}${2 * row + which}`));
    }
  };
  const level = (y: number, seam: number) => {
    marks.push(line("seam", [area.x, y], [right, y]));
    for (const [share, which] of crossings) {
      marks.push(...cross(area.x + share * area.width, y, `${letter(columns + seam)}${2 * column + which}`));
    }
  };
  if (column < columns - 1) upright(right - overlap / 2, column);
  if (column > 0) upright(area.x + overlap / 2, column - 1);
  if (row < rows - 1) level(area.y + overlap / 2, row);
  if (row > 0) level(bottom - overlap / 2, row - 1);
  return marks;
}

/** Two crosses a seam, at these shares of a page. */
const crossings = [
  [0.2, 1],
  [0.8, 2],
] as const;

const letter = (index: number): string => String.fromCharCode(65 + (index % 26));

function cross(x: number, y: number, name: string): Mark[] {
  const arm = 4;
  return [
    line("frame", [x - arm, y], [x + arm, y]),
    line("frame", [x, y - arm], [x, y + arm]),
    text(name, [x + 1, y - 1], 2.4),
  ];
}
