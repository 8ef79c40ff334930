import { html, type TemplateResult } from "lit";
import type { Leaving } from "./entering.ts";

export interface TextEntryOptions {
  readonly label: string;
  readonly text: string;
  /** Enter ends it; otherwise Enter is a new line and Ctrl or Cmd with Enter ends it. */
  readonly oneParagraph: boolean;
  onText(text: string): void;
  onLeave(by: Leaving): void;
}

/** A plain text while it is entered, as tall as what stands in it. Focus it once it is drawn, by its class. */
export function textEntry({ label, text, oneParagraph, onText, onLeave }: TextEntryOptions): TemplateResult {
  const keydown = (event: KeyboardEvent): void => {
    if (event.isComposing) return;
    const ends = event.key === "Enter" && (oneParagraph ? !event.shiftKey : event.ctrlKey || event.metaKey);
    if (!ends && event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    onLeave(ends ? "enter" : "escape");
  };
  const blur = (): void => {
    if (document.hasFocus()) onLeave("away");
  };
  return html`<textarea class="text-entry" aria-label=${label} rows=${text.split("\n").length} spellcheck="true"
    .value=${text} @input=${(event: InputEvent) => onText((event.target as HTMLTextAreaElement).value)}
    @keydown=${keydown} @blur=${blur}></textarea>`;
}

/** Focuses the text that has just been put on the page, with the caret at its end. */
export function focusTextEntry(within: ParentNode): void {
  const area = within.querySelector<HTMLTextAreaElement>(".text-entry");
  area?.focus();
  area?.setSelectionRange(area.value.length, area.value.length);
}
