import { compile, type Notebook } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { Fault } from "./entering.ts";
import { nameCodes } from "./formula-line.ts";
import { syntaxFault } from "./syntax-fault.ts";

/**
 * Why a text that is being typed is held back in the editor: it cannot be read, or its own cell would have an error
 * before anything is computed. Null where it can take effect at once. So a half-typed formula disturbs no other cell.
 * What is held back is kept all the same.
 */
export function heldBack(
  desk: Desk,
  cell: string,
  text: string,
  edit: (notebook: Notebook) => Notebook,
  place?: { readonly row: number; readonly column: string },
): Fault | null {
  const fault = faultOf(desk, cell, text, edit, place);
  desk.drafts.hold(fault && edit);
  return fault;
}

function faultOf(
  { session }: Desk,
  cell: string,
  text: string,
  edit: (notebook: Notebook) => Notebook,
  place?: { readonly row: number; readonly column: string },
): Fault | null {
  const fault = syntaxFault(text);
  if (fault) return fault;
  const error = compile(edit(session.notebook).cells, session.functions, session.program).byId.get(cell)?.error;
  if (!error || error.code === "waits" || nameCodes.has(error.code)) return null;
  if (place && (error.place?.row !== place.row || error.place.column !== place.column)) return null;
  return { at: error.at, message: error.message, waits: false };
}
