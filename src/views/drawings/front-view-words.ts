import { degreesFigure, type LengthFormat, lengthText, partFigure, partText } from "./dimension-text.ts";
import { ghostsInWords } from "./head.ts";
import type { HalfInFront, WingInFront } from "./wing-outline.ts";
import { countInWords, listInWords } from "./words.ts";

interface Named {
  readonly wing: WingInFront;
}
interface Ghost extends Named {
  readonly name: string;
}

/** What a front view shows, in words. */
export function frontViewWords(
  {
    wing,
    baseline,
    further = [],
  }: Named & { readonly baseline?: Ghost | undefined; readonly further?: readonly Ghost[] | undefined },
  format: LengthFormat,
): string {
  const shown = `Span ${lengthText(wing.span, format)}, ${halvesInWords(wing, format)}.`;
  const told = (other: WingInFront): string =>
    `span ${lengthText(other.span, format)}, ${halvesInWords(other, format)}`;
  return [
    shown,
    ...ghostsInWords(
      baseline && { name: baseline.name, told: told(baseline.wing) },
      further.map((each) => ({ name: each.name, told: told(each.wing) })),
    ),
  ].join(" ");
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
