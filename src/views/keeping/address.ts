/** What the address says is open: a kept notebook by its id, or a new one begun from one that ships. */
export type Target =
  | { readonly kind: "kept"; readonly id: string }
  | { readonly kind: "shipped"; readonly name: string };

/** Reads the part of an address from its # on; null where it names nothing to open. */
export function targetOf(hash: string): Target | null {
  const [, kind, name] = /^#(notebook|new)=([\w-]{1,64})$/.exec(hash) ?? [];
  if (name === undefined) return null;
  return kind === "new" ? { kind: "shipped", name } : { kind: "kept", id: name };
}

/** The part of an address from its # on. */
export const hashOf = (target: Target): string =>
  target.kind === "kept" ? `#notebook=${target.id}` : `#new=${target.name}`;

/** A new id: ten letters and digits by chance, 50 bits. */
export function newId(): string {
  const letters = "abcdefghijkmnpqrstuvwxyz23456789";
  return [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => letters[byte % letters.length]).join("");
}

/** The address of the page, which names what is open: so that loading it again, and a link, lead back there. */
export class Address {
  private shown = "";

  get target(): Target | null {
    return targetOf(location.hash);
  }

  /**
   * Calls back where the person goes to another notebook, by a link or back and forth. Until it is open the address
   * names the one that is. A way within the page, as to the board, is gone, and then forgotten.
   */
  onTarget(act: (target: Target) => void): void {
    window.addEventListener("hashchange", () => {
      if (location.hash === this.shown) return;
      const { target } = this;
      this.show(this.shown);
      if (target) act(target);
    });
  }

  /** Names what is open; null for nothing that could be found again. */
  set(target: Target | null): void {
    this.show(target ? hashOf(target) : "");
  }

  /** Names what is open, and keeps the way back to what was. */
  push(target: Target): void {
    this.shown = hashOf(target);
    history.pushState(null, "", this.shown);
  }

  private show(hash: string): void {
    this.shown = hash;
    if (location.hash !== hash) history.replaceState(null, "", hash || location.pathname + location.search);
  }
}
