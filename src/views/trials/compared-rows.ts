/** Which rows a comparison of trials has, and how each is told: on the screen, and as text to be taken elsewhere. */
import { tsvFormatRows } from "d3";
import {
  type Compared,
  type ComparedRow,
  type Comparison,
  checkedNumbers,
  type Notebook,
  type Program,
} from "../../cells/index.ts";
import { unitOf } from "../../library/at-first.ts";
import { gapText, oneLine, type Telling, unitFor } from "../value-text.ts";
import { words } from "./words.ts";

/** A row before it is compared. */
export interface RowChoice {
  /** What it is called: a name, or an entry as a trial writes it. */
  readonly label: string;
  /** The formula that is compared. */
  readonly text: string;
  /** It is set by trials, not computed: a change of it is meant, however small. */
  readonly isSet: boolean;
}

/** What trials set, as rows. */
export function setRows({ trials }: Pick<Notebook, "trials">): RowChoice[] {
  const targets = [...new Set(trials.flatMap(({ set }) => Object.keys(set)))];
  return targets.map((label) => {
    const entry = /^\s*(\w+)\s*\[\s*(\d+)\s*\]\s*\.\s*(\w+)\s*$/.exec(label);
    return { label, text: entry ? `${entry[1]}.${entry[3]}[${entry[2]}]` : label.trim(), isSet: true };
  });
}

/** The rows at first: what trials set, and the numbers that the checks look at. */
export function firstRows(notebook: Pick<Notebook, "trials">, program: Program): RowChoice[] {
  const set = setRows(notebook);
  const taken = new Set(set.map(({ text }) => text));
  const checked = checkedNumbers(program).filter((text) => !taken.has(text) && isNumberRow(program, text));
  return [...set, ...checked.map((text) => ({ label: text, text, isSet: false }))];
}

/** Names that can be added: every given and derived cell with a value that is told in a line, and is no row yet. */
export function offeredRows(program: Program, rows: readonly RowChoice[]): string[] {
  const taken = new Set(rows.map(({ text }) => text));
  return program.steps.flatMap(({ name, cell, shape, definition }) => {
    const isValue = (cell.kind === "given" || cell.kind === "derived") && shape !== null && definition === null;
    return isValue && name && !taken.has(name) ? [name] : [];
  });
}

/** What a cell says of how it is told. */
export function tellingOf(program: Program, text: string): Telling {
  const cell = program.byName.get(text.trim())?.cell;
  return cell?.kind === "given" || cell?.kind === "derived" ? cell : {};
}

/**
 * The comparison as tab-separated text: a line for what trials are called, then one a row with its unit. Numbers stand
 * bare, with a point and an ordinary minus, so that another program can reckon with them.
 */
export function comparisonText({ columns, rows }: Comparison, choices: readonly RowChoice[], program: Program): string {
  const head = ["", words.unit, ...columns.map(({ trial }) => trial ?? words.baseline)];
  const lines = rows.map((row, index) => {
    const label = row.kind === "check" ? row.text : (choices[index]?.label ?? row.text);
    const unit = unitOfRow(row, program);
    return [label, unit === "1" ? "" : unit, ...row.values.map((value) => plainText(row, value, unit))];
  });
  return tsvFormatRows([head, ...lines]);
}

function unitOfRow({ kind, values, text }: ComparedRow, program: Program): string {
  const known = values.find(({ result }) => result?.ok)?.result;
  return kind === "check" || !known?.ok || known.shape.kind !== "number"
    ? ""
    : (unitFor(known.shape, tellingOf(program, text)) ?? "");
}

function plainText({ kind, text }: ComparedRow, { result, isFailing }: Compared, unit: string): string {
  if (!result) return "";
  if (!result.ok) return words.noValue;
  if (kind === "check") {
    const gap = result.margin ? ` ${gapText(result.margin)}` : "";
    return isFailing
      ? `${words.fails}${gap && `${words.by}${gap}`}`
      : `${words.holds}${gap && `,${gap} ${words.toSpare}`}`;
  }
  if (typeof result.value !== "number" || unit === "")
    return oneLine(result, { unit: text === "" ? undefined : unit || undefined });
  const { factor, offset } = unitOf(unit);
  return String(Number(((result.value - offset) / factor).toPrecision(6)));
}

const isNumberRow = (program: Program, text: string): boolean => {
  const step = program.byName.get(text);
  return step === undefined || step.shape?.kind === "number";
};
