/** A small design for the examples of study charts: the wing of Plover, and what a study of it comes to. */
import {
  type Notebook,
  type Outcome,
  prepareStudy,
  readNotebook,
  rowsOf,
  type StudyCell,
} from "../../../cells/index.ts";
import { functions } from "../../../library/index.ts";

/** What a study asks, without what makes it a cell. */
export type Asked<S extends Outcome["study"]> = Omit<StudyCell, "id" | "kind" | "name" | "study"> & {
  readonly study: S;
};

/** What a study of the example's design comes to; with a share, as if only that part of it were computed yet. */
export function exampleOutcome<S extends Outcome["study"]>(
  asked: Asked<S>,
  share = 1,
): Extract<Outcome, { readonly study: S }> {
  const cell: StudyCell = { id: "s", kind: "study", name: "what_if", ...asked };
  const study = prepareStudy(design, cell, functions);
  const rows = rowsOf(study);
  return study.conclude(rows.slice(0, Math.round(share * rows.length))) as Extract<Outcome, { readonly study: S }>;
}

const wing = {
  columns: [
    { name: "length", unit: "mm" },
    { name: "root_chord", unit: "mm" },
    { name: "tip_chord", unit: "mm" },
    { name: "sweep", unit: "mm" },
    { name: "break", unit: "deg" },
    { name: "washout", unit: "deg" },
    { name: "thickness", unit: "mm" },
  ],
  rows: [
    ["105", "74", "70", "0", "root_break", "0", "3.2"],
    ["80", "70", "60", "4", "middle_break", "0.5", "2.4"],
    ["60", "60", "40", "12", "tip_break", "1", "2"],
  ],
};

const given = (name: string, formula: string, range: readonly string[], plusMinus: string) => ({
  id: name,
  kind: "given",
  name,
  formula,
  range,
  plus_minus: plusMinus,
});
const derived = (name: string, formula: string, unit?: string) => ({
  id: name,
  kind: "derived",
  name,
  formula,
  ...(unit && { unit }),
});
const check = (name: string, formula: string) => ({ id: name, kind: "check", name, formula });

const design: Notebook = readNotebook(
  JSON.stringify({
    format: "spanwise-notebook",
    version: 1,
    title: "the wing of Plover",
    cells: [
      given("root_break", "3 deg", ["0 deg", "8 deg"], "0.5 deg"),
      given("middle_break", "7 deg", ["0 deg", "14 deg"], "0.5 deg"),
      given("tip_break", "11 deg", ["0 deg", "20 deg"], "1 deg"),
      { id: "height", kind: "given", name: "jig_height", formula: "30 mm" },
      { id: "panels", kind: "table", name: "panels", ...wing },
      derived("main_wing", "wing(panels)"),
      derived("eda", "equivalent_dihedral(main_wing)", "deg"),
      derived("loss", "tilt_loss(main_wing)", "%"),
      derived("tip_height", "main_wing.tip_height", "mm"),
      derived("foot_gap", "10 mm * sqrt((jig_height - tip_height + 18 mm) / 10 mm)", "mm"),
      check("enough_dihedral", "eda > 9 deg"),
      check("lift_kept", "loss < 4%"),
      check("either", "not (tip_break > 8 deg and middle_break < 3 deg)"),
    ],
    trials: [
      { name: "flat middle", set: { middle_break: "3 deg" } },
      { name: "long tips", set: { "panels[3].length": "85 mm" } },
    ],
  }),
);
