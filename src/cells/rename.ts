/** Renames a cell, and with it every formula, note, view, question, trial and expectation that names it. */

import { type Cell, isNamed, type Notebook } from "./cell.ts";
import { parser } from "./formula.grammar";
import { messages } from "./messages.ts";
import { isName, readSignature, reservedAs } from "./names.ts";
import { rewriteNotebook } from "./rewrite.ts";

/**
 * The notebook with the cell of that id called `name`; a function cell keeps its parameters. Throws an Error with the
 * reason where the name is none, is reserved or taken, or would be caught by a parameter of a function cell.
 */
export function rename(
  notebook: Notebook,
  id: string,
  name: string,
  functions: { has(name: string): boolean },
): Notebook {
  const cell = notebook.cells.find((each) => each.id === id);
  if (!cell || !isNamed(cell)) throw new Error(`got the id "${id}", expected that of a cell with a name`);
  const old = readSignature(cell.name);
  if (name === old.name) return notebook;
  refuseName(name, notebook.cells, functions);
  const alone =
    notebook.cells.filter((each) => isNamed(each) && readSignature(each.name).name === old.name).length === 1;
  const written = old.parameters ? `${name}(${old.parameters.join(", ")})` : name;
  const named = notebook.cells.map((each) => (each.id === id ? { ...cell, name: written } : each));
  // Where two cells share the old name it is not known which of them a formula means.
  if (!alone || !isName(old.name)) return { ...notebook, cells: named };
  return rewriteNotebook({ ...notebook, cells: named }, (text) => inFormula(text, old.name, name), old.name);
}

function refuseName(name: string, cells: readonly Cell[], functions: { has(name: string): boolean }): void {
  if (!isName(name)) throw new Error(name === "" ? messages.noName : messages.notAName(name));
  const reserved = reservedAs(name, functions);
  if (reserved) throw new Error(messages.reserved(name, reserved));
  for (const cell of cells) {
    if (!isNamed(cell)) continue;
    const signature = readSignature(cell.name);
    if (signature.name === name) throw new Error(messages.nameTaken(name));
    if (signature.parameters?.includes(name)) throw new Error(messages.nameOfParameter(name, signature.name));
  }
}

/** Every name in a formula, also in one with faults: fields and argument names are no names of cells. */
function inFormula(text: string, from: string, to: string): string {
  if (!text.includes(from)) return text;
  let out = "";
  let done = 0;
  parser.parse(text).iterate({
    enter(node) {
      // A word that a faulty formula has no place for is an error to the parser, and a name all the same.
      if ((node.name !== "Name" && !node.type.isError) || text.slice(node.from, node.to) !== from) return;
      out += text.slice(done, node.from) + to;
      done = node.to;
    },
  });
  return out + text.slice(done);
}
