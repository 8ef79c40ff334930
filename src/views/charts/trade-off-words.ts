/** What a trade-off chart says in words: names of its points, title and description. */
import { listInWords } from "../drawings/words.ts";
import { formatNumber, joinUnit, numberFormat } from "../format.ts";
import { bandName } from "./studies/study-chart.ts";
import {
  type Allowed,
  allPoints,
  endsIn,
  pointIn,
  type Quantity,
  type SweepPoint,
  type TradeOffData,
} from "./trade-off-data.ts";

const threeFigures = { figures: 3 } as const;

/** A value with its unit, to three figures: "11.6 deg". */
export const told = (value: number, unit: string): string => joinUnit(formatNumber(value, unit, threeFigures));

/** The swept value of a point, to four figures: "12.25 deg". */
export const sweptText = ({ value }: Pick<SweepPoint, "value">, { sweep }: TradeOffData): string =>
  joinUnit(formatNumber(value, sweep.unit));

/**
 * Gives the name of a point, counted through all curves, in a panel: "tip_break 12 deg: eda 10.2 deg, loss 3.1%", its curve
 * before it where there are several.
 */
export function pointNames(data: TradeOffData): (index: number, panel: number) => string {
  const { sweep, x, y, points, curve = "", further = [] } = data;
  const every = allPoints(data);
  const curves = [{ name: curve, points }, ...further].flatMap((each) => each.points.map(() => each.name));
  const swept = numberFormat(sweep.unit);
  const along = numberFormat(x.unit, threeFigures);
  const up = y.map(({ unit }) => numberFormat(unit, threeFigures));
  return (index, panel) => {
    const point = every[index] as SweepPoint;
    const before = further.length === 0 ? "" : `${curves[index]}, `;
    const begin = `${before}${sweep.name} ${joinUnit(swept(point.value))}`;
    const place = pointIn(point, panel);
    const tell = up[panel];
    if (!place || !tell) return `${begin}: no value, ${reasonOf(point)}`;
    return `${begin}: ${y[panel]?.name} ${joinUnit(tell(place.y))}, ${x.name} ${joinUnit(along(place.x))}`;
  };
}

/** "eda and spiral against loss as tip_break changes". */
export const tradeOffTitle = ({ x, y, sweep }: TradeOffData): string =>
  `${listInWords(y.map(({ name }) => name))} against ${x.name} as ${sweep.name} changes`;

/** The trends, the present design, the baseline, what the checks allow, and the points without a value. */
export function tradeOffWords(data: TradeOffData): string {
  const { sweep, points, present, baseline, marked = [], allowed = [], further = [], band } = data;
  const all = [data.x, ...data.y];
  // What is swept may stand along x itself: it is told once.
  const shown = all.flatMap((quantity, index) => (quantity.name === sweep.name ? [] : [{ quantity, index }]));
  const [first, last] = endsIn(points, 0);
  const trendsOf = (of: readonly SweepPoint[]): string =>
    listInWords(
      shown.map(({ quantity: { name, unit }, index }) => {
        const known = of.filter((point) => Number.isFinite(amount(point, index)));
        const rise = trend(
          known.map((point) => amount(point, index)),
          unit,
        );
        return `${name} ${rise}${endsBeside(known, first, last, data)}`;
      }),
    );
  const from = first && last ? `From ${sweptText(first, data)} to ${sweptText(last, data)} of ${sweep.name} ` : "";
  const where = (point: SweepPoint) =>
    `${sweep.name} ${sweptText(point, data)}: ${shown.map(({ quantity, index }) => valueText(point, quantity, index)).join(", ")}.`;
  return [
    `${from}${further.length > 0 ? `of ${data.curve} ` : ""}${trendsOf(points)}.`,
    ...further.map((curve) => `Of ${curve.name} ${trendsOf(curve.points)}.`),
    ...(band !== undefined && present
      ? [`Within ${told(band, data.x.unit)} of the present ${data.x.name} there is ${bandName}.`]
      : []),
    ...(present ? [`The present design, ${where(present)}`] : []),
    ...(baseline ? [`For comparison ${baseline.name}, ${where(baseline)}`] : []),
    ...marked.map((design) => `For comparison ${design.name}, ${where(design)}`),
    ...allowed.map((each) => `${each.label} holds ${allowedText(each, all)}.`),
    ...failures(data).map(({ text, of, reason }) => `No value for ${sweep.name} ${text}${of}: ${reason}.`),
  ].join(" ");
}

/** Where a quantity has values on a part of the sweep only: " (from 8 deg to 16 deg)". */
function endsBeside(
  known: readonly SweepPoint[],
  first: SweepPoint | undefined,
  last: SweepPoint | undefined,
  data: TradeOffData,
): string {
  const [from, to] = [known[0], known.at(-1)];
  if (!from || !to || !first || !last || (from.value <= first.value && to.value >= last.value)) return "";
  return from === to
    ? ` (at ${sweptText(from, data)} only)`
    : ` (from ${sweptText(from, data)} to ${sweptText(to, data)})`;
}

/** True where every point that has values has the same, so that there is nothing to trade. */
export function isConstant({ points, x, y }: TradeOffData): boolean {
  const drawn = points.filter((point) => y.some((_, panel) => pointIn(point, panel)));
  const stays = ({ unit }: Quantity, index: number) => {
    const values = drawn.map((point) => amount(point, index));
    return told(Math.min(...values), unit) === told(Math.max(...values), unit);
  };
  return drawn.length > 1 && [x, ...y].every(stays);
}

/** The swept values that came to nothing, those with one reason together; `of` tells the curves where not all lack them. */
function failures(data: TradeOffData): readonly {
  readonly text: string;
  readonly of: string;
  readonly reason: string;
  readonly count: number;
}[] {
  const { curve = "", points, further = [] } = data;
  const curves = [{ name: curve, points }, ...further];
  const byReason = new Map<string, { point: SweepPoint; name: string }[]>();
  for (const { name, points } of curves) {
    for (const point of points) {
      if (data.y.every((_, panel) => pointIn(point, panel))) continue;
      byReason.set(reasonOf(point), [...(byReason.get(reasonOf(point)) ?? []), { point, name }]);
    }
  }
  return [...byReason].map(([reason, failed]) => {
    const names = [...new Set(failed.map(({ name }) => name))];
    return {
      reason,
      count: failed.length,
      text: listInWords([...new Set(failed.map(({ point }) => sweptText(point, data)))]),
      of: names.length < curves.length ? ` of ${listInWords(names)}` : "",
    };
  });
}

/** How many points have no value, and why: "✕ 2 of 30 without a value: it stalls"; "" where all have one. */
export function failureNote(data: TradeOffData): string {
  const lacking = failures(data);
  const count = lacking.reduce((sum, each) => sum + each.count, 0);
  return count === 0 ? "" : `✕ ${count} of ${allPoints(data).length} without a value: ${lacking[0]?.reason}`;
}

const reasonOf = ({ reason }: SweepPoint): string => (reason ?? "it cannot be computed").replace(/\.$/, "");

/** The value of a point for a quantity: the one along x is the first. */
const amount = ({ x, y }: SweepPoint, quantity: number): number => (quantity === 0 ? x : y[quantity - 1]) ?? Number.NaN;

function valueText(point: SweepPoint, { name, unit }: Quantity, index: number): string {
  const value = amount(point, index);
  return `${name} ${Number.isFinite(value) ? told(value, unit) : "without a value"}`;
}

/** "rises from 3.2% to 8%", "stays at 4 deg", or by way of its highest or lowest; what is no number is passed over. */
export function trend(all: readonly number[], unit: string): string {
  const values = all.filter(Number.isFinite);
  const [first = Number.NaN] = values;
  const last = values.at(-1) ?? Number.NaN;
  if (values.length === 0) return "has no value anywhere";
  const least = Math.min(...values);
  const most = Math.max(...values);
  const ends = `from ${told(first, unit)} to ${told(last, unit)}`;
  if (told(least, unit) === told(most, unit)) return `stays at ${told(first, unit)}`;
  if (least === first && most === last) return `rises ${ends}`;
  if (most === first && least === last) return `falls ${ends}`;
  const turn = [most, least].filter((value) => value !== first && value !== last);
  const names = turn.map((value) => `${value === most ? "highest" : "lowest"} ${told(value, unit)}`);
  return `goes ${ends}, ${names.join(", ")}`;
}

function allowedText({ quantity, min, max }: Allowed, all: readonly Quantity[]): string {
  const unit = all.find(({ name }) => name === quantity)?.unit ?? "";
  if (min !== undefined && max !== undefined)
    return `where ${quantity} is between ${told(min, unit)} and ${told(max, unit)}`;
  return min !== undefined
    ? `where ${quantity} is above ${told(min, unit)}`
    : `where ${quantity} is below ${told(max ?? Number.NaN, unit)}`;
}
