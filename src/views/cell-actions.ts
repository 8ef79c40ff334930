/** What can be done with a whole cell: put one in beside it, move, duplicate, delete. Each is one step to undo. */
import { type Cell, duplicateCell, insertCell, type Kind, moveCell, newCell, removeCell } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import { goTo } from "./go-to.ts";
import { type MenuItem, openMenu } from "./menu.ts";
import { tell } from "./notice.ts";
import { words } from "./words.ts";

/** The kinds in the order in which they are offered. */
const offered: readonly Kind[] = [
  "given",
  "derived",
  "table",
  "note",
  "check",
  "decision",
  "question",
  "drawing",
  "chart",
  "study",
  "sheet",
];

/** Asks for a kind, at an element, and puts a new cell of it in so that it stands at `index`. */
export function offerKinds(desk: Desk, anchor: HTMLElement, index: number, back?: HTMLElement): void {
  const items = offered.map(
    (kind): MenuItem => ({
      label: words.kindNames[kind],
      hint: words.kindHints[kind],
      act: () => insert(desk, anchor, kind, index),
    }),
  );
  openMenu(anchor, words.insertMenu, items, back);
}

/** What the menu of a cell offers whatever its kind. */
export function commonItems(desk: Desk, anchor: HTMLElement, cell: Cell, name: string): MenuItem[] {
  const { cells } = desk.session.notebook;
  const index = indexOf(desk, cell);
  return [
    { label: words.insertBelow, hint: "Ctrl Enter", parted: true, act: () => offerKinds(desk, anchor, index + 1) },
    { label: words.insertBefore, act: () => offerKinds(desk, anchor, index) },
    { label: words.duplicate, act: () => duplicate(desk, anchor, cell) },
    ...(index > 0 ? [{ label: words.moveUp, hint: "Alt ↑", act: () => moveBy(desk, cell, name, -1) }] : []),
    ...(index < cells.length - 1
      ? [{ label: words.moveDown, hint: "Alt ↓", act: () => moveBy(desk, cell, name, 1) }]
      : []),
    { label: words.remove, parted: true, act: () => remove(desk, anchor, cell, name) },
  ];
}

/** Moves a cell up or down by one place; the focus stays where it is. */
export function moveBy({ session }: Desk, cell: Cell, name: string, by: -1 | 1): void {
  const { cells } = session.notebook;
  const to = cells.findIndex(({ id }) => id === cell.id) + by;
  if (to < 0 || to >= cells.length) return;
  session.edit((notebook) => moveCell(notebook, cell.id, to));
  tell(words.moved(name, to + 1, cells.length));
}

function insert({ session }: Desk, from: HTMLElement, kind: Kind, index: number): void {
  const cell = newCell(session.notebook, kind, index, session.program);
  session.edit((notebook) => insertCell(notebook, index, cell));
  begin(from, cell.id);
}

function duplicate({ session }: Desk, from: HTMLElement, cell: Cell): void {
  session.edit((notebook) => duplicateCell(notebook, cell.id, session.functions));
  const { cells } = session.notebook;
  const copy = cells[cells.findIndex(({ id }) => id === cell.id) + 1];
  if (!copy) return;
  begin(from, copy.id);
  if ("name" in copy) tell(words.duplicated(copy.name));
}

/** The page gives the focus to the cell that takes its place, or to this one when it is brought back. */
function remove(desk: Desk, anchor: HTMLElement, cell: Cell, name: string): void {
  const { session } = desk;
  const page = anchor.closest("spanwise-page");
  const index = indexOf(desk, cell);
  session.edit((notebook) => removeCell(notebook, cell.id));
  const step = session.steps.undo;
  const act = (): void => {
    // What has been done since then stays.
    if (session.steps.undo === step) session.undo();
    else session.edit((notebook) => insertCell(notebook, Math.min(index, notebook.cells.length), cell));
    if (page) goTo(page, cell.id);
  };
  tell(words.deleted(name), { label: words.bringBack, act });
}

const indexOf = ({ session }: Desk, cell: Cell): number => session.notebook.cells.findIndex(({ id }) => id === cell.id);

/** Asks the page to begin entering a cell that has just been put in. */
function begin(from: HTMLElement, id: string): void {
  from.dispatchEvent(new CustomEvent("begin-cell", { detail: id, bubbles: true }));
}
