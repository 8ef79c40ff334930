/** What the chart of a solve says in words. */
import type { SolveOutcome } from "../../../cells/index.ts";
import { listInWords } from "../../drawings/words.ts";
import { trend } from "../trade-off-words.ts";
import { type GapGroup, gapGroups } from "./gaps.ts";
import { shownUnit, teller } from "./study-chart.ts";

/** "where eda is 10 deg". */
export const solveTitle = (data: SolveOutcome): string => `Where ${targetText(data)}`;

/** "eda = 10 deg". */
export const targetText = ({ result, goal }: SolveOutcome): string => `${result.text} = ${teller(result.unit)(goal)}`;

/** In a sentence: reached where, or how near it comes. */
export function verdict(data: SolveOutcome): string {
  const { input, result, solutions, nearest, jumps } = data;
  const tell = teller(input.unit);
  const where = listInWords(solutions.map(({ at, kind }) => `${tell(at)}${kind === "touches" ? " (only just)" : ""}`));
  if (solutions.length > 0) {
    const times = solutions.length === 1 ? "once" : `${solutions.length} times`;
    return `Reached ${times}, at ${input.target} ${where}`;
  }
  const jump = jumps.length > 0 ? `; it jumps past it at ${listInWords(jumps.map(tell))}` : "";
  if (!nearest) return `Not reached${jump}`;
  return `Not reached${jump}; nearest ${teller(result.unit)(nearest.value)} at ${input.target} ${tell(nearest.at)}`;
}

/** What each solution says of itself, or the nearest where there is none. */
export function solutionNames(data: SolveOutcome): string[] {
  const { input, result, solutions, nearest } = data;
  const tell = teller(input.unit);
  if (solutions.length > 0) return solutions.map(({ at }) => `${input.target} ${tell(at)}: ${targetText(data)}`);
  return nearest
    ? [`${input.target} ${tell(nearest.at)}: ${result.text} comes nearest, ${teller(result.unit)(nearest.value)}`]
    : [];
}

/** Where the result has no value. */
export const solveGaps = ({ input, gaps }: SolveOutcome): readonly GapGroup[] => {
  const tell = teller(input.unit);
  return gapGroups(gaps.map(({ at, reason }) => ({ where: tell(at), reason })));
};

/** The target, the verdict, the trend, the present design and what has no value. */
export function solveWords(data: SolveOutcome): string {
  const { input, result, curve, gaps } = data;
  const tell = teller(input.unit);
  const done = curve.y.filter((value) => value !== null).length + gaps.length;
  const values = curve.y.map((value) => value ?? Number.NaN);
  return [
    ...(done < curve.x.length ? [`So far ${done} of ${curve.x.length} are computed.`] : []),
    `Wanted is ${targetText(data)}.`,
    `${verdict(data)}.`,
    `From ${tell(curve.x[0] ?? Number.NaN)} to ${tell(curve.x.at(-1) ?? Number.NaN)} of ${input.target} ` +
      `${result.text} ${trend(values, shownUnit(result.unit))}.`,
    ...(input.nominal === null ? [] : [`The present design stands at ${tell(input.nominal)}.`]),
    ...solveGaps(data).map(({ where, reason }) => `No value at ${where}: ${reason}.`),
  ].join(" ");
}
