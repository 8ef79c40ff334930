import { html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { AnyFunctionSpec, FunctionTable } from "../../library/index.ts";
import { words } from "../words.ts";
import { findFunctions, topicsOf } from "./function-search.ts";
import { functionSheet } from "./function-sheet.ts";
import { functionPlace } from "./manual-page.ts";
import "./function-sheet.css";
import "./reference.css";

const { reference } = words;

/** The address of the manual page beside the app. */
const manual = "./functions.html";

/** Every function of the library, by topic, found by words; each opens to all that its spec says. */
export class ReferenceDialog extends LitElement {
  static override properties = { query: { state: true } };
  declare private query: string;
  /** Sheets that were opened; each is made when it is first looked at. */
  private readonly sheets = new Map<string, HTMLElement>();

  constructor(
    private readonly functions: FunctionTable,
    /** The function that is shown at first. */
    private readonly first: string | null,
  ) {
    super();
    this.query = "";
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override firstUpdated(): void {
    const dialog = this.querySelector("dialog");
    dialog?.showModal();
    const shown = this.first === null ? null : this.querySelector(`[data-function="${CSS.escape(this.first)}"]`);
    if (!(shown instanceof HTMLDetailsElement)) {
      this.querySelector("input")?.focus();
      return;
    }
    shown.open = true;
    shown.querySelector("summary")?.focus({ preventScroll: true });
    // The sheet is made when it is told to be open, which comes a little later.
    setTimeout(() => shown.scrollIntoView({ block: "start", behavior: "instant" }));
  }

  protected override render(): TemplateResult {
    const found = findFunctions(this.functions, this.query);
    return html`<dialog class="reference" aria-labelledby="reference-heading" @close=${() => this.remove()} @keydown=${this.key}>
      <header>
        <h2 id="reference-heading">${reference.heading}</h2>
        <input type="search" aria-label=${reference.search} placeholder=${reference.searchHint} autocomplete="off" autocapitalize="off"
          spellcheck="false" aria-controls="reference-list" @input=${this.type} />
        <p class="count" role="status">${reference.found(found.length, this.functions.size)}</p>
        <a href=${manual} target="_blank" rel="noopener">${reference.manual}</a>
        <button type="button" class="sign-button" aria-label=${reference.close} title="${reference.close} (Esc)"
          @click=${() => this.querySelector("dialog")?.close()}><span aria-hidden="true">✕</span></button>
      </header>
      <div id="reference-list">${repeat(
        topicsOf(found),
        ({ name }) => name,
        ({ name, functions }) => html`<section aria-labelledby="reference-${name}">
          <h3 id="reference-${name}">${name}</h3>
          ${repeat(
            functions,
            (spec) => spec.name,
            (spec) => this.renderFunction(spec),
          )}
        </section>`,
      )}</div>
    </dialog>`;
  }

  private renderFunction(spec: AnyFunctionSpec): TemplateResult {
    const toggled = (event: Event): void => {
      if ((event.currentTarget as HTMLDetailsElement).open && !this.sheets.has(spec.name)) {
        this.sheets.set(spec.name, functionSheet(spec, { document, functions: this.functions, level: 4 }));
        this.requestUpdate();
      }
    };
    return html`<details data-function=${spec.name} @toggle=${toggled}>
      <summary><code>${spec.name}</code> <span>${spec.summary}</span></summary>
      ${this.sheets.get(spec.name)}
      <a class="place" href="${manual}#${functionPlace(spec.name)}" target="_blank" rel="noopener">${reference.inManual}</a>
    </details>`;
  }

  private readonly type = (event: Event): void => {
    this.query = (event.target as HTMLInputElement).value;
  };

  /** Arrow keys go from the field into the list and through it. */
  private readonly key = (event: KeyboardEvent): void => {
    const { key, target, ctrlKey, metaKey, altKey, shiftKey } = event;
    if (ctrlKey || metaKey || altKey || shiftKey || (key !== "ArrowDown" && key !== "ArrowUp")) return;
    const field = this.querySelector("input");
    const stops: (HTMLElement | null)[] = [field, ...this.querySelectorAll("summary")];
    const here = stops.indexOf(target as HTMLElement);
    if (here < 0) return;
    event.preventDefault();
    stops[Math.max(0, Math.min(stops.length - 1, here + (key === "ArrowDown" ? 1 : -1)))]?.focus();
  };
}
