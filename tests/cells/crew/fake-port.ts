import { Hand } from "../../../src/cells/crew/hand.ts";
import type { Answer, Order } from "../../../src/cells/crew/orders.ts";
import type { Port } from "../../../src/cells/crew/port.ts";
import type { FunctionTable } from "../../../src/library/spec.ts";

interface FakeLine {
  readonly orders: Order[];
  readonly answers: Answer[];
  readonly hand: Hand;
  readonly hear: (answer: Answer) => void;
  readonly broke: () => void;
  isOpen: boolean;
}

/**
 * A port whose time is in the test's hand: orders are carried out, and answers arrive, only when it says so. What goes
 * over a line is copied as a message is, so that nothing passes that a message could not carry.
 */
export class FakePort implements Port {
  readonly lines: FakeLine[] = [];
  /** False where no thread can be had. */
  canOpen = true;
  private clock = 0;
  private readonly alarms = new Map<() => void, number>();

  constructor(private readonly functions: FunctionTable) {}

  open(hear: (answer: Answer) => void, broke: () => void) {
    if (!this.canOpen) return null;
    const answers: Answer[] = [];
    const orders: Order[] = [];
    const hand = new Hand({
      functions: this.functions,
      answer: (answer) => answers.push(structuredClone(answer)),
      later: (act) => this.later(0, act),
    });
    const line: FakeLine = { orders, answers, hand, hear, broke, isOpen: true };
    this.lines.push(line);
    return {
      send: (order: Order) => orders.push(structuredClone(order)),
      close: () => {
        line.isOpen = false;
      },
    };
  }

  later(ms: number, act: () => void): () => void {
    const ring = (): void => act();
    this.alarms.set(ring, this.clock + ms);
    return () => this.alarms.delete(ring);
  }

  /** Lets time pass. */
  pass(ms: number): void {
    this.clock += ms;
    for (const [ring, at] of [...this.alarms].sort((a, b) => a[1] - b[1])) {
      if (at > this.clock || !this.alarms.delete(ring)) continue;
      ring();
    }
  }

  /** The hand of the line opened last carries out an order, if it has one, and its answer arrives. */
  async work(): Promise<boolean> {
    await settle();
    const line = this.lines.at(-1);
    const order = line?.orders.shift();
    if (!line || !order) return false;
    line.hand.take(order);
    for (const answer of line.answers.splice(0)) line.hear(answer);
    await settle();
    return true;
  }

  /** All orders there are, and those that follow. */
  async workAll(): Promise<void> {
    while (await this.work());
  }
}

/** Lets everything run that waits for nothing but its turn. */
export const settle = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
