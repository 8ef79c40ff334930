/** What the chart of a best says in words. */
import { type BestOutcome, type Design, differenceOf } from "../../../cells/index.ts";
import { listInWords } from "../../drawings/words.ts";
import { bandName, teller } from "./study-chart.ts";

/** "least loss", "least loss and most eda". */
export const bestTitle = ({ results }: BestOutcome): string =>
  `The ${listInWords(results.map(({ goal, text }) => `${goal} ${text}`))}`;

/** What is said of an input whose best value is an end of its range. */
export const endText = "at an end of its range";

/** What each design says of itself: what it sets, and what comes of it. */
export function designNames(data: BestOutcome): string[] {
  return data.designs.map((design) => `${inputsText(data, design)}: ${resultsText(data, design)}`);
}

/** In a sentence what was found, and what is to be said of it. */
export function verdict(data: BestOutcome): { readonly text: string; readonly more: string; readonly isGood: boolean } {
  const { results, designs, isFound, searches } = data;
  const [design] = designs;
  if (!design || searches.done === 0) return { text: "Nothing found yet", more: "", isGood: true };
  if (!isFound) {
    if (design.violation === null) return { text: "No design has a value", more: "", isGood: false };
    const nearest = `the nearest, ${designNames(data)[0]}, fails ${listInWords(design.fails)}`;
    return { text: "No design holds every check", more: nearest, isGood: false };
  }
  const agree = `${searches.agree} of ${searches.done} searches came to ${searches.agree === 1 ? "it" : "the same"}`;
  if (results.length > 1) {
    return { text: `${designs.length} designs, none better than another in both`, more: "", isGood: true };
  }
  const [result] = results;
  return {
    text: `${result?.goal === "most" ? "Most" : "Least"}: ${resultsText(data, design)}`,
    more: `${changeText(data, design)}${agree}`,
    isGood: true,
  };
}

/** What was looked for and found, where the inputs stand, and what the present design has. */
export function bestWords(data: BestOutcome, bands: readonly (number | null)[]): string {
  const { results, checks, designs, isFound, atEnds, present, searches } = data;
  const said = verdict(data);
  const [first] = designs;
  const last = designs.at(-1);
  const front =
    isFound && results.length > 1 && first && last
      ? [
          `The front goes from ${resultsText(data, first)} with ${inputsText(data, first)} to ${resultsText(data, last)} with ${inputsText(data, last)}.`,
        ]
      : [];
  const near = results.flatMap(({ text, unit }, index) => {
    const band = bands[index] ?? null;
    return band === null ? [] : [`Within ${teller(unit, 3)(band)} of the present ${text} there is ${bandName}.`];
  });
  return [
    ...(searches.done < 3 ? [`So far ${searches.done} of 3 searches are done.`] : []),
    `Looked for is the ${listInWords(results.map(({ goal, text }) => `${goal} ${text}`))}${checks.length > 0 ? ` while ${listInWords(checks)} ${checks.length === 1 ? "holds" : "hold"}` : ""}.`,
    `${said.text}.`,
    ...(said.more === "" ? [] : [`${said.more}.`]),
    ...front,
    ...(isFound && results.length === 1 && first ? [`It has ${inputsText(data, first)}.`] : []),
    ...atEnds.map(({ target }) => `${target} stands ${endText}; there may be better beyond.`),
    `The present design has ${resultsText(data, present)}${present.fails.length > 0 ? `; it fails ${listInWords(present.fails)}` : ""}.`,
    ...near,
  ].join(" ");
}

const inputsText = ({ inputs }: BestOutcome, design: Design): string =>
  inputs.map(({ target, unit }, axis) => `${target} ${teller(unit)(design.inputs[axis] ?? Number.NaN)}`).join(", ");

const resultsText = ({ results }: BestOutcome, design: Design): string =>
  results
    .map(({ text, unit }, index) => {
      const value = design.results[index];
      return typeof value === "number" ? `${text} ${teller(unit)(value)}` : `${text} without a value`;
    })
    .join(", ");

/** "now 3.6%; ", or that it is no other. */
function changeText({ results, present }: BestOutcome, design: Design): string {
  const [now, then] = [present.results[0], design.results[0]];
  const unit = results[0]?.unit ?? "1";
  if (typeof now !== "number" || typeof then !== "number") return "";
  const difference = differenceOf(now, then, null);
  return difference.isSeen ? `now ${teller(unit)(now)}; ` : "as now; ";
}
