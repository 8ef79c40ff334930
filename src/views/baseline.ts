import type { Result, Session } from "../cells/index.ts";

/** The results a notebook had when it was opened: what every later change is told against. */
export class Baseline {
  private results: ReadonlyMap<string, Result> = new Map();
  private readonly listeners = new Set<() => void>();

  /** Keeps the results as they are now. */
  capture(session: Session): void {
    const entries = session.notebook.cells.flatMap(({ id }): [string, Result][] => {
      const result = session.result(id);
      return result ? [[id, result]] : [];
    });
    this.results = new Map(entries);
    for (const listener of this.listeners) listener();
  }

  /** The result a cell had, or undefined where it was not there. */
  result(id: string): Result | undefined {
    return this.results.get(id);
  }

  onCapture(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
