import type { FunctionTable } from "../library/spec.ts";
import type { Cell, Notebook, Trial } from "./cell.ts";
import { compile } from "./compile.ts";
import { concealedCells } from "./concealed.ts";
import { type Delegate, Graph } from "./graph.ts";
import { hiddenCells } from "./hidden.ts";
import { History, type Step } from "./history.ts";
import { editedTrial, shownWith, trialsAgainst } from "./shown-trial.ts";
import type { Program } from "./step.ts";
import type { Result } from "./value.ts";

type Stop = () => void;

const blank: Notebook = { title: "", cells: [], trials: [] };

/**
 * An open notebook: what it says, its compiled cells, their latest results, and who wants to hear of a change. While one
 * of its trials is on, what it says and comes to is that of the trial; what is kept in files is its own.
 */
export class Session {
  /** While true nothing can be edited, undone or redone here: somebody else edits this notebook. It can be opened. */
  readOnly = false;
  /** What is kept, and what steps lead from and to. */
  private kept = blank;
  /** What is shown: the same, or with a trial on. */
  private current = blank;
  private on: number | null = null;
  /** Which trial was on before and after a step that changed trials. */
  private readonly turns = new WeakMap<Step, { readonly before: number | null; readonly after: number | null }>();
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

  /** The notebook as it is shown and computed: with the trial that is on, if one is. */
  get notebook(): Notebook {
    return this.current;
  }

  /** The notebook's own, without a trial: what is kept. The very same as what is shown while no trial is on. */
  get own(): Notebook {
    return this.kept;
  }

  /** The trial that is on; null where none is. */
  get trial(): Trial | null {
    return this.on === null ? null : (this.kept.trials[this.on] ?? null);
  }

  /** The place of that trial among the notebook's trials, counted from 0; null where none is on. */
  get trialIndex(): number | null {
    return this.on;
  }

  /** Turns a trial on, by its place, or off; that is no step to undo. @throws where there is no such trial */
  turnOn(index: number | null): void {
    if (index === this.on) return;
    if (index !== null && !this.kept.trials[index])
      throw new Error(`got the trial ${index}, expected one that is there`);
    this.history.endGesture();
    this.take(this.kept, index);
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
    [this.kept, this.current, this.on] = [blank, blank, null];
    this.take(notebook, null);
  }

  /** Takes a table that has more functions: cells that called them in vain are computed now. */
  learn(functions: FunctionTable): void {
    this.table = functions;
    this.compile();
  }

  /**
   * Applies a pure edit as one step that can be undone; one that changes nothing is not told to anyone. Edits of one
   * gesture, such as a drag, are one step together until `endGesture`. While a trial is on, an edit that sets givens or
   * table entries is one of the trial only; any other is one of the notebook itself.
   */
  edit(change: (notebook: Notebook) => Notebook, gesture: string | null = null): void {
    if (this.readOnly) return;
    const { on, current } = this;
    const next = on === null ? null : change(current);
    const edited = on === null || next === null ? null : editedTrial(this.kept, on, current, next);
    // What was edited is what is shown: nothing has to be found out again.
    if (!edited || next === null) this.editOwn(change, undefined, gesture);
    else if (next !== current) this.step(edited, on, gesture, { ...next, trials: trialsAgainst(edited, on ?? 0) });
  }

  /**
   * Applies a pure edit to the notebook itself, whatever trial is on, as one step. Afterwards the trial of the place `on`
   * is on; where that is left out the same as before, if it is still there.
   */
  editOwn(change: (notebook: Notebook) => Notebook, on?: number | null, gesture: string | null = null): void {
    if (this.readOnly) return;
    const next = change(this.kept);
    this.step(next, on === undefined ? placeAfter(this.kept.trials, next.trials, this.on) : on, gesture);
  }

  /**
   * Changes what is only remembered of cells, such as what has left the notebook on paper. That is no step of its own, and
   * no undoing takes it back: the paper is there.
   */
  remark(change: (cell: Cell) => Cell): void {
    if (this.readOnly) return;
    const kept = this.history.rewrite(this.kept, change);
    if (kept !== this.kept) this.take(kept, this.on);
  }

  /** The notebook's own as it would be after an edit. */
  afterEdit(change: (notebook: Notebook) => Notebook): Notebook {
    if (this.on === null) return change(this.kept);
    const next = change(this.current);
    return next === this.current
      ? this.kept
      : (editedTrial(this.kept, this.on, this.current, next) ?? change(this.kept));
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

  /** Takes the last step back, if there is one; a trial that it changed is on then, as it was. */
  undo(): void {
    const step = this.history.last;
    if (this.canUndo && step) this.move(this.history.undo(this.kept), this.turns.get(step)?.before);
  }

  /** Does again what was taken back last, if anything was; a trial that it changes is on then. */
  redo(): void {
    const step = this.history.next;
    if (this.canRedo && step) this.move(this.history.redo(this.kept), this.turns.get(step)?.after);
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

  private step(next: Notebook, on: number | null, gesture: string | null, shown?: Notebook): void {
    const before = this.kept;
    if (next === before) return;
    this.history.remember(before, next, gesture);
    const { last } = this.history;
    if (last && before.trials !== next.trials) this.turns.set(last, { before: this.on, after: on });
    this.take(next, on, shown);
  }

  private move(kept: Notebook, on: number | null | undefined): void {
    this.take(kept, on === undefined ? placeAfter(this.kept.trials, kept.trials, this.on) : on);
  }

  private take(kept: Notebook, on: number | null, known?: Notebook): void {
    const before = this.current;
    const shown = known ?? (on === null ? kept : shownWith(kept, on, before));
    [this.kept, this.on, this.current] = [kept, on, shown];
    if (shown.cells !== before.cells) {
      this.hiddenIds = hiddenCells(shown);
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

/** Where the trial that was on stands among the trials as they are now; null where it is gone. */
function placeAfter(before: readonly Trial[], now: readonly Trial[], on: number | null): number | null {
  const trial = on === null ? undefined : before[on];
  if (!trial || on === null) return null;
  const found = now.indexOf(trial);
  if (found >= 0) return found;
  // It has another set, or another name.
  if (now.length === before.length) return on;
  const named = now.findIndex(({ name }) => name === trial.name);
  return named < 0 ? null : named;
}

function listen(listeners: Set<() => void>, listener: () => void): Stop {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function tell<T>(listeners: Set<(news: T) => void> | undefined, news: T): void {
  for (const listener of listeners ?? []) listener(news);
}
