import { degreesFigure, type LengthFormat, lengthText, partFigure, partText } from "./dimension-text.ts";
import type { HalfInFront, WingInFront } from "./wing-outline.ts";
import { countInWords, listInWords } from "./words.ts";

/** What a front view shows, in words. */
export function frontViewWords(
  wing: WingInFront,
  baseline: { readonly wing: WingInFront; readonly name: string } | undefined,
  format: LengthFormat,
): string {
  const shown = `Span ${lengthText(wing.span, format)}, ${halvesInWords(wing, format)}.`;
  if (!baseline) return shown;
  const before = `span ${lengthText(baseline.wing.span, format)}, ${halvesInWords(baseline.wing, format)}`;
  return `${shown} The thin line is ${baseline.name}: ${before}.`;
}

/** True where the two halves are mirror images, so that each can carry one kind of figures. */
export const isMirrored = ({ right, left }: WingInFront): boolean =>
  right.cant.length === left.cant.length &&
  right.cant.every((cant, index) => near(cant, left.cant[index])) &&
  right.stations.y.every((y, index) => near(y, -(left.stations.y[index] ?? Number.NaN)));

const near = (a: number, b: number | undefined): boolean => b !== undefined && Math.abs(a - b) < 1e-9;

function halvesInWords(wing: WingInFront, format: LengthFormat): string {
  if (isMirrored(wing)) return halfInWords(wing.right, wing.span, " a side", "tips", format);
  const right = halfInWords(wing.right, wing.span, " on the right", "that tip", format);
  return `${right}; ${halfInWords(wing.left, wing.span, " on the left", "that tip", format)}`;
}

function halfInWords(half: HalfInFront, span: number, where: string, tip: string, format: LengthFormat): string {
  const { cant, stations } = half;
  const panels = `${countInWords(cant.length)} ${cant.length === 1 ? "panel" : "panels"}${where}`;
  const angles = `at ${listInWords(cant.map(degreesFigure))} degrees`;
  const heights = stations.z.slice(1, -1).map((z) => partFigure(z, span / 2, format));
  const breaks = heights.length === 0 ? "" : `breaks ${listInWords(heights)} ${format.unit} high, `;
  return `${panels} ${angles}, ${breaks}${tip} ${partText(stations.z.at(-1) ?? 0, span / 2, format)} high`;
}
