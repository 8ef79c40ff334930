import type { Shape } from "../library/spec.ts";
import { checkWithUnit } from "./declared-unit.ts";
import { check } from "./formula-check.ts";
import { nodes, type Range, type Tree } from "./formula-tree.ts";
import { sameShape } from "./shapes.ts";
import type { FunctionCell, Scope, TypedTree } from "./typed-tree.ts";

/**
 * A derived cell with parameters. Its body is checked anew for each set of argument shapes; what can be said without
 * them, whether every name in it exists, is said here by a FormulaError.
 */
export function functionCell(
  parameters: readonly string[],
  body: Tree,
  unit: string | undefined,
  text: string,
  scope: Scope,
  inputs: readonly string[],
): FunctionCell {
  refuseUnknownNames(body, text, parameters, scope);
  const checked: { shapes: readonly Shape[]; body: TypedTree }[] = [];
  return {
    parameters,
    inputs,
    check(shapes) {
      const known = checked.find((each) =>
        shapes.every((shape, index) => sameShape(shape, each.shapes[index] as Shape)),
      );
      if (known) return known.body;
      const own = new Map(
        parameters.map((parameter, index) => [parameter, { shape: shapes[index] as Shape, index }] as const),
      );
      const typed = checkWithUnit(check(body, text, { ...scope, parameters: own }), unit, text);
      checked.push({ shapes, body: typed });
      return typed;
    },
  };
}

function refuseUnknownNames(body: Tree, text: string, parameters: readonly string[], scope: Scope): void {
  for (const node of nodes(body)) {
    if (node.type === "name" && !parameters.includes(node.name)) check(node, text, scope);
    if (node.type === "call" && !scope.functions.has(node.name)) refuseUnknownCall(node.name, node.nameAt, text, scope);
  }
}

/** A call of something unknown is told as the same call without arguments would be. */
function refuseUnknownCall(name: string, nameAt: Range, text: string, scope: Scope): void {
  const named = scope.lookup(name);
  if (named && "definition" in named) return;
  check({ type: "call", name, nameAt, arguments: [], at: nameAt }, text, scope);
}
