/** Renames a column of a table, and with it every plain use of it: `panels.break`, `panels.break[2]`, a trial's key. */
import { isNamed, type Notebook } from "./cell.ts";
import { parser } from "./formula.grammar";
import { messages } from "./messages.ts";
import { readSignature } from "./names.ts";
import { cellById, editColumn } from "./notebook.ts";
import { rewriteNotebook } from "./rewrite.ts";

/**
 * The notebook with a column called `name`; columns count from 0. What takes the table as a whole, such as `wing(panels)`,
 * finds the column under its new name only. Throws an Error with the reason where the name cannot be a field, or is
 * another column's.
 */
export function renameColumn(notebook: Notebook, id: string, column: number, name: string): Notebook {
  const table = cellById(notebook, id);
  if (table.kind !== "table") throw new Error(`got a ${table.kind}, expected a table`);
  const old = table.columns[column]?.name;
  if (old === undefined) throw new Error(`got column ${column}, expected one of 0 to ${table.columns.length - 1}`);
  if (name === old) return notebook;
  if (!/^[A-Za-z_]\w*$/.test(name)) throw new Error(messages.notAName(name));
  if (table.columns.some((each) => each.name === name)) throw new Error(messages.columnTaken(name));
  const renamed = editColumn(notebook, id, column, { name });
  const alone = table.columns.filter((each) => each.name === old).length === 1;
  const owners = notebook.cells.filter((each) => isNamed(each) && readSignature(each.name).name === table.name);
  // Where two tables, or two columns, share the name it is not known which of them is meant.
  if (!alone || owners.length > 1) return renamed;
  return rewriteNotebook(renamed, (text) => inFormula(text, table.name, old, name), table.name);
}

/** Every `table.from` and, in a trial's key, `table[2].from`. */
function inFormula(text: string, table: string, from: string, to: string): string {
  if (!text.includes(from) || !text.includes(table)) return text;
  let out = "";
  let done = 0;
  parser.parse(text).iterate({
    enter({ name, node }) {
      if (name !== "FieldName" || text.slice(node.from, node.to) !== from) return;
      let of = node.parent?.firstChild ?? null;
      if (of?.name === "Element") of = of.firstChild;
      if (of?.name !== "Name" || text.slice(of.from, of.to) !== table) return;
      out += text.slice(done, node.from) + to;
      done = node.to;
    },
  });
  return out + text.slice(done);
}
