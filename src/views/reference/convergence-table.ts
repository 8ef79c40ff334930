/** How little a finer lattice changes, as a section of the manual. */
import type { Fineness } from "../../library/index.ts";
import { formatNumber, joinUnit } from "../format.ts";
import { words } from "../words.ts";
import { make } from "./make.ts";
import { makeTable } from "./make-table.ts";

const { convergence } = words.reference;

type Told = readonly [head: string, of: (fineness: Fineness) => string];

const bare = (of: ({ flow }: Fineness) => number) => (fineness: Fineness) =>
  joinUnit(formatNumber(of(fineness), "1", { figures: 4 }));

const columns: readonly Told[] = [
  [convergence.unknowns, ({ flow }) => String(flow.unknowns)],
  ["C_Lα", bare(({ flow }) => flow.lift_slope)],
  [convergence.neutral, ({ flow }) => joinUnit(formatNumber(flow.neutral_share, "%", { figures: 4 }))],
  [convergence.efficiency, bare(({ flow }) => flow.span_efficiency)],
  ["C_lβ", bare(({ flow }) => flow.derivatives.roll_beta)],
  ["C_lp", bare(({ flow }) => flow.derivatives.roll_p)],
  ["C_nr", bare(({ flow }) => flow.derivatives.yaw_r)],
  ["C_mq", bare(({ flow }) => flow.derivatives.pitch_q)],
];

/** The section, whose heading has this id. */
export function convergenceTable(all: readonly Fineness[], document: Document, id: string): HTMLElement {
  const { title, intro, lattice, counts } = convergence;
  const lines = all.map((fineness) => ({ head: counts(fineness), entries: columns.map(([, of]) => of(fineness)) }));
  const heads = [lattice, ...columns.map(([head]) => head)];
  return make(
    document,
    "section",
    { "aria-labelledby": id },
    make(document, "h2", { id }, title),
    make(document, "p", { class: "intro" }, intro),
    makeTable(document, "lines figures", title, heads, lines),
  );
}
