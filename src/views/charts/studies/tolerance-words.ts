/** What the chart of a tolerance says in words. */
import type { ToleranceOutcome } from "../../../cells/index.ts";
import { listInWords } from "../../drawings/words.ts";
import { formatNumber, joinUnit } from "../../format.ts";
import type { Allowed } from "../trade-off-data.ts";
import type { GapGroup } from "./gaps.ts";
import { teller } from "./study-chart.ts";
import { differenceUnit } from "./study-tables.ts";

type Result = ToleranceOutcome["results"][number];

/** "How eda and tip_height spread as built". */
export const toleranceTitle = ({ results }: ToleranceOutcome): string =>
  `How ${listInWords(results.map(({ text }) => text))} ${results.length === 1 ? "spreads" : "spread"} as built`;

/** A share as people say it: "93.2%". */
export const percentText = (share: number): string => joinUnit(formatNumber(share, "%", { figures: 3 }));

/** "mean 12.2 deg ± 0.41 deg; 95% of the builds from 11.4 deg to 13 deg". */
export function spreadText({ unit, sample }: Result): string {
  if (!sample) return "no value in any build";
  const tell = teller(unit);
  const [low = Number.NaN, high = Number.NaN] = ["2.5", "97.5"].map((share) => sample.percentiles[share]);
  const deviation = teller(differenceUnit(unit), 3)(sample.deviation);
  return `mean ${tell(sample.mean)}, deviation ${deviation}; 95% of the builds from ${tell(low)} to ${tell(high)}`;
}

/** What share of the spread comes from each input, the largest first: "from tip_break 61%". Those below a per cent are left out. */
export const influenceText = ({ influences }: Result): string[] =>
  influences
    .filter(({ share }) => share >= 0.01)
    .map(
      ({ target, share }, index) =>
        `${index === 0 ? "from " : ""}${target} ${percentText(Math.round(100 * share) / 100)}`,
    );

/** "93.2% of 2000 builds pass every check". */
export const passText = ({ passing, built }: ToleranceOutcome): string =>
  passing ? `${percentText(passing.share)} of ${built} builds pass every check` : "";

/** How sure that is: "of any number of builds 92% to 94.2%, at 95%". */
export function sureText({ passing }: ToleranceOutcome): string {
  const [low, high] = (passing?.between ?? []).map(percentText);
  return `of very many builds it would be ${low} to ${high} (at 95%)`;
}

/** Which input to tighten first, or that none helps more than chance shows. */
export function tightenText({ tighten }: ToleranceOutcome): string {
  const [first] = tighten;
  return first?.isSure ? `Tighten ${first.target} first` : "No single ± halved would let more pass than chance shows";
}

/** What has no value in some builds. */
export const toleranceGaps = ({ gaps }: ToleranceOutcome): readonly GapGroup[] =>
  gaps.map(({ of, reason, builds }) => ({ where: of, reason: reason.replace(/\.$/, ""), count: builds }));

/** How it was built, the spread of each result, its limits, how many pass, and what to tighten. */
export function toleranceWords(data: ToleranceOutcome, allowed: readonly Allowed[]): string {
  const { results, inputs, checks, passing, built, builds, seed, gaps } = data;
  const off = inputs.map(({ target, pair, unit, plusMinus, law, correlation }) => {
    const both = pair === null ? target : `${target} and ${pair}`;
    const together =
      correlation === null ? "" : `, correlation ${formatNumber(correlation, "1", { figures: 2 }).number}`;
    return `${both} ± ${teller(differenceUnit(unit), 3)(plusMinus)} ${law}${together}`;
  });
  const spread = results.map((result) => {
    const from = influenceText(result);
    const comes = from.length > 0 ? ` It comes ${listInWords(from)}.` : "";
    return `${result.text}: ${spreadText(result)}.${comes}`;
  });
  const limits = allowed.flatMap(({ quantity, min, max, label }) => {
    const unit = results.find(({ text }) => text.trim() === quantity)?.unit;
    if (unit === undefined) return [];
    const tell = teller(unit);
    return [
      ...(min === undefined ? [] : [`${label} fails below ${tell(min)}.`]),
      ...(max === undefined ? [] : [`${label} fails above ${tell(max)}.`]),
    ];
  });
  return [
    built < builds ? `So far ${built} of ${builds} builds, seed ${seed}.` : `${builds} builds, seed ${seed}.`,
    `Off by chance: ${listInWords(off)}.`,
    ...spread,
    ...limits,
    ...(passing ? [`${passText(data)}; ${sureText(data)}.`] : []),
    ...checks.flatMap(({ name, failed }) => (failed > 0 ? [`${name} fails in ${percentText(failed / built)}.`] : [])),
    ...(passing && passing.share < 1 ? [`${tightenText(data)}.`] : []),
    ...data.tighten.flatMap(({ target, gain, passing: then }) =>
      gain > 0 ? [`With half the ± of ${target} ${percentText(then)} would pass.`] : [],
    ),
    ...gaps.map(({ of, reason, builds: count }) => `${of} has no value in ${count}: ${reason}`),
  ].join(" ");
}
