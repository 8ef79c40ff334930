/** What a formula calls: each function with what it was given and what it gives, its own formula, and its sources. */
import { html, nothing, type TemplateResult } from "lit";
import { guard } from "lit/directives/guard.js";
import type { ExplainedArgument, ExplainedCall, Explanation } from "../../cells/index.ts";
import type { AnyFunctionSpec, FunctionTable } from "../../library/index.ts";
import { formatValue } from "../format.ts";
import { openReference } from "../open-reference.ts";
import { functionGrounds } from "../reference/function-sheet.ts";
import { words } from "../words.ts";

/** The calls of a formula under one heading; nothing where it makes none. */
export function callsList({ calls, functions }: Explanation, table: FunctionTable): TemplateResult | typeof nothing {
  const own = calls.filter(({ spec }) => spec === null);
  if (functions.length === 0 && own.length === 0) return nothing;
  return html`<h3>${words.why.calls}</h3>
    ${functions.map((spec) =>
      functionPart(
        spec,
        calls.filter((call) => call.spec === spec),
        table,
      ),
    )}
    ${own.map((call) => html`<div class="call">${callLine(call)}</div>`)}`;
}

/** Functions of arithmetic are known to everyone, and stay closed until they are asked. */
function functionPart(
  spec: AnyFunctionSpec,
  calls: readonly ExplainedCall[],
  functions: FunctionTable,
): TemplateResult {
  const { name, summary, topic } = spec;
  return html`<details class="call" ?open=${topic !== "arithmetic"}>
    <summary><code>${name}</code> ${summary}</summary>
    ${calls.map((call) => callLine(call))}
    ${guard([spec], () => functionGrounds(spec, document))}
    <button type="button" class="quiet" aria-label="${name} ${words.why.inReference}" @click=${() => openReference(functions, name)}>${words.why.inReference}</button>
  </details>`;
}

function callLine({ name, arguments: given, value, shape }: ExplainedCall): TemplateResult {
  return html`<table class="given"><caption class="unseen">${words.why.given} ${name}</caption><tbody>
    ${given.filter(({ text, value: taken }) => text !== null || taken !== null).map(argumentRow)}
    ${value === null ? nothing : html`<tr class="gives"><th scope="row">${words.why.gives}</th><td colspan="2">${formatValue(value, shape)}</td></tr>`}
  </tbody></table>`;
}

function argumentRow({ name, text, value, shape }: ExplainedArgument): TemplateResult {
  const told = value === null ? "" : formatValue(value, shape);
  const isSame = text !== null && text.replaceAll(/\s/g, "") === told.replaceAll(/\s/g, "");
  return html`<tr><th scope="row">${name}</th>
    <td>${text === null ? html`<span class="hint">${words.why.byDefault}</span>` : html`<code>${text}</code>`}</td>
    <td>${isSame ? "" : told}</td></tr>`;
}
