/** Rows and columns of a table put in, taken out and moved so that trials and studies go on naming the same entries. */
import type { Notebook, StudyCell } from "./cell.ts";
import { cellById, insertRow, moveRow, removeColumn, removeRow } from "./notebook.ts";
import { rewriteTrial } from "./rewrite.ts";
import { entryTarget, readTarget } from "./target.ts";

/** A row put in so that it stands at `index`, counted from 0; trials name the rows below it one further on. */
export function insertRowInTrials(
  notebook: Notebook,
  id: string,
  index: number,
  entries?: readonly string[],
): Notebook {
  return withRows(insertRow(notebook, id, index, entries), id, (row) => (row >= index ? row + 1 : row));
}

/** A row taken out, and with it what trials set in it. */
export function removeRowInTrials(notebook: Notebook, id: string, index: number): Notebook {
  return withRows(removeRow(notebook, id, index), id, (row) => (row === index ? null : row > index ? row - 1 : row));
}

/** A row moved from one place to another; trials follow it. */
export function moveRowInTrials(notebook: Notebook, id: string, from: number, to: number): Notebook {
  return withRows(moveRow(notebook, id, from, to), id, (row) => {
    if (row === from) return to;
    if (row > from && row <= to) return row - 1;
    return row < from && row >= to ? row + 1 : row;
  });
}

/** A column taken out, and with it what trials set in it. */
export function removeColumnInTrials(notebook: Notebook, id: string, index: number): Notebook {
  const table = cellById(notebook, id);
  const name = table.kind === "table" ? table.columns[index]?.name : undefined;
  return withKeys(removeColumn(notebook, id, index), id, (row, column) => (column === name ? null : row));
}

const withRows = (notebook: Notebook, id: string, rowOf: (row: number) => number | null): Notebook =>
  withKeys(notebook, id, rowOf);

/** The trials with the rows that they name taken anew; null takes a key away. */
function withKeys(notebook: Notebook, id: string, rowOf: (row: number, column: string) => number | null): Notebook {
  const table = cellById(notebook, id);
  if (table.kind !== "table") throw new Error(`got a ${table.kind}, expected a table`);
  const gone = "";
  const key = (target: string): string => {
    const { name, entry } = readTarget(target);
    if (name !== table.name || !entry) return target;
    const row = rowOf(entry.row - 1, entry.column);
    if (row === null) return gone;
    return row + 1 === entry.row ? target : entryTarget(name, row + 1, entry.column);
  };
  const trials = notebook.trials.map((trial) => {
    const next = rewriteTrial(trial, key, (formula) => formula);
    if (!(gone in next.set) || gone in trial.set) return next;
    return { ...next, set: Object.fromEntries(Object.entries(next.set).filter(([target]) => target !== gone)) };
  });
  const cells = notebook.cells.map((cell) => (cell.kind === "study" ? withTargets(cell, key, gone) : cell));
  const same =
    trials.every((trial, index) => trial === notebook.trials[index]) &&
    cells.every((cell, index) => cell === notebook.cells[index]);
  return same ? notebook : { ...notebook, cells, trials };
}

/** A study with the entries that it sets named anew; an input whose entry is gone goes too, and so does a pair. */
function withTargets(study: StudyCell, key: (target: string) => string, gone: string): StudyCell {
  const inputs = study.inputs.flatMap((each) => {
    const { pair, ...own } = each;
    const [input, other] = [key(each.input), pair === undefined ? undefined : key(pair)];
    if (input === gone) return [];
    if (input === each.input && other === pair) return [each];
    return [{ ...own, input, ...(other !== undefined && other !== gone && { pair: other }) }];
  });
  const same = inputs.length === study.inputs.length && inputs.every((each, index) => each === study.inputs[index]);
  return same ? study : { ...study, inputs };
}
