/** Undo and redo without limit: each step is kept as what it took out and what it put in, not as a whole notebook. */
import type { Cell, Notebook } from "./cell.ts";

type Frame = Omit<Notebook, "cells">;

/** One step: the cells from `at` on that it replaced, and all but the cells where that changed. */
export interface Step {
  readonly at: number;
  readonly removed: readonly Cell[];
  readonly inserted: readonly Cell[];
  readonly frames: { readonly before: Frame; readonly after: Frame } | null;
}

/** A step that this history may still rewrite. */
type Held = { -readonly [K in keyof Step]: Step[K] };

export class History {
  private readonly past: Held[] = [];
  private readonly future: Held[] = [];
  /** The gesture of the last step, while it goes on. */
  private gesture: string | null = null;

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** The step that `undo` would take back. */
  get last(): Step | undefined {
    return this.past.at(-1);
  }

  /** The step that `redo` would do again. */
  get next(): Step | undefined {
    return this.future.at(-1);
  }

  /**
   * Adds the step from one notebook to the next; whatever could have been redone is gone. Steps of one gesture, such as
   * a drag from press to release or the typing of one formula, become one step.
   */
  remember(before: Notebook, after: Notebook, gesture: string | null = null): void {
    const last = gesture !== null && gesture === this.gesture ? this.past.pop() : undefined;
    const from = last ? apply(before, reversed(last)) : before;
    const step = stepBetween(from, after);
    if (!isEmpty(step)) this.past.push(step);
    this.future.length = 0;
    this.gesture = gesture;
  }

  /** Ends a gesture: the next step stands by itself, whatever it is called. */
  endGesture(): void {
    this.gesture = null;
  }

  /** The notebook as it was before the last step; the very same where there is none. */
  undo(notebook: Notebook): Notebook {
    return this.move(this.past, this.future, notebook, reversed);
  }

  /** The notebook after the step that was undone last; the very same where there is none. */
  redo(notebook: Notebook): Notebook {
    return this.move(this.future, this.past, notebook, (step) => step);
  }

  /**
   * Changes cells of a notebook, and the same in every step, so that no undoing brings back what they were. Each cell is
   * changed once, wherever it stands; gives the very same notebook where nothing changes.
   */
  rewrite(notebook: Notebook, change: (cell: Cell) => Cell): Notebook {
    const made = new Map<Cell, Cell>();
    const changed = (cells: readonly Cell[]): readonly Cell[] => {
      const now = cells.map((cell) => {
        const known = made.get(cell) ?? change(cell);
        made.set(cell, known);
        return known;
      });
      return now.every((cell, index) => cell === cells[index]) ? cells : now;
    };
    for (const step of [...this.past, ...this.future]) {
      step.removed = changed(step.removed);
      step.inserted = changed(step.inserted);
    }
    const cells = changed(notebook.cells);
    return cells === notebook.cells ? notebook : { ...notebook, cells };
  }

  private move(from: Held[], to: Held[], notebook: Notebook, turned: (step: Step) => Step): Notebook {
    this.gesture = null;
    const step = from.pop();
    if (!step) return notebook;
    to.push(step);
    return apply(notebook, turned(step));
  }
}

function stepBetween(before: Notebook, after: Notebook): Step {
  const [old, now] = [before.cells, after.cells];
  const most = Math.min(old.length, now.length);
  let at = 0;
  while (at < most && old[at] === now[at]) at++;
  let end = 0;
  while (end < most - at && old[old.length - 1 - end] === now[now.length - 1 - end]) end++;
  const [from, to] = [frameOf(before), frameOf(after)];
  const keys = [...new Set([...Object.keys(from), ...Object.keys(to)])] as (keyof Frame)[];
  return {
    at,
    removed: old.slice(at, old.length - end),
    inserted: now.slice(at, now.length - end),
    frames: keys.every((key) => from[key] === to[key]) ? null : { before: from, after: to },
  };
}

function apply(notebook: Notebook, { at, removed, inserted, frames }: Step): Notebook {
  const { cells } = notebook;
  if (removed.some((cell, index) => cells[at + index] !== cell)) {
    throw new Error("got a notebook that the step was not made for, expected the one it led from");
  }
  return {
    ...(frames ? frames.after : frameOf(notebook)),
    cells: [...cells.slice(0, at), ...inserted, ...cells.slice(at + removed.length)],
  };
}

const reversed = ({ at, removed, inserted, frames }: Step): Step => ({
  at,
  removed: inserted,
  inserted: removed,
  frames: frames && { before: frames.after, after: frames.before },
});

const isEmpty = ({ removed, inserted, frames }: Step): boolean =>
  removed.length === 0 && inserted.length === 0 && frames === null;

function frameOf({ cells: _, ...frame }: Notebook): Frame {
  return frame;
}
