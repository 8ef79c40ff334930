import { html, nothing, type TemplateResult } from "lit";
import { concealedBraces, editCell, type NoteCell, segments } from "../cells/index.ts";
import { askWhy } from "./ask-why.ts";
import { askedName, busyNote, CellView, errorLine } from "./cell-view.ts";
import type { Leaving } from "./entering.ts";
import { type MenuItem, openMenu } from "./menu.ts";
import { focusTextEntry, textEntry } from "./text-entry.ts";
import { movedText, oneLine } from "./value-text.ts";
import { words } from "./words.ts";

/** The reader of prose: a piece of its own, so that the page opens without it. */
export const loadMarkdown = () => import("./markdown.ts");
type Markdown = Awaited<ReturnType<typeof loadMarkdown>>;

/** Prose in which names between braces show live values; as it is written until its reader is there. */
export class NoteCellView extends CellView<NoteCell> {
  private textBefore = "";
  private markdown: Markdown | null = null;
  /** The text as it was read last: values change more often than it does. */
  private read: ReturnType<typeof readNote> | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.loadReader();
  }

  private async loadReader(): Promise<void> {
    this.markdown = await loadMarkdown();
    this.read = null;
    this.requestUpdate();
  }

  override get groupName(): string {
    return words.note;
  }

  override renderCell(): TemplateResult {
    const { result } = this;
    const error = result && !result.ok ? result.error : undefined;
    return html`<div class="margin"></div>
      <div class="body free">
        ${this.entered ? this.renderEntry() : html`<div class="prose" @dblclick=${this.enter}>${this.renderProse()}</div>`}
        <div class="messages">${error ? errorLine(error) : nothing}</div>
      </div>
      <div class="tools">${this.entered ? nothing : this.renderEdit()}</div>`;
  }

  private renderEdit(): TemplateResult {
    return html`<button type="button" class="quiet note-button" @click=${this.enter}>${words.editNote}</button>`;
  }

  private renderEntry(): TemplateResult {
    return textEntry({
      label: words.textOfNote,
      text: this.cell.text,
      oneParagraph: false,
      onText: (text) => this.setText(text),
      onLeave: (by) => this.leave(by),
    });
  }

  private renderProse(): TemplateResult {
    const { text } = this.cell;
    if (text.trim() === "") return html`<p class="hint">${words.emptyNote}</p>`;
    if (this.read?.text !== text) this.read = readNote(text, this.markdown);
    const { names, prose } = this.read;
    const { session } = this.desk;
    const hidden = session.concealed.size > 0 ? concealedBraces(text, session.program, session.concealed) : [];
    const live = (index: number): TemplateResult =>
      hidden[index]
        ? html`<span class="hint live">${words.hiddenValue}</span>`
        : this.renderLive(index, names[index] ?? "");
    return prose(live);
  }

  private renderLive(index: number, name: string): TemplateResult {
    const part = this.result?.parts?.[index];
    const { isPending } = this;
    if (part?.ok)
      return html`<b class="live${part.shape.kind === "number" ? "" : " words"}${isPending ? " busy" : ""}" @click=${() => this.askOf(askedName(name))}>${oneLine(part)}${this.movedBy(index)}${busyNote(isPending)}</b>`;
    if (part === undefined) return html`<b class="live stale">${words.pending}</b>`;
    return html`<b class="live ${part.error.code === "waits" ? "awaited" : "faulty"}">{${name}}</b>`;
  }

  /** While a trial is on, how far a value is from the baseline's. */
  private movedBy(index: number): TemplateResult | typeof nothing {
    const { session, baseline } = this.desk;
    if (!session.trial) return nothing;
    const moved = movedText(this.result?.parts?.[index], baseline.result(this.cell.id)?.parts?.[index]);
    return moved === null ? nothing : html` <span class="moved-by">(${moved})</span>`;
  }

  /** Of the only value in it, else of the one that is chosen from a menu. */
  override askWhy(): void {
    const items = this.whyItems;
    const button = this.querySelector<HTMLElement>(".more");
    if (items.length === 1) items[0]?.act();
    else if (button && items.length > 0) openMenu(button, words.why.item, items, document.activeElement as HTMLElement);
  }

  protected override get ownItems(): MenuItem[] {
    return [...this.whyItems, ...super.ownItems];
  }

  private get whyItems(): MenuItem[] {
    const names = segments(this.cell.text).flatMap(({ live, text }) => (live ? askedName(text) : []));
    const { byName } = this.desk.session.program;
    return [...new Set(names)]
      .filter((name) => byName.get(name))
      .map((name) => ({ label: words.why.itemOf(name), act: () => this.askOf(name) }));
  }

  private askOf(name: string): void {
    const id = this.desk.session.program.byName.get(name)?.id;
    if (id !== undefined) askWhy(this, { id });
  }

  override begin(): void {
    this.enter();
  }

  private readonly enter = async (): Promise<void> => {
    this.textBefore = this.cell.text;
    this.entered = "text";
    await this.updateComplete;
    focusTextEntry(this);
  };

  private leave(by: Leaving): void {
    if (this.entered === null) return;
    if (by === "escape") this.setText(this.textBefore);
    this.desk.session.endGesture();
    this.rest(by === "away" ? null : ".note-button");
  }

  private setText(text: string): void {
    this.desk.session.edit((notebook) => editCell(notebook, this.cell.id, { text }), `text ${this.cell.id}`);
  }
}

type Live = (index: number) => TemplateResult;

/** The names between braces, and the template of the prose around the live values that stand for them. */
function readNote(text: string, markdown: Markdown | null) {
  const pieces = segments(text);
  const names = pieces.flatMap((piece) => (piece.live ? [piece.text] : []));
  let next = 0;
  const places = pieces.map(({ live, text }) => (live ? next++ : text));
  if (!markdown) return { text, names, prose: (live: Live) => asWritten(places, live) };
  const { hole, proseTemplate, readProse, withoutHoles } = markdown;
  const read = readProse(places.map((each) => (typeof each === "number" ? hole(each) : withoutHoles(each))).join(""));
  return { text, names, prose: (live: Live) => proseTemplate(read, live) };
}

const asWritten = (places: readonly (number | string)[], live: Live): TemplateResult =>
  html`<p class="unread">${places.map((each) => (typeof each === "number" ? live(each) : each))}</p>`;
