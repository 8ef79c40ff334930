/** What a trade-off chart is drawn from. All values in SI. */

/** A quantity along an axis. */
export interface Quantity {
  /** Name of its cell, which labels the curve. */
  readonly name: string;
  /** What the axis says; the name unless said. */
  readonly label?: string | undefined;
  /** Unit it is told in, "" where it has none. */
  readonly unit: string;
}

/** What came of one value of the given: null where nothing did, with the reason. */
export interface SweepPoint {
  readonly value: number;
  readonly x: number | null;
  /** One for each quantity, in their order. */
  readonly y: readonly (number | null)[];
  readonly reason?: string | undefined;
}

/** What a check allows of one of the quantities: the side of a limit, or between two. */
export interface Allowed {
  /** Name of the quantity: the one along x or one of the others. */
  readonly quantity: string;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** Name of the check. */
  readonly label: string;
}

/** The sweep of one given, and the designs that are marked on it. */
export interface TradeOffData {
  /** The given that is swept over its range. */
  readonly sweep: { readonly name: string; readonly unit: string };
  readonly x: Quantity;
  /** One panel each, one above the other. */
  readonly y: readonly Quantity[];
  /** In the order of the swept value. */
  readonly points: readonly SweepPoint[];
  /** The design as it is now; its value need not be one of those swept. */
  readonly present: SweepPoint | null;
  /** The design it is held against. */
  readonly baseline?: (SweepPoint & { readonly name: string }) | undefined;
  readonly allowed?: readonly Allowed[] | undefined;
}

/** A point that can be drawn in the panel of one quantity. */
export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
}

/** Where a point lies in the panel of one quantity, or null where it has no place there. */
export function pointIn({ x, y }: SweepPoint, panel: number): DrawnPoint | null {
  const up = y[panel] ?? Number.NaN;
  return x !== null && Number.isFinite(x) && Number.isFinite(up) ? { x, y: up } : null;
}

/** The first and the last point that have a place in a panel. */
export function endsIn(points: readonly SweepPoint[], panel: number): readonly SweepPoint[] {
  const drawn = points.filter((point) => pointIn(point, panel));
  const [first] = drawn;
  const last = drawn.at(-1);
  return first && last && first !== last ? [first, last] : first ? [first] : [];
}
