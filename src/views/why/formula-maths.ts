/** Typesets a formula from its tree: fractions, roots, powers, indices, cases, calls, lists. */
import type { Tree } from "../../cells/index.ts";
import { formatNumber } from "../format.ts";
import { fenced, fraction, index, infix, leaf, type Maths, power, root, row } from "./maths.ts";
import { nameMaths, quantityMaths } from "./number-maths.ts";

/** What stands in place of a name, a field or an element: its value, and how tightly that holds together. */
export interface Put {
  readonly maths: Maths;
  readonly holds: "atom" | "quantity" | "negative";
}

export interface Setting {
  /** The formula's text: shop fractions stand as they were written. */
  readonly text: string;
  /** What is put in for a name, a field or an element of one; null leaves it as it is. */
  readonly put?: (path: Tree) => Put | null;
  /** True where a name is a parameter, which is no cell. */
  readonly isParameter?: (name: string) => boolean;
}

/** The formula in pieces, between which a long line may be broken. */
export function formulaMaths(tree: Tree, setting: Setting): Maths[] {
  return new Typesetter(setting).pieces(tree);
}

const levels = { if: 0, or: 1, and: 2, not: 3, compare: 4, plus: 5, times: 6, sign: 7, power: 8, access: 9 } as const;
const holding = { atom: levels.access, quantity: levels.sign, negative: levels.sign } as const;
const signs = { "*": "·", "-": "−", "+": "+", "<=": "≤", ">=": "≥", "!=": "≠", "<": "<", ">": ">", "=": "=" } as const;
const constantSigns: ReadonlyMap<string, string> = new Map([
  ["pi", "π"],
  ["gravity", "g"],
]);
/** Functions of arithmetic that have signs of their own. */
const fences: ReadonlyMap<string, readonly [string, string]> = new Map([
  ["abs", ["|", "|"]],
  ["floor", ["⌊", "⌋"]],
  ["ceil", ["⌈", "⌉"]],
]);

const word = (text: string): Maths => leaf("mtext", `\u00a0${text}\u00a0`, "word");
const comma = leaf("mo", ",");

class Typesetter {
  constructor(private readonly setting: Setting) {}

  /** The outermost chain of sums, products, arguments or conditions, link by link. */
  pieces(tree: Tree): Maths[] {
    switch (tree.type) {
      case "arithmetic": {
        if (tree.sign === "^" || tree.sign === "/") return [this.set(tree)];
        const level = tree.sign === "*" ? levels.times : levels.plus;
        const left = this.level(tree.left) < level ? [this.within(tree.left, level)] : this.pieces(tree.left);
        return [...left, row(infix(signs[tree.sign]), this.operand(tree.right, level + 1))];
      }
      case "and":
      case "or": {
        const left =
          this.level(tree.left) < levels[tree.type]
            ? [this.within(tree.left, levels[tree.type])]
            : this.pieces(tree.left);
        return [...left, row(word(tree.type), this.within(tree.right, levels[tree.type] + 1))];
      }
      case "comparison": {
        const left = this.within(tree.left, levels.plus);
        return [left, row(infix(signs[tree.sign]), this.within(tree.right, levels.plus))];
      }
      case "list":
        return this.enclosed(null, "[", tree.items, "]");
      case "call": {
        const values = tree.arguments.map(({ value }) => value);
        if (tree.name === "sqrt" || fences.has(tree.name) || values.length === 0) return [this.set(tree)];
        return this.enclosed(nameMaths(tree.name, "call"), "(", values, ")", tree.arguments);
      }
      default:
        return [this.set(tree)];
    }
  }

  private enclosed(
    head: Maths | null,
    open: string,
    items: readonly Tree[],
    close: string,
    named: readonly { readonly name: string | null }[] = [],
  ): Maths[] {
    if (items.length === 0) return [row(...(head ? [head] : []), leaf("mo", open), leaf("mo", close))];
    return items.map((item, place) => {
      const name = named[place]?.name ?? null;
      const before = place === 0 ? [...(head ? [head] : []), leaf("mo", open)] : [];
      const label = name === null ? [] : [nameMaths(name, null), leaf("mo", ":")];
      return row(...before, ...label, this.set(item), place === items.length - 1 ? leaf("mo", close) : comma);
    });
  }

  private set(tree: Tree): Maths {
    switch (tree.type) {
      case "number":
        return quantityMaths(this.literal(tree));
      case "text":
        return leaf("mi", `“${tree.value}”`);
      case "boolean":
        return leaf("mi", tree.value ? "true" : "false", "word");
      case "name":
        return this.putIn(tree)?.maths ?? this.name(tree.name);
      case "field":
        return this.putIn(tree)?.maths ?? index(nameMaths(tree.field), this.set(tree.of));
      case "element":
        return this.putIn(tree)?.maths ?? this.element(tree);
      case "negate":
        return row(leaf("mo", "−"), this.operand(tree.of, levels.sign));
      case "not":
        return row(word("not"), this.within(tree.of, levels.not));
      case "arithmetic":
        if (tree.sign === "/") return fraction(row(...this.pieces(tree.left)), row(...this.pieces(tree.right)));
        if (tree.sign === "^") return power(this.within(tree.left, levels.access), row(...this.pieces(tree.right)));
        return row(...this.pieces(tree));
      case "call":
        return this.call(tree);
      case "if":
        return this.cases(tree);
      default:
        return row(...this.pieces(tree));
    }
  }

  private name(name: string): Maths {
    const sign = constantSigns.get(name);
    if (sign) return leaf("mi", sign);
    return nameMaths(name, this.setting.isParameter?.(name) ? null : "name");
  }

  private element(tree: Tree & { type: "element" }): Maths {
    const at = this.set(tree.index);
    if (tree.of.type !== "field" || this.putIn(tree.of)) return index(this.set(tree.of), at);
    return index(nameMaths(tree.of.field), this.set(tree.of.of), comma, at);
  }

  private call(tree: Tree & { type: "call" }): Maths {
    const [only, ...more] = tree.arguments;
    const fence = fences.get(tree.name);
    if (only && more.length === 0 && tree.name === "sqrt") return root(row(...this.pieces(only.value)));
    if (only && more.length === 0 && fence) return fenced(fence[0], row(...this.pieces(only.value)), fence[1]);
    const values = tree.arguments.map(({ value }) => value);
    return row(...this.enclosed(nameMaths(tree.name, "call"), "(", values, ")", tree.arguments));
  }

  /** Every `else if` is a case of its own. */
  private cases(tree: Tree & { type: "if" }): Maths {
    const cell = (maths: Maths): Maths => ({ tag: "mtd", parts: [maths] });
    const rows: Maths[] = [];
    let rest: Tree = tree;
    for (; rest.type === "if"; rest = rest.no) {
      const condition = row(word("if"), ...this.pieces(rest.condition));
      rows.push({ tag: "mtr", parts: [cell(row(...this.pieces(rest.yes))), cell(condition)] });
    }
    rows.push({ tag: "mtr", parts: [cell(row(...this.pieces(rest))), cell(word("otherwise"))] });
    return row(leaf("mo", "{"), { tag: "mtable", parts: rows, look: "cases" });
  }

  private literal({ number, unit, at }: Tree & { type: "number" }) {
    const written = this.setting.text.slice(at[0], at[1]).trim();
    const [, shop] = /^((?:\d+\s+)?\d+\/\d+)\s*(?:in|ft)$/.exec(written) ?? [];
    if (shop) return { number: shop.replace(/\s+/, " "), unit: unit ?? "" };
    return { number: formatNumber(number, "1", { figures: 12 }).number, unit: unit ?? "" };
  }

  /** A negative number to the right of a sign stands in brackets. */
  private operand(tree: Tree, level: number): Maths {
    return this.within(tree, Math.max(level, this.isNegative(tree) ? levels.power : 0));
  }

  private within(tree: Tree, level: number): Maths {
    return this.level(tree) < level ? fenced("(", row(...this.pieces(tree)), ")") : this.set(tree);
  }

  private isNegative(tree: Tree): boolean {
    if (tree.type === "number") return tree.number < 0;
    return tree.type === "negate" || this.putIn(tree)?.holds === "negative";
  }

  private level(tree: Tree): number {
    switch (tree.type) {
      case "if":
      case "or":
      case "and":
      case "not":
        return levels[tree.type];
      case "comparison":
        return levels.compare;
      case "arithmetic":
        if (tree.sign === "^") return levels.power;
        return tree.sign === "+" || tree.sign === "-" ? levels.plus : levels.times;
      case "negate":
        return levels.sign;
      case "number":
        return tree.number < 0 ? levels.sign : tree.unit === null ? levels.access : levels.sign;
      default: {
        const put = this.putIn(tree);
        return put ? holding[put.holds] : levels.access;
      }
    }
  }

  private putIn(tree: Tree): Put | null {
    const isPath = tree.type === "name" || tree.type === "field" || tree.type === "element";
    return (isPath && this.setting.put?.(tree)) || null;
  }
}
