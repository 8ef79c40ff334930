import type { Cell } from "../cell.ts";
import { type Answer, type Change, changeOf, isLast, type Order } from "./orders.ts";
import type { Line, Port } from "./port.ts";

/** How long, in ms, what nobody wants any more may still hold up what comes after it before it is broken off. */
const patience = 1000;

/** Who waits for the answers to an order. */
export interface Waiting {
  hear(answer: Answer): void;
  /** No answer comes any more, as the hand was lost. */
  lost(): void;
}

interface Expected {
  readonly kind: Order["kind"];
  /** Null once the order is called off. */
  waiting: Waiting | null;
}

/** One hand as those know it who have something computed: what it is doing, and what it knows. */
export class Helper {
  /** The studies that it has ready, by run; another set for another hand. */
  prepared = new Set<number>();
  private line: Line | null = null;
  private known: readonly Cell[] | null = null;
  private readonly expected = new Map<number, Expected>();
  private lastKey = 0;

  /** `free` is called whenever an order is over. */
  constructor(
    private readonly port: Pick<Port, "later" | "canReplace">,
    private readonly open: (hear: (answer: Answer) => void, broke: () => void) => Line,
    private readonly free: () => void,
    private readonly broke: () => void,
  ) {}

  /** True while an order of one of these kinds is under way. */
  isAt(...kinds: readonly Order["kind"][]): boolean {
    for (const { kind } of this.expected.values()) if (kinds.includes(kind)) return true;
    return false;
  }

  /** Gives an order, made with what this hand has to be told so that it knows some cells. Gives what calls it off. */
  order(make: (learn: (cells: readonly Cell[]) => Change) => Order, waiting: Waiting): () => void {
    const key = ++this.lastKey;
    const line = this.reach();
    const order = make((cells) => this.learn(cells));
    this.expected.set(key, { kind: order.kind, waiting });
    line.send({ ...order, key });
    return () => this.callOff(key);
  }

  /** Tells it what has no answer. */
  drop(run: number): void {
    if (this.prepared.delete(run)) this.line?.send({ kind: "drop", run });
  }

  warm(name: string): void {
    if (this.expected.size === 0) this.reach().send({ kind: "warm", name });
  }

  /** Ends the hand; the next order gets another one. */
  close(): void {
    this.line?.close();
    this.line = null;
    this.known = null;
    this.prepared = new Set();
    const lost = [...this.expected.values()];
    this.expected.clear();
    for (const { waiting } of lost) waiting?.lost();
  }

  private callOff(key: number): void {
    const expected = this.expected.get(key);
    if (!expected) return;
    expected.waiting = null;
    this.line?.send({ kind: "stop", key });
    const breakOff = (): void => {
      if (this.expected.get(key) !== expected) return;
      if (!this.port.canReplace()) {
        this.port.later(patience, breakOff);
        return;
      }
      this.close();
      this.free();
    };
    this.port.later(patience, breakOff);
  }

  private reach(): Line {
    if (this.line) return this.line;
    const line: Line = this.open(
      (answer) => line === this.line && this.hear(answer),
      () => line === this.line && this.broke(),
    );
    this.line = line;
    return line;
  }

  private hear(answer: Answer): void {
    const expected = this.expected.get(answer.key);
    if (!expected) return;
    if (isLast(answer)) this.expected.delete(answer.key);
    // It may have stopped half way.
    if (answer.kind === "fault") this.known = null;
    try {
      expected.waiting?.hear(answer);
    } finally {
      this.free();
    }
  }

  private learn(cells: readonly Cell[]): Change {
    const change = changeOf(this.known, cells);
    this.known = cells;
    return change;
  }
}
