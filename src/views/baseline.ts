import type { HistoryStep, Notebook, Result, Session } from "../cells/index.ts";

type Results = ReadonlyMap<string, Result>;

/** A state of the notebook that later changes are told against, and its results. */
interface Start {
  readonly notebook: Notebook;
  readonly results: Results;
}

const empty: Start = { notebook: { title: "", cells: [], trials: [] }, results: new Map() };

/**
 * What every change is told against: the results the notebook had when it was opened, or since when it was made anew by
 * taking over a trial; while a trial is on, those of the notebook's own.
 */
export class Baseline {
  private start: Start = empty;
  /** Each time it was made anew, by the step that did it. */
  private readonly renewals: { readonly step: HistoryStep; readonly before: Start; after: Start }[] = [];
  private readonly own: OwnResults;
  private readonly listeners = new Set<() => void>();
  private readonly stops: readonly (() => void)[];
  /** Ends the keeping of results that are still computed. */
  private stopKeeping: () => void = () => undefined;

  /** Another session can be had from `another`, to compute what is not on the screen. */
  constructor(
    private readonly session: Session,
    private readonly another: () => Session,
  ) {
    const tell = (): void => {
      for (const listener of this.listeners) listener();
    };
    this.own = new OwnResults(session, another, tell);
    this.stops = [session.onNotebook(() => this.follow())];
  }

  /** Keeps the results as they are now; those that are still computed follow, whatever is edited meanwhile. */
  capture(): void {
    const { session } = this;
    const { notebook } = session;
    this.stopKeeping();
    this.keep(notebook, session);
    if (session.pendingCount === 0) return;
    const stop = session.onSettled(() => {
      const isEdited = session.notebook.cells !== notebook.cells;
      if (isEdited || session.pendingCount === 0) stop();
      if (isEdited) this.complete(notebook);
      else this.keep(notebook, session);
    });
    this.stopKeeping = stop;
  }

  /** Takes the notebook as the last step left it for what later changes are told against, until that step is undone. */
  async renew(): Promise<void> {
    const step = this.session.steps.undo;
    if (!step) return;
    const { start: before } = this;
    const renewal = { step, before, after: before };
    this.renewals.push(renewal);
    await this.session.settled();
    if (this.session.steps.undo !== step) return;
    this.capture();
    renewal.after = this.start;
  }

  /** The notebook as it was at first: what is edited since can be made a trial. */
  get notebook(): Notebook {
    return this.start.notebook;
  }

  /** The result a cell had, or undefined where it was not there. */
  result(id: string): Result | undefined {
    return (this.own.results ?? this.start.results).get(id);
  }

  onCapture(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Ends it, and what it still has computed: the session goes on with another notebook. */
  dispose(): void {
    this.stopKeeping();
    for (const stop of this.stops) stop();
    this.own.dispose();
  }

  private follow(): void {
    const { undo, redo } = this.session.steps;
    for (const { step, before, after } of this.renewals) {
      if (step === redo) this.start = before;
      if (step === undo) this.start = after;
    }
  }

  private keep(notebook: Notebook, session: Session): void {
    this.start = { notebook, results: resultsOf(session) };
    for (const listener of this.listeners) listener();
  }

  private complete(notebook: Notebook): void {
    const session = this.another();
    // Not from within its own news.
    const end = (): void => queueMicrotask(() => session.dispose());
    const stop = session.onSettled(() => {
      if (session.pendingCount > 0) return;
      stop();
      this.keep(notebook, session);
      end();
    });
    this.stopKeeping = () => {
      stop();
      end();
    };
    session.open(notebook);
  }
}

/**
 * The results of the notebook's own while a trial is on: those that were there when it was turned on, and where there were
 * none, or the notebook itself is edited meanwhile, those of a session beside the one on the screen.
 */
class OwnResults {
  results: Results | null = null;
  private cells: Notebook["cells"] | null = null;
  /** The cells whose results are all there, on the screen. */
  private settled: Notebook["cells"] | null = null;
  private other: Session | null = null;
  private readonly stops: readonly (() => void)[];

  constructor(
    private readonly session: Session,
    private readonly another: () => Session,
    private readonly tell: () => void,
  ) {
    this.stops = [
      session.onNotebook(() => this.follow()),
      session.onSettled(() => {
        this.settled = session.pendingCount === 0 ? session.notebook.cells : null;
      }),
    ];
  }

  dispose(): void {
    for (const stop of this.stops) stop();
    this.end();
  }

  private follow(): void {
    const { session } = this;
    if (session.trialIndex === null) {
      if (this.results) this.end();
      return;
    }
    const { own } = session;
    if (own.cells === this.cells) return;
    this.cells = own.cells;
    if (!this.results && this.settled === own.cells) {
      // On the screen are still the results of what was shown before.
      this.results = resultsOf(session);
      this.tell();
    } else this.compute(own);
  }

  private compute(own: Notebook): void {
    this.results ??= new Map();
    if (this.other) {
      this.other.edit(() => own);
      return;
    }
    const other = this.another();
    this.other = other;
    other.onSettled(() => {
      this.results = resultsOf(other);
      this.tell();
    });
    other.open(own);
  }

  private end(): void {
    const { other } = this;
    [this.results, this.cells, this.other] = [null, null, null];
    // Not from within its own news.
    if (other) queueMicrotask(() => other.dispose());
    this.tell();
  }
}

function resultsOf(session: Session): Results {
  const entries = session.notebook.cells.flatMap(({ id }): [string, Result][] => {
    const result = session.isPending(id) ? undefined : session.result(id);
    return result ? [[id, result]] : [];
  });
  return new Map(entries);
}
