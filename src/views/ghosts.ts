import type { Program, Result } from "../cells/index.ts";

/** The baseline or a trial that is not on, as far as it is computed. */
export interface Ghost {
  /** Null for the baseline. */
  readonly trial: string | null;
  /** A person has chosen it to be drawn thin behind what is on. */
  readonly isLine: boolean;
  /** Null before it is computed. */
  readonly program: Program | null;
  readonly result: (id: string) => Result | undefined;
}

/** A design that is drawn thin behind what is on: its name, and what it has for a cell. */
export interface Line {
  readonly name: string;
  readonly result: Extract<Result, { readonly ok: true }>;
  /** The whole design, for who computes further values of it. */
  readonly design: Pick<Ghost, "program" | "result">;
}

/**
 * What is known of the trials beside the one that is on, for whoever draws them behind it or says which of them pass.
 * Empty until that is computed, which is left to what loads with the trials.
 */
export class Ghosts {
  private known: readonly Ghost[] = [];
  private readonly listeners = new Set<() => void>();

  get all(): readonly Ghost[] {
    return this.known;
  }

  /** Those that are to be drawn and have a value for a cell, by its id. */
  lines(id: string): Line[] {
    return this.known.flatMap((design) => {
      const { trial, isLine } = design;
      const own = isLine && trial !== null ? design.result(id) : undefined;
      return own?.ok ? [{ name: trial ?? "", result: own, design }] : [];
    });
  }

  /** Takes what is known now, and tells it. */
  take(ghosts: readonly Ghost[]): void {
    if (ghosts.length === 0 && this.known.length === 0) return;
    this.known = ghosts;
    for (const listener of this.listeners) listener();
  }

  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
