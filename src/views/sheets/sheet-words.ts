import type { Part } from "./parts.ts";

/** What sheets say: on paper, and about themselves. */
export const sheetWords = {
  measure: (diagonal: string) => [
    "True size: print at 100 %, not fitted to the page.",
    `Measure both rules; cross to cross ${diagonal} mm.`,
    "A blade slips: cut on a mat, along a steel rule,",
    "away from your hand.",
  ],
  page: (number: number, of: number) => `page ${number} of ${of}`,
  trial: (name: string) => `trial: ${name}`,
  piece: (part: string, columns: number, rows: number) =>
    `${part}, in ${columns * rows} pieces: trim one at the dash-dotted line, glue it on the next, cross on cross`,
  /** Parts of one thickness together: "right 1, left 1: 3.2 mm; right 2: 2.4 mm". */
  parts: (parts: readonly Part[]) => {
    const sorts = [...new Set(parts.map(thick))];
    const named = (sort: string) => parts.filter((part) => thick(part) === sort).map(({ name }) => name);
    return sorts.map((sort) => `${named(sort).join(", ")}: ${sort}`).join("; ");
  },
  /** What stands on a part: its name and how thick its sheet is. */
  named: (part: Part) => (part.name.includes(thick(part)) ? part.name : `${part.name}, ${thick(part)}`),
  pageTitle: (title: string, number: number, of: number, parts: string) =>
    `${title}, page ${number} of ${of} at true size: ${parts}`,
  noPattern: (of: string) =>
    `${of} is nothing that can be cut. Name a pattern, such as wing_blanks or wing_jig gives it.`,
  noParts: (of: string) => `${of} has no parts.`,
  tooManyPages: (most: number) => `This would take more than ${most} pages. Take larger paper, or fewer parts.`,
} as const;

const thick = ({ thickness }: Part): string => `${Math.round(thickness * 100) / 100} mm`;
