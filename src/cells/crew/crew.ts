/** Has slow cells computed by a hand in another thread, so that whoever draws and is typed into never waits. */
import type { FunctionTable } from "../../library/spec.ts";
import type { Cell } from "../cell.ts";
import type { Program, Step } from "../step.ts";
import type { Result } from "../value.ts";
import { Hand } from "./hand.ts";
import { type Answer, changeOf } from "./orders.ts";
import type { Line, Port } from "./port.ts";

/** How long, in ms, a computation that nobody wants any more may still hold up the next one before it is broken off. */
const patience = 1000;

/** Between two computations on the thread that draws, where there is no other: time for a frame and for a key. */
const breath = 30;

interface Ask {
  readonly key: number;
  readonly cells: readonly Cell[];
  readonly step: Step;
  readonly done: (result: Result) => void;
  isCalledOff: boolean;
}

/** One cell is computed at a time, in the order in which they were asked for; what is called off meanwhile is left out. */
export class Crew {
  private line: Line | null = null;
  /** The cells that the hand knows. */
  private known: readonly Cell[] | null = null;
  private readonly waiting = new Set<Ask>();
  private running: Ask | null = null;
  private lastKey = 0;
  /** No other thread can be had: everything is computed in this one. */
  private isAlone = false;

  constructor(
    private readonly port: Port,
    private functions: FunctionTable,
  ) {}

  /** Takes a table that has more functions, for what is computed in this thread. */
  learn(functions: FunctionTable): void {
    this.functions = functions;
  }

  /** Computes a step of a program, and calls back with its result, never at once. Gives what calls it off. */
  readonly compute = ({ cells }: Program, step: Step, done: (result: Result) => void): (() => void) => {
    const ask: Ask = { key: ++this.lastKey, cells, step, done, isCalledOff: false };
    this.waiting.add(ask);
    // What is called off in the same moment is never begun.
    queueMicrotask(() => this.next());
    return () => this.callOff(ask);
  };

  /** Gets a hand ready before it is needed: to be called when nothing else is to do. */
  warm(): void {
    if (this.running === null && !this.isAlone) this.reach().send({ kind: "warm" });
  }

  /** Ends the hand; nobody is called back any more. */
  dispose(): void {
    this.waiting.clear();
    this.running = null;
    this.hangUp();
  }

  private callOff(ask: Ask): void {
    this.waiting.delete(ask);
    ask.isCalledOff = true;
    if (ask !== this.running) return;
    this.port.later(patience, () => {
      if (ask !== this.running) return;
      this.hangUp();
      this.running = null;
      this.next();
    });
  }

  private next(): void {
    const [ask] = this.waiting;
    if (this.running || !ask) return;
    this.waiting.delete(ask);
    this.running = ask;
    const { key, cells, step } = ask;
    const line = this.reach();
    const change = changeOf(this.known, cells);
    this.known = cells;
    line.send({ kind: "cell", key, change, id: step.id });
  }

  private hear(answer: Answer): void {
    const ask = this.running;
    if (answer.key !== ask?.key) return;
    this.running = null;
    if (answer.kind === "fault") {
      // It may have stopped half way.
      this.known = null;
      this.next();
      throw new Error(`got a fault where ${ask.step.id} was computed: ${answer.message}`);
    }
    this.next();
    const { result } = answer;
    const { shape } = ask.step;
    if (!shape) throw new Error(`got the step ${ask.step.id} without a shape, expected one that computes`);
    if (!ask.isCalledOff) ask.done(result.ok ? { ...result, shape } : result);
  }

  private reach(): Line {
    this.line ??= this.open();
    return this.line;
  }

  private open(): Line {
    this.known = null;
    if (this.isAlone) return this.openHere();
    const line = this.port.open(
      (answer) => line === this.line && this.hear(answer),
      () => line === this.line && this.goOnAlone(),
    );
    if (line) return line;
    this.isAlone = true;
    return this.openHere();
  }

  /** What was being computed begins anew here. */
  private goOnAlone(): void {
    this.isAlone = true;
    this.hangUp();
    if (this.running && !this.running.isCalledOff) this.waiting.add(this.running);
    this.running = null;
    this.next();
  }

  /** A hand in this very thread, which takes up each order after a frame. */
  private openHere(): Line {
    const { functions, port } = this;
    const hand = new Hand({
      functions,
      answer: (answer) => this.hear(answer),
      later: (act) => port.later(breath, act),
    });
    return { send: (order) => port.later(breath, () => hand.take(order)), close: () => undefined };
  }

  private hangUp(): void {
    this.line?.close();
    this.line = null;
  }
}
