/** The results of a notebook as plain data, for the command line: the form that `--json` prints. */
import type { Shape } from "../library/spec.ts";
import type { Notebook } from "./cell.ts";
import type { CellError } from "./errors.ts";
import { dimensionText, fieldOf } from "./shapes.ts";
import type { Program, Step } from "./step.ts";
import type { RecordValue, Result, Value } from "./value.ts";

export interface CellReport {
  readonly kind: string;
  /** In SI: a number, a text, a boolean, a list of bare elements, or an object of fields; null with an error. */
  readonly value: unknown;
  /** The SI unit, or text, boolean, record; null where there is no value. */
  readonly dimension: string | null;
  /** What the screen shows. */
  readonly text: string;
  readonly error: CellError | null;
  /** Of a check: how far the smaller side is from the limit, as a share of the limit. */
  readonly margin?: number | null;
}

export interface Report {
  readonly title: string;
  readonly cells: Readonly<Record<string, CellReport>>;
  readonly checks: { readonly held: number; readonly failed: number; readonly unknown: number };
  /** Unnamed cells with an error, by id. */
  readonly others: Readonly<Record<string, CellReport>>;
}

/** How a value is told as text. */
export type Tell = (value: Value, shape: Shape, unit: string | undefined, fraction: number | undefined) => string;

/** Reports every cell, in the notebook's order. */
export function reportOf(
  notebook: Notebook,
  program: Program,
  results: ReadonlyMap<string, Result>,
  tell: Tell,
): Report {
  const named: [string, CellReport][] = [];
  const others: [string, CellReport][] = [];
  const checks = { held: 0, failed: 0, unknown: 0 };
  for (const { id } of notebook.cells) {
    const step = program.byId.get(id);
    const result = results.get(id);
    if (!step || !result) continue;
    const report = cellReport(step, result, tell);
    if (step.name) named.push([step.name, report]);
    else if (report.error) others.push([id, report]);
    if (step.cell.kind === "check") checks[!result.ok ? "unknown" : result.value === true ? "held" : "failed"]++;
  }
  return { title: notebook.title, cells: Object.fromEntries(named), checks, others: Object.fromEntries(others) };
}

function cellReport(step: Step, result: Result, tell: Tell): CellReport {
  const { cell } = step;
  const { kind } = cell;
  const margin = kind === "check" ? { margin: result.ok ? (result.margin?.share ?? null) : null } : {};
  if (!result.ok) {
    return { kind, value: null, dimension: null, text: result.error.message, error: result.error, ...margin };
  }
  if (cell.kind === "study") return { kind, value: null, dimension: null, text: cell.study, error: null };
  if (step.definition) {
    const text = `${step.name}(${step.definition.parameters.join(", ")})`;
    return { kind, value: null, dimension: null, text, error: null };
  }
  const { value, shape } = result;
  const text = tell(value, shape, undefined, "fraction" in cell ? cell.fraction : undefined);
  return { kind, value: plain(value, shape), dimension: dimensionText(shape), text, error: null, ...margin };
}

/** A value as plain data: records become objects of fields, each again with its dimension. */
function plain(value: Value, shape: Shape): unknown {
  if (shape.kind === "list") return (value as readonly Value[]).map((each) => plain(each, shape.of));
  if (shape.kind !== "record") return value;
  return Object.fromEntries(
    Object.keys(shape.fields).flatMap((name) => {
      const field = fieldOf(shape, name);
      const inner = (value as RecordValue)[name];
      if (!field || inner === undefined) return [];
      return [[name, { value: plain(inner, field), dimension: dimensionText(field) }]];
    }),
  );
}
