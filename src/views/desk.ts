import { type Crew, LiveStudies, Session } from "../cells/index.ts";
import { Baseline } from "./baseline.ts";
import { Ghosts } from "./ghosts.ts";
import { IdleQueue } from "./idle-queue.ts";
import type { Drafts } from "./keeping/drafts.ts";
import { SweptRows } from "./swept-rows.ts";

/** What every part of the screen works with. A notebook that is opened gets a new one, so that nothing is carried over. */
export interface Desk {
  /** Counts the notebooks opened: cells of two notebooks are never taken for each other. */
  readonly serial: number;
  readonly session: Session;
  /**
   * A further session, for what is not on the screen; whoever takes it disposes of it. In a quick one slow cells are never
   * computed, but pending for good.
   */
  readonly another: (isQuick?: boolean) => Session;
  readonly baseline: Baseline;
  /** Trials beside the one that is on. */
  readonly ghosts: Ghosts;
  /** What is typed but has not taken effect. */
  readonly drafts: Drafts;
  /** What the charts sweep. */
  readonly swept: SweptRows;
  /** The studies that are looked at. */
  readonly studies: LiveStudies;
  /** Draws what is off the screen, when nothing moves. */
  readonly idle: IdleQueue;
}

/** The desk for a notebook that is opened, in place of the one before, which ends. */
export function newDesk(session: Session, crew: Crew, drafts: Drafts, before?: Desk): Desk {
  before?.studies.dispose();
  before?.baseline.dispose();
  before?.ghosts.take([]);
  const another: Desk["another"] = (isQuick = false) =>
    new Session(session.functions, isQuick ? () => () => undefined : crew.computeBehind);
  return {
    serial: before ? before.serial + 1 : 0,
    session,
    another,
    baseline: new Baseline(session, another),
    ghosts: before?.ghosts ?? new Ghosts(),
    drafts,
    swept: new SweptRows(),
    studies: new LiveStudies(session, crew),
    idle: before?.idle ?? new IdleQueue(),
  };
}
