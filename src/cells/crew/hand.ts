/** One who computes for another thread: takes orders, gives answers, and knows nothing of how they come and go. */
import type { FunctionTable } from "../../library/spec.ts";
import { compile } from "../compile.ts";
import { OnDemand } from "../on-demand.ts";
import type { Program } from "../step.ts";
import { type AnyStudy, prepareStudy } from "../studies/prepare.ts";
import type { Row } from "../studies/study.ts";
import { StudyRefusal } from "../studies/study-refusal.ts";
import { type Work, workOnPieces } from "../studies/work.ts";
import type { Result } from "../value.ts";
import { type Answer, type Change, changed, type Message, type Order, type PlainResult, type Reply } from "./orders.ts";

/** What a hand needs around it. */
export interface Surroundings {
  readonly functions: FunctionTable;
  /** How long, in ms, a study runs at a stretch before messages that have come meanwhile have their turn. */
  readonly stretch: number;
  answer(answer: Answer): void;
  /** Calls back once messages that have come meanwhile are taken. */
  later(act: () => void): void;
  /** A clock, in ms. */
  now(): number;
}

/** Between two answers that tell how far a part of a study is, in ms. */
const pause = 200;

export class Hand {
  private program: Program;
  private readonly results = new OnDemand();
  private readonly studies = new Map<number, { readonly study: AnyStudy; readonly rows: (Row | undefined)[] }>();
  /** The part of a study under way. */
  private part: { readonly key: number; readonly work: Work; told: number; toldAt: number } | null = null;
  /** Counts the messages, so that warming is left out when one comes. */
  private messages = 0;

  constructor(private readonly around: Surroundings) {
    this.program = compile([], around.functions);
  }

  take(message: Message): void {
    this.messages++;
    switch (message.kind) {
      case "warm":
        this.warm(message.name);
        return;
      case "drop":
        this.studies.delete(message.run);
        return;
      case "stop":
        if (this.part?.key !== message.key) return;
        this.part = null;
        this.around.answer({ kind: "stopped", key: message.key });
        return;
      default:
        this.obey(message);
    }
  }

  private obey(order: Order & { readonly key: number }): void {
    this.orFault(order.key, () => {
      const reply = this.carryOut(order, order.key);
      if (reply) this.around.answer({ ...reply, key: order.key });
    });
  }

  /** Null where the answer follows. */
  private carryOut(order: Order, key: number): Reply | null {
    switch (order.kind) {
      case "cell":
        return this.compute(order.change, order.id);
      case "prepare":
        return this.prepare(order);
      case "part":
        this.part = {
          key,
          work: workOnPieces(this.studyOf(order.run).study, order.from, order.to),
          told: 0,
          toldAt: this.around.now(),
        };
        this.around.later(this.goOn);
        return null;
      case "conclude": {
        const { study, rows } = this.studyOf(order.run);
        for (const [place, row] of order.rows) rows[place] = row;
        return { kind: "outcome", outcome: study.conclude(rows) };
      }
    }
  }

  private compute(change: Change, id: string): Reply {
    this.learn(change);
    const result = this.results.result(this.program, id);
    if (!result) throw new Error(`got the cell ${id}, expected one that computes`);
    return { kind: "cell", result: plain(result) };
  }

  private prepare({ run, change, trials, study: cell }: Extract<Order, { kind: "prepare" }>): Reply {
    this.learn(change);
    const { program, results } = this;
    const notebook = { title: "", cells: program.cells, trials };
    try {
      const study = prepareStudy(notebook, cell, this.around.functions, { program, results });
      this.studies.set(run, { study, rows: Array.from({ length: study.pieces }) });
      return { kind: "prepared", pieces: study.pieces };
    } catch (error) {
      if (!(error instanceof StudyRefusal)) throw error;
      return { kind: "refused", message: error.message, fault: error.fault };
    }
  }

  private learn(change: Change): void {
    this.program = compile(changed(this.program.cells, change), this.around.functions, this.program);
  }

  private studyOf(run: number) {
    const known = this.studies.get(run);
    if (!known) throw new Error(`got the study ${run}, expected one that was prepared`);
    return known;
  }

  /** A stretch of the part that is under way. */
  private readonly goOn = (): void => {
    const { part } = this;
    if (part) this.orFault(part.key, () => this.runOn(part));
  };

  private runOn(part: NonNullable<Hand["part"]>): void {
    const { stretch, now, answer, later } = this.around;
    const until = now() + stretch;
    let isLast = false;
    do isLast = part.work.next(1);
    while (!isLast && now() < until);
    if (isLast || now() - part.toldAt >= pause) {
      const { key, work, told } = part;
      const rows = work.rows.slice(told);
      part.told = work.rows.length;
      part.toldAt = now();
      answer({ kind: "rows", key, rows, progress: work.progress, isLast });
    }
    if (isLast) this.part = null;
    else later(this.goOn);
  }

  private orFault(key: number, act: () => void): void {
    try {
      act();
    } catch (error) {
      if (this.part?.key === key) this.part = null;
      this.around.answer({ kind: "fault", key, message: error instanceof Error ? error.message : String(error) });
    }
  }

  /** The first call of a function takes several times as long as those after: its first example is one. */
  private warm(name: string): void {
    const { functions, later } = this.around;
    const spec = functions.get(name);
    const [example] = spec?.examples ?? [];
    if (!spec || !example) throw new Error(`got the function ${name} to warm, expected one that has an example`);
    const { messages } = this;
    const defaults = Object.entries(spec.parameters).map(([parameter, { default: value }]) => [parameter, value]);
    later(() => {
      if (messages !== this.messages) return;
      spec.compute({ ...Object.fromEntries(defaults), ...example.arguments }, refuseExample);
    });
  }
}

const refuseExample = (_: string | null, message: string): never => {
  throw new Error(`got a refused example (${message}), expected one that computes`);
};

/** Only cells with one formula, and tables, are computed elsewhere: they have no parts. */
const plain = (result: Result): PlainResult =>
  result.ok
    ? { ok: true, value: result.value, ...(result.margin !== undefined && { margin: result.margin }) }
    : { ok: false, error: result.error };
