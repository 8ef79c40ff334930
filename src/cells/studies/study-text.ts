/** What a study comes to as lines of plain text, for the command line. */
import { unitOf } from "../../library/units.ts";
import type { BestOutcome } from "./best.ts";
import type { MapOutcome } from "./map-study.ts";
import type { Outcome } from "./prepare.ts";
import type { SensitivityOutcome } from "./sensitivity.ts";
import type { SolveOutcome } from "./solve.ts";
import type { SweepOutcome } from "./sweep-study.ts";
import type { ToleranceOutcome } from "./tolerance.ts";

/** How a number in SI is told in a unit: "11.6 deg". */
export type TellNumber = (value: number, unit: string) => string;

/** The lines, without a title. Each table is led by a heading and followed by an empty line. */
export function studyText(outcome: Outcome, tell: TellNumber): string[] {
  switch (outcome.study) {
    case "sweep":
      return sweepText(outcome, tell);
    case "map":
      return mapText(outcome, tell);
    case "sensitivity":
      return sensitivityText(outcome, tell);
    case "tolerance":
      return toleranceText(outcome, tell);
    case "solve":
      return solveText(outcome, tell);
    case "best":
      return bestText(outcome, tell);
  }
}

function sweepText({ input, results, checks, curves }: SweepOutcome, tell: TellNumber): string[] {
  return curves.flatMap((curve) => {
    const head = [input.target, ...results.map(({ text }) => text), ...checks];
    const rows = input.values.map((value, point) => [
      tell(value, input.unit),
      ...results.map(({ unit }, index) => told(curve.results[index]?.[point], unit, tell)),
      ...checks.map((_, index) => sign(curve.checks[index]?.[point])),
    ]);
    const gaps = curve.gaps.map(({ point, of, reason }) => `${of} at ${rows[point]?.[0]}: ${reason}`);
    return [curve.trial ?? "as it is", ...table([head, ...rows]), ...notes(gaps), ""];
  });
}

function mapText({ inputs, results, checks, gaps }: MapOutcome, tell: TellNumber): string[] {
  const [x, y] = inputs;
  if (!x || !y) return [];
  const across = x.values.map((value) => tell(value, x.unit));
  const grid = (heading: string, at: (place: number) => string): string[] => {
    const rows = y.values.map((value, row) => [
      tell(value, y.unit),
      ...across.map((_, column) => at(column + row * across.length)),
    ]);
    return [heading, ...table([[`${y.target} \\ ${x.target}`, ...across], ...rows]), ""];
  };
  const reasons = gaps.map(
    ({ point: [i, j], of, reason }) => `${of} at ${across[i]}, ${tell(y.values[j] ?? Number.NaN, y.unit)}: ${reason}`,
  );
  return [
    ...results.flatMap(({ text, unit, heights }) => grid(text, (place) => told(heights[place], unit, tell))),
    ...checks.flatMap(({ name, holds }) => grid(name, (place) => sign(holds[place]))),
    ...notes(reasons),
  ];
}

function sensitivityText({ inputs, results, fallen, gaps }: SensitivityOutcome, tell: TellNumber): string[] {
  const tables = results.flatMap(({ text, unit, nominal, ranked }) => {
    const rows = ranked.map(({ target, less, more, move, derivative }) => {
      const input = inputs.find((each) => each.target === target);
      const per = input ? sizeUnit(input.unit) : "1";
      const slope = derivative === null ? null : derivative * unitOf(per).factor;
      return [
        target,
        input ? `±${told(input.amount, sizeUnit(input.unit), tell)}${input.isAssumed ? " (1%)" : ""}` : "",
        told(less, unit, tell),
        told(more, unit, tell),
        told(move, sizeUnit(unit), tell),
        `${told(slope, sizeUnit(unit), tell)}${per === "1" ? "" : ` per ${per}`}`,
      ];
    });
    const head = ["input", "moved by", "less", "more", "moves it by", "slope"];
    return [`${text}: ${told(nominal, unit, tell)}`, ...table([head, ...rows]), ""];
  });
  return [
    ...tables,
    ...fallen.map(({ check, target, way }) => `✕ ${check} fails with ${way === "less" ? "less" : "more"} ${target}`),
    ...notes(gaps.map(({ target, reason }) => `${target}: ${reason}`)),
  ];
}

function toleranceText(outcome: ToleranceOutcome, tell: TellNumber): string[] {
  const { results, checks, passing, tighten, gaps, builds, built, seed } = outcome;
  const spread = results.map(({ text, unit, sample }) =>
    sample
      ? [
          text,
          tell(sample.mean, unit),
          tell(sample.deviation, sizeUnit(unit)),
          ...["2.5", "50", "97.5"].map((share) => tell(sample.percentiles[share] ?? Number.NaN, unit)),
        ]
      : [text, gap, gap, gap, gap, gap],
  );
  const percent = (share: number): string => tell(share, "%");
  const influences = results.flatMap(({ text, influences }) =>
    influences.length > 0
      ? [`${text} is spread by ${influences.map(({ target, share }) => `${target} ${percent(share)}`).join(", ")}`]
      : [],
  );
  const [first] = tighten;
  return [
    `${built} of ${builds} built, seed ${seed}`,
    "",
    ...table([["", "mean", "deviation", "2.5% below", "half below", "97.5% below"], ...spread]),
    "",
    ...influences,
    "",
    ...checks.map(
      ({ name, held, failed, unknown }) =>
        `${name}: holds ${held}, fails ${failed}${unknown ? `, unknown ${unknown}` : ""}`,
    ),
    ...(passing
      ? [
          `${percent(passing.share)} pass every check (at 95%: ${percent(passing.between[0])} to ${percent(passing.between[1])})`,
        ]
      : []),
    ...(first?.isSure
      ? [`Tighten ${first.target} first: with its ± halved ${percent(first.passing)} would pass`]
      : passing && passing.share < 1
        ? ["No single ± halved would let more pass than chance shows"]
        : []),
    ...notes(gaps.map(({ of, reason, builds: count }) => `${of} in ${count}: ${reason}`)),
  ];
}

function solveText({ input, result, goal, solutions, jumps, nearest, gaps }: SolveOutcome, tell: TellNumber): string[] {
  const wanted = `${result.text} = ${tell(goal, result.unit)}`;
  const at = (value: number): string => `${input.target} = ${tell(value, input.unit)}`;
  const found = solutions.map((each) => `${at(each.at)}${each.kind === "touches" ? " (only just)" : ""}`);
  const none = nearest ? `; it comes nearest with ${tell(nearest.value, result.unit)} at ${at(nearest.at)}` : "";
  const heading =
    found.length === 0
      ? `${wanted} is not reached${none}`
      : `${wanted} is reached ${found.length === 1 ? "once" : `${found.length} times`}`;
  return [
    heading,
    ...found,
    ...jumps.map((value) => `it jumps past at ${at(value)}`),
    ...notes(gaps.map(({ at: value, reason }) => `${at(value)}: ${reason}`)),
  ];
}

function bestText({ inputs, results, isFound, designs, atEnds, searches }: BestOutcome, tell: TellNumber): string[] {
  const head = [...inputs.map(({ target }) => target), ...results.map(({ text, goal }) => `${goal} ${text}`), "fails"];
  const rows = designs.map((design) => [
    ...inputs.map(({ unit }, index) => told(design.inputs[index], unit, tell)),
    ...results.map(({ unit }, index) => told(design.results[index], unit, tell)),
    design.fails.join(", ") || "nothing",
  ]);
  return [
    isFound ? (results.length > 1 ? "the trade-off front" : "the best") : "no design holds every check; the nearest",
    ...table([head, ...rows]),
    "",
    ...atEnds.map(({ target }) => `${target} stands at an end of its range; there may be better beyond`),
    `${searches.agree} of ${searches.done} searches came to the same`,
  ];
}

const gap = "—";

const told = (value: number | string | null | undefined, unit: string, tell: TellNumber): string =>
  typeof value === "number" ? tell(value, unit) : gap;

const sign = (holds: boolean | null | undefined): string => (holds === true ? "✓" : holds === false ? "✕" : gap);

/** The unit of a difference: a scale with a zero of its own has none, so it is told in K. */
const sizeUnit = (unit: string): string => (unitOf(unit).offset === 0 ? unit : "K");

/** Columns as wide as their widest entry, two blanks between, all but the first to the right. */
function table(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? "").length)));
  return rows.map((row) =>
    row
      .map((entry, column) => (column === 0 ? entry.padEnd(widths[0] ?? 0) : entry.padStart(widths[column] ?? 0)))
      .join("  ")
      .trimEnd(),
  );
}

/** Reasons of gaps, at most ten. */
function notes(reasons: readonly string[]): string[] {
  const more = reasons.length > 10 ? [`… and ${reasons.length - 10} more`] : [];
  return [...reasons.slice(0, 10).map((reason) => `— ${reason}`), ...more];
}
