import type { Shape } from "../library/spec.ts";
import { checkWithUnit } from "./declared-unit.ts";
import { FormulaError } from "./errors.ts";
import { check } from "./formula-check.ts";
import { limits } from "./formula-parse.ts";
import { heightOf, nodes, type Range, type Tree } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { shapeKey } from "./shapes.ts";
import type { CheckedBody, FunctionCell, Scope } from "./typed-tree.ts";

/**
 * A derived cell with parameters. Its body is checked anew for each set of argument shapes; what can be said without
 * them, whether every name in it exists and how deep it goes, is said here by a FormulaError.
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
  const checked = new Map<string, CheckedBody>();
  return {
    parameters,
    inputs,
    height: limitedHeight(body, scope),
    check(shapes) {
      const key = shapes.map(shapeKey).join();
      const known = checked.get(key);
      if (known) return known;
      const own = new Map(
        parameters.map((parameter, index) => [parameter, { shape: shapes[index] as Shape, index }] as const),
      );
      const calls = { count: 1, isSlow: false };
      const typed = checkWithUnit(check(body, text, { ...scope, parameters: own, calls }), unit, text);
      const made = { body: typed, calls };
      checked.set(key, made);
      return made;
    },
  };
}

/** What is checked and computed goes down as deep, and the stack of calls holds only so much. */
function limitedHeight(body: Tree, scope: Scope): number {
  let deepest = 0;
  for (const node of nodes(body)) {
    const named = node.type === "call" ? scope.lookup(node.name) : undefined;
    if (named && "definition" in named) deepest = Math.max(deepest, named.definition.height + heightOfCall);
  }
  const height = heightOf(body) + deepest;
  if (height > limits.height) throw new FormulaError("too_deep", messages.tooDeepCalls, body.at);
  return height;
}

/** A call takes the room of that many plain nodes. */
const heightOfCall = 10;

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
