import { html, type TemplateResult } from "lit";
import { words } from "./words.ts";

/** The dialog that asks what becomes of changes before another notebook opens; leaving it is staying. */
export function unsavedDialog(
  title: string,
  { onSave, onDrop, onStay }: { readonly onSave: () => void; readonly onDrop: () => void; readonly onStay: () => void },
): TemplateResult {
  return html`<dialog aria-labelledby="unsaved" @cancel=${onStay}>
    <h2 id="unsaved">${words.unsavedHeading}</h2>
    <p>${words.unsavedText(title.trim() || words.untitled)}</p>
    <div class="actions">
      <button type="button" @click=${onSave}>${words.saveFirst}</button>
      <button type="button" @click=${onDrop}>${words.dropChanges}</button>
      <button type="button" @click=${onStay}>${words.stay}</button>
    </div>
  </dialog>`;
}
