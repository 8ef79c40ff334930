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

/** A further curve over the same values of the given, such as another wing. */
export interface FurtherCurve {
  readonly name: string;
  readonly points: readonly SweepPoint[];
  readonly present: SweepPoint | null;
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
  /** Name of the curve, where there are further ones. */
  readonly curve?: string | undefined;
  readonly further?: readonly FurtherCurve[] | undefined;
  /** How far from the present design along x, on either side, nobody could see a difference; SI. */
  readonly band?: number | undefined;
  /** The design it is held against. */
  readonly baseline?: (SweepPoint & { readonly name: string }) | undefined;
  /** Other designs that are marked, such as trials. */
  readonly marked?: readonly (SweepPoint & { readonly name: string })[] | undefined;
  readonly allowed?: readonly Allowed[] | undefined;
}

/** Every point of all curves, curve by curve. */
export const allPoints = ({
  points,
  further = [],
}: Pick<TradeOffData, "points" | "further">): readonly SweepPoint[] => [
  ...points,
  ...further.flatMap((curve) => curve.points),
];

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
