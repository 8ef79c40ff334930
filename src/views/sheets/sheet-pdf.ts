import * as pdfkit from "pdfkit";
import { toBytes } from "pdfkit/output";
import Helvetica from "pdfkit/standard-fonts/Helvetica";
import HelveticaBold from "pdfkit/standard-fonts/HelveticaBold";
import { dashOf, looks, type Mark, type PageDrawing } from "./marks.ts";
import { inPdfLetters } from "./pdf-letters.ts";

const pointsPerMillimetre = 72 / 25.4;

/** The pages as a PDF file at true size. */
export function sheetPdf(pages: readonly PageDrawing[], title: string): Promise<Uint8Array<ArrayBuffer>> {
  pdfkit.registerStdFonts?.(Helvetica, HelveticaBold);
  const pdf = new pdfkit.PDFDocument({ autoFirstPage: false, margin: 0, info: { Title: title } });
  const bytes = toBytes(pdf);
  for (const { width, height, area, frame, content } of pages) {
    pdf.addPage({ size: [width * pointsPerMillimetre, height * pointsPerMillimetre], margin: 0 });
    pdf.scale(pointsPerMillimetre);
    for (const mark of frame) draw(pdf, mark);
    pdf.save().rect(area.x, area.y, area.width, area.height).clip();
    for (const mark of content) draw(pdf, mark);
    pdf.restore();
  }
  pdf.end();
  return bytes;
}

function draw(pdf: pdfkit.PDFDocument, mark: Mark): void {
  if (mark.kind === "text") write(pdf, mark);
  else trace(pdf, mark);
}

function trace(pdf: pdfkit.PDFDocument, { layer, points }: Extract<Mark, { readonly kind: "line" }>): void {
  const { width } = looks[layer];
  const dash = dashOf(layer, points);
  const [[x0, y0] = [0, 0], ...others] = points;
  pdf.moveTo(x0, y0);
  for (const [x, y] of others) pdf.lineTo(x, y);
  pdf.lineWidth(width).lineJoin("round");
  if (dash) pdf.dash(dash);
  else pdf.undash();
  pdf.stroke("#000");
}

function write(pdf: pdfkit.PDFDocument, mark: Extract<Mark, { readonly kind: "text" }>): void {
  const { at, size, angle = 0, anchor = "start", isBold } = mark;
  const words = inPdfLetters(mark.text);
  pdf.save().translate(at[0], at[1]).rotate(-angle);
  pdf
    .font(isBold ? "Helvetica-Bold" : "Helvetica")
    .fontSize(size)
    .fillColor("#000");
  const shift = { start: 0, middle: 0.5, end: 1 }[anchor];
  // Labels are placed by their middle, all others by the line they stand on.
  const baseline = anchor === "middle" ? "middle" : "alphabetic";
  pdf.text(words, -shift * pdf.widthOfString(words), 0, { lineBreak: false, baseline }).restore();
}
