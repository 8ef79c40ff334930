/** Which notebook was open last: in this tab, which a reload brings up again, and in any, for a tab that is new. */
const key = "spanwise-open";

/** Ids, the likeliest first; none where the browser stores nothing. */
export function lastOpen(): readonly string[] {
  return stores().flatMap((store) => store.getItem(key) ?? []);
}

/** The notebook of this id is open. */
export function setLastOpen(id: string): void {
  try {
    for (const store of stores()) store.setItem(key, id);
  } catch {
    // There is no room; then what was kept last comes up.
  }
}

/** What the browser gives of its two small stores; it may refuse them. */
function stores(): readonly Storage[] {
  try {
    return [sessionStorage, localStorage];
  } catch {
    return [];
  }
}
