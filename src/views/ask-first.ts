import { html, render } from "lit";
import { words } from "./words.ts";

/** What is asked before something is done that a person may not have meant. */
export interface Doubt {
  readonly heading: string;
  readonly text: string;
  readonly yes: string;
}

/** Asks in a dialog, and gives true where the answer is yes; the focus goes back to where it was. */
export function askFirst({ heading, text, yes }: Doubt): Promise<boolean> {
  const dialog = document.createElement("dialog");
  dialog.ariaLabel = heading;
  render(
    html`<h2>${heading}</h2>
      <p>${text}</p>
      <div class="actions">
        <button type="button" @click=${() => dialog.close("yes")}>${yes}</button>
        <button type="button" @click=${() => dialog.close("")}>${words.keepAsItIs}</button>
      </div>`,
    dialog,
  );
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(dialog.returnValue === "yes");
    });
  });
}
