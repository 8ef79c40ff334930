/** Finds functions by words, and groups them by topic in the order of the library. */
import type { AnyFunctionSpec, FunctionTable, Shape } from "../../library/index.ts";
import { unitText } from "./function-words.ts";

export interface Topic {
  readonly name: string;
  readonly functions: readonly AnyFunctionSpec[];
}

/** Every topic with its functions. */
export function topicsOf(functions: Iterable<AnyFunctionSpec>): Topic[] {
  const topics = new Map<string, AnyFunctionSpec[]>();
  for (const spec of functions) topics.set(spec.topic, [...(topics.get(spec.topic) ?? []), spec]);
  return [...topics].map(([name, all]) => ({ name, functions: all }));
}

/**
 * The functions in which every word of the query is found: in name, summary, topic, units, or the names of parameters,
 * columns and fields. All of them for an empty query. Those whose name it is, or begins with it, come first.
 */
export function findFunctions(functions: FunctionTable, query: string): AnyFunctionSpec[] {
  const asked = query
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  const found = [...functions.values()].filter((spec) => {
    const text = textOf(spec);
    return asked.every((word) => text.includes(word));
  });
  const begins = asked.join("_");
  const rank = ({ name }: AnyFunctionSpec): number => (name === begins ? 0 : name.startsWith(begins) ? 1 : 2);
  return begins === "" ? found : found.sort((a, b) => rank(a) - rank(b));
}

/** All that is searched, in small letters; names also in words. */
function textOf({ name, summary, topic, parameters, result }: AnyFunctionSpec): string {
  const inside = [...Object.entries(parameters).flatMap(namesAndUnits), ...namesAndUnits(["", result])];
  const text = [name, summary, topic, ...inside].join("\n").toLowerCase();
  return `${text}\n${text.replaceAll("_", " ")}`;
}

function namesAndUnits([name, shape]: readonly [string, Shape]): string[] {
  if (shape.kind === "record") return [name, ...Object.entries(shape.fields).flatMap(namesAndUnits)];
  return [name, unitText(shape)];
}
