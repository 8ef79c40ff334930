/** What a formula calls: each function with what it was given and what it gives, its own formula, and its sources. */
import { html, nothing, type TemplateResult } from "lit";
import type { ExplainedArgument, ExplainedCall, Explanation } from "../../cells/index.ts";
import type { AnyFunctionSpec } from "../../library/index.ts";
import { formatValue } from "../format.ts";
import { words } from "../words.ts";

/** The calls of a formula under one heading; nothing where it makes none. */
export function callsList({ calls, functions }: Explanation): TemplateResult | typeof nothing {
  const own = calls.filter(({ spec }) => spec === null);
  if (functions.length === 0 && own.length === 0) return nothing;
  return html`<h3>${words.why.calls}</h3>
    ${functions.map((spec) =>
      functionPart(
        spec,
        calls.filter((call) => call.spec === spec),
      ),
    )}
    ${own.map((call) => html`<div class="call">${callLine(call)}</div>`)}`;
}

/** Functions of arithmetic are known to everyone, and stay closed until they are asked. */
function functionPart(spec: AnyFunctionSpec, calls: readonly ExplainedCall[]): TemplateResult {
  const { name, summary, formula, assumptions, sources, topic } = spec;
  const { sayFormula, assumes } = words.why;
  return html`<details class="call" ?open=${topic !== "arithmetic"}>
    <summary><code>${name}</code> ${summary}</summary>
    ${calls.map((call) => callLine(call))}
    <dl>
      <dt>${sayFormula}</dt><dd>${formula}</dd>
      ${assumptions.length === 0 ? nothing : html`<dt>${assumes}</dt><dd>${sentences(assumptions)}</dd>`}
      <dt>${sources.length === 1 ? words.why.source : words.why.sources}</dt>
      <dd>${sentences(sources.map(({ text, mark }) => html`${text} <span class="mark">${words.reference.marks[mark]}</span>`))}</dd>
    </dl>
  </details>`;
}

const sentences = (all: readonly unknown[]): TemplateResult =>
  all.length === 1 ? html`${all[0]}` : html`<ul>${all.map((each) => html`<li>${each}</li>`)}</ul>`;

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
