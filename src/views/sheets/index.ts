/** Sheets at true size: what is printed, and files for cutters. Loads with the first sheet that is looked at. */
export type { PageDrawing } from "./marks.ts";
export { pageSvg } from "./page-svg.ts";
export { type Moved, movedSince, printedNow } from "./printed.ts";
export { type MadeSheet, makeSheet, type SheetFileKind, sheetFile, sheetFileTypes } from "./sheet-file.ts";
export { svgElement } from "./svg-tree.ts";
