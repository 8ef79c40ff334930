import { html, LitElement, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { packNotebook, readNotebook } from "../../cells/index.ts";
import { fileNameOf, saveFile } from "../files.ts";
import { copyOf, newId } from "./copies.ts";
import type { Keeping } from "./keeping.ts";
import { isBeingWritten } from "./pen.ts";
import type { Entry, Kept } from "./shelf.ts";
import { smallPicture } from "./small-picture.ts";
import { when } from "./when.ts";
import { words } from "./words.ts";

/** All notebooks kept in this browser, and those that ship, in a dialog over the page. */
export class ListDialog extends LitElement {
  static override properties = {
    keeping: { attribute: false },
    entries: { state: true },
    starts: { state: true },
    news: { state: true },
    deleted: { state: true },
  };
  declare keeping: Keeping;
  /** Null until they are read; a sentence where they cannot be. */
  declare private entries: readonly Entry[] | string | null;
  declare private starts: readonly (readonly [name: string, title: string])[];
  declare private news: string;
  /** What was deleted last, and can be brought back. */
  declare private deleted: Kept | null;
  private stops: (() => void)[] = [];

  constructor() {
    super();
    this.entries = null;
    this.starts = [];
    this.news = "";
    this.deleted = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const read = (): void => void this.read();
    this.stops = [this.keeping.onChange(read), this.keeping.tabs.onSaying(read)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override async firstUpdated(): Promise<void> {
    this.dialog.showModal();
    // So that the browser does not clear it away; it may ask the person.
    navigator.storage?.persist?.().catch(() => undefined);
    await this.keeping.flush();
    await this.read();
    this.starts = await titlesOf(this.keeping.app.shipped.texts);
  }

  protected override render(): TemplateResult {
    const { entries } = this;
    return html`<dialog class="notebooks" aria-labelledby="notebooks-heading" @close=${() => this.remove()}>
      <header>
        <h2 id="notebooks-heading">${words.notebooks}</h2>
        <button type="button" class="close" aria-label=${words.close} @click=${() => this.dialog.close()}><span aria-hidden="true">✕</span></button>
      </header>
      <div class="news"><p role="status">${this.news}</p>
        ${this.deleted ? html`<button type="button" class="put-back" @click=${this.putBack}>${words.putBack}</button>` : nothing}</div>
      <h3>${words.keptHere}</h3>
      ${typeof entries === "string" ? html`<p class="hint">${entries}</p>` : entries && this.renderEntries(entries)}
      <h3>${words.beginNew}</h3>
      <p class="hint">${words.beginNewHint}</p>
      <ul class="starts">
        ${this.starts.map(([name, title]) => html`<li><button type="button" @click=${() => this.open(() => this.keeping.openShipped(name))}>${title}</button></li>`)}
      </ul>
    </dialog>`;
  }

  private renderEntries(entries: readonly Entry[]): TemplateResult {
    if (entries.length === 0) return html`<p class="hint">${words.noneKept}</p>`;
    return html`<ul class="kept-list">
      ${repeat(
        entries,
        ({ id }) => id,
        (entry) => this.renderEntry(entry),
      )}
    </ul>`;
  }

  private renderEntry(entry: Entry): TemplateResult {
    const title = titleOf(entry);
    const isOpen = this.keeping.open?.id === entry.id;
    const button = (label: string, name: string, act: () => Promise<void>) =>
      html`<button type="button" aria-label=${name} @click=${() => this.attempt(act)}>${label}</button>`;
    return html`<li data-id=${entry.id} class=${isOpen ? "open" : ""}>
      <button type="button" class="choose" aria-current=${isOpen ? "true" : nothing} @click=${() => this.open(() => this.keeping.openKept(entry.id))}>
        <span class="picture">${smallPicture(entry.picture)}</span>
        <span class="notebook-title">${title}</span>
        <span class="meta">${aboutOf(entry, isOpen)}</span></button>
      <div class="actions">
        ${button(words.duplicate, words.duplicateOf(title), () => this.duplicate(entry))}
        ${button(words.save, words.saveOf(title), () => this.save(entry))}
        ${button(words.delete, words.deleteOf(title), () => this.delete(entry))}
      </div>
    </li>`;
  }

  private get dialog(): HTMLDialogElement {
    return this.querySelector("dialog") as HTMLDialogElement;
  }

  /** The dialog makes way for what is opened. */
  private open(act: () => Promise<unknown>): void {
    this.dialog.close();
    void this.keeping.app.unlessLost(act);
  }

  private async read(): Promise<void> {
    try {
      this.entries = await this.keeping.shelf.entries();
    } catch {
      this.entries = words.cannotList;
    }
  }

  private async attempt(act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch {
      this.news = words.failed;
    }
    await this.read();
  }

  /** The notebook is read anew, as it may be open: with its last edits. */
  private async readKept({ id }: Entry): Promise<Kept | undefined> {
    if (this.keeping.open?.id === id) await this.keeping.flush();
    return this.keeping.shelf.get(id);
  }

  private async duplicate(entry: Entry): Promise<void> {
    const kept = await this.readKept(entry);
    if (!kept) return;
    const copy = copyOf(readNotebook(kept.text ?? ""));
    const { title } = copy;
    const own = { id: newId(), title, keptAt: Date.now(), openedAt: 0, revision: 1, fileName: null, changed: true };
    await this.keeping.shelf.put({ ...kept, entry: { ...kept.entry, ...own }, text: packNotebook(copy) }, null);
    this.news = words.duplicated(title);
    await this.show(own.id);
  }

  /** As it stands in the storage, damaged or not. */
  private async save(entry: Entry): Promise<void> {
    const kept = await this.readKept(entry);
    if (kept) await saveFile(fileNameOf(titleOf(entry)), kept.text ?? "", null);
  }

  private async delete(entry: Entry): Promise<void> {
    const { keeping } = this;
    const title = titleOf(entry);
    const isOurs = keeping.open?.id === entry.id && keeping.open.phase === "writing";
    if (!isOurs && (await isBeingWritten(entry.id))) {
      this.news = words.openElsewhere(title);
      return;
    }
    const kept = await this.readKept(entry);
    await keeping.remove(entry.id);
    this.deleted = kept ?? null;
    this.news = words.deleted(title);
    await this.updateComplete;
    this.querySelector<HTMLElement>(".put-back")?.focus();
  }

  private readonly putBack = (): Promise<void> =>
    this.attempt(async () => {
      const { deleted } = this;
      if (!deleted) return;
      await this.keeping.shelf.put(deleted, null);
      this.deleted = null;
      this.news = words.isBack(titleOf(deleted.entry));
      await this.show(deleted.entry.id);
    });

  /** Gives the focus to a notebook that is new in the list. */
  private async show(id: string): Promise<void> {
    await this.read();
    await this.updateComplete;
    this.querySelector<HTMLElement>(`[data-id="${id}"] .choose`)?.focus();
  }
}

customElements.define("spanwise-notebooks", ListDialog);

/** Opens the list. */
export function openList(keeping: Keeping): void {
  const list = new ListDialog();
  list.keeping = keeping;
  document.body.append(list);
}

const titleOf = ({ title }: Entry): string => title.trim() || words.untitled;

function aboutOf({ keptAt, fileName, changed }: Entry, isOpen: boolean): string {
  const file = fileName === null ? [] : [changed ? words.notInFile(fileName) : words.inFile(fileName)];
  return [...(isOpen ? [words.openHere] : []), words.changed(when(keptAt, Date.now())), ...file].join(" · ");
}

/** Name and title of each notebook that ships, by title. */
async function titlesOf(texts: Readonly<Record<string, () => Promise<string>>>) {
  const all = Object.entries(texts).map(async ([name, text]) => [name, readNotebook(await text()).title] as const);
  return (await Promise.all(all)).sort(([, a], [, b]) => a.localeCompare(b, "en"));
}
