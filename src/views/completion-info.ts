/** What stands beside the list of completions, as elements. */
import { describe } from "../cells/index.ts";
import type { AnyFunctionSpec, Shape } from "../library/index.ts";
import { words } from "./words.ts";

/** One sentence. */
export function plainInfo(text: string): HTMLElement {
  return element("p", text);
}

/** What a function does, and its parameters with their units. */
export function functionInfo({ summary, parameters, result }: AnyFunctionSpec): HTMLElement {
  const info = element("div");
  const list = element("dl");
  for (const [name, shape] of Object.entries(parameters)) {
    list.append(element("dt", name), element("dd", parameterText(shape)));
  }
  info.append(element("p", summary), list, element("p", `→ ${resultText(result)}`), element("p", words.reference.more));
  return info;
}

function parameterText(shape: Shape): string {
  const unit = shape.kind === "number" && shape.unit !== "1" ? ` (${shape.unit})` : "";
  const omitted = shape.optional || shape.default !== undefined ? ", may be left out" : "";
  return `${shape.summary ?? describe(shape)}${unit}${omitted}`;
}

function resultText(shape: Shape): string {
  const unit = shape.kind === "number" && shape.unit !== "1" ? ` in ${shape.unit}` : "";
  return `${shape.summary ?? describe(shape)}${unit}`;
}

function element(tag: string, text = ""): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
