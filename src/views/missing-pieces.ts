import { tell } from "./notice.ts";

/** What is said where a piece of the page that loads late cannot be had. */
export const missingPiece =
  "This part of the page could not be loaded. Once there is a connection, load the page again; the notebook is kept.";

/**
 * Says so where a piece of the page that loads late cannot be had, whoever asked for it: the bundler tells of each by an
 * event. Who asked may catch it and say more; where nobody does it is no error to be reported.
 */
export function tellMissingPieces(): void {
  const missing = new WeakSet<object>();
  window.addEventListener("vite:preloadError", (event) => {
    const { payload } = event as Event & { readonly payload?: unknown };
    if (typeof payload === "object" && payload !== null) missing.add(payload);
    tell(missingPiece);
  });
  window.addEventListener("unhandledrejection", (event) => {
    if (typeof event.reason === "object" && event.reason !== null && missing.has(event.reason)) event.preventDefault();
  });
}
