import type { Cell, StudyCell, Trial } from "../cell.ts";
import type { Outcome } from "../studies/prepare.ts";
import type { Row } from "../studies/study.ts";
import type { StudyFault } from "../studies/study-refusal.ts";
import type { Helper } from "./helper.ts";
import type { Answer } from "./orders.ts";
import type { Port } from "./port.ts";

/** What is studied: the study, over the cells and trials of a notebook. */
export interface StudySubject {
  readonly study: StudyCell;
  readonly cells: readonly Cell[];
  readonly trials: readonly Trial[];
}

/** How a study goes. */
export interface RunNews {
  readonly status: "running" | "done" | "refused";
  /** How much is done, from 0 to 1. */
  readonly progress: number;
  /** How long the rest will take, in ms, going by what is done; null before there is enough to go by. */
  readonly left: number | null;
  /** What it comes to so far; null before anything is there. */
  readonly outcome: Outcome | null;
  /** Why it cannot be run; null where it can. */
  readonly message: string | null;
  /** What of it keeps it from being run. */
  readonly fault: StudyFault | null;
}

/** How long a part of a study is to take, in ms: long against a message, short against what a person waits for. */
const partTime = 250;

/** Another hand has to learn the notebook first: it is worth that for so many ms of work that is left. */
const worthAnother = 150;

/** Between two outcomes of a study that is under way, in ms. */
const pause = 400;

/** From then on the time that is left can be told, in ms. */
const firstEstimate = 400;

interface Part {
  readonly helper: Helper;
  readonly from: number;
  readonly to: number;
  readonly startedAt: number;
  /** How many rows have come. */
  rows: number;
  progress: number;
  callOff: () => void;
}

/** One run of a study over several hands. A part that is lost with its hand is computed by another. */
export class StudyRun {
  /** Done, refused or stopped. */
  isOver = false;
  private pieces: number | null = null;
  private isPreparing = false;
  /** Ranges of pieces that nobody computes yet. */
  private todo: { from: number; to: number }[] = [];
  private readonly parts = new Set<Part>();
  private readonly rows: (Row | undefined)[] = [];
  private rowCount = 0;
  /** Rows that the hand that concludes does not know yet, by place. */
  private readonly untold = new Map<number, Row>();
  private concluder: Helper | null = null;
  /** Tells the hand that was told the rows so far from one that came in its place. */
  private toldTo: ReadonlySet<number> | null = null;
  private isConcluding = false;
  private concludedAt = Number.NEGATIVE_INFINITY;
  private outcome: Outcome | null = null;
  /** How long a piece takes, in ms, by the part that told of itself last. */
  private pieceTime: number | null = null;
  private startedAt = 0;

  constructor(
    readonly id: number,
    private readonly subject: StudySubject,
    private readonly port: Pick<Port, "now">,
    private readonly tell: (news: RunNews) => void,
  ) {}

  /** Gives a hand something to do; false where there is nothing for it now. */
  give(helper: Helper): boolean {
    if (this.isOver) return false;
    if (!helper.prepared.has(this.id)) return this.prepare(helper);
    const range = this.nextRange();
    if (!range) return false;
    const part: Part = {
      ...{ ...range, helper, startedAt: this.port.now(), rows: 0, progress: 0 },
      callOff: helper.order(() => ({ kind: "part", run: this.id, ...range }), {
        hear: (answer) => this.hearPart(part, answer),
        lost: () => this.lose(part),
      }),
    };
    this.parts.add(part);
    return true;
  }

  stop(): void {
    this.isOver = true;
    for (const { callOff } of this.parts) callOff();
    this.parts.clear();
  }

  private prepare(helper: Helper): boolean {
    const { pieces, isPreparing, left, pieceTime } = this;
    if (isPreparing) return false;
    const isWorthIt = left > 0 && (this.parts.size === 0 || left * (pieceTime ?? 0) >= worthAnother);
    if (pieces !== null && !isWorthIt) return false;
    this.isPreparing = true;
    this.startedAt ||= this.port.now();
    const { study, trials, cells } = this.subject;
    helper.order((learn) => ({ kind: "prepare", run: this.id, study, trials, change: learn(cells) }), {
      hear: (answer) => this.hearPrepared(helper, answer),
      lost: () => {
        this.isPreparing = false;
      },
    });
    return true;
  }

  private hearPrepared(helper: Helper, answer: Answer): void {
    this.isPreparing = false;
    if (answer.kind === "prepared") helper.prepared.add(this.id);
    if (this.isOver) helper.drop(this.id);
    else if (answer.kind === "prepared") {
      if (this.pieces === null) this.todo.push({ from: 0, to: answer.pieces });
      this.pieces = answer.pieces;
      this.news();
    } else this.fail(answer);
  }

  private nextRange(): { readonly from: number; readonly to: number } | null {
    const [range] = this.todo;
    if (!range) return null;
    const byTime = this.pieceTime === null ? 1 : partTime / Math.max(this.pieceTime, 1e-3);
    // Towards the end parts get smaller, so that all hands end together.
    const fairShare = this.left / (2 * (this.parts.size + 1));
    const { from } = range;
    const to = Math.min(range.to, from + Math.max(1, Math.floor(Math.min(byTime, fairShare))));
    range.from = to;
    if (range.from >= range.to) this.todo.shift();
    return { from, to };
  }

  /** How many pieces nobody computes yet. */
  private get left(): number {
    return this.todo.reduce((sum, { from, to }) => sum + to - from, 0);
  }

  private hearPart(part: Part, answer: Answer): void {
    if (answer.kind !== "rows") {
      this.parts.delete(part);
      this.fail(answer);
      return;
    }
    for (const row of answer.rows) {
      const place = part.from + part.rows++;
      this.rows[place] = row;
      this.rowCount++;
      this.untold.set(place, row);
    }
    part.progress = answer.progress;
    if (answer.progress > 0) {
      this.pieceTime = (this.port.now() - part.startedAt) / (answer.progress * (part.to - part.from));
    }
    if (answer.isLast) this.parts.delete(part);
    this.conclude(part.helper);
    this.news();
  }

  private lose(part: Part): void {
    this.parts.delete(part);
    this.todo.unshift({ from: part.from + part.rows, to: part.to });
  }

  /** Has it said what the rows so far come to; one hand does that all along, since it then needs to be told each row once. */
  private conclude(helper: Helper): void {
    const { isConcluding, concludedAt, untold, id } = this;
    const isComplete = this.rowCount === this.pieces;
    if (isConcluding || untold.size === 0 || (!isComplete && this.port.now() - concludedAt < pause)) return;
    if (!this.concluder || this.concluder.prepared !== this.toldTo) {
      this.concluder = helper;
      this.toldTo = helper.prepared;
      this.rows.forEach((row, place) => {
        if (row) untold.set(place, row);
      });
    }
    const rows = [...untold];
    untold.clear();
    this.isConcluding = true;
    this.concludedAt = this.port.now();
    const lost = (): void => {
      this.isConcluding = false;
      for (const [place, row] of rows) untold.set(place, row);
    };
    this.concluder.order(() => ({ kind: "conclude", run: id, rows }), {
      hear: (answer) => this.hearOutcome(answer, helper),
      lost,
    });
  }

  private hearOutcome(answer: Answer, helper: Helper): void {
    this.isConcluding = false;
    if (this.isOver) return;
    if (answer.kind !== "outcome") {
      this.fail(answer);
      return;
    }
    this.outcome = answer.outcome;
    if (this.rowCount === this.pieces && this.untold.size === 0) this.isOver = true;
    this.news();
    this.conclude(helper);
  }

  /** It cannot be run; or, where it is a fault of ours, that is told and everything else goes on. */
  private fail(answer: Answer): void {
    this.stop();
    const message = "message" in answer ? answer.message : "";
    const fault = answer.kind === "refused" ? answer.fault : null;
    this.tell({ status: "refused", progress: 0, left: null, outcome: this.outcome, message, fault });
    if (answer.kind !== "refused") throw new Error(`got ${answer.kind} ${message} from a study, expected its rows`);
  }

  private news(): void {
    const { pieces, parts, pieceTime, outcome, isOver } = this;
    // Of parts under way what is done counts, not only the rows that have come.
    const ahead = [...parts].reduce((sum, { from, to, rows, progress }) => sum + progress * (to - from) - rows, 0);
    const done = this.rowCount + ahead;
    const isTold = pieceTime !== null && this.port.now() - this.startedAt > firstEstimate;
    this.tell({
      status: isOver ? "done" : "running",
      progress: pieces === null ? 0 : done / Math.max(1, pieces),
      left: pieces !== null && isTold ? ((pieces - done) * pieceTime) / Math.max(1, parts.size) : null,
      outcome,
      message: null,
      fault: null,
    });
  }
}
