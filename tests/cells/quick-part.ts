import type { Notebook } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { functions } from "../../src/library/index.ts";

/** A notebook without the cells that slow functions compute and those that need them: what is there in a moment. */
export function quickPart(notebook: Notebook): Notebook {
  const program = compile(notebook.cells, functions);
  const waits = new Set<string>();
  for (const { id, isSlow, inputs } of program.steps) {
    if (isSlow || inputs.some((input) => waits.has(input))) waits.add(id);
  }
  return { ...notebook, cells: notebook.cells.filter(({ id }) => !waits.has(id)) };
}
