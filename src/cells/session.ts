import type { FunctionTable } from "../library/spec.ts";
import type { Notebook } from "./cell.ts";
import { compile } from "./compile.ts";
import { Graph } from "./graph.ts";
import type { Program } from "./step.ts";
import type { Result } from "./value.ts";

type Stop = () => void;

/** An open notebook: what it says, its compiled cells, their latest results, and who wants to hear of a change. */
export class Session {
  private current: Notebook = { title: "", cells: [], trials: [] };
  private compiled: Program;
  private readonly resultListeners = new Map<string, Set<(result: Result) => void>>();
  private readonly settledListeners = new Set<() => void>();
  private readonly notebookListeners = new Set<() => void>();
  private readonly graph = new Graph({
    onResult: (id, result) => tell(this.resultListeners.get(id), result),
    onSettled: () => tell(this.settledListeners, undefined),
  });

  constructor(private readonly functions: FunctionTable) {
    this.compiled = compile([], functions);
  }

  get notebook(): Notebook {
    return this.current;
  }

  get program(): Program {
    return this.compiled;
  }

  /** Takes another notebook in place of the open one. */
  open(notebook: Notebook): void {
    this.take(notebook);
  }

  /** Applies a pure edit; one that changes nothing is not told to anyone. */
  edit(change: (notebook: Notebook) => Notebook): void {
    const next = change(this.current);
    if (next !== this.current) this.take(next);
  }

  /** The latest result of a cell, by id; undefined until it has been computed once. */
  result(id: string): Result | undefined {
    return this.graph.result(id);
  }

  /** Resolves once every result follows from the notebook as it now is; it needs no frame, only microtasks. */
  settled(): Promise<void> {
    return this.graph.settled();
  }

  /** Calls back at each new result of one cell. Gives what ends it. */
  onResult(id: string, listener: (result: Result) => void): Stop {
    const listeners = this.resultListeners.get(id) ?? new Set();
    this.resultListeners.set(id, listeners.add(listener));
    return () => {
      listeners.delete(listener);
      if (listeners.size === 0) this.resultListeners.delete(id);
    };
  }

  /** Calls back whenever a whole wave of results is there. */
  onSettled(listener: () => void): Stop {
    return listen(this.settledListeners, listener);
  }

  /** Calls back when the notebook itself has changed, before its results have. */
  onNotebook(listener: () => void): Stop {
    return listen(this.notebookListeners, listener);
  }

  dispose(): void {
    this.graph.dispose();
  }

  private take(notebook: Notebook): void {
    const sameCells = notebook.cells === this.current.cells;
    this.current = notebook;
    if (!sameCells) {
      this.compiled = compile(notebook.cells, this.functions, this.compiled);
      this.graph.update(this.compiled);
    }
    tell(this.notebookListeners, undefined);
  }
}

function listen(listeners: Set<() => void>, listener: () => void): Stop {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function tell<T>(listeners: Set<(news: T) => void> | undefined, news: T): void {
  for (const listener of listeners ?? []) listener(news);
}
