/** Has slow cells and studies computed by hands in other threads, so that whoever draws and is typed into never waits. */
import type { FunctionTable } from "../../library/spec.ts";
import type { Cell } from "../cell.ts";
import type { Program, Step } from "../step.ts";
import type { Result } from "../value.ts";
import { Helper } from "./helper.ts";
import type { Answer } from "./orders.ts";
import type { Line, Port } from "./port.ts";
import { type RunNews, StudyRun, type StudySubject } from "./study-run.ts";

/** On the thread that draws, where there is no other: how long is computed at a stretch, and how long it then rests. */
const alone = { stretch: 12, rest: 30 } as const;

/** Where not even what computes here can be had, as without a connection: after so many ms all of it is tried again. */
const lonely = 2000;

/** What computes, as a piece of its own. */
const loadHere = () => import("./hand.ts");

/**
 * While cells are called off again and again, as by a drag, one is begun so seldom only, in ms, until for a while none has
 * been: what would be called off half way takes time from the thread that draws.
 */
const moving = { seldom: 250, pause: 80 } as const;

interface Ask {
  readonly cells: readonly Cell[];
  readonly step: Step;
  readonly done: (result: Result) => void;
  /** Waits until nothing else is asked for. */
  readonly isBehind: boolean;
  callOff: (() => void) | null;
}

/**
 * Cells are computed by the first hand, one at a time, in the order in which they were asked for, those on the screen
 * before those behind it; what is called off meanwhile is left out. Studies are computed by all, in parts that a cell never waits for.
 */
export class Crew {
  private readonly helpers: Helper[] = [];
  private readonly asks = new Set<Ask>();
  private readonly runs = new Set<StudyRun>();
  private lastRun = 0;
  /** When a cell was called off last, and when one was begun last. */
  private calledOffAt = Number.NEGATIVE_INFINITY;
  private begunAt = Number.NEGATIVE_INFINITY;
  private isResting = false;
  /** No other thread can be had: everything is computed in this one. */
  private isAlone = false;
  private isDisposed = false;
  /** How many hands can be had. */
  private most: number;

  constructor(
    readonly port: Port,
    private functions: FunctionTable,
    private readonly loadHand: typeof loadHere = loadHere,
  ) {
    this.most = port.most;
  }

  /** Takes a table that has more functions, for what is computed in this thread. */
  learn(functions: FunctionTable): void {
    this.functions = functions;
    // What was being computed here begins anew with it.
    if (this.isAlone) for (const helper of this.helpers) helper.close();
    this.next();
  }

  /** Computes a step of a program, and calls back with its result, never at once. Gives what calls it off. */
  readonly compute = (program: Program, step: Step, done: (result: Result) => void): (() => void) =>
    this.ask(program, step, done, false);

  /** The same for what is not on the screen: begun only where nothing else is asked for. */
  readonly computeBehind = (program: Program, step: Step, done: (result: Result) => void): (() => void) =>
    this.ask(program, step, done, true);

  private ask({ cells }: Program, step: Step, done: (result: Result) => void, isBehind: boolean): () => void {
    const ask: Ask = { cells, step, done, isBehind, callOff: null };
    this.asks.add(ask);
    // What is called off in the same moment is never begun.
    queueMicrotask(this.next);
    return () => {
      this.calledOffAt = this.port.now();
      this.asks.delete(ask);
      ask.callOff?.();
    };
  }

  /** Runs a study, and tells how it goes, never at once. Gives what stops it. */
  study(subject: StudySubject, tell: (news: RunNews) => void): () => void {
    const run = new StudyRun(++this.lastRun, subject, this.port, tell);
    this.runs.add(run);
    queueMicrotask(this.next);
    return () => {
      run.stop();
      this.end(run);
    };
  }

  /** Gets a hand ready before it is needed, when nothing else is to do: it calls a function on which slow ones rest. */
  warm(name: string): void {
    if (!this.isAlone) this.helper(0).warm(name);
  }

  /** Ends all hands; nobody is called back any more. */
  dispose(): void {
    this.isDisposed = true;
    this.asks.clear();
    for (const run of this.runs) run.stop();
    this.runs.clear();
    for (const helper of this.helpers) helper.close();
  }

  private readonly next = (): void => {
    const asks = [...this.asks];
    const ask = asks.find(({ isBehind }) => !isBehind) ?? asks[0];
    if (ask && !this.isResting && !this.helper(0).isAt("cell")) this.beginOrRest(ask);
    for (const run of this.runs) if (run.isOver) this.end(run);
    for (let index = 0; index < this.most; index++) {
      const helper = this.helper(index);
      if (helper.isAt("prepare", "part")) continue;
      for (const run of this.runs) if (run.give(helper)) break;
    }
  };

  private beginOrRest(ask: Ask): void {
    const left = Math.min(this.calledOffAt + moving.pause, this.begunAt + moving.seldom) - this.port.now();
    if (left <= 0) {
      this.begin(ask);
      return;
    }
    this.isResting = true;
    this.port.later(left, () => {
      this.isResting = false;
      this.next();
    });
  }

  private begin(ask: Ask): void {
    this.begunAt = this.port.now();
    this.asks.delete(ask);
    const { step, cells, done } = ask;
    const { shape } = step;
    if (!shape) throw new Error(`got the step ${step.id} without a shape, expected one that computes`);
    ask.callOff = this.helper(0).order((learn) => ({ kind: "cell", id: step.id, change: learn(cells) }), {
      hear(answer) {
        if (answer.kind === "fault") throw new Error(`got a fault where ${step.id} was computed: ${answer.message}`);
        if (answer.kind === "cell") done(answer.result.ok ? { ...answer.result, shape } : answer.result);
      },
      lost: () => this.asks.add(ask),
    });
  }

  private end(run: StudyRun): void {
    this.runs.delete(run);
    for (const helper of this.helpers) helper.drop(run.id);
  }

  private helper(index: number): Helper {
    const known = this.helpers[index];
    if (known) return known;
    const made = new Helper(
      this.port,
      (hear, broke) => this.open(hear, broke),
      this.next,
      () => this.goOnAlone(),
    );
    this.helpers[index] = made;
    return made;
  }

  private open(hear: (answer: Answer) => void, broke: () => void): Line {
    const line = this.isAlone ? null : this.port.open(hear, broke);
    if (line) return line;
    this.isAlone = true;
    this.most = 1;
    return this.openHere(hear);
  }

  /** What was being computed begins anew here. */
  private goOnAlone(): void {
    this.isAlone = true;
    this.most = 1;
    for (const helper of this.helpers) helper.close();
    this.next();
  }

  /** A hand in this very thread, which takes up each message after a frame; it is loaded only where it is needed. */
  private openHere(answer: (answer: Answer) => void): Line {
    const { functions, port } = this;
    const { stretch, rest } = alone;
    const hand = this.loadHand().then(
      ({ Hand }) =>
        new Hand({ functions, stretch, answer, later: (act) => port.later(rest, act), now: () => port.now() }),
    );
    hand.catch(() => port.later(lonely, this.tryAgain));
    return {
      send: (message) =>
        void hand.then(
          (each) => port.later(rest, () => each.take(message)),
          () => undefined,
        ),
      close: () => undefined,
    };
  }

  /** Nothing computes: what is asked for begins anew, in another thread if that can be had by now. */
  private readonly tryAgain = (): void => {
    if (this.isDisposed) return;
    this.isAlone = false;
    this.most = this.port.most;
    for (const helper of this.helpers) helper.close();
    this.next();
  };
}
