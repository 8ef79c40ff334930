import type { Cell, Column } from "../../src/cells/cell.ts";
import type { CellError } from "../../src/cells/errors.ts";
import type { Program, Step } from "../../src/cells/step.ts";
import { told } from "../../src/cells/told.ts";
import type { RecordValue, Result, Value } from "../../src/cells/value.ts";
import type { Shape } from "../../src/library/spec.ts";

/**
 * Cells written short, one a line, the id of each its place from 1 on:
 * `eda [deg] = 2 * tip`, `length [in 1/64] = 3/8 in`, `given tip [deg] from 0 deg to 20 deg by 1 deg = 8 deg`,
 * `check enough = eda > 10 deg`, `note Span {span}.`, `drawing main_wing`, `question eda`, `chart sweep tip x loss y eda, b`,
 * `table panels | length mm | part text` with a line `| 110 | root` for each row.
 */
export function cellsOf(text: string): Cell[] {
  const cells: Cell[] = [];
  for (const line of text.split("\n")) {
    const last = cells.at(-1);
    if (line.startsWith("|") && last?.kind === "table") {
      cells[cells.length - 1] = {
        ...last,
        rows: [
          ...last.rows,
          line
            .slice(1)
            .split("|")
            .map((entry) => entry.trim()),
        ],
      };
    } else cells.push(cellOf(line, `${cells.length + 1}`));
  }
  return cells;
}

function cellOf(line: string, id: string): Cell {
  const [word = "", rest = ""] = cut(line, " ");
  switch (word) {
    case "note":
      return { id, kind: "note", text: rest };
    case "drawing":
      return { id, kind: "drawing", view: "front", of: rest };
    case "question":
      return { id, kind: "question", about: rest, prompt: "How much?", answer: null, because: "" };
    case "decision":
      return { id, kind: "decision", question: rest, chosen: "", why: "" };
    case "chart": {
      const match = /^(?:sweep (\S+) )?(?:x (\S+) ?)?(?:y (.+))?$/.exec(rest);
      const [, sweep, x, y] = match ?? [];
      const axes = { ...(sweep && { sweep }), ...(x && { x }), ...(y && { y: y.split(", ") }) };
      return { id, kind: "chart", view: "trade-off", ...axes };
    }
    case "table": {
      const [name = "", ...columns] = rest.split("|").map((each) => each.trim());
      return { id, kind: "table", name, columns: columns.map(columnOf), rows: [] };
    }
    case "given":
    case "check":
      return formulaCell(word, rest, id);
    default:
      return formulaCell("derived", line, id);
  }
}

function columnOf(text: string): Column {
  const [name = "", unit] = cut(text, " ");
  return unit === "text" ? { name, text: true } : unit ? { name, unit } : { name };
}

function formulaCell(kind: "given" | "derived" | "check", line: string, id: string): Cell {
  const [head = "", formula = ""] = cut(line, / ?= ?/);
  const match = /^(.*?)(?: \[(.*?)(?: 1\/(\d+))?\])?(?: from (.*?) to (.*?)(?: by (.*))?)?$/.exec(head);
  const [, name = "", unit, fraction, from, to, by] = match ?? [];
  const range = from && to ? { range: by ? [from, to, by] : [from, to] } : {};
  return {
    id,
    kind,
    name,
    formula,
    ...(unit && { unit }),
    ...(fraction && { fraction: Number(fraction) }),
    ...range,
  } as Cell;
}

/** The results, one line each: of the cells that `expected` tells of, and of every cell with an error. */
export function resultsText(program: Program, results: ReadonlyMap<string, Result>, expected: string): string {
  const asked = new Set(expected.split("\n").map((line) => cut(line, " ")[0]));
  const lines: string[] = [];
  for (const step of [...program.steps].sort((a, b) => Number(a.id) - Number(b.id))) {
    const result = results.get(step.id);
    const label = step.name || `${step.cell.kind}`;
    if (result && (asked.has(label) || !result.ok)) lines.push(`${label} ${resultText(step, result)}`);
  }
  return lines.join("\n");
}

function resultText(step: Step, result: Result): string {
  if (result.parts?.length === 0) return "tells nothing";
  if (result.parts) return `= ${result.parts.map((part, index) => partText(step, part, index)).join("; ")}`;
  if (!result.ok) return errorText(step, result.error, textOf(step.cell, result.error));
  if (step.definition) return `= function of ${step.definition.parameters.join(", ")}`;
  const margin = result.margin && (result.margin.share === null ? "no share" : told(result.margin.share, "%"));
  return `= ${valueText(result.value, result.shape)}${margin ? ` by ${margin}` : ""}`;
}

function partText(step: Step, part: Result, index: number): string {
  if (part.ok) return valueText(part.value, part.shape);
  return errorText(step, part.error, partsOf(step.cell)[index] ?? "");
}

function errorText(step: Step, { code, at, message, root, place }: CellError, text: string): string {
  const where = place ? `${place.column}[${place.row + 1}] ` : "";
  const elsewhere = root === (step.name || step.id) ? "" : ` of ${root}`;
  return `! ${code}${elsewhere} ${where}${at.join("-")} ‹${text.slice(...at)}› ${message}`;
}

/** The formula, or the table entry, in which an error is marked. */
function textOf(cell: Cell, { place }: CellError): string {
  if (cell.kind !== "table") return "formula" in cell ? cell.formula : (partsOf(cell)[0] ?? "");
  return place ? (cell.rows[place.row]?.[cell.columns.findIndex(({ name }) => name === place.column)] ?? "") : "";
}

function partsOf(cell: Cell): readonly string[] {
  switch (cell.kind) {
    case "note":
      return [...cell.text.matchAll(/\{([^{}]+)\}/g)].map(([, inner = ""]) => inner);
    case "drawing":
      return [cell.of];
    case "question":
      return [cell.about];
    case "chart":
      return [cell.sweep ?? [], cell.x ?? [], cell.y ?? []].flat();
    default:
      return [];
  }
}

function valueText(value: Value, shape: Shape): string {
  switch (shape.kind) {
    case "number":
      return told(value as number, shape.unit);
    case "list":
      return `[${(value as readonly Value[]).map((each) => valueText(each, shape.of)).join(", ")}]`;
    case "record": {
      if (shape.type !== null) return `a ${shape.type}`;
      const columns = Object.entries(shape.fields);
      return `{${columns.map(([name, of]) => `${name}: ${valueText((value as RecordValue)[name] as Value, of)}`).join(", ")}}`;
    }
    default:
      return JSON.stringify(value);
  }
}

function cut(text: string, at: string | RegExp): [string, string | undefined] {
  const found = typeof at === "string" ? text.indexOf(at) : text.search(at);
  if (found < 0) return [text, undefined];
  const length = typeof at === "string" ? at.length : (at.exec(text)?.[0].length ?? 0);
  return [text.slice(0, found), text.slice(found + length)];
}
