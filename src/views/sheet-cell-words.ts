import type { SheetCell } from "../cells/index.ts";
import type { Moved } from "./sheets/index.ts";

/** What the cell of a sheet says. */
export const words = {
  paper: ({ paper = "A4", lies = "upright" }: SheetCell) => `at true size on ${paper}, ${lies}`,
  print: "Print",
  printOf: (title: string) => `Print ${title}`,
  fileOf: (title: string, kind: string) => `${title} as ${kind}`,
  item: (kind: string) => `Save as ${kind}`,
  pagesOf: (title: string) => `pages of ${title}`,
  count: (pages: number, parts: number) =>
    `${parts} ${parts === 1 ? "part" : "parts"} on ${pages} ${pages === 1 ? "page" : "pages"}`,
  notYet: "It is still being computed. Try again in a moment.",
  hidden: "It is hidden until the question is answered.",
  didItPrint: "Did it come out of the printer?",
  itDid: "Yes, this is the sheet in use",
  itDidNot: "No",
  cautions:
    "Measure the rules on the print before cutting. Cut on a mat, along a steel rule, away from your hand. A laser cutter: give its kerf to the formula; only sheet its maker allows, extracted, and never alone while it burns.",
  old: (printed: Printed) => `Changed since it was printed or saved ${when(printed)}: do not cut from the old sheet.`,
  asPrinted: (printed: Printed) => `As printed or saved ${when(printed)}.`,
  mostMoved: 6,
  andMore: (count: number) => `and ${count} more`,
  moved: ({ part, before, now, written, gone }: Moved) => {
    if (before === null) return `${part} is new: ${now}`;
    if (now === null) return `${part} is gone; it was ${before}`;
    if (before === now && gone.length + written.length === 0) return `${part}: its lines moved within ${now}`;
    return [
      ...(before === now ? [`${part} (${now})`] : [`${part}: was ${before}, is ${now}`]),
      ...(gone.length > 0 ? [`it said ${quoted(gone)}`] : []),
      ...(written.length > 0 ? [`${gone.length > 0 ? "now it says" : "it says"} ${quoted(written)}`] : []),
    ].join("; ");
  },
  fields: { paper: "paper", lies: "how it lies" },
} as const;

type Printed = NonNullable<SheetCell["printed"]>;

const when = ({ on, trial }: Printed): string =>
  `on ${on}${trial === undefined ? "" : ` with the trial “${trial}” on`}`;

const quoted = (words: readonly string[]): string => words.map((each) => `“${each}”`).join(" and ");
