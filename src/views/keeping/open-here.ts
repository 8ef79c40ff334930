/**
 * Which notebook this tab has open, so that a reload brings it up again. For a tab that is new the storage of notebooks
 * says which was open last: browsers write this small store only now and then, which a crash would show.
 */
const key = "spanwise-open";

/** Its id; null where none is known. */
export function openHere(): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null;
  }
}

/** The notebook of this id is open. */
export function setOpenHere(id: string): void {
  try {
    sessionStorage.setItem(key, id);
  } catch {
    // The browser stores nothing; then the notebook that was open last in any tab comes up.
  }
}
