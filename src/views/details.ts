import { html, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { words } from "./words.ts";

/** One thing that can be said of a cell. */
export interface Detail {
  readonly label: string;
  readonly value: string;
  /** What can be chosen, by value and word; absent for free text. What stands there and is none of them is kept. */
  readonly choices?: readonly (readonly [value: string, word: string])[];
  readonly hint?: string;
  /** Stands beside the one before it. */
  readonly beside?: boolean;
  set(text: string): void;
}

export interface DetailsOptions {
  readonly label: string;
  readonly details: readonly Detail[];
  /** An edit has come to its end: the next is a step of its own. */
  onPause(): void;
  onDone(): void;
}

/** The details of a cell while they are entered: each takes effect as it is typed; Enter or Escape ends it. */
export function detailsForm({ label, details, onPause, onDone }: DetailsOptions): TemplateResult {
  const key = (event: KeyboardEvent): void => {
    const ends = event.key === "Escape" || (event.key === "Enter" && event.target instanceof HTMLInputElement);
    if (!ends || event.isComposing) return;
    event.preventDefault();
    event.stopPropagation();
    onDone();
  };
  return html`<div class="details" role="group" aria-label=${label} @keydown=${key}>
    <div class="fields">${details.map((detail) => field(detail, onPause))}</div>
    <button type="button" class="quiet done" @click=${onDone}>${words.done}</button>
  </div>`;
}

function field(detail: Detail, onPause: () => void): TemplateResult {
  const { label, value, choices, hint } = detail;
  const control = choices
    ? html`<select @change=${(event: Event) => {
        detail.set((event.target as HTMLSelectElement).value);
        onPause();
      }}>
        ${withPresent(choices, value).map(([each, word]) => html`<option value=${each} .selected=${live(each === value)}>${word}</option>`)}
      </select>`
    : html`<input type="text" autocapitalize="off" placeholder=${hint ?? ""} .value=${live(value)}
        @input=${(event: Event) => detail.set((event.target as HTMLInputElement).value)} @change=${onPause} />`;
  return html`<label class=${detail.beside ? "beside" : ""}><span>${label}</span> ${control}</label>`;
}

const withPresent = (choices: NonNullable<Detail["choices"]>, value: string): NonNullable<Detail["choices"]> =>
  choices.some(([each]) => each === value) ? choices : [[value, value === "" ? words.fields.none : value], ...choices];
