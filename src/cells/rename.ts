/** Renames a cell, and with it every formula, note, view, question, trial and expectation that names it. */

import { type Cell, isNamed, type Notebook } from "./cell.ts";
import { parser } from "./formula.grammar";
import { messages } from "./messages.ts";
import { isName, readSignature, reservedAs } from "./names.ts";
import { segments } from "./path.ts";

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
  const change: Change = { from: old.name, to: name };
  return {
    ...notebook,
    cells: named.map((each) => inCell(each, change)),
    trials: notebook.trials.map((trial) => inTrial(trial, change)),
    ...(notebook.expect && { expect: mapKeys(notebook.expect, (key) => inFormula(key, change)) }),
  };
}

interface Change {
  readonly from: string;
  readonly to: string;
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

function inCell(cell: Cell, change: Change): Cell {
  switch (cell.kind) {
    case "given":
    case "check":
      return replaced(cell, { formula: inFormula(cell.formula, change) });
    case "derived": {
      if (readSignature(cell.name).parameters?.includes(change.from)) return cell;
      return replaced(cell, { formula: inFormula(cell.formula, change) });
    }
    case "table": {
      const rows = cell.rows.map((row) =>
        sameItems(
          row,
          row.map((entry, index) => (cell.columns[index]?.text ? entry : inFormula(entry, change))),
        ),
      );
      return replaced(cell, { rows: sameItems(cell.rows, rows) });
    }
    case "note":
      return replaced(cell, { text: inProse(cell.text, change) });
    case "drawing":
      return replaced(cell, { of: inFormula(cell.of, change) });
    case "question":
      return replaced(cell, { about: inFormula(cell.about, change) });
    case "chart": {
      const { sweep, x, y } = cell;
      return replaced(cell, {
        ...(sweep !== undefined && { sweep: inFormula(sweep, change) }),
        ...(x !== undefined && { x: inFormula(x, change) }),
        ...(y !== undefined && {
          y: sameItems(
            y,
            y.map((each) => inFormula(each, change)),
          ),
        }),
      });
    }
    case "decision":
      return cell;
  }
}

const inTrial = <T extends Notebook["trials"][number]>(trial: T, change: Change): T => ({
  ...trial,
  set: Object.fromEntries(
    Object.entries(trial.set).map(([key, formula]) => [inFormula(key, change), inFormula(formula, change)]),
  ),
});

/** Every name in a formula, also in one with faults: fields and argument names are no names of cells. */
function inFormula(text: string, { from, to }: Change): string {
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

function inProse(text: string, change: Change): string {
  let out = "";
  for (const segment of segments(text)) {
    out += segment.live ? `{${inFormula(segment.text, change)}}` : segment.source;
  }
  return out;
}

/** The cell with new content, or the very same where nothing in it is new. */
function replaced<C extends Cell>(cell: C, patch: Partial<C>): C {
  const same = (Object.keys(patch) as (keyof C)[]).every((key) => patch[key] === cell[key]);
  return same ? cell : { ...cell, ...patch };
}

const sameItems = <T>(before: readonly T[], after: readonly T[]): readonly T[] =>
  after.every((item, index) => item === before[index]) ? before : after;

const mapKeys = <T>(from: Readonly<Record<string, T>>, key: (key: string) => string): Record<string, T> =>
  Object.fromEntries(Object.entries(from).map(([each, value]) => [key(each), value]));
