/** What the chart of a sweep says in words. */
import type { SweepCurve, SweepOutcome } from "../../../cells/index.ts";
import { listInWords } from "../../drawings/words.ts";
import { told, trend } from "../trade-off-words.ts";
import { type CheckRow, type Span, spansOf } from "./check-rows.ts";
import { type GapGroup, gapGroups } from "./gaps.ts";
import { bandName, shownUnit, teller } from "./study-chart.ts";

/** What a curve is called. */
export const curveName = ({ trial }: SweepCurve): string => trial ?? "as it is";

/** "eda and loss as tip_break changes". */
export const sweepTitle = ({ results, input }: SweepOutcome): string =>
  `${listInWords(results.map(({ text }) => text))} as ${input.target} changes`;

/** Gives what a point says of itself: "tip_break 12 deg: eda 10.2 deg as it is, 11.4 deg steeper tips". */
export function pointNames({ input, results, curves }: SweepOutcome): (point: number, panel: number) => string {
  const along = teller(input.unit);
  const up = results.map(({ unit }) => teller(unit, 3));
  return (point, panel) => {
    const { text = "" } = results[panel] ?? {};
    const values = curves.map((curve) => {
      const value = curve.results[panel]?.[point] ?? null;
      const gap = curve.gaps.find((each) => each.point === point && each.of === text);
      const says =
        value === null ? (gap ? `no value, ${gap.reason.replace(/\.$/, "")}` : "not yet") : up[panel]?.(value);
      return curves.length > 1 ? `${says} ${curveName(curve)}` : says;
    });
    return `${input.target} ${along(input.values[point] ?? Number.NaN)}: ${text} ${values.join(", ")}`;
  };
}

/** What has no value in one curve or another. */
export const sweepGaps = ({ input, curves }: SweepOutcome): readonly GapGroup[] => {
  const along = teller(input.unit);
  return gapGroups(
    curves.flatMap((curve) =>
      curve.gaps.map(({ point, reason }) => ({
        where: `${along(input.values[point] ?? Number.NaN)}${curve.trial === null ? "" : ` with ${curve.trial}`}`,
        reason,
      })),
    ),
  );
};

/** A row for each check that fails somewhere: those of the present design, then those of a trial that differ. */
export function failingRows({ input, checks, curves }: SweepOutcome): CheckRow[] {
  const [present] = curves;
  return curves.flatMap((curve) =>
    checks.flatMap((check, index) => {
      const holds = curve.checks[index] ?? [];
      const isSame = curve !== present && holds.every((each, point) => each === present?.checks[index]?.[point]);
      if (isSame || !holds.includes(false)) return [];
      const failing = spansOf(input.values, (point) => holds[point] === false);
      const whose = curve.trial === null ? "" : `${curve.trial}: `;
      return [{ text: `${whose}${check} fails ${rangesText(failing, input.unit)}`, holds }];
    }),
  );
}

/** The trends, the trials, the present design, where checks fail, what is too small to see, and what has no value. */
export function sweepWords(data: SweepOutcome, bands: readonly (number | null)[]): string {
  const { input, results, curves } = data;
  const along = teller(input.unit);
  const done = input.values.filter((_, point) => isThere(curves[0], point)).length;
  const [from, to] = [input.values[0] ?? Number.NaN, input.values.at(-1) ?? Number.NaN];
  const trends = (curve: SweepCurve): string =>
    listInWords(
      results.map(({ text, unit }, index) => {
        const values = (curve.results[index] ?? []).map((value) => value ?? Number.NaN);
        return `${text} ${trend(values, shownUnit(unit))}`;
      }),
    );
  const near = results.flatMap(({ text, unit }, index) => {
    const band = bands[index] ?? null;
    return band === null ? [] : [`Within ${told(band, unit)} of the present ${text} there is ${bandName}.`];
  });
  return [
    ...(done < input.values.length ? [`So far ${done} of ${input.values.length} are computed.`] : []),
    ...curves.map((curve) => {
      const whose = curve.trial === null ? "" : `, with ${curve.trial},`;
      return `From ${along(from)} to ${along(to)} of ${input.target}${whose} ${trends(curve)}.`;
    }),
    ...curves.flatMap(({ trial, at }) =>
      at === null ? [] : [`${trial === null ? "The present design" : trial} stands at ${along(at)}.`],
    ),
    ...failingRows(data).map(({ text }) => `${text}.`),
    ...near,
    ...sweepGaps(data).map(({ where, reason }) => `No value at ${where}: ${reason}.`),
  ].join(" ");
}

const isThere = (curve: SweepCurve | undefined, point: number): boolean =>
  curve !== undefined &&
  (curve.results.some((values) => values[point] !== null) || curve.gaps.some((gap) => gap.point === point));

function rangesText(spans: readonly Span[], unit: string): string {
  const tell = teller(unit, 3);
  return listInWords(
    spans.map(([from, to]) => (from === to ? `at ${tell(from)}` : `from ${tell(from)} to ${tell(to)}`)),
  );
}
