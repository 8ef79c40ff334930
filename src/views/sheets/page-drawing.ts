import { line, type Mark, type PageDrawing, text } from "./marks.ts";
import { type Page, type Piece, type Placed, pagesOf } from "./pages.ts";
import type { Paper, Rectangle } from "./paper.ts";
import type { Part, Point } from "./parts.ts";
import { registerMarks } from "./register-marks.ts";
import { rules } from "./rules.ts";
import { sheetWords } from "./sheet-words.ts";

/** What is said on every page. */
export interface SheetHead {
  readonly title: string;
  readonly notebook: string;
  readonly trial: string | null;
  /** As 2026-11-25. */
  readonly date: string;
}

/** Width kept for the map of a part's pages, mm. */
const mapRoom = 28;

/** The pages of a sheet as they are printed; null where they would be too many. */
export function sheetPages(parts: readonly Part[], paper: Paper, head: SheetHead): PageDrawing[] | null {
  const pages = pagesOf(parts, paper);
  return pages?.map((page, index) => pageDrawing(page, paper, head, index + 1, pages.length)) ?? null;
}

function pageDrawing(page: Page, paper: Paper, head: SheetHead, number: number, of: number): PageDrawing {
  const { width, height, area } = paper;
  const named = sheetWords.parts(page.placed.map(({ part }) => part));
  const parts = page.piece ? sheetWords.piece(named, page.piece.columns, page.piece.rows) : named;
  const about = [
    head.notebook,
    ...(head.trial === null ? [] : [sheetWords.trial(head.trial)]),
    head.date,
    sheetWords.page(number, of),
  ].join(" · ");
  const room = area.width - (page.piece ? mapRoom + 4 : 0);
  return {
    title: sheetWords.pageTitle(head.title, number, of, parts),
    ...{ width, height, area },
    frame: [
      text(clipped(head.title, room, 4), [area.x, area.y - 10.5], 4, { isBold: true }),
      text(clipped(about, room, 2.8), [area.x, area.y - 6.2], 2.8),
      text(clipped(parts, room, 2.8), [area.x, area.y - 2.4], 2.8),
      ...(page.piece ? pageMap(page.piece, area, number) : []),
      ...outline(area),
      ...rules(paper),
    ],
    content: [...page.placed.flatMap((placed) => partMarks(placed, area)), ...registerMarks(page, area)],
  };
}

/** A part's lines and labels on the page. */
function partMarks({ part, x, y }: Placed, area: Rectangle): Mark[] {
  const onPage = ([px, py]: Point): Point => [area.x + x + px, area.y + area.height - y - py];
  return [
    ...part.strokes.map(({ layer, points }): Mark => line(layer, ...points.map(onPage))),
    ...part.labels.map(
      ({ text: words, at, angle, size }): Mark =>
        text(words, onPage(at), size, { layer: "text", angle, anchor: "middle" }),
    ),
  ];
}

/** Which piece of the whole this page is: a small plan of all of them with their pages' numbers, this one framed twice. */
function pageMap({ column, row, columns, rows }: Piece, area: Rectangle, number: number): Mark[] {
  const cell = Math.min(mapRoom / columns, 12 / rows, 6);
  const left = area.x + area.width - columns * cell;
  const foot = area.y - 2;
  const first = number - ((rows - 1 - row) * columns + column);
  const marks: Mark[] = [];
  for (let c = 0; c <= columns; c++) {
    marks.push(line("fine", [left + c * cell, foot], [left + c * cell, foot - rows * cell]));
  }
  for (let r = 0; r <= rows; r++) {
    marks.push(line("fine", [left, foot - r * cell], [left + columns * cell, foot - r * cell]));
  }
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const at: Point = [left + (c + 0.5) * cell, foot - (r + 0.5) * cell];
      const isThis = c === column && r === row;
      const page = first + (rows - 1 - r) * columns + c;
      marks.push(text(String(page), at, cell * 0.45, { anchor: "middle", ...(isThis && { isBold: true }) }));
    }
  }
  const [x, y, inset] = [left + column * cell, foot - row * cell, cell * 0.1];
  const [near, far] = [inset, cell - inset];
  marks.push(
    line(
      "cut",
      [x + near, y - near],
      [x + far, y - near],
      [x + far, y - far],
      [x + near, y - far],
      [x + near, y - near],
    ),
  );
  return marks;
}

const outline = ({ x, y, width, height }: Rectangle): Mark[] => [
  line("fine", [x, y], [x + width, y], [x + width, y + height], [x, y + height], [x, y]),
];

/** A line that fits, its letters half as wide as they are high or a little more. */
function clipped(words: string, room: number, size: number): string {
  const most = Math.max(8, Math.floor(room / (0.52 * size)));
  return words.length <= most ? words : `${words.slice(0, most - 1)}…`;
}
