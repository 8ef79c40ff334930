/** The dimensions of a front view: what is drawn for each, and the labels still to be placed. */
import type { FrontViewSheet } from "./front-view-sheet.ts";
import { degreesFigure, heightFigure, heightText, type LengthFormat, lengthText } from "./front-view-words.ts";
import type { Box, Point } from "./geometry.ts";
import { type Label, textBox } from "./labels.ts";
import type { Mark } from "./sketch.ts";
import { arc, type Stroke, straight, textAt, tick } from "./strokes.ts";
import type { Measure } from "./text-size.ts";
import type { Outline, PanelOutline } from "./wing-outline.ts";

interface Dimensions {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

const figure = { size: 13, weight: 400, class: "figure" } as const;
const strong = { size: 13, weight: 600, class: "figure" } as const;

/** The span under the wing, between extension lines from the tips, the line broken for its figure. */
export function spanMarks(
  span: number,
  { right, left }: Outline,
  sheet: FrontViewSheet,
  format: LengthFormat,
  measure: Measure,
): { readonly strokes: readonly Stroke[]; readonly figure: Mark; readonly box: Box } {
  const y = sheet.spanLine;
  const tips = [right, left].map((half) => sheet.place(half.at(-1)?.lower[1] ?? { x: 0, y: 0 }));
  const [from = 0, to = 0] = tips.map(({ x }) => x);
  const text = `${lengthText(span, format)} span`;
  const wide = measure(text, strong);
  const isWithin = to - from > wide + 40;
  // Where a wing is small beside its baseline, the figure stands outside.
  const outside = to + 14 + wide < sheet.room.right ? to + 14 : from - 14 - wide;
  const start = { x: isWithin ? (from + to - wide) / 2 : outside, y: y + 4.5 };
  const box = textBox(text, strong, start, measure);
  const along = (x1: number, x2: number): Stroke => straight("dimension", { x: x1, y }, { x: x2, y });
  return {
    strokes: [
      ...tips.map((tip) => straight("extension", { x: tip.x, y: tip.y + 4 }, { x: tip.x, y: y + 5 })),
      ...(isWithin ? [along(from, box.left - 8), along(box.right + 8, to)] : [along(from, to)]),
      tick({ x: from, y }),
      tick({ x: to, y }),
    ],
    figure: textAt("figure", text, start, strong),
    box,
  };
}

/** The height of each break over the datum, and of the tip, whose dimension line stands off outboard. */
export function heightMarks(
  half: readonly PanelOutline[],
  span: number,
  sheet: FrontViewSheet,
  format: LengthFormat,
): Dimensions {
  const breaks = half.slice(1).map((outboard, index) => {
    const text = heightFigure(outboard.lower[0].y, span, format);
    return breakHeight(half[index] ?? outboard, outboard, text, sheet);
  });
  const tip = half.slice(-1).map((panel) => tipHeight(panel, heightText(panel.lower[1].y, span, format), sheet));
  const all = [...tip, ...breaks];
  return { strokes: all.flatMap(({ strokes }) => strokes), labels: all.flatMap(({ labels }) => labels) };
}

/** A line from the datum up to the joint, whose circle ends it; nothing where the joint lies on the datum. */
function breakHeight(inboard: PanelOutline, outboard: PanelOutline, text: string, sheet: FrontViewSheet): Dimensions {
  const joint = sheet.place(outboard.lower[0]);
  const datum = { x: joint.x, y: sheet.place({ x: 0, y: 0 }).y };
  if (text === "0") return { strokes: [], labels: [] };
  const isBelow = outboard.lower[0].y < 0;
  const at = isBelow ? joint : highest(sheet.place(inboard.upper[1]), sheet.place(outboard.upper[0]));
  const off = isBelow ? "below" : toSheet(outboard.normal);
  return {
    strokes: isSeen(datum, joint) ? [straight("dimension", datum, joint), tick(datum)] : [],
    labels: [{ ...figure, text, at, places: [off, "above", "below", "right", "left"], gap: 7 }],
  };
}

function tipHeight(panel: PanelOutline, text: string, sheet: FrontViewSheet): Dimensions {
  const tip = sheet.place(panel.lower[1]);
  const outward = Math.sign(tip.x - sheet.place(panel.lower[0]).x);
  const at = { x: tip.x + 14 * outward, y: tip.y };
  const datum = { x: at.x, y: sheet.place({ x: 0, y: 0 }).y };
  const extension = straight("extension", { x: tip.x + 4 * outward, y: tip.y }, { x: at.x + 5 * outward, y: tip.y });
  const places: Label["places"] = panel.lower[1].y < 0 ? ["below", "above"] : ["above", "below"];
  return {
    strokes: isSeen(datum, at) ? [extension, straight("dimension", datum, at), tick(datum), tick(at)] : [],
    labels: [{ ...strong, text, at, places, gap: 9 }],
  };
}

const isSeen = (from: Point, to: Point): boolean => Math.abs(to.y - from.y) >= 1;

/** The cant of each panel: an arc from the horizontal through its inboard joint to its lower face. */
export function angleMarks(half: readonly PanelOutline[], sheet: FrontViewSheet): Dimensions {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  half.forEach(({ lower, upper, normal, cant }) => {
    const [from, to] = lower.map(sheet.place) as [Point, Point];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const radius = Math.min(0.62 * length, 96);
    const outward = to.x > from.x ? 1 : -1;
    if (Math.abs(cant) > 1e-4) {
      const level = outward > 0 ? 0 : Math.PI;
      strokes.push(arc("angle", from, radius, level, level + outward * cant));
      if (Math.abs(lower[0].y * sheet.scale) >= 1) {
        strokes.push(straight("guide", from, { x: from.x + outward * (radius + 8), y: from.y }));
      }
    }
    const share = radius / length;
    const [inner, outer] = upper.map(sheet.place) as [Point, Point];
    const at = { x: inner.x + share * (outer.x - inner.x), y: inner.y + share * (outer.y - inner.y) };
    labels.push({
      ...figure,
      text: `${degreesFigure(cant)}°`,
      at,
      places: [toSheet(normal), "above", "right", "below", "left"],
      gap: 7,
    });
  });
  return { strokes, labels };
}

const highest = (a: Point, b: Point): Point => (a.y < b.y ? a : b);

/** A direction of the wing, y and z, as it lies on the sheet. */
const toSheet = ({ x, y }: Point): Point => ({ x: -x, y: -y });
