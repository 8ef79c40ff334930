import type { Answer, Order } from "./orders.ts";

/** The way to one hand. */
export interface Line {
  send(order: Order): void;
  /** Ends the hand, whatever it is doing. */
  close(): void;
}

/** What the cells need of the place they run in, to have something computed in another thread. */
export interface Port {
  /**
   * Opens a line to a hand of its own; null where none can be had. `broke` is called where the line turns out to lead
   * nowhere, or breaks.
   */
  open(hear: (answer: Answer) => void, broke: () => void): Line | null;
  /** Calls back after so many ms. Gives what calls it off. */
  later(ms: number, act: () => void): () => void;
}
