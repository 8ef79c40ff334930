/** What the chart of a map says in words. */
import type { MapOutcome } from "../../../cells/index.ts";
import { listInWords } from "../../drawings/words.ts";
import { told } from "../trade-off-words.ts";
import { type GapGroup, gapGroups } from "./gaps.ts";
import { bandName, shownUnit, teller } from "./study-chart.ts";

/** "eda and loss over tip_break and middle_break". */
export const mapTitle = ({ results, inputs }: MapOutcome): string =>
  `${listInWords(results.map(({ text }) => text))} over ${listInWords(inputs.map(({ target }) => target))}`;

/** Gives what a place of the grid says of itself: its inputs, all results there, and the checks that fail. */
export function placeNames(data: MapOutcome): (column: number, row: number) => string {
  const [x, y] = data.inputs;
  const [tellX, tellY] = [teller(x?.unit ?? "1"), teller(y?.unit ?? "1")];
  const up = data.results.map(({ unit }) => teller(unit, 3));
  const columns = x?.values.length ?? 0;
  return (column, row) => {
    const place = column + row * columns;
    const here = (point: readonly [number, number]): boolean => point[0] === column && point[1] === row;
    const values = data.results.map(({ text, heights }, index) => {
      const height = heights[place] ?? null;
      if (height !== null) return `${text} ${up[index]?.(height)}`;
      const gap = data.gaps.find((each) => each.of === text && here(each.point));
      return gap ? `${text} no value, ${gap.reason.replace(/\.$/, "")}` : `${text} not yet`;
    });
    const failing = data.checks.flatMap(({ name, holds }) => (holds[place] === false ? [name] : []));
    const begin = `${x?.target} ${tellX(x?.values[column] ?? Number.NaN)}, ${y?.target} ${tellY(y?.values[row] ?? Number.NaN)}`;
    return `${begin}: ${values.join(", ")}${failing.length > 0 ? `; ${listInWords(failing)} ${failing.length === 1 ? "fails" : "fail"}` : ""}`;
  };
}

/** Places without a value, by reason. */
export function mapGaps({ inputs, gaps }: MapOutcome): readonly GapGroup[] {
  const tell = inputs.map(({ unit }) => teller(unit));
  return gapGroups(
    gaps.map(({ point, reason }) => ({
      where: point.map((at, axis) => tell[axis]?.(inputs[axis]?.values[at] ?? Number.NaN)).join(" and "),
      reason,
    })),
  );
}

/** The ends of each result, how much of the map a check takes away, where designs stand, and what has no value. */
export function mapWords(data: MapOutcome, bands: readonly (number | null)[]): string {
  const { inputs, results, checks, marks } = data;
  const nameOf = placeNames(data);
  const columns = inputs[0]?.values.length ?? 1;
  const all = columns * (inputs[1]?.values.length ?? 1);
  const known = results[0]?.heights.filter((height) => height !== null).length ?? 0;
  const lacking = new Set(data.gaps.map(({ point }) => point.join())).size;
  const ranges = inputs.map(({ target, unit, values }) => {
    const tell = teller(unit);
    return `${target} from ${tell(values[0] ?? Number.NaN)} to ${tell(values.at(-1) ?? Number.NaN)}`;
  });
  const ends = results.flatMap(({ text, heights }) => {
    const extremes = [lowest(heights), lowest(heights.map((height) => (height === null ? null : -height)))];
    const [least, most] = extremes.map((place) => nameOf(place % columns, Math.floor(place / columns)));
    return extremes.includes(-1)
      ? [`${text} has no value anywhere.`]
      : [`${text} is least at ${least}, most at ${most}.`];
  });
  const failing = checks.map(({ name, holds }) => {
    const count = holds.filter((each) => each === false).length;
    const told = holds.filter((each) => each !== null).length;
    return count === 0 ? `${name} holds everywhere.` : `${name} fails at ${count} of ${told} points.`;
  });
  const stands = marks.map(({ trial, at }) => {
    const where = at.map((value, axis) => `${inputs[axis]?.target} ${teller(inputs[axis]?.unit ?? "1")(value)}`);
    return `${trial === null ? "The present design" : trial} stands at ${where.join(", ")}.`;
  });
  const near = results.flatMap(({ text, unit }, index) => {
    const band = bands[index] ?? null;
    return band === null ? [] : [`Within ${told(band, shownUnit(unit))} of the present ${text} there is ${bandName}.`];
  });
  return [
    ...(known + lacking < all ? [`So far ${known + lacking} of ${all} are computed.`] : []),
    `Over ${ranges.join(" and ")}.`,
    ...ends,
    ...failing,
    ...stands,
    ...near,
    ...mapGaps(data).map(({ where, reason }) => `No value at ${where}: ${reason}.`),
  ].join(" ");
}

/** The place of the least height; −1 where there is none. */
function lowest(heights: readonly (number | null)[]): number {
  let best = -1;
  heights.forEach((height, place) => {
    if (height !== null && (best < 0 || height < (heights[best] as number))) best = place;
  });
  return best;
}
