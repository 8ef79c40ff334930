import type { HistoryStep } from "../cells/index.ts";
import { cellTitle } from "./cell-title.ts";
import { words } from "./words.ts";

/** What a step that can be undone did, in a few words: "delete span". */
export function stepWords({ removed, inserted, frames }: HistoryStep): string {
  const { steps } = words;
  const [before, after] = [removed[0], inserted[0]];
  if (!before && !after) return frameWords(frames);
  if (!before) return inserted.length === 1 && after ? steps.insert(cellTitle(after)) : steps.cells(inserted.length);
  if (!after) return removed.length === 1 ? steps.delete(cellTitle(before)) : steps.cells(removed.length);
  const movedDown = before === inserted.at(-1);
  if (movedDown || after === removed.at(-1)) return steps.move(cellTitle(movedDown ? before : after));
  const changed = removed.filter((cell, index) => cell !== inserted[index]);
  for (const cell of changed) {
    const now = inserted.find(({ id }) => id === cell.id);
    if (now && "name" in cell && "name" in now && cell.name !== now.name) return steps.rename(cell.name, now.name);
  }
  return changed.length === 1 && changed[0] ? steps.change(cellTitle(changed[0])) : steps.cells(changed.length);
}

function frameWords(frames: HistoryStep["frames"]): string {
  if (frames && frames.before.title !== frames.after.title) return words.steps.title;
  return frames && frames.before.board !== frames.after.board ? words.steps.board : words.steps.trials;
}

/** The cell, by id, in which a person sees what a step did or took back; undefined where that is none. */
export const seenIn = ({ removed, inserted }: HistoryStep, present: (id: string) => boolean): string | undefined =>
  [...inserted, ...removed].find((cell, index) => cell !== removed[index] && present(cell.id))?.id;
