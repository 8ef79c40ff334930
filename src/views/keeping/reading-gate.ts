/**
 * While a notebook can only be read the session refuses every edit; here nothing that edits even opens, and a person who
 * tries is told why. Going about, copying and whatever else only reads stays as it is.
 */

/** Where edits begin: in the text, on the board and at the title. */
const rooms = "main, #board, .title";
const doors =
  ".cover, .quiet, .more, .insert, .add-cell, .slider, .answering *, .details *, .keep, .choice, svg:has(.choice)";
/** What can be dragged to another place; a click on it does nothing, so nothing is told of one. */
const grips = "spanwise-sheet header";

/** Stops what would edit within `root` while `reads` is true, and calls `say` instead. Gives what ends it. */
export function guardReading(root: HTMLElement, reads: () => boolean, say: () => void): () => void {
  const guard = (event: Event): void => {
    if (!reads() || !(event.target instanceof Element) || !event.target.closest(rooms)) return;
    if (event.type === "pointerdown" && event.target.closest(grips)) event.stopImmediatePropagation();
    const wants = event instanceof KeyboardEvent ? keyEdits(event, event.target) : pointerEdits(event, event.target);
    if (!wants) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    // A press is told once, not at each of its events; a double click may only choose a word to copy.
    if (!["pointerdown", "mousedown", "dblclick"].includes(event.type)) say();
  };
  const kinds = ["pointerdown", "mousedown", "click", "dblclick", "keydown", "beforeinput", "cut", "paste", "drop"];
  for (const kind of kinds) root.addEventListener(kind, guard, { capture: true });
  return () => {
    for (const kind of kinds) root.removeEventListener(kind, guard, { capture: true });
  };
}

function pointerEdits(event: Event, target: Element): boolean {
  const { type } = event;
  // A file that is dropped is opened, and edits nothing here.
  if (event instanceof DragEvent && event.dataTransfer?.types.includes("Files")) return false;
  if (type === "cut" || type === "paste" || type === "beforeinput") return true;
  return target.closest(type === "dblclick" ? `${doors}, .prose` : doors) !== null;
}

/** Tab, Escape and, but on a knob, the arrow keys lead on; with Control they copy and choose. */
function keyEdits({ key, ctrlKey, metaKey, altKey }: KeyboardEvent, target: Element): boolean {
  if (altKey && key.startsWith("Arrow") && target.closest(".cell, spanwise-sheet")) return true;
  if ((ctrlKey || metaKey) && key === "Enter" && target.closest(".cell")) return true;
  if (ctrlKey || metaKey || altKey || !target.closest(doors)) return false;
  if (target.closest(".slider")) return /^(Arrow|Page|Home|End)/.test(key);
  return key.length === 1 || ["Enter", "F2", "Delete", "Backspace"].includes(key);
}
