import type { Result, SheetCell } from "../../cells/index.ts";
import { cutterDxf } from "./cutter-dxf.ts";
import { cutterSvg } from "./cutter-svg.ts";
import { cuttingPlan } from "./cutting-plan.ts";
import { drawnLines } from "./drawn-lines.ts";
import type { PageDrawing } from "./marks.ts";
import { type SheetHead, sheetPages } from "./page-drawing.ts";
import { mostPages } from "./pages.ts";
import { paperOf } from "./paper.ts";
import { type Part, partsOf } from "./parts.ts";
import { patternOf } from "./pattern-of.ts";
import { sheetWords } from "./sheet-words.ts";
import { writtenParts } from "./written-parts.ts";

/** What is on a sheet, and its pages. */
export interface MadeSheet {
  readonly parts: readonly Part[];
  readonly pages: readonly PageDrawing[];
}

/** The sheet of a cell whose result is there, or a sentence that says why there is none. */
export function makeSheet(
  cell: SheetCell,
  result: Extract<Result, { readonly ok: true }>,
  head: SheetHead,
): MadeSheet | string {
  const pattern = patternOf(result);
  if (!pattern) return sheetWords.noPattern(cell.of);
  const parts = writtenParts(partsOf(pattern).map(drawnLines));
  if (parts.length === 0) return sheetWords.noParts(cell.of);
  const pages = sheetPages(parts, paperOf(cell), head);
  return pages ? { parts, pages } : sheetWords.tooManyPages(mostPages);
}

/** The kinds of files that a sheet can be handed over as, with their media types. */
export const sheetFileTypes = { pdf: "application/pdf", svg: "image/svg+xml", dxf: "image/vnd.dxf" } as const;
export type SheetFileKind = keyof typeof sheetFileTypes;

/** A sheet as a file: its pages as PDF, all its parts beside each other as SVG or DXF for a cutter. */
export async function sheetFile(
  { parts, pages }: MadeSheet,
  title: string,
  kind: SheetFileKind,
): Promise<string | Uint8Array<ArrayBuffer>> {
  if (kind === "pdf") {
    const { sheetPdf } = await import("./sheet-pdf.ts");
    return sheetPdf(pages, title);
  }
  const plan = cuttingPlan(parts);
  return kind === "svg" ? cutterSvg(plan, title) : cutterDxf(plan);
}
