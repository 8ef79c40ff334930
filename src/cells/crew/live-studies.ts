/** The studies of an open notebook that somebody looks at: run when they are looked at, and again where an edit touches them. */
import type { StudyCell } from "../cell.ts";
import type { Session } from "../session.ts";
import type { Program, Step } from "../step.ts";
import type { Crew } from "./crew.ts";
import type { RunNews } from "./study-run.ts";

/** How a study stands, for whoever shows it. */
export interface StudyNews extends Omit<RunNews, "status"> {
  /**
   * `waiting` for a pause in the edits; `stopped` by a person; `long`: it would take longer than is begun unasked, as
   * `left` tells; the others as a run tells them.
   */
  readonly status: RunNews["status"] | "waiting" | "stopped" | "long";
  /** The outcome is that of the notebook before the edit. */
  readonly isOld: boolean;
}

/**
 * What is studied in a program as it is now, null where there is nothing; `without` is the id of a cell whose value makes
 * no difference to it.
 */
export type StudyOf = (program: Program) => { readonly study: StudyCell; readonly without?: string } | null;

/** How long nothing may have been edited before a study begins anew, in ms. */
const pause = 250;

/** What takes longer than this, in ms, is not run unasked; that is judged when it has run for a while. */
const longest = 60_000;
const judged = 2000;

const nothing: StudyNews = {
  ...{ status: "waiting", progress: 0, left: null },
  ...{ outcome: null, isOld: false, message: null, fault: null },
};

interface Entry {
  readonly studyOf: StudyOf;
  readonly listeners: Set<() => void>;
  /** Whatever its outcome follows from. */
  key: readonly unknown[];
  news: StudyNews;
  /** A person has asked for it to be run, however long it takes. */
  isAsked: boolean;
  stop: () => void;
}

export class LiveStudies {
  private readonly entries = new Map<string, Entry>();
  private readonly unfollow: readonly (() => void)[];

  constructor(
    private readonly session: Session,
    private readonly crew: Crew,
  ) {
    // Cells can be compiled anew without an edit, where functions are loaded late.
    const follow = (): void => this.follow();
    this.unfollow = [session.onNotebook(follow), session.onSettled(follow)];
  }

  /** How a study stands; undefined where nobody has looked at it. */
  news(id: string): StudyNews | undefined {
    return this.entries.get(id)?.news;
  }

  /**
   * Looks at a study, known by an id of its own, and calls back at its news. Gives what ends it. One that nobody looks at
   * any more is stopped, unless a person has asked for it; what it came to is kept.
   */
  watch(id: string, studyOf: StudyOf, listener: () => void): () => void {
    const entry = this.entries.get(id) ?? this.enter(id, studyOf);
    entry.listeners.add(listener);
    if (entry.listeners.size === 1) this.follow();
    return () => {
      entry.listeners.delete(listener);
      if (entry.listeners.size > 0 || entry.isAsked) return;
      entry.stop();
      // What was not done begins anew when it is looked at again.
      if (entry.news.status !== "done") entry.key = [];
    };
  }

  /** Runs it, as a person asks: also where it takes long. */
  run(id: string): void {
    const entry = this.entries.get(id);
    if (!entry) return;
    entry.isAsked = true;
    entry.stop();
    this.begin(entry);
  }

  /** Stops it, as a person asks; what is there stays. It is run again when that is asked for, or an edit touches it. */
  stop(id: string): void {
    const entry = this.entries.get(id);
    if (!entry) return;
    entry.isAsked = false;
    entry.stop();
    this.tell(entry, { status: "stopped", left: null });
  }

  /** Stops all of them for good. */
  dispose(): void {
    for (const end of this.unfollow) end();
    for (const { stop } of this.entries.values()) stop();
    this.entries.clear();
  }

  private enter(id: string, studyOf: StudyOf): Entry {
    const entry: Entry = {
      studyOf,
      listeners: new Set(),
      key: [],
      news: nothing,
      isAsked: false,
      stop: () => undefined,
    };
    this.entries.set(id, entry);
    return entry;
  }

  /** Begins those anew that an edit touches. */
  private follow(): void {
    const { notebook, program } = this.session;
    for (const entry of this.entries.values()) {
      if (entry.listeners.size === 0) continue;
      const studied = entry.studyOf(program);
      const key = studied ? [...whatCounts(program, studied.study, notebook, studied.without)] : [null];
      if (key.length === entry.key.length && key.every((each, index) => each === entry.key[index])) continue;
      entry.key = key;
      entry.isAsked = false;
      entry.stop();
      if (!studied) {
        this.tell(entry, { ...nothing, status: "done" });
        continue;
      }
      entry.stop = this.crew.port.later(pause, () => this.begin(entry));
      const { outcome } = entry.news;
      this.tell(entry, {
        status: "waiting",
        progress: 0,
        left: null,
        message: null,
        fault: null,
        isOld: outcome !== null,
      });
    }
  }

  private begin(entry: Entry): void {
    const { notebook, program } = this.session;
    const studied = entry.studyOf(program);
    if (!studied) return;
    const { study } = studied;
    const { cells, trials } = notebook;
    const begun = this.crew.port.now();
    entry.stop = this.crew.study({ study, cells, trials }, (news) => {
      const isOld = news.outcome === null && entry.news.outcome !== null;
      this.tell(entry, { ...news, outcome: news.outcome ?? entry.news.outcome, isOld });
      const isJudged = news.status === "running" && !entry.isAsked && this.crew.port.now() - begun > judged;
      if (!isJudged || (news.left ?? 0) < longest) return;
      entry.stop();
      this.tell(entry, { status: "long" });
    });
    this.tell(entry, { status: "running", progress: 0, left: null, message: null, fault: null });
  }

  private tell(entry: Entry, news: Partial<StudyNews>): void {
    entry.news = { ...entry.news, ...news };
    for (const listener of entry.listeners) listener();
  }
}

/** The words of a study that change what it comes to, the trials it takes, and the compiled cells that it rests on. */
function* whatCounts(
  program: Program,
  study: StudyCell,
  notebook: Session["notebook"],
  without: string | undefined,
): Generator<unknown> {
  const { title: _, reason: __, ...rest } = study;
  yield JSON.stringify(rest);
  // A map marks every trial; a sweep has a curve for those that it names.
  const named = study.study === "map" ? notebook.trials.map(({ name }) => name) : (study.trials ?? []);
  for (const name of named) {
    const trial = notebook.trials.find((each) => each.name === name);
    yield trial && JSON.stringify(trial);
  }
  for (const step of stepsBehind(program, study)) if (step.id !== without) yield step;
}

/**
 * The steps that a study's own step, or a chart's, needs in the end. Where it names no checks all count, and where it names
 * no inputs all that may be off.
 */
function stepsBehind(program: Program, { id, checks, inputs }: StudyCell): Set<Step> {
  const named = (program.byId.get(id)?.inputs ?? []).flatMap((each) => program.byId.get(each) ?? []);
  const others = program.steps.filter(
    ({ cell, plusMinus }) => (!checks && cell.kind === "check") || (inputs.length === 0 && plusMinus),
  );
  const behind = new Set([...named, ...others]);
  // A set that grows while it is walked is walked to its end.
  for (const step of behind) {
    for (const input of step.inputs) {
      const needed = program.byId.get(input);
      if (needed) behind.add(needed);
    }
  }
  return behind;
}
