import { Hand } from "../../../src/cells/crew/hand.ts";
import type { Answer, Message } from "../../../src/cells/crew/orders.ts";
import type { Line, Port } from "../../../src/cells/crew/port.ts";
import type { FunctionTable } from "../../../src/library/spec.ts";

interface FakeLine {
  /** What was sent and is not taken yet. */
  readonly messages: Message[];
  /** The kind of each message that was ever sent. */
  readonly sent: Message["kind"][];
  /** What was answered and has not arrived yet. */
  readonly answers: Answer[];
  /** What the hand goes on with when it has taken its messages. */
  readonly turns: (() => void)[];
  readonly hand: Hand;
  readonly hear: (answer: Answer) => void;
  readonly broke: () => void;
  isOpen: boolean;
}

/**
 * A port whose time is in the test's hand: messages are taken, and answers arrive, only when it says so. What goes over a
 * line is copied as a message is, so that nothing passes that a message could not carry.
 */
export class FakePort implements Port {
  readonly lines: FakeLine[] = [];
  /** False where no thread can be had. */
  canOpen = true;
  /** False where one that is broken off could not be replaced. */
  isReplaceable = true;
  /** How long a variant of a study seems to take, in ms. */
  variantTime = 1;
  private clock = 0;
  private readonly alarms = new Map<() => void, number>();

  constructor(
    private readonly functions: FunctionTable,
    readonly most = 1,
  ) {}

  open(hear: (answer: Answer) => void, broke: () => void): Line | null {
    if (!this.canOpen) return null;
    const answers: Answer[] = [];
    const messages: Message[] = [];
    const sent: Message["kind"][] = [];
    const turns: (() => void)[] = [];
    // The clock of each hand goes on as it computes; that of the page when time passes.
    let ahead = 0;
    const hand = new Hand({
      functions: this.functions,
      stretch: 40,
      now: () => {
        ahead += this.variantTime;
        return this.clock + ahead;
      },
      answer: (answer) => answers.push(structuredClone(answer)),
      later: (act) => turns.push(act),
    });
    const line: FakeLine = { messages, sent, answers, turns, hand, hear, broke, isOpen: true };
    this.lines.push(line);
    return {
      send: (message) => {
        sent.push(message.kind);
        messages.push(structuredClone(message));
      },
      close: () => {
        line.isOpen = false;
      },
    };
  }

  canReplace(): boolean {
    return this.isReplaceable;
  }

  now(): number {
    return this.clock;
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

  /** The hand of a line, the last one unless told, takes a message, or goes on where there is none; answers arrive. */
  async work(line = this.lines.at(-1)): Promise<boolean> {
    await settle();
    const of = line ?? this.lines.at(-1);
    const message = of?.messages.shift();
    const turn = message ? undefined : of?.turns.shift();
    if (!of || !(message || turn)) return false;
    if (message) of.hand.take(message);
    turn?.();
    for (const answer of of.answers.splice(0)) of.hear(answer);
    await settle();
    return true;
  }

  /**
   * All that there is to do on all open lines, by turns, and what follows from it; each round takes so many ms. Where
   * nothing is to do, orders that rest while something moves are waited for.
   */
  async workAll(ms = 0): Promise<void> {
    for (let worked = true; worked; ) {
      worked = false;
      await settle();
      for (const line of this.lines) if (line.isOpen && (await this.work(line))) worked = true;
      if (ms > 0) this.pass(ms);
      if (worked) continue;
      this.pass(100);
      await settle();
      worked = this.lines.some(({ isOpen, messages }) => isOpen && messages.length > 0);
    }
  }
}

/** Lets everything run that waits for nothing but its turn. */
export const settle = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
