import { html, nothing, type TemplateResult } from "lit";
import {
  type CheckCell,
  type DerivedCell,
  editCell,
  type GivenCell,
  type Notebook,
  readSignature,
  rename,
  type Subject,
  type TableCell,
  tidyName,
} from "../cells/index.ts";
import { askWhy, whyButton } from "./ask-why.ts";
import { CellView } from "./cell-view.ts";
import type { Leaving } from "./entering.ts";
import { nameCodes } from "./formula-line.ts";
import type { MenuItem } from "./menu.ts";
import { tell } from "./notice.ts";
import { focusTextEntry, textEntry } from "./text-entry.ts";
import { words } from "./words.ts";

/** A cell with a name in the margin and a reason under it. */
export abstract class ReasonedCell<C extends GivenCell | DerivedCell | CheckCell | TableCell> extends CellView<C> {
  private reasonBefore: string | undefined;
  /** Why the name that is typed cannot be taken. */
  private refusal: string | null = null;

  /** The bare name, by which the parts of this cell are named too. */
  get bareName(): string {
    return readSignature(this.cell.name).name || words.kinds.cell;
  }

  override get groupName(): string {
    return this.bareName;
  }

  protected renderName(): TemplateResult {
    const { result } = this;
    const isFaulty = result && !result.ok && nameCodes.has(result.error.code);
    if (this.entered === "name") return this.renderNameEntry();
    return html`<div class="margin"><span class="covered name-place"><span class="name${isFaulty ? " faulty" : ""}">${this.cell.name || words.noName}</span>
      <button type="button" class="cover name-button" aria-label=${words.rename(this.bareName)} @click=${this.enterName}></button></span></div>`;
  }

  private renderNameEntry(): TemplateResult {
    return html`<div class="margin"><input class="name-entry" type="text" aria-label=${words.nameOf(this.bareName)}
        autocapitalize="off" spellcheck="false" aria-invalid=${this.refusal === null ? "false" : "true"}
        .value=${this.cell.name} @input=${this.typeName} @keydown=${this.nameKey}
        @blur=${() => document.hasFocus() && this.leaveName("away")} />
      <div class="refusal" role="status">${this.refusal === null ? nothing : html`<p class="fault">${this.refusal}</p>`}</div></div>`;
  }

  /** What can be done beside entering: it stands in the margin, and shows where the pointer or the focus is. */
  protected renderTools(tools: readonly TemplateResult[] = []): TemplateResult {
    const lacksReason = this.cell.reason === undefined && this.cell.kind !== "given" && this.entered !== "reason";
    const shown = this.entered === "name" ? [] : [...tools, ...(lacksReason ? [this.renderAddReason()] : [])];
    return html`<div class="tools">${shown}</div> ${whyButton(this.bareName, () => askWhy(this, { id: this.cell.id }))}`;
  }

  protected renderReason(): TemplateResult | undefined {
    if (this.entered === "reason") {
      return textEntry({
        label: words.reasonOf(this.bareName),
        text: this.cell.reason ?? "",
        oneParagraph: true,
        onText: (text) => this.setReason(text),
        onLeave: (by) => this.leaveReason(by),
      });
    }
    const { reason, kind } = this.cell;
    // A number that somebody chose is asked for its reason in plain sight.
    if (reason === undefined)
      return kind === "given" ? html`<div class="reason lacking">${this.renderAddReason()}</div>` : undefined;
    return html`<div class="reason covered">
      <span>${reason}</span>
      <button type="button" class="cover reason-button" aria-label=${words.editReason(this.bareName)}
        @click=${this.enterReason}></button>
    </div>`;
  }

  override begin(): void {
    this.enterName();
  }

  protected override get ownItems(): MenuItem[] {
    const { item: label, key: hint } = words.why;
    return [
      { label, hint, act: () => this.askWhy() },
      { label: words.renameItem, act: () => this.enterName() },
      ...super.ownItems,
    ];
  }

  override askWhy(): void {
    askWhy(this, { id: this.cell.id, ...this.askedEntry() });
  }

  /** The part of the cell that has the focus and a reason of its own: an entry of a table. */
  protected askedEntry = (): Pick<Subject, "entry"> => ({});

  private readonly enterName = async (): Promise<void> => {
    this.refusal = null;
    this.entered = "name";
    await this.updateComplete;
    this.querySelector<HTMLInputElement>(".name-entry")?.select();
  };

  /** Says at once what would be refused; the name is taken when it is left, since every formula follows it. */
  private readonly typeName = (event: Event): void => {
    this.refusal = this.refusalOf((event.target as HTMLInputElement).value);
    this.requestUpdate();
  };

  private readonly nameKey = (event: KeyboardEvent): void => {
    if (event.isComposing || (event.key !== "Enter" && event.key !== "Escape")) return;
    event.preventDefault();
    event.stopPropagation();
    this.leaveName(event.key === "Enter" ? "enter" : "escape");
  };

  private leaveName(by: Leaving): void {
    if (this.entered !== "name") return;
    const text = this.querySelector<HTMLInputElement>(".name-entry")?.value ?? this.cell.name;
    const refusal = by === "escape" ? null : this.refusalOf(text);
    if (refusal !== null && by === "enter") {
      this.refusal = refusal;
      this.requestUpdate();
      return;
    }
    if (by !== "escape" && refusal === null) this.desk.session.edit((notebook) => this.renamed(notebook, text));
    if (refusal !== null) tell(words.notRenamed(this.bareName, refusal));
    this.refusal = null;
    this.rest(by === "away" ? null : ".name-button");
  }

  private refusalOf(text: string): string | null {
    try {
      this.renamed(this.desk.session.notebook, text);
      return null;
    } catch (error) {
      return error instanceof Error ? error.message : String(error);
    }
  }

  /** A function cell's parameters are part of what is written. */
  private renamed(notebook: Notebook, text: string): Notebook {
    const { id, kind, name: before } = this.cell;
    const { name, parameters } = readSignature(tidyName(text));
    const next = rename(notebook, id, name, this.desk.session.functions);
    const written = kind === "derived" && parameters ? `${name}(${parameters.join(", ")})` : name;
    const hadParameters = readSignature(before).parameters !== null;
    return parameters || hadParameters ? editCell(next, id, { name: written }) : next;
  }

  private renderAddReason(): TemplateResult {
    return html`<button type="button" class="quiet reason-button"
      aria-label="${words.addReason}: ${words.editReason(this.bareName)}" @click=${this.enterReason}>${words.addReason}</button>`;
  }

  private readonly enterReason = async (): Promise<void> => {
    this.reasonBefore = this.cell.reason;
    this.entered = "reason";
    await this.updateComplete;
    focusTextEntry(this);
  };

  private setReason(text: string | undefined): void {
    const reason = text?.trim() ? text : undefined;
    this.desk.session.edit((notebook) => editCell(notebook, this.cell.id, { reason }), `reason ${this.cell.id}`);
  }

  private leaveReason(by: Leaving): void {
    if (this.entered !== "reason") return;
    if (by === "escape") this.setReason(this.reasonBefore);
    this.desk.session.endGesture();
    this.rest(by === "away" ? null : ".reason-button");
  }
}
