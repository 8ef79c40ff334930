/** The formula of what is asked about, line by line: as it is written, with numbers in it, and what comes out. */
import {
  type Explanation,
  partsOf,
  readSignature,
  type Subject,
  type Tree,
  type TypedTree,
  type Value,
} from "../../cells/index.ts";
import type { Shape } from "../../library/index.ts";
import { formatNumber, formatValue } from "../format.ts";
import type { Telling } from "../value-text.ts";
import { formulaMaths, type Put } from "./formula-maths.ts";
import { fenced, index, infix, leaf, type Maths, mathsText, row } from "./maths.ts";
import { nameMaths, quantityMaths, unitMaths } from "./number-maths.ts";
import { tellingOf } from "./subject-words.ts";

const equals = infix("=");
const longestList = 6;

/** Lines of pieces; a line that would say the same as the one before is left out. Empty where nothing can be read. */
export function workingOf(explanation: Explanation, subject: Subject, cellOf: (name: string) => Telling): Maths[][] {
  const { written, step, result } = explanation;
  if (!written?.tree) return [];
  const { tree, typed, text } = written;
  const parameters = new Set(step.definition?.parameters);
  const setting = { text, isParameter: (name: string) => parameters.has(name) };
  const inUnit = (pieces: Maths[]): Maths[] => (written.unit === null ? pieces : withUnit(pieces, tree, written.unit));
  const lines = [inUnit(formulaMaths(tree, setting))];
  if (typed) lines.push(inUnit(formulaMaths(tree, { ...setting, put: putter(explanation, typed, cellOf) })));
  const isCheck = step.cell.kind === "check";
  if (result?.ok && !isCheck && !step.definition)
    lines.push([valueMaths(result.value, result.shape, tellingOf(step.cell))]);
  const told = lines.filter((line, place) => place === 0 || textOf(line) !== textOf(lines[place - 1] ?? []));
  if (isCheck) return told;
  const left = leftSide(explanation, subject);
  return told.map((line, place) =>
    place === 0 ? [row(left, equals), ...line] : [row(equals, line[0] ?? row()), ...line.slice(1)],
  );
}

const textOf = (line: readonly Maths[]): string => mathsText(row(...line));

/** What stands before the equals sign: the name, a call of the function cell, the column with the row as its index. */
function leftSide({ step }: Explanation, { entry }: Subject): Maths {
  const { cell } = step;
  if (entry && cell.kind === "table") {
    return index(nameMaths(cell.columns[entry.column]?.name ?? ""), leaf("mn", `${entry.row + 1}`));
  }
  const { name, parameters } = readSignature("name" in cell ? cell.name : "");
  if (!parameters) return nameMaths(name);
  const names = parameters.flatMap((each, place) => [...(place > 0 ? [leaf("mo", ",")] : []), nameMaths(each, null)]);
  return row(nameMaths(name, "call"), fenced("(", row(...names), ")"));
}

/** An entry without a unit has its column's. */
function withUnit(pieces: Maths[], tree: Tree, unit: string): Maths[] {
  if (unit === "1") return pieces;
  const whole = row(...pieces);
  const bare = tree.type === "number" || (tree.type === "negate" && tree.of.type === "number");
  return [row(bare ? whole : fenced("(", whole, ")"), leaf("mtext", "\u202f"), unitMaths(unit))];
}

/** Puts values in for names, fields and elements, where they are short enough to be read in a formula. */
function putter(explanation: Explanation, typed: TypedTree, cellOf: (name: string) => Telling) {
  const parts = new Map(partsOf(typed).map((part) => [`${part.type} ${part.at[0]} ${part.at[1]}`, part]));
  return (path: Tree): Put | null => {
    const type = path.type === "name" ? "input" : path.type;
    const part = parts.get(`${type} ${path.at[0]} ${path.at[1]}`);
    const value = part ? explanation.valueOf(part) : null;
    if (!part || value === null || !isShort(value, part.shape)) return null;
    const { fraction } = cellOf(rootName(path));
    const maths = valueMaths(value, part.shape, { fraction });
    if (part.shape.kind !== "number") return { maths, holds: "atom" };
    if (Number(value) < 0) return { maths, holds: "negative" };
    return { maths, holds: part.shape.unit === "1" ? "atom" : "quantity" };
  };
}

const isShort = (value: Value, shape: Shape): boolean =>
  shape.kind === "list" ? Array.isArray(value) && value.length <= longestList : shape.kind !== "record";

function rootName(path: Tree): string {
  let node = path;
  while (node.type === "field" || node.type === "element") node = node.of;
  return node.type === "name" ? node.name : "";
}

/** A value typeset: a number with its unit, a short list with the unit it shares, else its text. */
export function valueMaths(value: Value, shape: Shape, { unit, fraction }: Telling): Maths {
  const format = fraction === undefined ? {} : { fraction };
  if (shape.kind === "number") return quantityMaths(formatNumber(Number(value), unit ?? shape.unit, format));
  if (shape.kind === "list" && shape.of.kind === "number" && isShort(value, shape)) {
    const told = (value as readonly number[]).map((each) =>
      formatNumber(each, unit ?? (shape.of.kind === "number" ? shape.of.unit : "1"), format),
    );
    const numbers = told.flatMap(({ number }, place) => [
      ...(place > 0 ? [leaf("mo", ",")] : []),
      quantityMaths({ number, unit: "" }),
    ]);
    const shared = told[0]?.unit ?? "";
    const list = fenced("[", row(...numbers), "]");
    return shared === "" ? list : row(list, leaf("mtext", "\u202f"), unitMaths(shared));
  }
  const text = formatValue(value, shape, unit, fraction);
  return leaf("mi", shape.kind === "text" ? `“${text}”` : text);
}
