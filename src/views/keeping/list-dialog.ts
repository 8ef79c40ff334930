import { html, LitElement, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { hashOf } from "./address.ts";
import { ago } from "./ago.ts";
import type { Keeping } from "./keeping.ts";
import type { Entry, Kept } from "./kept.ts";
import { KeptList } from "./kept-list.ts";
import { smallPicture } from "./small-picture.ts";
import { words } from "./words.ts";

/** All notebooks kept in this browser, and those that ship, in a dialog over the page. */
export class ListDialog extends LitElement {
  static override properties = {
    keeping: { attribute: false },
    entries: { state: true },
    faults: { state: true },
    starts: { state: true },
    news: { state: true },
    deleted: { state: true },
  };
  declare keeping: Keeping;
  /** Null until they are read; a sentence where they cannot be. */
  declare private entries: readonly Entry[] | string | null;
  declare private faults: ReadonlyMap<string, string>;
  declare private starts: readonly (readonly [name: string, title: string])[];
  declare private news: string;
  /** What was deleted last, and can be put back. */
  declare private deleted: Kept | null;
  private list: KeptList | null = null;
  private stops: (() => void)[] = [];

  constructor() {
    super();
    this.entries = null;
    this.faults = new Map();
    this.starts = [];
    this.news = "";
    this.deleted = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.list = new KeptList(this.keeping);
    const read = (): void => void this.read();
    this.stops = [this.keeping.onChange(read), this.keeping.channel.onSaying(read)];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const stop of this.stops) stop();
  }

  protected override async firstUpdated(): Promise<void> {
    this.dialog.showModal();
    // So that the browser does not clear it away; it may ask the person.
    navigator.storage?.persist?.().catch(() => undefined);
    await this.read();
    this.starts = (await this.list?.starts()) ?? [];
  }

  protected override render(): TemplateResult {
    const { entries } = this;
    return html`<dialog class="notebooks" aria-labelledby="notebooks-heading" @close=${() => this.remove()}>
      <header>
        <h2 id="notebooks-heading">${words.notebooks}</h2>
        <button type="button" class="close" aria-label=${words.close} @click=${() => this.dialog.close()}><span aria-hidden="true">✕</span></button>
      </header>
      <p class="news" role="status">${this.news}</p>
      ${this.deleted ? html`<button type="button" class="put-back" @click=${this.putBack}>${words.putBack}</button>` : nothing}
      <h3>${words.keptHere}</h3>
      ${typeof entries === "string" ? html`<p class="fault">${entries}</p>` : entries && this.renderEntries(entries)}
      <h3>${words.beginNew}</h3>
      <p class="hint">${words.beginNewHint}</p>
      <ul class="starts">
        ${this.starts.map(([name, title]) => html`<li><a href=${hashOf({ kind: "shipped", name })} @click=${this.follow}>${title}</a></li>`)}
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
    const { id, picture } = entry;
    const title = titleOf(entry);
    const fault = this.faults.get(id);
    const isOpen = this.keeping.open?.id === id;
    return html`<li class=${isOpen ? "open" : ""}>
      <a href=${hashOf({ kind: "kept", id })} aria-current=${isOpen ? "true" : "false"} @click=${this.follow}>
        <span class="picture">${smallPicture(picture)}</span><span class="name">${title}</span></a>
      <p class="meta">${aboutOf(entry, isOpen)}</p>
      ${fault === undefined ? nothing : html`<p class="fault"><span class="sign" aria-hidden="true">✕</span> ${words.faulty}: ${fault}</p>`}
      <div class="actions">
        ${fault === undefined ? nothing : html`<button type="button" aria-label=${words.download(title)} @click=${() => this.list?.download(entry)}>${words.downloadShort}</button>`}
        <button type="button" aria-label=${words.remove(title)} @click=${() => this.delete(entry)}>${words.removeShort}</button>
      </div>
    </li>`;
  }

  private get dialog(): HTMLDialogElement {
    return this.querySelector("dialog") as HTMLDialogElement;
  }

  /** The link itself leads there; in this tab the dialog makes way. */
  private readonly follow = ({ ctrlKey, metaKey, shiftKey }: MouseEvent): void => {
    if (!ctrlKey && !metaKey && !shiftKey) this.dialog.close();
  };

  private async read(): Promise<void> {
    try {
      this.entries = (await this.list?.entries()) ?? [];
    } catch {
      this.entries = words.cannotList;
      return;
    }
    for (const entry of this.entries) {
      const fault = this.isConnected ? await this.list?.faultOf(entry) : null;
      if (fault && this.faults.get(entry.id) !== fault) this.faults = new Map([...this.faults, [entry.id, fault]]);
    }
  }

  private async delete(entry: Entry): Promise<void> {
    const title = titleOf(entry);
    try {
      const kept = await this.list?.remove(entry.id);
      this.deleted = kept ?? null;
      this.news = kept ? words.removed(title) : words.isOpenElsewhere(title);
    } catch {
      this.news = words.cannotList;
    }
    await this.read();
    await this.updateComplete;
    this.querySelector<HTMLElement>(".put-back")?.focus();
  }

  private readonly putBack = async (): Promise<void> => {
    const { deleted } = this;
    if (!deleted) return;
    const title = titleOf(deleted.entry);
    try {
      await this.list?.putBack(deleted);
      this.deleted = null;
      this.news = words.isBack(title);
    } catch {
      this.news = words.notBack(title);
    }
    await this.read();
    await this.updateComplete;
    this.querySelector<HTMLElement>(`a[href="${hashOf({ kind: "kept", id: deleted.entry.id })}"]`)?.focus();
  };
}

/** Opens the list. */
export function openList(keeping: Keeping): void {
  const list = new ListDialog();
  list.keeping = keeping;
  document.body.append(list);
}

const titleOf = ({ title }: Entry): string => title.trim() || words.untitled;

function aboutOf({ keptAt, fileName, changed }: Entry, isOpen: boolean): string {
  const place =
    fileName === null
      ? changed
        ? words.inNoFile
        : words.asBegun
      : changed
        ? words.notInFile(fileName)
        : words.inFile(fileName);
  return [...(isOpen ? [words.openHere] : []), words.whenKept(ago(keptAt, Date.now()).text), place].join(" · ");
}
