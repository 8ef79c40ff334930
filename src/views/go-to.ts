/** Asks the page to bring a cell into view and to focus it, by name or id. */
export const goTo = (from: EventTarget, cell: string): void => {
  from.dispatchEvent(new CustomEvent("go-to-cell", { detail: cell, bubbles: true, composed: true }));
};
