import DxfParser, { type ILwpolylineEntity, type ITextEntity } from "dxf-parser";
import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { compile, readNotebook, runPlan, type SheetCell } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import { type MadeSheet, makeSheet, sheetFile } from "../../../src/views/sheets/sheet-file.ts";
import { blanksNotebook } from "./blanks-notebook.ts";

const head = { title: "Blanks", notebook: "A straight one", trial: "thin & light", date: "2026-11-25" };

function made(of = "blanks", more: Partial<SheetCell> = {}): MadeSheet | string {
  const notebook = readNotebook(blanksNotebook(of));
  const cell = { ...(notebook.cells.find(({ kind }) => kind === "sheet") as SheetCell), ...more };
  const result = runPlan(compile(notebook.cells, functions)).get(cell.id);
  if (!result?.ok) throw new Error(result?.error.message ?? "got no result");
  return makeSheet(cell, result, head);
}
const sheet = made() as MadeSheet;

/** Width and height of all points, and how often each is there. */
const sizesOf = (outlines: readonly (readonly (readonly [number, number])[])[]) =>
  outlines
    .map((points) => {
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].map((size) => size.toFixed(2));
    })
    .map((size) => size.join(" x "))
    .sort();

// The panels of the notebook are rectangles of 120 mm by 60 mm and of 80 mm by 60 mm, right and left.
const outlines = ["120.00 x 60.00", "120.00 x 60.00", "80.00 x 60.00", "80.00 x 60.00"];

test("the SVG for a cutter, read back by another library, has each blank at its size, layers apart, in mm", async () => {
  const text = (await sheetFile(sheet, "Blanks <1>", "svg")) as string;
  const { document } = parseHTML(text);
  const svg = document.querySelector("svg");
  const [, , width, height] = (svg?.getAttribute("viewBox") ?? "").split(" ").map(Number);
  expect(svg?.getAttribute("width")).toBe(`${width}mm`);
  expect(svg?.getAttribute("height")).toBe(`${height}mm`);
  expect([...document.querySelectorAll("g")].map((group) => group.id)).toEqual(["text", "score", "cut"]);
  const cuts = [...document.querySelectorAll("#cut polyline")].map((line) =>
    (line.getAttribute("points") ?? "").split(" ").map((point) => point.split(",").map(Number) as [number, number]),
  );
  expect(sizesOf(cuts)).toEqual(outlines);
  for (const points of cuts) expect(points.at(-1)).toEqual(points[0]);
  expect(document.querySelectorAll("#score polyline").length).toBeGreaterThan(0);
  const colors = (layer: string, of: string) =>
    new Set([...document.querySelectorAll(`#${layer} > *`)].map((mark) => mark.getAttribute(of)));
  const all = [colors("cut", "stroke"), colors("score", "stroke"), colors("text", "fill")].map((each) => [...each]);
  expect(all.map((each) => each.length)).toEqual([1, 1, 1]);
  expect(new Set(all.flat()).size).toBe(3);
  // A dashed line would be cut as dashes.
  expect(text).not.toContain("dasharray");
  expect([...document.querySelectorAll("#text text")].map((each) => each.textContent)).toContain("right 1, 2 mm");
  for (const [x, y] of cuts.flat()) {
    expect(x).toBeGreaterThan(0);
    expect(x).toBeLessThan(width ?? 0);
    expect(y).toBeGreaterThan(0);
    expect(y).toBeLessThan(height ?? 0);
  }
});

test("the DXF, read back by another library, has the same in millimetres on layers of its own", async () => {
  const dxf = new DxfParser().parseSync((await sheetFile(sheet, "Blanks", "dxf")) as string);
  // 4 is millimetres: AutoCAD's published DXF reference, header variable $INSUNITS.
  expect(dxf?.header.$INSUNITS).toBe(4);
  const entities = dxf?.entities ?? [];
  const cuts = entities.filter((each): each is ILwpolylineEntity => each.layer === "cut" && each.type === "LWPOLYLINE");
  expect(sizesOf(cuts.map(({ vertices }) => vertices.map(({ x, y }) => [x, y] as const)))).toEqual(outlines);
  const texts = entities.filter((each): each is ITextEntity => each.type === "TEXT");
  expect(texts.map(({ layer, text }) => `${layer}: ${text}`)).toContain("text: right 1, 2 mm");
  // 2 mm · tan 3° and 2 mm · tan 4°.
  expect(texts.map(({ text }) => text)).toContain("bevel 3 deg: 0.1 mm off above");
  expect(texts.map(({ text }) => text)).toContain("bevel 4 deg: 0.14 mm off above");
  expect(new Set(entities.map(({ layer }) => layer))).toEqual(new Set(["cut", "score", "text"]));
});

test("letters in a part's name stay letters in every file", async () => {
  for (const kind of ["svg", "dxf"] as const) {
    expect(await sheetFile(sheet, "A <script>&\"'", kind)).not.toContain("<script>");
  }
});

test("a PDF begins as one and has a page for each page", async () => {
  const bytes = (await sheetFile(sheet, "Blanks, −½ → Łódź", "pdf")) as Uint8Array;
  const text = new TextDecoder("latin1").decode(bytes);
  expect(text.startsWith("%PDF-")).toBe(true);
  expect(text.match(/\/Type \/Page\b/g)).toHaveLength(sheet.pages.length);
});

test("every page says what it is, of which notebook and trial, of which day and which page", () => {
  for (const [index, { frame, title }] of sheet.pages.entries()) {
    const words = frame.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" | ");
    expect(words).toContain(
      `A straight one · trial: thin & light · 2026-11-25 · page ${index + 1} of ${sheet.pages.length}`,
    );
    expect(words).toContain("100 mm");
    expect(words).toContain("4 in");
    expect(words).toContain("141.4 mm");
    expect(title).toContain("at true size");
  }
});

test("what is no pattern, or would fill a book, is told in a sentence", () => {
  expect(made("main_wing")).toContain("main_wing is nothing that can be cut");
});
