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
    `${part}, in ${columns * rows} pieces: trim to the dash-dotted lines, lay cross on cross`,
  parts: (names: readonly string[]) => names.join(", "),
  pageTitle: (title: string, number: number, of: number, parts: string) =>
    `${title}, page ${number} of ${of} at true size: ${parts}`,
  noPattern: (of: string) =>
    `${of} is nothing that can be cut. Name a pattern, such as wing_blanks or wing_jig gives it.`,
  noParts: (of: string) => `${of} has no parts.`,
  tooManyPages: (most: number) => `This would take more than ${most} pages. Take larger paper, or fewer parts.`,
} as const;
