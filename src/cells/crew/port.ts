import type { Answer, Message } from "./orders.ts";

/** The way to one hand. */
export interface Line {
  send(message: Message): void;
  /** Ends the hand, whatever it is doing. */
  close(): void;
}

/** What the cells need of the place they run in, to have something computed in other threads. */
export interface Port {
  /** How many hands there may be at most, at least 1. */
  readonly most: number;
  /**
   * Opens a line to a hand of its own; null where none can be had. `broke` is called, never at once, where the line turns
   * out to lead nowhere, or breaks.
   */
  open(hear: (answer: Answer) => void, broke: () => void): Line | null;
  /** False where another hand could not be had in place of one that is broken off, as without a connection. */
  canReplace(): boolean;
  /** Calls back after so many ms. Gives what calls it off. */
  later(ms: number, act: () => void): () => void;
  /** A clock, in ms. */
  now(): number;
}
