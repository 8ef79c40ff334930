import type { SyntaxNode, Tree as SyntaxTree } from "@lezer/common";
import { isUnitFault, parseUnit } from "../library/units.ts";
import { FormulaError } from "./errors.ts";
import { parser } from "./formula.grammar";
import { meantUnit } from "./formula-remedy.ts";
import { explainSyntax } from "./formula-syntax-errors.ts";
import type { Argument, ArithmeticSign, ComparisonSign, Range, Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";

/**
 * What a formula may be at most, held before any walk: characters, brackets within each other, elements of a list. With
 * the function cells put in that it calls: nodes within each other, and calls. Twice that height still fits the stack.
 */
export const limits = { characters: 2000, depth: 64, list: 10_000, height: 2000, calls: 20_000 } as const;

/** Reads a formula. Throws a FormulaError: syntax, unknown_unit, wrong_dimension (a °C with company), too_long, too_deep. */
export function parseFormula(text: string): Tree {
  if (text.length > limits.characters) {
    throw new FormulaError("too_long", messages.tooLong(text.length, limits.characters), [0, text.length]);
  }
  const syntax = parser.parse(text);
  findFaults(syntax, text);
  const top = syntax.topNode.firstChild;
  if (!top) throw explainSyntax(text, [0, text.length], "Formula");
  return new Reader(text).read(top);
}

/** Nodes that nest: a chain of sums or products counts once, a bracket within a bracket twice. */
const nesting = new Set(["Parenthesized", "List", "ArgumentList", "Element", "If", "Sign", "Not", "Power"]);

function findFaults(syntax: SyntaxTree, text: string): void {
  let depth = 0;
  syntax.iterate({
    enter(node) {
      if (nesting.has(node.name) && ++depth > limits.depth) {
        throw new FormulaError("too_deep", messages.tooDeep(limits.depth), [node.from, node.to]);
      }
      if (node.type.isError) throw explainSyntax(text, [node.from, node.to], node.node.parent?.name ?? "Formula");
    },
    leave(node) {
      if (nesting.has(node.name)) depth--;
    },
  });
}

/** Turns the syntax, known to be without fault, into a tree. Depth is limited, so it may call itself. */
class Reader {
  constructor(private readonly text: string) {}

  read(node: SyntaxNode): Tree {
    const at = rangeOf(node);
    switch (node.name) {
      case "Literal":
        return this.literal(node);
      case "Text":
        return { type: "text", value: this.slice(node).slice(1, -1).replace(/\\(.)/gs, "$1"), at };
      case "Boolean":
        return { type: "boolean", value: this.slice(node) === "true", at };
      case "Name":
        return { type: "name", name: this.slice(node), at };
      case "List":
        return { type: "list", items: expressions(node).map((item) => this.read(item)), at };
      case "Parenthesized":
        return this.read(only(node));
      case "Call":
        return this.call(node);
      case "Field": {
        const name = last(node);
        return { type: "field", of: this.read(only(node)), field: this.slice(name), fieldAt: rangeOf(name), at };
      }
      case "Element": {
        const [of, index] = this.pair(node);
        return { type: "element", of, index, at };
      }
      case "Sign":
        return this.sign(node);
      case "Not":
        return { type: "not", of: this.read(only(node)), at };
      case "Power":
      case "Product":
      case "Sum": {
        const [left, right] = this.pair(node);
        return { type: "arithmetic", sign: this.signOf(node) as ArithmeticSign, left, right, at };
      }
      case "Comparison":
        return this.comparison(node);
      case "And":
      case "Or": {
        const [left, right] = this.pair(node);
        return { type: node.name === "And" ? "and" : "or", left, right, at };
      }
      case "If": {
        const [condition, yes, no] = expressions(node).map((part) => this.read(part));
        if (!condition || !yes || !no) throw new Error(`got an if without its parts, expected three`);
        return { type: "if", condition, yes, no, at };
      }
      default:
        throw new Error(`got the syntax node ${node.name}, expected one of the grammar's expressions`);
    }
  }

  private literal(node: SyntaxNode): Tree {
    const first = node.firstChild;
    if (!first) throw new Error("got a literal without content, expected a number");
    if (first.name === "MisplacedFraction") throw this.misplaced(first);
    if (first.name === "ShopFraction") {
      const { number, unit, unitFrom } = fractionParts(this.slice(first));
      if (!Number.isFinite(number)) throw new FormulaError("not_finite", messages.notFinite, rangeOf(first));
      const unitAt: Range = [first.from + unitFrom, first.to];
      return { type: "number", number, unit, unitAt, at: rangeOf(first) };
    }
    const number = Number(this.slice(first));
    if (!Number.isFinite(number)) throw new FormulaError("not_finite", messages.numberTooLarge, rangeOf(first));
    const unitNode = first.nextSibling;
    if (!unitNode) return { type: "number", number, unit: null, unitAt: [first.to, first.to], at: rangeOf(node) };
    const unit = this.slice(unitNode);
    this.checkUnit(unit, unitNode.from, this.slice(first));
    return { type: "number", number, unit, unitAt: rangeOf(unitNode), at: rangeOf(node) };
  }

  private checkUnit(text: string, from: number, number: string): void {
    const odd = /\^(?!-?\d+(?![\w.]))\S*/.exec(text);
    if (odd) {
      const at: Range = [from + odd.index, from + odd.index + odd[0].length];
      throw new FormulaError("syntax", messages.unitPower(`(${number} ${text.slice(0, odd.index)})${odd[0]}`), at);
    }
    const unit = parseUnit(text);
    if (!isUnitFault(unit)) return;
    const at: Range = [from + unit.from, from + unit.to];
    if (unit.scale) throw new FormulaError("wrong_dimension", messages.scaleAlone, at);
    const meant = meantUnit(unit.word, unit.nearest);
    const calculation = asCalculation(number, text.slice(0, unit.from), unit.word, meant);
    throw new FormulaError("unknown_unit", messages.unknownUnit(unit.word, meant, calculation), at);
  }

  private misplaced(node: SyntaxNode): FormulaError {
    const written = this.slice(node);
    const { number, unit, over, under } = fractionParts(written);
    if (!Number.isFinite(number)) return new FormulaError("syntax", messages.fractionOverZero(written), rangeOf(node));
    const decimal = `${Number(number.toPrecision(12))} ${unit}`;
    const division = over === null ? null : `${over} / (${under} ${unit})`;
    const fault = parseUnit(unit);
    if (isUnitFault(fault)) {
      const from = node.to - unit.length;
      const at: Range = [from + fault.from, from + fault.to];
      return new FormulaError(
        "unknown_unit",
        messages.unknownUnit(fault.word, meantUnit(fault.word, fault.nearest), null),
        at,
      );
    }
    return new FormulaError("syntax", messages.misplacedFraction(written, decimal, division), rangeOf(node));
  }

  private call(node: SyntaxNode): Tree {
    const name = node.firstChild;
    const list = node.lastChild;
    if (!name || !list) throw new Error("got a call without name or arguments, expected both");
    const given: Argument[] = list.getChildren("Argument").map((argument) => {
      const label = argument.getChild("ArgumentName");
      return { name: label && this.slice(label), value: this.read(only(argument)), at: rangeOf(argument) };
    });
    const late = given.find((argument, index) => argument.name === null && given[index - 1]?.name);
    if (late) throw new FormulaError("wrong_argument", messages.positionalAfterNamed, late.at);
    return { type: "call", name: this.slice(name), nameAt: rangeOf(name), arguments: given, at: rangeOf(node) };
  }

  /** A minus before °C or °F belongs to the point on the scale; elsewhere it is an operation, and a plus is nothing. */
  private sign(node: SyntaxNode): Tree {
    const of = this.read(only(node));
    const at = rangeOf(node);
    if (this.signOf(node) === "+") return of;
    const literal = of.type === "number" && of.unit !== null && /^°[CF]$/.test(of.unit) && of.number >= 0;
    return literal ? { ...of, number: -of.number, at } : { type: "negate", of, at };
  }

  private comparison(node: SyntaxNode): Tree {
    const parts = expressions(node);
    const inner = parts.find((part) => part.name === "Comparison");
    if (inner) {
      const [first, middle] = expressions(inner).map((part) => this.slice(part));
      const lastPart = parts.at(-1) ?? inner;
      const remedy = `${first} ${this.signOf(inner)} ${middle} and ${middle} ${this.signOf(node)} ${this.slice(lastPart)}`;
      throw new FormulaError("syntax", messages.comparisonChain(remedy), rangeOf(node));
    }
    const [left, right] = this.pair(node);
    return { type: "comparison", sign: this.signOf(node) as ComparisonSign, left, right, at: rangeOf(node) };
  }

  private pair(node: SyntaxNode): [Tree, Tree] {
    const [left, right] = expressions(node);
    if (!left || !right) throw new Error(`got ${node.name} with one side, expected two`);
    return [this.read(left), this.read(right)];
  }

  private signOf(node: SyntaxNode): string {
    for (let child = node.firstChild; child; child = child.nextSibling) {
      if (child.name.endsWith("Sign") && child.name !== "Sign") return this.slice(child);
    }
    throw new Error(`got ${node.name} without a sign, expected one`);
  }

  private slice(node: SyntaxNode): string {
    return this.text.slice(node.from, node.to);
  }
}

const rangeOf = (node: SyntaxNode): Range => [node.from, node.to];

const expressionNames = new Set([
  ...["If", "Literal", "Text", "Boolean", "Name", "Call", "List", "Parenthesized", "Field", "Element"],
  ...["Power", "Sign", "Product", "Sum", "Comparison", "Not", "And", "Or"],
]);

function expressions(node: SyntaxNode): SyntaxNode[] {
  const found: SyntaxNode[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) {
    if (expressionNames.has(child.name)) found.push(child);
  }
  return found;
}

function only(node: SyntaxNode): SyntaxNode {
  const [first] = expressions(node);
  if (!first) throw new Error(`got ${node.name} without an expression, expected one`);
  return first;
}

function last(node: SyntaxNode): SyntaxNode {
  const found = node.lastChild;
  if (!found) throw new Error(`got ${node.name} without children, expected some`);
  return found;
}

/** What to write where the unknown unit is meant for a cell: after a slash, or where no unit is near to it. */
function asCalculation(number: string, known: string, word: string, near: string | null): string | null {
  const before = /^(.*?)\s*\/\s*$/s.exec(known)?.[1];
  if (before !== undefined) return messages.divideByCell(`${number} ${before} / ${word}`);
  return near === null ? messages.multiplyByCell(`${[number, known.trim()].join(" ").trim()} * ${word}`) : null;
}

/** `1 3/8 in` as the number 1.375 and its unit; `over` and `under` are null where a whole number stands before. */
function fractionParts(written: string) {
  const match = /^(?:(\d+)\s+)?(\d+)\/(\d+)\s*(.*)$/s.exec(written);
  const [over, under, unit] = [match?.[2] ?? "", match?.[3] ?? "", match?.[4] ?? ""];
  const number = Number(match?.[1] ?? 0) + Number(over) / Number(under);
  return { number, unit, unitFrom: written.length - unit.length, over: match?.[1] ? null : over, under };
}
