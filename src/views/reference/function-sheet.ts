/** All that is known of a function, from its spec alone: for the reference, the manual page and "why". */
import type { AnyFunctionSpec, FunctionTable } from "../../library/index.ts";
import { words } from "../words.ts";
import { fieldLines, type Line, parameterLines, resultText, signatureOf } from "./function-words.ts";
import { type Content, make } from "./make.ts";
import { makeTable } from "./make-table.ts";
import { type WorkedExample, workedExamples } from "./worked-example.ts";

const { reference } = words;

export interface SheetOptions {
  readonly document: Document;
  /** Tells which functions make a record. */
  readonly functions: FunctionTable;
  /** The level of the headings within it, from 2 to 6. */
  readonly level: number;
}

/** What stands below a function's name and summary: signature, parameters, results, grounds, examples. */
export function functionSheet(spec: AnyFunctionSpec, { document, functions, level }: SheetOptions): HTMLElement {
  const h = (text: string): HTMLElement => make(document, `h${level}`, {}, text);
  const p = (text: string): HTMLElement => make(document, "p", {}, text);
  const parameters = parameterLines(spec, functions);
  const fields = fieldLines(spec, functions);
  const examples = workedExamples(spec);
  return make(
    document,
    "div",
    { class: "function-sheet" },
    make(document, "p", { class: "signature" }, make(document, "code", {}, signatureOf(spec))),
    h(reference.takes),
    parameters.length === 0
      ? p(reference.takesNothing)
      : table(document, `${reference.takes}: ${spec.name}`, parameters),
    spec.elementwise ? p(reference.elementwise) : null,
    spec.spread ? p(reference.spread) : null,
    h(reference.gives),
    p(`${capital(resultText(spec))}.`),
    fields.length === 0 ? null : table(document, `${reference.gives}: ${spec.name}`, fields),
    functionGrounds(spec, document),
    examples.length === 0 ? null : h(reference.examples(examples.length)),
    examples.map((example) => exampleParts(example, spec, document)),
  );
}

/** The formula of a function, what it assumes and refuses, and where it comes from, each source with its mark. */
export function functionGrounds(spec: AnyFunctionSpec, document: Document): HTMLElement {
  const { formula, assumptions, errors, sources } = spec;
  const item = (term: string, all: readonly Content[]): Content =>
    all.length === 0 ? null : [make(document, "dt", {}, term), make(document, "dd", {}, sentences(document, all))];
  const mark = (text: string): HTMLElement => make(document, "span", { class: "mark" }, text);
  return make(
    document,
    "dl",
    { class: "grounds" },
    item(reference.formula, [formula]),
    item(reference.assumes, assumptions),
    item(reference.refuses, errors),
    item(
      sources.length === 1 ? reference.source : reference.sources,
      sources.map((source) => [`${source.text} `, mark(reference.marks[source.mark])]),
    ),
  );
}

const sentences = (document: Document, all: readonly Content[]): Content =>
  all.length === 1
    ? (all[0] ?? null)
    : make(
        document,
        "ul",
        {},
        all.map((each) => make(document, "li", {}, each)),
      );

function table(document: Document, caption: string, lines: readonly Line[]): HTMLElement {
  const { name, what, unit, limits } = reference;
  const isLimited = lines.some((line) => line.limits !== "");
  const heads = [name, what, unit, ...(isLimited ? [limits] : [])];
  const rows = lines.map((line) => ({
    ...(line.isColumn && { class: "column" }),
    head: make(document, "code", {}, line.name),
    entries: [line.summary, line.unit, ...(isLimited ? [line.limits] : [])],
  }));
  return makeTable(document, "lines", caption, heads, rows);
}

function exampleParts(
  { summary, given, result, fields }: WorkedExample,
  { name }: AnyFunctionSpec,
  document: Document,
) {
  const line = (term: string, value: string): Content => [
    make(document, "dt", {}, make(document, "code", {}, term)),
    make(document, "dd", {}, value),
  ];
  return make(
    document,
    "div",
    { class: "example" },
    make(document, "p", {}, `${capital(summary)}.`),
    make(
      document,
      "dl",
      {},
      given.map(([term, value]) => line(term, value)),
      make(document, "dt", { class: "result" }, make(document, "code", {}, name)),
      make(document, "dd", { class: "result" }, result),
      fields.map(([term, value]) => line(`.${term}`, value)),
    ),
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
