/** The calls in a formula, each with what stands for its parameters and what it gives. */
import type { AnyFunctionSpec, Shape } from "../library/spec.ts";
import type { ValueOf } from "./explain-values.ts";
import type { Written } from "./explain-written.ts";
import { partsOf } from "./typed-parts.ts";
import type { TypedTree } from "./typed-tree.ts";
import type { Value } from "./value.ts";

export interface ExplainedCall {
  readonly name: string;
  /** Null for a function cell. */
  readonly spec: AnyFunctionSpec | null;
  readonly arguments: readonly ExplainedArgument[];
  /** Null where it cannot be told. */
  readonly value: Value | null;
  readonly shape: Shape;
}

export interface ExplainedArgument {
  /** The parameter's name. */
  readonly name: string;
  /** What was written for it; null where it was left out, and the value is the default, if there is one. */
  readonly text: string | null;
  readonly value: Value | null;
  readonly shape: Shape;
}

/** The calls of a checked formula, the outer before the inner; none of one that is not checked. */
export function explainCalls({ typed, text }: Written, tell: ValueOf): ExplainedCall[] {
  return typed ? partsOf(typed).flatMap((part) => callOf(part, text, tell) ?? []) : [];
}

function callOf(part: TypedTree, text: string, tell: ValueOf): ExplainedCall | null {
  const given = (name: string, argument: TypedTree): ExplainedArgument => ({
    name,
    text: text.slice(argument.at[0], argument.at[1]),
    value: tell(argument),
    shape: argument.shape,
  });
  const { shape } = part;
  if (part.type === "call") {
    const { spec } = part;
    const all = Object.entries(spec.parameters).map(([name, parameter], index): ExplainedArgument => {
      const argument = part.arguments[index];
      return argument
        ? given(name, argument)
        : { name, text: null, value: parameter.default ?? null, shape: parameter };
    });
    return { name: spec.name, spec, arguments: all, value: tell(part), shape };
  }
  if (part.type !== "apply") return null;
  const all = part.arguments.map((argument, index) => given(part.parameters[index] ?? "", argument));
  return { name: part.name, spec: null, arguments: all, value: tell(part), shape };
}
