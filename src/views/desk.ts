import type { LiveStudies, Session } from "../cells/index.ts";
import type { Baseline } from "./baseline.ts";
import type { IdleQueue } from "./idle-queue.ts";
import type { Drafts } from "./keeping/drafts.ts";
import type { SweptRows } from "./swept-rows.ts";

/** What every part of the screen works with. A notebook that is opened gets a new one, so that nothing is carried over. */
export interface Desk {
  /** Counts the notebooks opened: cells of two notebooks are never taken for each other. */
  readonly serial: number;
  readonly session: Session;
  readonly baseline: Baseline;
  /** What is typed but has not taken effect. */
  readonly drafts: Drafts;
  /** What the charts sweep. */
  readonly swept: SweptRows;
  /** The studies that are looked at. */
  readonly studies: LiveStudies;
  /** Draws what is off the screen, when nothing moves. */
  readonly idle: IdleQueue;
}
