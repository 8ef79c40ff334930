import type { Notebook, StudyCell } from "../../../src/cells/cell.ts";
import { type AnyStudy, type Outcome, prepareStudy } from "../../../src/cells/studies/prepare.ts";
import { rowsOf } from "../../../src/cells/studies/work.ts";
import { functions } from "../../../src/library/index.ts";
import { cellsOf } from "../notebook-text.ts";

export type StudyFields = Omit<StudyCell, "id" | "kind" | "name">;

/** A notebook written short (see cellsOf) with a study in it, named what_if. */
export function notebookWith(text: string, fields: StudyFields, trials: Notebook["trials"] = []): Notebook {
  return { title: "", trials, cells: [...cellsOf(text), { id: "s", kind: "study", name: "what_if", ...fields }] };
}

export const prepared = (notebook: Notebook): AnyStudy =>
  prepareStudy(notebook, notebook.cells.at(-1) as StudyCell, functions);

/** What a study of a design comes to, computed at once. */
export function outcome<S extends Outcome["study"]>(
  text: string,
  fields: StudyFields & { readonly study: S },
  trials: Notebook["trials"] = [],
): Extract<Outcome, { readonly study: S }> {
  const study = prepared(notebookWith(text, fields, trials));
  return study.conclude(rowsOf(study)) as Extract<Outcome, { readonly study: S }>;
}

/** What keeps a study from being run; null where nothing does. */
export function refusal(text: string, fields: StudyFields, trials: Notebook["trials"] = []): string | null {
  try {
    prepared(notebookWith(text, fields, trials));
    return null;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return error.message;
  }
}
