/** Names of cells that are offered where one is to be chosen. */
import { entryTarget, type Step } from "../cells/index.ts";
import type { Shape } from "../library/index.ts";
import type { Desk } from "./desk.ts";

/** Names of the cells that fit, in the order of the notebook. */
export function namesOf({ session }: Desk, fits: (step: Step) => boolean): string[] {
  const { notebook, program } = session;
  return notebook.cells.flatMap(({ id }) => {
    const step = program.byId.get(id);
    return step?.name && fits(step) ? [step.name] : [];
  });
}

/** As namesOf, each followed by those of its fields that fit. */
export function pathsOf(desk: Desk, fits: (step: Step) => boolean, fieldFits: (shape: Shape) => boolean): string[] {
  const { program } = desk.session;
  return namesOf(desk, fits).flatMap((name) => {
    const shape = program.byName.get(name)?.shape;
    const parts = shape?.kind === "record" ? Object.entries(shape.fields) : [];
    return [name, ...parts.filter(([, part]) => fieldFits(part)).map(([part]) => `${name}.${part}`)];
  });
}

/** A cell that gives a record; a table, which is one too, is not meant. */
export const isRecord = ({ cell, shape }: Step): boolean => cell.kind !== "table" && shape?.kind === "record";
/** A cell that gives a number. */
export const isNumber = ({ cell, shape }: Step): boolean => cell.kind !== "check" && shape?.kind === "number";
/** A given with a range. */
export const hasRange = ({ range }: Step): boolean => range !== null;

/** Entries of tables that are numbers, as a study or a trial names them: `panels[2].break`. */
export const entriesOf = ({ session }: Desk): string[] =>
  session.notebook.cells.flatMap((cell) =>
    cell.kind !== "table"
      ? []
      : cell.columns.flatMap(({ name, text }) =>
          text ? [] : cell.rows.map((_, row) => entryTarget(cell.name, row + 1, name)),
        ),
  );
