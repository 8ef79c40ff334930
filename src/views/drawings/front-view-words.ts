import { unitOf } from "../../library/index.ts";
import { formatNumber, joinUnit } from "../format.ts";
import type { HalfInFront, WingInFront } from "./wing-outline.ts";
import { countInWords, listInWords } from "./words.ts";

/** How lengths are told on a drawing. */
export interface LengthFormat {
  readonly unit: string;
  readonly fraction?: number | undefined;
}

/** A length to three figures with its unit: "479 mm". */
export const lengthText = (value: number, { unit, fraction }: LengthFormat): string =>
  joinUnit(formatNumber(value, unit, fraction === undefined ? { figures: 3 } : { figures: 3, fraction }));

/** A height without its unit, to the decimals that give half the span four figures: "5.5", "19.4", "40.9". */
export function heightFigure(value: number, span: number, { unit, fraction }: LengthFormat): string {
  if (fraction !== undefined) return formatNumber(value, unit, { fraction }).number;
  const { factor } = unitOf(unit);
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(span / 2 / factor)));
  // The rounding to decimals is what shortens; the figures only have to be enough.
  return formatNumber(Number((value / factor).toFixed(decimals)) * factor, unit, { figures: 12 }).number;
}

/** A height with its unit: "40.9 mm". */
export const heightText = (value: number, span: number, format: LengthFormat): string =>
  joinUnit({ number: heightFigure(value, span, format), unit: format.unit });

/** An angle in degrees to three figures, at most to a hundredth: "20", "2.25". */
export const degreesFigure = (value: number): string =>
  formatNumber(Math.round((value / unitOf("deg").factor) * 100) / 100, "1", { figures: 3 }).number;

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
  const heights = stations.z.slice(1, -1).map((z) => heightFigure(z, span, format));
  const breaks = heights.length === 0 ? "" : `breaks ${listInWords(heights)} ${format.unit} high, `;
  return `${panels} ${angles}, ${breaks}${tip} ${heightText(stations.z.at(-1) ?? 0, span, format)} high`;
}
