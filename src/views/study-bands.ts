/** How far the results of a study are known, by what the givens state: a study of its own beside it. */
import type { Outcome, Program, StudyCell } from "../cells/index.ts";

/** Sorts of study in whose charts results are compared. */
const comparing: ReadonlySet<Outcome["study"]> = new Set(["sweep", "map", "best"]);

/** The study that tells it; null where nothing is compared, or no given states its ±. */
export function bandStudy(program: Program, id: string): { readonly study: StudyCell } | null {
  const cell = program.byId.get(id)?.cell;
  if (cell?.kind !== "study" || !comparing.has(cell.study)) return null;
  const inputs = program.steps.flatMap(({ plusMinus, name }) => (plusMinus && name ? [{ input: name }] : []));
  if (inputs.length === 0) return null;
  const { kind, name, results } = cell;
  return { study: { id, kind, name, study: "sensitivity", inputs, results, checks: [] } };
}

/** Under what it is looked at. */
export const bandStudyId = (id: string): string => `${id} band`;
