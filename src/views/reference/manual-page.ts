/** The manual of all functions as the content of one page that needs no script. */
import type { AnyFunctionSpec, Fineness, FunctionTable } from "../../library/index.ts";
import { words } from "../words.ts";
import { convergenceTable } from "./convergence-table.ts";
import { topicsOf } from "./function-search.ts";
import { functionSheet } from "./function-sheet.ts";
import { make } from "./make.ts";

const { reference } = words;

/** The id of a function's place on the page. */
export const functionPlace = (name: string): string => `function-${name}`;

const finenessPlace = "lattice-fineness";

/** Heading, topics as contents, then every function by topic, and how fine the lattice of the flow is. */
export function manualPage(functions: FunctionTable, lattices: readonly Fineness[], document: Document): HTMLElement {
  const topics = topicsOf(functions.values());
  return make(
    document,
    "main",
    { class: "manual" },
    make(document, "h1", {}, reference.manualTitle),
    make(document, "p", { class: "intro" }, reference.manualIntro),
    make(
      document,
      "nav",
      { "aria-label": reference.contents },
      make(
        document,
        "dl",
        {},
        topics.map(({ name, functions: all }) => [
          make(document, "dt", {}, link(document, `topic-${name}`, name)),
          make(
            document,
            "dd",
            {},
            all.map((spec, index) => [index === 0 ? "" : ", ", link(document, functionPlace(spec.name), spec.name)]),
          ),
        ]),
      ),
      make(document, "p", {}, link(document, finenessPlace, reference.convergence.title)),
    ),
    topics.map((topic) =>
      make(
        document,
        "section",
        { "aria-labelledby": `topic-${topic.name}` },
        make(document, "h2", { id: `topic-${topic.name}` }, topic.name),
        topic.functions.map((spec) => entry(spec, functions, document)),
      ),
    ),
    convergenceTable(lattices, document, finenessPlace),
  );
}

function entry(spec: AnyFunctionSpec, functions: FunctionTable, document: Document): HTMLElement {
  return make(
    document,
    "article",
    { "aria-labelledby": functionPlace(spec.name) },
    make(document, "h3", { id: functionPlace(spec.name) }, make(document, "code", {}, spec.name)),
    make(document, "p", { class: "summary" }, spec.summary),
    functionSheet(spec, { document, functions, level: 4 }),
  );
}

const link = (document: Document, to: string, text: string): HTMLElement =>
  make(document, "a", { href: `#${to}` }, text);
