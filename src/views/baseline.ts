import type { Notebook, Result, Session } from "../cells/index.ts";

/** The results a notebook had when it was opened: what every later change is told against. */
export class Baseline {
  private results: ReadonlyMap<string, Result> = new Map();
  private readonly listeners = new Set<() => void>();

  /** Another session can be had from `another`, to compute what was edited before it had its first results. */
  constructor(private readonly another: () => Session) {}

  /** Keeps the results as they are now; those that are still computed follow, whatever is edited meanwhile. */
  capture(session: Session): void {
    this.keep(session);
    const { notebook } = session;
    if (session.pendingCount === 0) return;
    const stop = session.onSettled(() => {
      const isEdited = session.notebook.cells !== notebook.cells;
      if (isEdited) this.complete(notebook);
      else this.keep(session);
      if (isEdited || session.pendingCount === 0) stop();
    });
  }

  /** The result a cell had, or undefined where it was not there. */
  result(id: string): Result | undefined {
    return this.results.get(id);
  }

  onCapture(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private keep(session: Session): void {
    const entries = session.notebook.cells.flatMap(({ id }): [string, Result][] => {
      const result = session.isPending(id) ? undefined : session.result(id);
      return result ? [[id, result]] : [];
    });
    this.results = new Map(entries);
    for (const listener of this.listeners) listener();
  }

  private complete(notebook: Notebook): void {
    const session = this.another();
    session.onSettled(() => {
      if (session.pendingCount > 0) return;
      this.keep(session);
      // Not from within its own news.
      queueMicrotask(() => session.dispose());
    });
    session.open(notebook);
  }
}
