import type { FunctionTable } from "../library/spec.ts";
import type { Notebook } from "./cell.ts";
import { compile } from "./compile.ts";
import { concealedCells } from "./concealed.ts";
import { type Delegate, Graph } from "./graph.ts";
import { hiddenCells } from "./hidden.ts";
import { History, type Step } from "./history.ts";
import type { Program } from "./step.ts";
import type { Result } from "./value.ts";

type Stop = () => void;

const blank: Notebook = { title: "", cells: [], trials: [] };

/** An open notebook: what it says, its compiled cells, their latest results, and who wants to hear of a change. */
export class Session {
  /** While true nothing can be edited, undone or redone here: somebody else edits this notebook. It can be opened. */
  readOnly = false;
  private current = blank;
  private compiled: Program;
  private history = new History();
  private hiddenIds: ReadonlySet<string> = new Set();
  private concealedIds: ReadonlyMap<string, string> = new Map();
  private readonly resultListeners = new Map<string, Set<(result: Result | undefined) => void>>();
  private readonly settledListeners = new Set<() => void>();
  private readonly notebookListeners = new Set<() => void>();
  private readonly graph: Graph;

  /** Slow cells are computed by `delegate`, where there is one, and all others here. */
  constructor(
    private table: FunctionTable,
    delegate: Delegate | null = null,
  ) {
    this.compiled = compile([], table);
    this.graph = new Graph(
      {
        onResult: (id, result) => tell(this.resultListeners.get(id), result),
        onSettled: () => tell(this.settledListeners, undefined),
      },
      delegate,
    );
  }

  get notebook(): Notebook {
    return this.current;
  }

  /** The functions that formulas can call. */
  get functions(): FunctionTable {
    return this.table;
  }

  get program(): Program {
    return this.compiled;
  }

  /** Takes another notebook in place of the open one; what was done to that one can no longer be undone. */
  open(notebook: Notebook): void {
    this.history = new History();
    // Cells of two notebooks can have the same id: none may show, as its old value, that of the other one.
    this.graph.forget();
    this.compiled = compile([], this.table);
    this.current = blank;
    this.take(notebook);
  }

  /** Takes a table that has more functions: cells that called them in vain are computed now. */
  learn(functions: FunctionTable): void {
    this.table = functions;
    this.compile();
  }

  /**
   * Applies a pure edit as one step that can be undone; one that changes nothing is not told to anyone. Edits of one
   * gesture, such as a drag, are one step together until `endGesture`.
   */
  edit(change: (notebook: Notebook) => Notebook, gesture: string | null = null): void {
    if (this.readOnly) return;
    const before = this.current;
    const next = change(before);
    if (next === before) return;
    this.history.remember(before, next, gesture);
    this.take(next);
  }

  /** Ends a gesture: the edit after it is a step of its own. */
  endGesture(): void {
    this.history.endGesture();
  }

  get canUndo(): boolean {
    return !this.readOnly && this.history.canUndo;
  }

  get canRedo(): boolean {
    return !this.readOnly && this.history.canRedo;
  }

  /** The step that `undo` would take back, and the one that `redo` would do again, where there is one. */
  get steps(): { readonly undo: Step | undefined; readonly redo: Step | undefined } {
    return {
      undo: this.readOnly ? undefined : this.history.last,
      redo: this.readOnly ? undefined : this.history.next,
    };
  }

  /** Takes the last step back, if there is one. */
  undo(): void {
    if (this.canUndo) this.take(this.history.undo(this.current));
  }

  /** Does again what was taken back last, if anything was. */
  redo(): void {
    if (this.canRedo) this.take(this.history.redo(this.current));
  }

  /** Ids of the cells whose value an unanswered question hides. */
  get hidden(): ReadonlySet<string> {
    return this.hiddenIds;
  }

  /** Whatever shows nothing of its value for that, each with the hidden cell that it would give away, by id. */
  get concealed(): ReadonlyMap<string, string> {
    return this.concealedIds;
  }

  /** The latest result of a cell, by id; undefined until it has been computed once. */
  result(id: string): Result | undefined {
    return this.graph.result(id);
  }

  /** True while a cell keeps the result of before, or has none yet, because it follows from one computed elsewhere. */
  isPending(id: string): boolean {
    return this.graph.isPending(id);
  }

  /** How many cells are pending. */
  get pendingCount(): number {
    return this.graph.pendingCount;
  }

  /**
   * Resolves once every result that is not pending follows from the notebook as it now is; it needs no frame, only
   * microtasks.
   */
  settled(): Promise<void> {
    return this.graph.settled();
  }

  /** Calls back at each new result of one cell, and when it becomes pending or ceases to be. Gives what ends it. */
  onResult(id: string, listener: (result: Result | undefined) => void): Stop {
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
      this.hiddenIds = hiddenCells(notebook);
      this.compile();
    }
    tell(this.notebookListeners, undefined);
  }

  private compile(): void {
    this.compiled = compile(this.current.cells, this.table, this.compiled);
    this.concealedIds = concealedCells(this.compiled, this.hiddenIds);
    this.graph.update(this.compiled);
  }
}

function listen(listeners: Set<() => void>, listener: () => void): Stop {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function tell<T>(listeners: Set<(news: T) => void> | undefined, news: T): void {
  for (const listener of listeners ?? []) listener(news);
}
