/** What a cell says before anything is known of the others: its name, its formulas as trees, the names they use. */
import type { Cell, DerivedCell } from "./cell.ts";
import { isNamed } from "./cell.ts";
import { chartPaths, listedPaths } from "./chart-paths.ts";
import { FormulaError } from "./errors.ts";
import { limits, parseFormula } from "./formula-parse.ts";
import { nodes, type Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { constants, isName, readSignature, reservedAs, type Signature } from "./names.ts";
import { parsePath, placeholders } from "./path.ts";
import { readTarget, targetsOf } from "./target.ts";

/** One formula of a cell, read: its tree or its fault. */
export interface Part {
  readonly text: string;
  readonly tree: Tree | FormulaError;
  /** The table entry it stands in; row counts from 0. */
  readonly place?: { readonly row: number; readonly column: number };
}

export interface Reading {
  readonly cell: Cell;
  readonly signature: Signature | null;
  /** A fault of the cell's name or frame that leaves nothing to compute. */
  readonly fault: FormulaError | null;
  readonly parts: readonly Part[];
  /** Names of other cells that the parts use, in order of appearance. */
  readonly names: readonly string[];
}

export function readCell(cell: Cell, functions: { has(name: string): boolean }): Reading {
  const signature = isNamed(cell) ? readSignature(cell.name) : null;
  const fault = signature && nameFault(signature, functions, cell.kind === "derived");
  const parts = fault ? [] : partsOf(cell);
  return { cell, signature, fault, parts, names: namesIn(parts, signature, functions) };
}

/** Reads a formula that stands in no cell, as that of a derived cell without a name. */
export function readFormula(cell: DerivedCell, functions: { has(name: string): boolean }): Reading {
  const parts = [part(cell.formula, parseFormula)];
  return { cell, signature: null, fault: null, parts, names: namesIn(parts, null, functions) };
}

function nameFault(
  { name, parameters }: Signature,
  functions: { has(name: string): boolean },
  mayHaveParameters: boolean,
): FormulaError | null {
  if (mayHaveParameters && parameters?.includes("")) {
    return new FormulaError("syntax", messages.noParameter(name), [0, 0]);
  }
  for (const word of [name, ...((mayHaveParameters && parameters) || [])]) {
    if (word === "") return new FormulaError("syntax", messages.noName, [0, 0]);
    if (!isName(word)) return new FormulaError("syntax", messages.notAName(word), [0, 0]);
    const reserved = reservedAs(word, functions);
    if (reserved) return new FormulaError("reserved_name", messages.reserved(word, reserved), [0, 0]);
  }
  if (parameters && !mayHaveParameters) return new FormulaError("syntax", messages.onlyDerivedTakesParameters, [0, 0]);
  const twice = parameters?.find((parameter, index) => parameters.indexOf(parameter) !== index);
  return twice ? new FormulaError("duplicate_name", messages.duplicateParameter(twice), [0, 0]) : null;
}

function partsOf(cell: Cell): Part[] {
  switch (cell.kind) {
    case "given":
    case "derived":
    case "check":
      return [part(cell.formula, parseFormula)];
    case "table":
      if (cell.rows.length > limits.list) return [];
      return cell.rows.flatMap((row, r) =>
        cell.columns.flatMap((column, c) => {
          const entry = row[c] ?? "";
          if (column.text) return [];
          return [{ ...part(entry, (text) => parseEntry(text, r, column.name)), place: { row: r, column: c } }];
        }),
      );
    case "note":
      return placeholders(cell.text).map((text) => part(text, parsePath));
    case "drawing":
    case "sheet":
      return [part(cell.of, parsePath)];
    case "chart":
      return listedPaths(chartPaths(cell)).map((text) => part(text, parsePath));
    case "question":
      return [part(cell.about, parsePath)];
    case "study":
      return [
        ...targetsOf(cell).map((text) => part(text, (target) => parsePath(readTarget(target).name))),
        ...cell.results.map((text) => part(text, parseFormula)),
        ...(cell.checks ?? []).map((text) => part(text, parsePath)),
      ];
    case "decision":
      return [];
  }
}

function parseEntry(text: string, row: number, column: string): Tree {
  if (text.trim() === "") throw new FormulaError("bad_entry", messages.emptyEntry(row + 1, column), [0, text.length]);
  return parseFormula(text);
}

function part(text: string, parse: (text: string) => Tree): Part {
  try {
    return { text, tree: parse(text) };
  } catch (error) {
    if (error instanceof FormulaError) return { text, tree: error };
    throw error;
  }
}

function namesIn(
  parts: readonly Part[],
  signature: Signature | null,
  functions: { has(name: string): boolean },
): string[] {
  const found = new Set<string>();
  for (const { tree } of parts) {
    if (tree instanceof FormulaError) continue;
    for (const node of nodes(tree)) {
      if (node.type === "name" && !constants.has(node.name)) found.add(node.name);
      if (node.type === "call" && !functions.has(node.name)) found.add(node.name);
    }
  }
  for (const parameter of signature?.parameters ?? []) found.delete(parameter);
  return [...found];
}
