/** The values of the parts of a formula, as they are now, but none that a question hides. */
import { FormulaError } from "./errors.ts";
import { compilationOf, compileTree } from "./formula-compile.ts";
import type { Program, Step } from "./step.ts";
import { partsOf } from "./typed-parts.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Ok, Result, Value } from "./value.ts";

export type ValueOf = (part: TypedTree) => Value | null;

/** What nothing may be told of: names of hidden cells, and formulas that are just those of hidden cells. */
export interface Secrets {
  readonly names: ReadonlySet<string>;
  readonly formulas: ReadonlySet<string>;
  /** The formula whose parts are asked about. */
  readonly text: string;
}

export function secretsOf(
  program: Program,
  step: Step,
  text: string,
  concealed: { has(id: string): boolean },
): Secrets {
  const hidden = program.steps.filter(({ id }) => id !== step.id && concealed.has(id));
  return {
    names: new Set(hidden.flatMap(({ name }) => name ?? [])),
    formulas: new Set(hidden.flatMap(({ cell }) => (cell.kind === "derived" ? bare(cell.formula) : []))),
    text,
  };
}

/**
 * Tells the value of a part; null where an input of it has none, where it fails, and where it must stay hidden. What is
 * slow is not computed again for that: the whole formula has the value of its cell, a part of it none.
 */
export function valuesOf(
  step: Step,
  program: Program,
  results: (id: string) => Result | undefined,
  secrets: Secrets,
): ValueOf {
  const names = namesBehind(program, step);
  const inputs = names.map((name) => results(program.byName.get(name)?.id ?? ""));
  const compilation = compilationOf(names);
  return (part) => {
    const parts = partsOf(part);
    if (!parts.every((each) => isKnown(each, names, inputs)) || givesAway(parts, secrets)) return null;
    if (step.isSlow && isSlow(parts)) return isWhole(part, step) ? told(results(step.id)) : null;
    try {
      return compileTree(part, compilation)(inputs as readonly Ok[], []);
    } catch (error) {
      if (error instanceof FormulaError) return null;
      throw error;
    }
  };
}

/** The names whose values the formula takes, by way of function cells too; a step that failed has no inputs to ask. */
function namesBehind({ structure, steps }: Program, { id }: Step): string[] {
  const needs = structure.needs[structure.placeOfId.get(id) ?? -1] ?? [];
  return [...new Set(needs.flatMap((need) => steps[need]?.definition?.inputs ?? steps[need]?.name ?? []))];
}

const isSlow = (parts: readonly TypedTree[]): boolean =>
  parts.some(
    (part) =>
      (part.type === "call" && part.spec.isSlow === true) || (part.type === "apply" && isSlow(partsOf(part.body))),
  );

const isWhole = ({ at }: TypedTree, { tree }: Step): boolean => tree?.at[0] === at[0] && tree.at[1] === at[1];

const told = (result: Result | undefined): Value | null => (result?.ok ? result.value : null);

/** A call of a function cell takes whatever its body names. */
function isKnown(part: TypedTree, names: readonly string[], inputs: readonly (Result | undefined)[]): boolean {
  if (part.type === "parameter") return false;
  if (part.type === "apply") return inputs.every((input) => input?.ok === true);
  return part.type !== "input" || inputs[names.indexOf(part.name)]?.ok === true;
}

const givesAway = (parts: readonly TypedTree[], { names, formulas, text }: Secrets): boolean =>
  names.size > 0 &&
  parts.some(
    (part) =>
      (part.type === "input" && names.has(part.name)) ||
      (part.type === "apply" && bodyNames(part.body).some((name) => names.has(name))) ||
      (part.type !== "constant" && formulas.has(bare(text.slice(part.at[0], part.at[1])))),
  );

const bodyNames = (body: TypedTree): string[] =>
  partsOf(body).flatMap((part) =>
    part.type === "input" ? part.name : part.type === "apply" ? bodyNames(part.body) : [],
  );

const bare = (formula: string): string => formula.replaceAll(/\s/g, "");
