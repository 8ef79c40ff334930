/**
 * Which drawings, charts and studies are pinned to the board, and in what order. A notebook says so by a list of their ids;
 * where it has none, all drawings and charts are pinned in the order of the page, and so it is again when edits come back to
 * that. A study stands on the page with its chart, and on the board only where the list names it.
 */
import type { Cell, ChartCell, DrawingCell, Notebook, StudyCell } from "./cell.ts";

/** A cell whose picture stands on the board unless it is taken off. */
export type FigureCell = DrawingCell | ChartCell;

/** A cell that can be pinned to the board. */
export type PinnedCell = FigureCell | StudyCell;

export const isFigure = (cell: Cell): cell is FigureCell => cell.kind === "drawing" || cell.kind === "chart";

export const canBePinned = (cell: Cell): cell is PinnedCell => isFigure(cell) || cell.kind === "study";

/** What is pinned to the board, in its order. */
export function figuresOnBoard({ cells, board }: Notebook): readonly PinnedCell[] {
  if (board === undefined) return cells.filter(isFigure);
  const byId = new Map(cells.filter(canBePinned).map((cell) => [cell.id, cell]));
  return board.flatMap((id) => byId.get(id) ?? []);
}

/** The figure pinned to the board, after all others. @throws where the id is that of nothing that can be pinned */
export function pinFigure(notebook: Notebook, id: string): Notebook {
  if (!notebook.cells.some((cell) => cell.id === id && canBePinned(cell))) {
    throw new Error(`got the id "${id}", expected that of a drawing, a chart or a study`);
  }
  const ids = idsOnBoard(notebook);
  return ids.includes(id) ? notebook : withBoard(notebook, [...ids, id]);
}

/** The figure taken off the board; its cell stays on the page. */
export function unpinFigure(notebook: Notebook, id: string): Notebook {
  const ids = idsOnBoard(notebook);
  return ids.includes(id) ? withBoard(notebook, without(ids, id)) : notebook;
}

/** The figure moved so that it stands at `index` of the board. @throws where it is not there, or no such place is */
export function moveFigure(notebook: Notebook, id: string, index: number): Notebook {
  const ids = idsOnBoard(notebook);
  if (!ids.includes(id) || !Number.isInteger(index) || index < 0 || index >= ids.length) {
    throw new Error(`got "${id}" and ${index}, expected a figure on the board and a place from 0 to ${ids.length - 1}`);
  }
  if (ids[index] === id) return notebook;
  const others = without(ids, id);
  return withBoard(notebook, [...others.slice(0, index), id, ...others.slice(index)]);
}

/** The notebook with other cells: off its board is what is gone, and what was put in stands after all others. */
export function withCells(notebook: Notebook, cells: readonly Cell[], put: Cell | null = null): Notebook {
  const { board } = notebook;
  if (board === undefined) return { ...notebook, cells };
  const here = new Set(cells.map(({ id }) => id));
  const kept = board.filter((id) => here.has(id));
  return withBoard({ ...notebook, cells }, put && isFigure(put) ? [...kept, put.id] : kept);
}

const idsOnBoard = (notebook: Notebook): readonly string[] => figuresOnBoard(notebook).map(({ id }) => id);

const without = (ids: readonly string[], id: string): readonly string[] => ids.filter((each) => each !== id);

/** The board of these ids, told only where it is not as the page has it. */
function withBoard({ board: _, ...notebook }: Notebook, ids: readonly string[]): Notebook {
  const all = notebook.cells.filter(isFigure).map(({ id }) => id);
  const isAsPage = ids.length === all.length && ids.every((id, index) => id === all[index]);
  return isAsPage ? notebook : { ...notebook, board: ids };
}
