/** Cells that a person puts in: each kind with content that works at once and says how it is meant. */

import type { Cell, Kind, Notebook } from "./cell.ts";
import { isNamed } from "./cell.ts";
import { readSignature, reservedAs } from "./names.ts";
import { cellById, freshId, insertCell } from "./notebook.ts";
import type { Program, Step } from "./step.ts";

type Functions = { has(name: string): boolean };

/** The name itself where it is free, else with the lowest number from 2 that makes it so: half, half_2, half_3. */
export function unusedName(notebook: Notebook, name: string, functions: Functions): string {
  const taken = new Set<string>();
  for (const cell of notebook.cells) {
    if (!isNamed(cell)) continue;
    const signature = readSignature(cell.name);
    taken.add(signature.name);
    for (const parameter of signature.parameters ?? []) taken.add(parameter);
  }
  const isFree = (each: string): boolean => !taken.has(each) && reservedAs(each, functions) === null;
  if (isFree(name)) return name;
  const stem = name.replace(/_\d+$/, "");
  let number = 2;
  while (!isFree(`${stem}_${number}`)) number++;
  return `${stem}_${number}`;
}

/**
 * A new cell of a kind, to stand at `index`: its name unused, its id new. What it is about, where its kind needs that, is
 * the nearest fitting cell above, else the first below; where none fits it is left empty, and the cell says what it needs. A
 * chart right below a result that has a chart of its own is that one.
 */
export function newCell(notebook: Notebook, kind: Kind, index: number, program: Program): Cell {
  const id = freshId(notebook);
  const name = (base: string): string => unusedName(notebook, base, program.functions);
  const near = nearest(notebook, index, program);
  switch (kind) {
    case "given":
      return { id, kind, name: name("new_value"), formula: "1 mm" };
    case "derived":
      return { id, kind, name: name("new_result"), formula: doubled(near(isNumber)) };
    case "table":
      return { id, kind, name: name("new_table"), columns: [{ name: "length", unit: "mm" }], rows: [["1"]] };
    case "note":
      return { id, kind, text: "" };
    case "check":
      return { id, kind, name: name("new_check"), formula: positive(near(isNumber)) };
    case "decision":
      return { id, kind, question: "", chosen: "", why: "" };
    case "question":
      return { id, kind, about: (near(isResult) ?? near(isAsked))?.name ?? "", prompt: "", answer: null, because: "" };
    case "drawing":
      return { id, kind, view: "front", of: (near(isMade("wing")) ?? near(isRecord))?.name ?? "" };
    case "sheet":
      return { id, kind, of: (near(hasPattern) ?? near(isRecord))?.name ?? "" };
    case "chart": {
      const result = program.byId.get(notebook.cells[index - 1]?.id ?? "");
      const view = result?.shape?.kind === "record" ? chartOf[result.shape.type ?? ""] : undefined;
      if (view !== undefined && result?.name) return { id, kind, view, of: result.name };
      const sweep = near((step) => step.range !== null)?.name ?? "";
      const y = near((step) => isResult(step) && step.name !== sweep)?.name ?? "";
      return { id, kind, view: "trade_off", sweep, x: sweep, y: [y] };
    }
    case "study": {
      const input = near((step) => step.range !== null)?.name;
      const result = near((step) => isResult(step) && step.name !== input)?.name;
      const inputs = input ? [{ input }] : [];
      return { id, kind, name: name("new_study"), study: "sweep", inputs, results: result ? [result] : [] };
    }
  }
}

/** The cell once more, below itself; its name made unused. Of a sheet the copy has not been printed. */
export function duplicateCell(notebook: Notebook, id: string, functions: Functions): Notebook {
  const cell = cellById(notebook, id);
  const { printed: _, ...kept } = cell as Cell & { readonly printed?: unknown };
  const copy = { ...kept, id: freshId(notebook) } as Cell;
  const index = notebook.cells.indexOf(cell) + 1;
  if (!isNamed(copy)) return insertCell(notebook, index, copy);
  const { name, parameters } = readSignature(copy.name);
  const unused = unusedName(notebook, name, functions);
  return insertCell(notebook, index, { ...copy, name: parameters ? `${unused}(${parameters.join(", ")})` : unused });
}

/** Finds the nearest cell above a place that fits, else the first below. */
function nearest(notebook: Notebook, index: number, program: Program) {
  return (fits: (step: Step) => boolean): Step | undefined => {
    const steps = notebook.cells.map(({ id }) => program.byId.get(id));
    const inOrder = [...steps.slice(0, index).reverse(), ...steps.slice(index)];
    return inOrder.find((step) => step !== undefined && step.name !== null && step.error === null && fits(step));
  };
}

/** The chart that shows a result of a type, offered right below it. */
const chartOf: Readonly<Record<string, string | undefined>> = {
  flow: "span_loading",
  sink_polar: "sink_polar",
  modes: "modes",
  longitudinal_modes: "modes",
  lateral_modes: "modes",
  recovery: "flight_history",
};

const isNumber = ({ shape }: Step): boolean => shape?.kind === "number";
const isResult = (step: Step): boolean => step.cell.kind === "derived" && isNumber(step);
const isAsked = ({ cell, shape }: Step): boolean => cell.kind === "derived" && shape !== null;
const isRecord = ({ cell, shape }: Step): boolean => cell.kind !== "table" && shape?.kind === "record";
const isMade =
  (type: string) =>
  ({ shape }: Step): boolean =>
    shape?.kind === "record" && shape.type === type;

/** A pattern itself, or what has one in its field of that name. */
const hasPattern = ({ shape }: Step): boolean =>
  shape?.kind === "record" && (shape.type === "pattern" || "pattern" in shape.fields);

const doubled = (step: Step | undefined): string => (step?.name ? `2 * ${step.name}` : "1");

function positive(step: Step | undefined): string {
  if (!step?.name || step.shape?.kind !== "number") return "2 > 1";
  const { unit } = step.shape;
  return `${step.name} > 0${unit === "1" ? "" : unit === "%" ? "%" : ` ${unit}`}`;
}
