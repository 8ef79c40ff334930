/** What can stand where the caret is: units after a number, fields after a dot, argument names in a call, else names. */
import type { Completion, CompletionContext, CompletionResult, CompletionSource } from "@codemirror/autocomplete";
import { syntaxTree } from "@codemirror/language";
import type { SyntaxNode } from "@lezer/common";
import { constants, describe, fieldOf, keywords, type Program } from "../cells/index.ts";
import { isUnitFault, parseUnit, units } from "../library/at-first.ts";
import type { FunctionTable, Shape } from "../library/index.ts";
import { functionInfo, plainInfo } from "./completion-info.ts";
import { words } from "./words.ts";

/** What a formula can name. */
export interface CompletionScope {
  /** The cell it stands in: it cannot name itself, nor what needs it. */
  readonly cell: string;
  /** The compiled cells as they are now. */
  readonly program: () => Program;
  readonly functions: FunctionTable;
  /** False for a given, which names no cell. */
  readonly namesCells: boolean;
  /** The unit that is asked for; units of its dimension come first. */
  readonly unit: string | null;
}

/** The completions of one formula. */
export function completeFormula(scope: CompletionScope): CompletionSource {
  return (context) => {
    const found = unitsAt(context, scope) ?? fieldsAt(context, scope) ?? namesAt(context, scope);
    // What stands there already is nothing to offer.
    const typed = found ? context.state.sliceDoc(found.from, context.pos) : "";
    return found?.options.every(({ label }) => label === typed || !label.startsWith(typed)) &&
      found.options.some(({ label }) => label === typed)
      ? null
      : found;
  };
}

const unitPlace =
  /(?:^|[^\w.])(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?\s*(?:[A-Za-z°%]+(?:\^-?\d+)?(?:\/| (?=[A-Za-z])))*([A-Za-z°%]*)$/;

function unitsAt(context: CompletionContext, { unit: wanted }: CompletionScope): CompletionResult | null {
  const match = unitPlace.exec(context.state.sliceDoc(0, context.pos));
  const word = match?.[1] ?? "";
  if (!match || (word === "" && !context.explicit) || keywords.has(word)) return null;
  const asked = wanted === null ? null : parseUnit(wanted);
  const fits = (dimension: readonly number[]): boolean =>
    asked !== null && !isUnitFault(asked) && asked.dimension.every((exponent, index) => exponent === dimension[index]);
  const options = [...units.values()].map(
    ({ spelling, dimension }): Completion => ({
      label: spelling,
      detail: describe({ kind: "number", dimension, unit: spelling }).replace(/^an? /, ""),
      boost: fits(dimension) ? 10 : 0,
    }),
  );
  return { from: context.pos - word.length, options, validFor: /^[A-Za-z°%]*$/ };
}

function fieldsAt(context: CompletionContext, scope: CompletionScope): CompletionResult | null {
  const match = /\.([A-Za-z_]\w*)?$/.exec(context.state.sliceDoc(0, context.pos));
  if (!match || /\d$/.test(context.state.sliceDoc(0, context.pos - match[0].length))) return null;
  const dot = context.pos - match[0].length;
  const shape = shapeOf(expressionBefore(context, dot), context, scope);
  if (shape?.kind !== "record") return null;
  const options = Object.entries(shape.fields).map(
    ([name, field]): Completion => ({
      label: name,
      detail: detailOf(field),
      ...(field.summary && { info: () => plainInfo(field.summary ?? "") }),
    }),
  );
  return { from: dot + 1, options, validFor: /^\w*$/ };
}

/** The largest expression that ends at a place. */
function expressionBefore(context: CompletionContext, end: number): SyntaxNode {
  let node = syntaxTree(context.state).resolveInner(end, -1);
  while (node.parent && node.parent.to === end) node = node.parent;
  return node;
}

function shapeOf(node: SyntaxNode | null, context: CompletionContext, scope: CompletionScope): Shape | null {
  if (!node) return null;
  const text = (of: SyntaxNode): string => context.state.sliceDoc(of.from, of.to);
  switch (node.name) {
    case "Name":
      return scope.program().byName.get(text(node))?.shape ?? null;
    case "Field": {
      const of = shapeOf(node.firstChild, context, scope);
      return of?.kind === "record" && node.lastChild ? (fieldOf(of, text(node.lastChild)) ?? null) : null;
    }
    case "Element": {
      const of = shapeOf(node.firstChild, context, scope);
      return of?.kind === "list" ? of.of : null;
    }
    case "Call":
      return node.firstChild ? (scope.functions.get(text(node.firstChild))?.result ?? null) : null;
    case "Parenthesized":
    case "Formula":
      return shapeOf(node.lastChild?.name === ")" ? node.lastChild.prevSibling : node.lastChild, context, scope);
    default:
      return null;
  }
}

function namesAt(context: CompletionContext, scope: CompletionScope): CompletionResult | null {
  const word = context.matchBefore(/[A-Za-z_]\w*/);
  if (!word && !context.explicit) return null;
  const from = word?.from ?? context.pos;
  if (/[\w.]$/.test(context.state.sliceDoc(from - 1, from))) return null;
  const options = [
    ...argumentsAt(context, from, scope),
    ...(scope.namesCells ? cellOptions(scope) : []),
    ...[...scope.functions.values()].map(
      (spec): Completion => ({
        label: spec.name,
        type: "function",
        detail: words.kinds.function,
        info: () => functionInfo(spec),
        apply: callOf(spec.name),
      }),
    ),
    ...[...constants].map(
      ([name, { unit }]): Completion => ({
        label: name,
        detail: unit === "1" ? words.kinds.constant : `${words.kinds.constant}, ${unit}`,
      }),
    ),
    ...[...keywords].map((label): Completion => ({ label, boost: -20 })),
  ];
  return { from, options, validFor: /^\w*$/ };
}

/** Puts in a call and the caret between its brackets; before brackets that are there already, the name alone. */
const callOf =
  (name: string): NonNullable<Completion["apply"]> =>
  (view, _, from, to) => {
    const hasBrackets = view.state.sliceDoc(to, to + 1) === "(";
    view.dispatch({
      changes: { from, to, insert: hasBrackets ? name : `${name}()` },
      selection: { anchor: from + name.length + 1 },
      userEvent: "input.complete",
    });
  };

function cellOptions({ cell, program }: CompletionScope): Completion[] {
  const { steps } = program();
  const later = new Set([cell]);
  for (const step of steps) if (step.inputs.some((id) => later.has(id))) later.add(step.id);
  return steps.flatMap(({ id, name, shape, definition }): Completion[] => {
    if (name === null || name === "" || later.has(id)) return [];
    const detail = definition ? words.functionOf(definition.parameters) : shape ? detailOf(shape) : words.kinds.cell;
    return [{ label: name, detail, boost: 5, ...(definition && { apply: callOf(name) }) }];
  });
}

/** Names of the arguments that the call around the caret still lacks, where an argument begins. */
function argumentsAt(context: CompletionContext, from: number, { functions }: CompletionScope): Completion[] {
  if (!/[(,]\s*$/.test(context.state.sliceDoc(0, from))) return [];
  let node: SyntaxNode | null = syntaxTree(context.state).resolveInner(from, -1);
  while (node && node.name !== "ArgumentList") node = node.parent;
  const name = node?.parent?.firstChild;
  const spec = name && functions.get(context.state.sliceDoc(name.from, name.to));
  if (!node || !spec) return [];
  const taken = new Set(
    node
      .getChildren("Argument")
      .flatMap((argument) => argument.getChild("ArgumentName") ?? [])
      .map((label) => context.state.sliceDoc(label.from, label.to)),
  );
  return Object.entries(spec.parameters).flatMap(([parameter, shape]): Completion[] =>
    taken.has(parameter)
      ? []
      : [
          {
            label: `${parameter}: `,
            displayLabel: `${parameter}:`,
            detail: detailOf(shape),
            boost: 20,
            ...(shape.summary && { info: () => plainInfo(shape.summary ?? "") }),
          },
        ],
  );
}

/** What a value is, in a word or two: the unit of a number, else its kind. */
function detailOf(shape: Shape): string {
  if (shape.kind === "number") return shape.unit === "1" ? "number" : shape.unit;
  return describe(shape).replace(/^an? /, "");
}
