/** Walks over every formula and path of a notebook and puts another text in its place. */
import { type Cell, isNamed, type Notebook, type StudyInput, type Trial } from "./cell.ts";
import { readSignature } from "./names.ts";
import { segments } from "./path.ts";

/** What a text becomes; the very same where nothing in it is meant. */
export type Rewrite = (text: string) => string;

/**
 * The notebook with every formula, entry, brace, view, question, trial and expectation rewritten; cells in which nothing
 * changes are shared. Within a function cell that has `shadowed` as a parameter nothing is, since it means that one.
 */
export function rewriteNotebook(notebook: Notebook, rewrite: Rewrite, shadowed: string): Notebook {
  return {
    ...notebook,
    cells: notebook.cells.map((cell) => rewriteCell(cell, rewrite, shadowed)),
    trials: notebook.trials.map((trial) => rewriteTrial(trial, rewrite, rewrite)),
    ...(notebook.expect && { expect: mapKeys(notebook.expect, rewrite) }),
  };
}

/** A trial with its keys and its formulas rewritten, each in its own way. */
export function rewriteTrial(trial: Trial, key: Rewrite, formula: Rewrite): Trial {
  const before = Object.entries(trial.set);
  const after = before.map(([target, text]): [string, string] => [key(target), formula(text)]);
  const same = after.every(([target, text], index) => target === before[index]?.[0] && text === before[index]?.[1]);
  return same ? trial : { ...trial, set: Object.fromEntries(after) };
}

function rewriteCell(cell: Cell, rewrite: Rewrite, shadowed: string): Cell {
  switch (cell.kind) {
    case "given":
    case "check":
      return replaced(cell, { formula: rewrite(cell.formula) });
    case "derived": {
      if (isNamed(cell) && readSignature(cell.name).parameters?.includes(shadowed)) return cell;
      return replaced(cell, { formula: rewrite(cell.formula) });
    }
    case "table": {
      const rows = cell.rows.map((row) =>
        sameItems(
          row,
          row.map((entry, index) => (cell.columns[index]?.text ? entry : rewrite(entry))),
        ),
      );
      return replaced(cell, { rows: sameItems(cell.rows, rows) });
    }
    case "note":
      return replaced(cell, { text: inProse(cell.text, rewrite) });
    case "drawing":
    case "sheet":
      return replaced(cell, { of: rewrite(cell.of) });
    case "question":
      return replaced(cell, { about: rewrite(cell.about) });
    case "chart": {
      const { of, sweep, x, y, curves, band } = cell;
      return replaced(cell, {
        ...(of !== undefined && { of: rewrite(of) }),
        ...(sweep !== undefined && { sweep: rewrite(sweep) }),
        // Of a chart with curves these are fields.
        ...(x !== undefined && !curves && { x: rewrite(x) }),
        ...(y !== undefined && !curves && { y: sameItems(y, y.map(rewrite)) }),
        ...(curves !== undefined && { curves: sameItems(curves, curves.map(rewrite)) }),
        ...(band !== undefined && { band: rewrite(band) }),
      });
    }
    case "study": {
      const { inputs, results, checks } = cell;
      const input = (each: StudyInput): StudyInput =>
        replaced(each, {
          input: rewrite(each.input),
          ...(each.pair !== undefined && { pair: rewrite(each.pair) }),
        });
      return replaced(cell, {
        inputs: sameItems(inputs, inputs.map(input)),
        results: sameItems(results, results.map(rewrite)),
        ...(checks !== undefined && { checks: sameItems(checks, checks.map(rewrite)) }),
      });
    }
    case "decision":
      return cell;
  }
}

function inProse(text: string, rewrite: Rewrite): string {
  let out = "";
  for (const segment of segments(text)) out += segment.live ? `{${rewrite(segment.text)}}` : segment.source;
  return out;
}

/** The cell, or a part of it, with new content, or the very same where nothing in it is new. */
function replaced<C extends object>(cell: C, patch: Partial<C>): C {
  const same = (Object.keys(patch) as (keyof C)[]).every((key) => patch[key] === cell[key]);
  return same ? cell : { ...cell, ...patch };
}

const sameItems = <T>(before: readonly T[], after: readonly T[]): readonly T[] =>
  after.every((item, index) => item === before[index]) ? before : after;

const mapKeys = <T>(from: Readonly<Record<string, T>>, key: Rewrite): Record<string, T> =>
  Object.fromEntries(Object.entries(from).map(([each, value]) => [key(each), value]));
