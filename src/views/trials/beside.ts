import {
  applyTrial,
  type ComparedColumn,
  type Notebook,
  type Program,
  type Result,
  type Session,
  type Trial,
} from "../../cells/index.ts";
import type { Desk } from "../desk.ts";

/** The baseline or a trial, with what is known of it so far. */
export interface BesideColumn extends ComparedColumn {
  /** True while a cell has the result of before, or none yet. */
  readonly isPending: (id: string) => boolean;
}

/** How long nothing may have been edited before what is not on the screen is computed again, in ms. */
const pause = 150;

/** Between two of them, so that what is typed has its turn, in ms. */
const rest = 10;

interface Shown {
  readonly set: Trial["set"];
  readonly own: Notebook["cells"];
  readonly program: Program;
}

interface Entry {
  readonly set: Trial["set"];
  /** The notebook's own cells that it follows from; null before it has any result. */
  cells: Notebook["cells"] | null;
  program: Program | null;
  error: string | null;
  results: ReadonlyMap<string, Result>;
  /** What is still computed; null where that is everything. */
  pending: ReadonlySet<string> | null;
}

/**
 * The baseline and all trials beside the one that is on: those that are not on the screen are computed by sessions of
 * their own, one after the other, slow cells last and in other threads, and only while somebody looks. What was on the screen
 * keeps its results when it is turned off.
 */
export class Beside {
  private readonly entries = new Map<string, Entry>();
  private readonly listeners = new Set<(isOnScreen: boolean) => void>();
  private readonly stops: readonly (() => void)[];
  /** What the others follow from. */
  private seen: readonly unknown[] = [];
  private timer: ReturnType<typeof setTimeout> | null = null;
  private computing: { readonly entry: Entry; readonly session: Session } | null = null;
  /** What is on the screen with all its results there. */
  private settled: Shown | null = null;

  constructor(
    private readonly session: Session,
    private readonly another: Desk["another"],
  ) {
    this.stops = [session.onNotebook(() => this.follow()), session.onSettled(() => this.settle())];
    this.settle();
  }

  /** Looks at them, and calls back at whatever is new, on the screen only or beside it. Gives what ends it. */
  watch(listener: (isOnScreen: boolean) => void): () => void {
    this.listeners.add(listener);
    this.schedule();
    return () => {
      this.listeners.delete(listener);
      if (this.listeners.size === 0) this.halt();
    };
  }

  /** The baseline first, then the trials in their order. */
  get columns(): readonly BesideColumn[] {
    const { own, trialIndex } = this.session;
    return [null, ...own.trials].map((trial, place): BesideColumn => {
      const name = trial?.name ?? null;
      if ((trialIndex ?? -1) + 1 === place) return this.onScreen(name);
      const { program, error, results, pending, cells } = this.entryOf(trial?.set ?? noSet);
      const isOld = cells !== own.cells || pending === null;
      return {
        trial: name,
        error,
        program,
        result: (id) => results.get(id),
        isPending: (id) => error === null && (isOld || pending.has(id)),
      };
    });
  }

  dispose(): void {
    for (const stop of this.stops) stop();
    this.listeners.clear();
    this.halt();
  }

  private onScreen(trial: string | null): BesideColumn {
    const { session } = this;
    return {
      trial,
      error: null,
      program: session.program,
      result: (id) => session.result(id),
      isPending: (id) => session.isPending(id),
    };
  }

  private entryOf(set: Trial["set"]): Entry {
    const key = keyOf(set);
    const known = this.entries.get(key);
    if (known) return known;
    const entry: Entry = { set, cells: null, program: null, error: null, results: new Map(), pending: null };
    this.entries.set(key, entry);
    return entry;
  }

  private settle(): void {
    const { program, own, pendingCount } = this.session;
    this.settled = pendingCount === 0 ? { set: this.setOnScreen, own: own.cells, program } : null;
    this.tell(true);
  }

  private get setOnScreen(): Trial["set"] {
    return this.session.trial?.set ?? noSet;
  }

  private follow(): void {
    const { settled, session, seen } = this;
    const { own, trialIndex } = session;
    const others = own.trials.filter((_, index) => index !== trialIndex);
    const now: unknown[] = [own.cells, trialIndex, ...others];
    this.seen = now;
    // A drag in the trial that is on changes none of the others.
    if (seen.length === now.length && seen.every((each, index) => each === now[index])) return;
    const wanted = new Set([noSet, ...own.trials.map(({ set }) => set)].map(keyOf));
    if (settled && keyOf(settled.set) !== keyOf(this.setOnScreen) && wanted.has(keyOf(settled.set))) {
      // On the screen are still the results of what was shown before.
      const { program, own: cells } = settled;
      const results = resultsOf(session, program);
      Object.assign(this.entryOf(settled.set), { cells, program, error: null, results, pending: new Set() });
    }
    for (const each of this.entries.keys()) if (!wanted.has(each)) this.entries.delete(each);
    this.schedule();
    this.tell();
  }

  private schedule(delay = pause): void {
    if (this.listeners.size === 0) return;
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.timer = null;
      this.next();
    }, delay);
  }

  /** Begins the first that is not what it should be, unless one is under way that is. */
  private next(): void {
    const { own, trialIndex } = this.session;
    const { computing } = this;
    if (computing) {
      const isWanted = this.entries.get(keyOf(computing.entry.set)) === computing.entry;
      if (isWanted && computing.entry.cells === own.cells) return;
      this.end();
    }
    const sets = [noSet, ...own.trials.map(({ set }) => set)];
    const entries = sets.filter((_, at) => at !== (trialIndex ?? -1) + 1).map((set) => this.entryOf(set));
    const fresh = entries.find(({ cells, pending }) => cells !== own.cells || pending === null);
    const slow = entries.find(({ error, pending }) => error === null && pending?.size !== 0);
    if (fresh) this.compute(fresh, own, true);
    else if (slow) this.compute(slow, own, false);
  }

  /** What is quick is computed of all of them before what is slow of any. */
  private compute(entry: Entry, own: Notebook, isQuick: boolean): void {
    entry.cells = own.cells;
    if (isQuick) entry.pending = null;
    let shown: Notebook;
    try {
      shown = { ...applyTrial(own, { name: "", set: entry.set }), trials: [] };
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      entry.error = error.message;
      entry.pending = new Set();
      this.tell();
      this.schedule(rest);
      return;
    }
    entry.error = null;
    const session = this.another(isQuick);
    this.computing = { entry, session };
    session.onSettled(() => {
      if (this.computing?.session !== session) return;
      entry.program = session.program;
      // What is pending has the result of before.
      entry.results = new Map([...entry.results, ...resultsOf(session, session.program)]);
      entry.pending = new Set(session.program.cells.flatMap(({ id }) => (session.isPending(id) ? [id] : [])));
      this.tell();
      if (session.pendingCount > 0 && !isQuick) return;
      this.end();
      this.schedule(rest);
    });
    session.open(shown);
  }

  private end(): void {
    const { computing } = this;
    this.computing = null;
    // Not from within its own news.
    if (computing) queueMicrotask(() => computing.session.dispose());
  }

  private halt(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.end();
  }

  private tell(isOnScreen = false): void {
    for (const listener of this.listeners) listener(isOnScreen);
  }
}

const noSet: Trial["set"] = {};
const keyOf = (set: Trial["set"]): string => JSON.stringify(set);

function resultsOf(session: Session, { cells }: Program): ReadonlyMap<string, Result> {
  return new Map(
    cells.flatMap(({ id }): [string, Result][] => {
      const result = session.result(id);
      return result ? [[id, result]] : [];
    }),
  );
}
