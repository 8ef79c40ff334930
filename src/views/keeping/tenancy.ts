/**
 * Who may edit a notebook that is open in several tabs, as a state machine: what happened goes in, what is to be done
 * comes out. One tab writes, the others read; a reader may take over, and the writer first keeps its last edit.
 */

/**
 * `asking` for the pen at first; `writing` with it; `reading` while another has it; `free` when the other has laid it
 * down; `taking` it over from the other; `giving` it away, which waits until the last edit is kept; `closed`.
 */
export type Phase = "asking" | "writing" | "reading" | "free" | "taking" | "giving" | "closed";

export type Happening =
  /** The pen is this tab's. */
  | "granted"
  /** Another tab has it. */
  | "refused"
  /** The tab that had it has gone, or laid it down. */
  | "left"
  /** Some other tab says that it writes. */
  | "other writes"
  /** The person wants to edit here. */
  | "take"
  /** Another tab asks for the pen. */
  | "asked"
  /** The other tab is about to give the pen away. */
  | "other gives"
  /** The other tab cannot keep its changes, and so does not give the pen away. */
  | "other keeps"
  /** It has taken too long. */
  | "late"
  /** The last edit is kept, or could not be. */
  | "kept"
  | "not kept"
  /** The pen was taken away without asking. */
  | "stolen"
  | "close";

export type Act =
  /** Asks for the pen, without waiting for it. */
  | "try"
  /** Waits for the other tab to go, without taking the pen. */
  | "watch"
  | "end watch"
  /** Waits in line for the pen. */
  | "queue"
  | "leave queue"
  /** Takes the pen away from whoever has it. */
  | "steal"
  | "lay down"
  /** Says to the other tabs that this one asks, gives, keeps the pen, writes. */
  | "say ask"
  | "say give"
  | "say keep"
  | "say write"
  /** Wakes up when it takes too long; the longer time once the other has answered. */
  | "wait"
  | "wait longer"
  | "end wait"
  /** Keeps the last edit. */
  | "keep";

export interface Turn {
  readonly phase: Phase;
  readonly acts: readonly Act[];
}

/** The first turn of a tab. */
export const firstTurn: Turn = { phase: "asking", acts: ["try"] };

type Row = Partial<Readonly<Record<Happening, Turn>>>;
const turn = (phase: Phase, ...acts: Act[]): Turn => ({ phase, acts });

const table: Readonly<Record<Phase, Row>> = {
  asking: {
    granted: turn("writing", "say write"),
    refused: turn("reading", "watch"),
    close: turn("closed"),
  },
  writing: {
    asked: turn("giving", "say give", "keep"),
    stolen: turn("reading", "watch"),
    close: turn("closed", "lay down"),
  },
  giving: {
    kept: turn("reading", "lay down", "watch"),
    "not kept": turn("writing", "say keep"),
    stolen: turn("reading", "watch"),
    close: turn("closed", "lay down"),
  },
  reading: {
    left: turn("free"),
    take: turn("taking", "end watch", "say ask", "queue", "wait"),
    close: turn("closed", "end watch"),
  },
  free: {
    "other writes": turn("reading", "watch"),
    take: turn("taking", "say ask", "queue", "wait"),
    close: turn("closed"),
  },
  taking: {
    granted: turn("writing", "end wait", "say write"),
    "other gives": turn("taking", "wait longer"),
    "other keeps": turn("reading", "leave queue", "end wait", "watch"),
    // A third tab was quicker: it is asked in its turn.
    "other writes": turn("taking", "say ask", "wait"),
    late: turn("taking", "leave queue", "steal"),
    close: turn("closed", "leave queue", "end wait"),
  },
  closed: {},
};

/** What follows in a phase from a happening; the same phase and nothing to do where it means nothing there. */
export const next = (phase: Phase, happening: Happening): Turn => table[phase][happening] ?? { phase, acts: [] };
