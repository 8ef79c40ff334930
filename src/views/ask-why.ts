import { html, type TemplateResult } from "lit";
import type { Subject } from "../cells/index.ts";
import { words } from "./words.ts";

/** Loads what answers, which is a piece of its own, so that the page opens without it. */
export async function loadWhy(): Promise<void> {
  const { WhyPanel } = await import("./why/why-panel.ts");
  if (!customElements.get("spanwise-why")) customElements.define("spanwise-why", WhyPanel);
}

/** Asks the app why something is what it is. */
export const askWhy = (from: EventTarget, subject: Subject): void => {
  from.dispatchEvent(new CustomEvent("ask-why", { detail: subject, bubbles: true }));
};

/** The small button beside a value; by keyboard the menu of the cell and Alt Enter do the same. */
export function whyButton(name: string, ask: () => void): TemplateResult {
  return html`<button type="button" class="why-button" tabindex="-1" aria-label=${words.why.ask(name)}
    title="${words.why.ask(name)} (${words.why.key})" @click=${ask}><span aria-hidden="true">?</span></button>`;
}
