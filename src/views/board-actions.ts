/** What can be done with a drawing or chart on the board: pin it, take it off, move it. Each is one step to undo. */
import { figuresOnBoard, moveFigure, type PinnedCell, pinFigure, unpinFigure } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import { figureTitle } from "./figure-words.ts";
import { goTo } from "./go-to.ts";
import type { MenuItem } from "./menu.ts";
import { tell } from "./notice.ts";
import { words } from "./words.ts";

export const isOnBoard = ({ session }: Desk, cell: PinnedCell): boolean => placeOnBoard(session.notebook, cell) >= 0;

/** Pins it after all others. */
export function pin({ session }: Desk, cell: PinnedCell): void {
  session.edit((notebook) => pinFigure(notebook, cell.id));
  tell(words.pinned(figureTitle(cell)));
}

/** Takes it off the board; it can be pinned again from its cell. */
export function unpin({ session }: Desk, cell: PinnedCell): void {
  session.edit((notebook) => unpinFigure(notebook, cell.id));
  const step = session.steps.undo;
  const act = (): void => {
    if (session.steps.undo === step) session.undo();
    else session.edit((notebook) => pinFigure(notebook, cell.id));
  };
  tell(words.unpinned(figureTitle(cell)), { label: words.pinAgain, act });
}

/** Moves it to another place on the board, counted from 0; where there is no such place it stays. */
export function moveTo({ session }: Desk, cell: PinnedCell, to: number): void {
  const all = figuresOnBoard(session.notebook).length;
  if (to < 0 || to >= all) return;
  session.edit((notebook) => moveFigure(notebook, cell.id, to));
  tell(words.moved(figureTitle(cell), to + 1, all));
}

/** Moves it one place up or down, or as far as it goes. */
export function moveAlong(desk: Desk, cell: PinnedCell, by: -1 | 1): void {
  moveTo(desk, cell, placeOnBoard(desk.session.notebook, cell) + by);
}

/** What the menu of a sheet offers; last, after what its figure offers `more`, that it is taken off. */
export function sheetItems(
  desk: Desk,
  from: HTMLElement,
  cell: PinnedCell,
  more: readonly MenuItem[] = [],
): MenuItem[] {
  const { notebook } = desk.session;
  const place = placeOnBoard(notebook, cell);
  const page = from.closest("spanwise-app")?.querySelector("spanwise-page");
  return [
    ...(page ? [{ label: words.showCell, act: () => goTo(page, cell.id) }] : []),
    ...(place > 0 ? [{ label: words.moveEarlier, hint: "Alt ↑", act: () => moveAlong(desk, cell, -1) }] : []),
    ...(place < figuresOnBoard(notebook).length - 1
      ? [{ label: words.moveLater, hint: "Alt ↓", act: () => moveAlong(desk, cell, 1) }]
      : []),
    ...more,
    { label: words.unpin, parted: true, act: () => unpin(desk, cell) },
  ];
}

const placeOnBoard = (notebook: Desk["session"]["notebook"], { id }: PinnedCell): number =>
  figuresOnBoard(notebook).findIndex((cell) => cell.id === id);
