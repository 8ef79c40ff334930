/** How the entering of a text ends: it is kept unless it was called off; "away" when the focus has gone elsewhere. */
export type Leaving = "enter" | "escape" | "away";

/** Where the caret stands at first: before a character, or all is selected. */
export type Caret = number | "all";

/** The term to mark, and what is wrong with it. */
export interface Fault {
  readonly at: readonly [from: number, to: number];
  readonly message: string;
  /** Nothing is wrong with it but that it waits for another cell. */
  readonly waits: boolean;
}

/** True within a text that is being entered, which has its own keys and undoes its own steps; a knob is none. */
export function isEntry(target: EventTarget | null): boolean {
  return (
    target instanceof Element &&
    target.closest("spanwise-formula-entry, textarea, input:not([type=range], [type=checkbox])") !== null
  );
}

/** Ends what is being entered on the page, so that it is part of the notebook. */
export function leaveEntry(): void {
  const { activeElement } = document;
  if (activeElement instanceof HTMLElement && activeElement.closest(".cell, .title")) activeElement.blur();
}
