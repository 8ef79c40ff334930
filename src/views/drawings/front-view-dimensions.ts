/** The dimensions of a front view: what is drawn for each, and the labels still to be placed. */
import { degreesFigure, type LengthFormat, lengthText, partFigure, partText } from "./dimension-text.ts";
import { brokenDimension, type Dimensions, figure, type SetDimension, strong, together } from "./dimensions.ts";
import type { FrontViewSheet } from "./front-view-sheet.ts";
import type { Point } from "./geometry.ts";
import type { Label } from "./labels.ts";
import { arc, type Stroke, straight, tick } from "./strokes.ts";
import type { Measure } from "./text-size.ts";
import type { Outline, PanelOutline } from "./wing-outline.ts";

/** The span under the wing, between extension lines from the tips, the line broken for its figure. */
export function spanMarks(
  span: number,
  { right, left }: Outline,
  sheet: FrontViewSheet,
  format: LengthFormat,
  measure: Measure,
): SetDimension {
  const tip = (half: readonly PanelOutline[]): Point => sheet.place(half.at(-1)?.lower[1] ?? { x: 0, y: 0 });
  const text = `${lengthText(span, format)} span`;
  return brokenDimension([tip(right), tip(left)], sheet.spanLine, text, strong, sheet.room, measure);
}

/** The height of each break over the datum, and of the tip, whose dimension line stands off outboard. */
export function heightMarks(
  half: readonly PanelOutline[],
  span: number,
  sheet: FrontViewSheet,
  format: LengthFormat,
): Dimensions {
  const breaks = half.slice(1).map((outboard, index) => {
    const text = partFigure(outboard.lower[0].y, span / 2, format);
    return breakHeight(half[index] ?? outboard, outboard, text, sheet);
  });
  const tip = half.slice(-1).map((panel) => tipHeight(panel, partText(panel.lower[1].y, span / 2, format), sheet));
  return together([...tip, ...breaks]);
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
