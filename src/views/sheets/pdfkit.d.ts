/** As much of pdfkit as sheet-pdf.ts uses; it ships no types, and those of another hand lack the browser's parts. */
declare module "pdfkit" {
  export interface DocumentOptions {
    readonly autoFirstPage?: boolean;
    readonly margin?: number;
    readonly info?: Readonly<Record<string, string | Date>>;
  }
  export class PDFDocument {
    constructor(options: DocumentOptions);
    addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): this;
    save(): this;
    restore(): this;
    scale(factor: number): this;
    translate(x: number, y: number): this;
    rotate(degrees: number, options?: { readonly origin: readonly [number, number] }): this;
    rect(x: number, y: number, width: number, height: number): this;
    clip(): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    lineWidth(width: number): this;
    lineJoin(join: "round"): this;
    dash(pattern: readonly number[], options?: object): this;
    undash(): this;
    stroke(color: string): this;
    font(name: string): this;
    fontSize(size: number): this;
    fillColor(color: string): this;
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, options: { readonly lineBreak: false; readonly baseline: string }): this;
    end(): void;
  }
  /** Only where it runs in a browser, which has no files to read fonts from. */
  export const registerStdFonts: undefined | ((...fonts: readonly unknown[]) => void);
}

declare module "pdfkit/output" {
  import type { PDFDocument } from "pdfkit";
  export function toBytes(document: PDFDocument): Promise<Uint8Array<ArrayBuffer>>;
}

declare module "pdfkit/standard-fonts/*" {
  const font: unknown;
  export default font;
}
