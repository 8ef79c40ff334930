import { html, nothing, type TemplateResult } from "lit";
import type { SheetCell } from "../cells/index.ts";
import { CellView, errorLine, hiddenValue } from "./cell-view.ts";
import { exportWords } from "./export-words.ts";
import { sheetTitle } from "./figure-words.ts";
import { fileNameOf, offerFile } from "./files.ts";
import type { MenuItem } from "./menu.ts";
import { tell } from "./notice.ts";
import { words } from "./sheet-cell-words.ts";

import type { MadeSheet, PageDrawing, SheetFileKind } from "./sheets/index.ts";
import { words as commonWords } from "./words.ts";

/** What lays sheets out and writes their files: it comes with the first sheet that is looked at. */
const loadSheets = () => import("./sheets/index.ts");
type Sheets = Awaited<ReturnType<typeof loadSheets>>;

/** A sheet: its pages in small, and what prints them at true size or hands them over as files. */
export class SheetCellView extends CellView<SheetCell> {
  static override properties = { ...CellView.properties, asked: { state: true } };
  /** What went to the printer, until the person says whether it came out. */
  declare asked: SheetCell["printed"] | null;
  private sheets: Sheets | null = null;

  constructor() {
    super();
    this.asked = null;
  }

  override get groupName(): string {
    return sheetTitle(this.cell);
  }

  override renderCell(): TemplateResult {
    const { result, cell, concealing, sheets } = this;
    const title = sheetTitle(cell);
    if (!sheets) void loadSheets().then((loaded) => this.arrive(loaded));
    const made = sheets && concealing === undefined ? this.make(sheets) : null;
    const isBusy = result === undefined || this.isPending;
    return html`<div class="margin"></div>
      <div class="body free">
        <p><strong>${title}</strong> ${words.paper(cell)}</p>
        ${concealing === undefined ? nothing : hiddenValue(this.desk, concealing)}
        ${typeof made === "string" ? html`<p class="fault"><span class="sign" aria-hidden="true">✕</span> ${made}</p>` : nothing}
        <div class="sheet-made${isBusy ? " busy" : ""}" aria-busy=${isBusy ? "true" : "false"}>
          ${made && typeof made !== "string" && sheets ? this.renderPages(made, sheets, title) : result === undefined ? commonWords.pending : nothing}
        </div>
        <div class="messages">${result && !result.ok ? errorLine(result.error) : nothing}</div>
      </div>`;
  }

  private arrive(sheets: Sheets): void {
    if (this.sheets) return;
    this.sheets = sheets;
    this.requestUpdate();
  }

  private renderPages({ parts, pages }: MadeSheet, sheets: Sheets, title: string): TemplateResult {
    const { printed } = this.cell;
    const moved = printed ? sheets.movedSince(printed, parts) : [];
    return html`${
      printed && moved.length > 0
        ? html`<div class="moved-since" role="status"><p><strong><span aria-hidden="true">⚠ </span>${words.old(printed)}</strong></p>
          <ul>${moved.slice(0, words.mostMoved).map((each) => html`<li>${words.moved(each)}</li>`)}</ul>
          ${moved.length > words.mostMoved ? html`<p>${words.andMore(moved.length - words.mostMoved)}</p>` : nothing}</div>`
        : nothing
    }
      ${printed && moved.length === 0 && !this.isPending ? html`<p class="reason">${words.asPrinted(printed)}</p>` : nothing}
      <div class="sheet-actions">
        <button type="button" @click=${() => this.print()} aria-label=${words.printOf(title)}>${words.print}</button>
        <button type="button" @click=${() => this.save("pdf")} aria-label=${words.fileOf(title, "PDF")}>PDF</button>
        <button type="button" @click=${() => this.save("svg")} aria-label=${words.fileOf(title, "SVG")}>SVG</button>
        <button type="button" @click=${() => this.save("dxf")} aria-label=${words.fileOf(title, "DXF")}>DXF</button>
        <span>${words.count(pages.length, parts.length)}</span>
      </div>
      ${
        this.asked
          ? html`<div class="sheet-actions" role="group" aria-label=${words.didItPrint}><span>${words.didItPrint}</span>
            <button type="button" @click=${() => this.answer(true)}>${words.itDid}</button>
            <button type="button" @click=${() => this.answer(false)}>${words.itDidNot}</button></div>`
          : nothing
      }
      <p class="reason">${words.cautions}</p>
      <div class="sheet-pages" role="group" aria-label=${words.pagesOf(title)}>${pages.map((page) => pageImage(page, sheets))}</div>`;
  }

  /** The parts and pages as they are now, or a sentence that says why there are none; null while the cell has no result. */
  private make({ makeSheet }: Sheets): MadeSheet | string | null {
    const { cell, result } = this;
    const { notebook, trial } = this.desk.session;
    if (!result?.ok) return null;
    const title = sheetTitle(cell);
    return makeSheet(cell, result, { title, notebook: notebook.title, trial: trial?.name ?? null, date: today() });
  }

  protected override get ownItems(): MenuItem[] {
    return [
      ...super.ownItems,
      { label: words.print, act: () => this.print() },
      { label: words.item("PDF"), act: () => this.save("pdf") },
      { label: words.item("SVG"), act: () => this.save("svg") },
      { label: words.item("DXF"), act: () => this.save("dxf") },
    ];
  }

  private async print(): Promise<void> {
    const sheets = this.sheets ?? (await loadSheets());
    const made = this.readyOrWhyNot(sheets);
    if (typeof made === "string") return tell(made);
    const { printPages } = await import("./sheets/print-pages.ts");
    await printPages(made.pages);
    // Nothing tells whether the dialog printed or was called off; to take an old sheet for the new one costs wood.
    this.asked = sheets.printedNow(made.parts, today(), this.desk.session.trial?.name);
  }

  private async save(kind: SheetFileKind): Promise<void> {
    const sheets = this.sheets ?? (await loadSheets());
    const made = this.readyOrWhyNot(sheets);
    if (typeof made === "string") return tell(made);
    const title = sheetTitle(this.cell);
    const type = sheets.sheetFileTypes[kind];
    const name = fileNameOf(`${this.desk.session.notebook.title} ${title}`, kind);
    try {
      const file = await sheets.sheetFile(made, title, kind);
      if ((await offerFile(name, new Blob([file], { type }), { [type]: [`.${kind}`] })) === null) return;
    } catch (error) {
      return tell(exportWords.cannotSave(error instanceof Error ? error.message : String(error)));
    }
    this.keep(sheets.printedNow(made.parts, today(), this.desk.session.trial?.name));
  }

  /** What may go out now, or a sentence that says why nothing does: never what was there before, nor what a question hides. */
  private readyOrWhyNot(sheets: Sheets): MadeSheet | string {
    const { result } = this;
    if (this.concealing !== undefined) return words.hidden;
    if (this.isPending) return words.notYet;
    return result && !result.ok ? result.error.message : (this.make(sheets) ?? words.notYet);
  }

  private answer(didPrint: boolean): void {
    if (didPrint && this.asked) this.keep(this.asked);
    this.asked = null;
  }

  /** What leaves the notebook is remembered, so that a later change of it can be told. */
  private keep(printed: NonNullable<SheetCell["printed"]>): void {
    // While the file was made or put away the cell may have been deleted, or another notebook opened.
    if (!this.isConnected) return;
    if (JSON.stringify(printed) === JSON.stringify(this.cell.printed)) return;
    const { id } = this.cell;
    this.desk.session.remark((cell) => (cell.id === id && cell.kind === "sheet" ? { ...cell, printed } : cell));
  }
}

/** A page in small, as an image with its name. */
function pageImage(page: PageDrawing, { pageSvg, svgElement }: Sheets): SVGElement {
  const svg = svgElement(pageSvg(page));
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", page.title);
  return svg;
}

/** The day here, as 2026-11-25. */
const today = (): string => new Date().toLocaleDateString("sv-SE");
