import { type Point, smoothCurve } from "../numerics/smooth-curve.ts";
import { number, type Refuse, table, type ValueOf } from "../spec.ts";
import { turbulent } from "./friction.ts";
import type { Polar } from "./polar.ts";
import { liftSlopeAt, minLift } from "./section.ts";

/** A polar of one's own, row by row; as a parameter it takes the place of the model. */
export const measuredParameter = {
  ...table("a polar of your own in place of the model: rows at one or more Reynolds numbers", {
    reynolds: number("1", "Reynolds number of the row", { min: 1000, max: 10_000_000 }),
    lift_coefficient: number("1", "lift coefficient", { min: -3, max: 3 }),
    drag_coefficient: number("1", "drag coefficient", { above: 0, max: 2 }),
    angle: number("deg", "angle of attack; left out, the model's lift slope stands", { optional: true }),
    moment_coefficient: number("1", "nose-up moment about a quarter of the chord", { min: -1, max: 1, optional: true }),
  }),
  optional: true,
} as const;
export type MeasuredTable = ValueOf<typeof measuredParameter>;

/** What of a section a table may leave open. */
type Base = Pick<Polar, "zeroLiftAngle" | "moment">;

/**
 * The polar of a table. At each Reynolds number a smooth curve goes through the drags over lift, up to the row of the
 * largest lift, which is taken for the stall; below the lowest row it goes on as a plate's. The least drag over turbulent
 * friction, and what the drag exceeds the least by, are interpolated over log Re and held beyond the Reynolds numbers of
 * the table, so that there drag goes on as friction does.
 * With angles, a straight line by least squares through the rows of each Reynolds number up to four fifths of its largest
 * lift gives slope and zero-lift angle; the latter's mean is taken, as a wing has one shape at all speeds.
 */
export function measuredPolar(given: MeasuredTable, base: Base, refuse: Refuse): Polar {
  const groups = rowsByReynolds(given, refuse).map((rows) => readGroup(rows, refuse));
  const overLog = (of: (group: Group) => number) => {
    const curve = smoothCurve(
      groups.map((group) => [Math.log(group.reynolds), of(group)]),
      0,
      0,
    );
    return (reynolds: number) => curve(Math.log(reynolds));
  };
  const lines = groups.flatMap((group) => group.line ?? []);
  const least = overLog((group) => group.least / turbulent(group.reynolds));
  return {
    zeroLiftAngle: lines.length > 0 ? mean(lines.map((line) => line.zeroLiftAngle)) : base.zeroLiftAngle,
    moment: given.moment_coefficient ? mean(given.moment_coefficient) : base.moment,
    slope: lines.length > 0 ? overLog((group) => group.line?.slope ?? Number.NaN) : liftSlopeAt,
    maxLift: overLog((group) => group.most),
    minLift: overLog((group) => Math.min(group.lowest, minLift)),
    drag: (lift, reynolds) =>
      least(reynolds) * turbulent(reynolds) + overLog((group) => group.drag(lift) - group.least)(reynolds),
    leastDrag: (reynolds) => least(reynolds) * turbulent(reynolds),
  };
}

interface Row {
  readonly reynolds: number;
  readonly lift: number;
  readonly drag: number;
  readonly angle: number | undefined;
}

/** The rows of one Reynolds number. */
interface Group {
  readonly reynolds: number;
  readonly lowest: number;
  readonly most: number;
  readonly least: number;
  readonly line: { readonly slope: number; readonly zeroLiftAngle: number } | undefined;
  drag(lift: number): number;
}

function rowsByReynolds(given: MeasuredTable, refuse: Refuse): readonly (readonly Row[])[] {
  const count = given.reynolds.length;
  for (const [name, column] of Object.entries(given)) {
    if (column && column.length !== count) {
      refuse("measured", `The column ${name} has ${column.length} entries, reynolds has ${count}. Make them equal.`);
    }
  }
  if (count === 0) refuse("measured", "The table has no rows. Give at least three at one Reynolds number.");
  const byReynolds = new Map<number, Row[]>();
  given.reynolds.forEach((reynolds, i) => {
    const row = {
      reynolds,
      lift: given.lift_coefficient[i] ?? Number.NaN,
      drag: given.drag_coefficient[i] ?? Number.NaN,
      angle: given.angle?.[i],
    };
    byReynolds.set(reynolds, [...(byReynolds.get(reynolds) ?? []), row]);
  });
  return [...byReynolds.values()].sort((a, b) => (a[0]?.reynolds ?? 0) - (b[0]?.reynolds ?? 0));
}

function readGroup(all: readonly Row[], refuse: Refuse): Group {
  const reynolds = all[0]?.reynolds ?? Number.NaN;
  const where = `At a Reynolds number of ${reynolds}`;
  const top = all.reduce((best, row) => (row.lift > best.lift ? row : best));
  const rows = all
    .filter((row) => row.angle === undefined || top.angle === undefined || row.angle <= top.angle)
    .sort((a, b) => a.lift - b.lift);
  if (rows.length < 3) {
    refuse(
      "measured",
      `${where} the table has ${rows.length} ${rows.length === 1 ? "row" : "rows"} up to the stall. Give at least three.`,
    );
  }
  const twin = rows.find((row, i) => row.lift === rows[i + 1]?.lift);
  if (twin) {
    refuse("measured", `${where} two rows have a lift coefficient of ${twin.lift}. Leave one of them out.`);
  }
  if (!(top.lift > 0.1)) {
    refuse("measured", `${where} the largest lift coefficient is ${top.lift}. Give rows up to the stall, above 0.1.`);
  }
  const lowest = rows[0]?.lift ?? Number.NaN;
  return {
    reynolds,
    lowest,
    most: top.lift,
    least: Math.min(...rows.map((row) => row.drag)),
    line: all.every((row) => row.angle !== undefined) ? straightLine(rows, top.lift, where, refuse) : undefined,
    drag: dragCurve(
      rows.map((row) => [row.lift, row.drag]),
      lowest,
    ),
  };
}

/** A smooth curve that never falls beyond its ends; below the lowest lift it rises as a sharp edge's does. */
function dragCurve(points: readonly Point[], lowest: number): (lift: number) => number {
  const [first, second] = points;
  const [last, before] = [points.at(-1), points.at(-2)];
  const slope = (a: Point | undefined, b: Point | undefined) => (a && b ? (b[1] - a[1]) / (b[0] - a[0]) : 0);
  const curve = smoothCurve(points, Math.min(0, slope(first, second)), Math.max(0, slope(before, last)));
  return (lift) => curve(lift) + (0.75 * Math.min(0, lift - lowest) ** 2) / (2 * Math.PI);
}

/** Slope and zero of the straight line through the rows before the lift curve bends. */
function straightLine(rows: readonly Row[], most: number, where: string, refuse: Refuse): NonNullable<Group["line"]> {
  const straight = rows.filter((row) => Math.abs(row.lift) <= 0.8 * most);
  const lift = mean(straight.map((row) => row.lift));
  const angle = mean(straight.map((row) => row.angle ?? Number.NaN));
  const spread = straight.reduce((sum, row) => sum + ((row.angle ?? angle) - angle) ** 2, 0);
  const slope = straight.reduce((sum, row) => sum + ((row.angle ?? angle) - angle) * (row.lift - lift), 0) / spread;
  if (straight.length < 2 || !(slope > 1 && slope < 20)) {
    refuse(
      "measured",
      `${where} lift does not rise with the angle as a section's does. Check the column angle and its unit, and give two rows below four fifths of the largest lift.`,
    );
  }
  return { slope, zeroLiftAngle: angle - lift / slope };
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
