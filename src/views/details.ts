import { html, noChange, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { markTyped, untouched } from "./untouched.ts";
import { words } from "./words.ts";

/** One thing that can be said of a cell. */
export interface Detail {
  readonly label: string;
  readonly value: string;
  /** What can be chosen, by value and word; absent for free text. What stands there and is none of them is kept. */
  readonly choices?: readonly (readonly [value: string, word: string])[];
  /** What may be meant, offered while free text is typed. */
  readonly offers?: readonly string[];
  /** A sentence or more: its field grows with it. */
  readonly isLong?: boolean;
  readonly hint?: string;
  /** Takes effect when it is left, not while it is typed. */
  readonly late?: boolean;
  /** Why what was typed is refused. */
  readonly fault?: string | undefined;
  /** What is at fault has been taken all the same, so that it can be mended where it stands. */
  readonly isKept?: boolean;
  /** Stands beside the one before it. */
  readonly beside?: boolean;
  set(text: string): void;
}

export interface DetailsOptions {
  readonly label: string;
  readonly details: readonly Detail[];
  /** An edit has come to its end: the next is a step of its own. */
  onPause(): void;
  /** It is left; true where it was called off by Escape. */
  onDone(calledOff: boolean): void;
}

/** The details of a cell while they are entered: each takes effect as it is typed; Enter or Escape ends it. */
export function detailsForm({ label, details, onPause, onDone }: DetailsOptions): TemplateResult {
  const key = (event: KeyboardEvent): void => {
    // A field has one paragraph, however long: Enter ends it.
    const isText = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    const ends = event.key === "Escape" || (event.key === "Enter" && isText);
    if (!ends || event.isComposing) return;
    event.preventDefault();
    event.stopPropagation();
    // What takes effect when it is left does so now.
    if (event.key === "Enter") event.target?.dispatchEvent(new Event("change"));
    onDone(event.key === "Escape");
  };
  return html`<div class="details" role="group" aria-label=${label} @keydown=${key}>
    <div class="fields">${details.map((detail) => html`${detail.beside ? nothing : html`<span class="row"></span>`}${field(detail, onPause)}`)}</div>
    <button type="button" class="quiet done" @click=${() => onDone(false)}>${words.done}</button>
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
    : detail.isLong
      ? paragraph(detail, hint ?? "", onPause)
      : input(detail, hint ?? "", onPause);
  return html`<label class="${detail.beside ? "beside" : ""}${detail.isLong ? " long" : ""}"><span>${label}</span> ${control}
    ${detail.fault === undefined ? nothing : html`<span class="fault" role="alert">${detail.fault}</span>`}</label>`;
}

function paragraph({ value, set }: Detail, hint: string, onPause: () => void): TemplateResult {
  const take = (event: Event): void => set((event.target as HTMLTextAreaElement).value.replaceAll(/\s*\n\s*/g, " "));
  return html`<textarea rows="1" placeholder=${hint} .value=${live(value)} @input=${take} @change=${onPause}></textarea>`;
}

function input(
  { label, value, offers, late, fault, isKept, set }: Detail,
  hint: string,
  onPause: () => void,
): TemplateResult {
  const take = (event: Event): void => set((event.target as HTMLInputElement).value);
  const list = offers && `offers-${label.replaceAll(" ", "-")}`;
  return html`${offers && list ? html`<datalist id=${list}>${offers.map((each) => html`<option value=${each}></option>`)}</datalist>` : nothing}
    <input type="text" list=${list ?? nothing} autocapitalize="off" spellcheck=${late ? "false" : "true"} placeholder=${hint}
    aria-invalid=${fault === undefined ? "false" : "true"} .value=${!late ? live(value) : fault !== undefined && !isKept ? noChange : untouched(value)}
    @input=${late ? (event: Event) => markTyped(event.target as HTMLElement, true) : take} @change=${(event: Event) => {
      markTyped(event.target as HTMLElement, false);
      if (late) take(event);
      onPause();
    }} />`;
}

/** A whole number from `least` to `most`; what is no number takes it away, so that the usual one holds. */
export function wholeDetail(
  own: Omit<Detail, "value" | "set">,
  { value, least, most }: { readonly value: number | undefined; readonly least: number; readonly most: number },
  put: (now: number | undefined) => void,
): Detail {
  const read = (text: string): number | undefined => {
    const number = Math.round(Number(text.replaceAll(/\s/g, "")));
    return text.trim() === "" || !Number.isFinite(number) ? undefined : Math.min(most, Math.max(least, number));
  };
  return { late: true, ...own, value: String(value ?? ""), set: (now) => put(read(now)) };
}

const withPresent = (choices: NonNullable<Detail["choices"]>, value: string): NonNullable<Detail["choices"]> =>
  choices.some(([each]) => each === value) ? choices : [[value, value === "" ? words.fields.none : value], ...choices];
