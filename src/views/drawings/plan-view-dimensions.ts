/** The dimensions of a plan view: what is drawn for each, and the labels still to be placed. */
import { type LengthFormat, lengthText, partFigure } from "./dimension-text.ts";
import {
  brokenDimension,
  type Dimensions,
  dimensionLine,
  extension,
  figure,
  type SetDimension,
  strong,
} from "./dimensions.ts";
import type { Line, Point } from "./geometry.ts";
import type { GliderOnPaper, HalfOnPaper, TailplaneOnPaper, WingOnPaper } from "./glider.ts";
import { type PanelFromAbove, panelsFromAbove } from "./plan-view-outline.ts";
import type { PlanViewSheet } from "./plan-view-sheet.ts";
import { straight, tick } from "./strokes.ts";
import type { Measure } from "./text-size.ts";

/** The tail arm, and what stands at its two ends. */
export interface TailArm {
  readonly length: number;
  readonly balance: { readonly x: number; readonly y: number };
  readonly tailplane: TailplaneOnPaper;
}

/** The span over the glider and the tailplane's under it, each line broken for its figure. */
export function spanMarks(
  { wing, tailplane }: GliderOnPaper,
  sheet: PlanViewSheet,
  format: LengthFormat,
  measure: Measure,
): SetDimension[] {
  const tip = (half: HalfOnPaper): Point => sheet.place(panelsFromAbove(half).at(-1)?.leading.to ?? { x: 0, y: 0 });
  const text = `${lengthText(wing.span, format)} span`;
  const ends = [tip(wing.left), tip(wing.right)] as const;
  return [
    brokenDimension(ends, sheet.spanLine, text, strong, sheet.room, measure),
    ...(tailplane ? [tailSpan(tailplane, wing.span, sheet, format, measure)] : []),
  ];
}

function tailSpan(
  { span, stations }: TailplaneOnPaper,
  whole: number,
  sheet: PlanViewSheet,
  format: LengthFormat,
  measure: Measure,
): SetDimension {
  const aft = (stations.x.at(-1) ?? 0) + (stations.chord.at(-1) ?? 0);
  const ends = [sheet.place({ x: -span / 2, y: aft }), sheet.place({ x: span / 2, y: aft })] as const;
  return brokenDimension(ends, sheet.tailLine, partFigure(span, whole / 2, format), figure, sheet.room, measure);
}

/** The true length of each panel of a half, between extension lines from its joints. */
export function lengthMarks(half: HalfOnPaper, span: number, sheet: PlanViewSheet, format: LengthFormat): Dimensions {
  const y = sheet.lengthsLine;
  const panels = panelsFromAbove(half);
  const stations = [...panels.map(({ leading }) => leading.from), ...panels.slice(-1).map(({ leading }) => leading.to)];
  const joints = stations.map(sheet.place);
  const on = joints.map(({ x }): Point => ({ x, y }));
  const [root = { x: 0, y }] = on;
  const tip = on.at(-1) ?? root;
  return {
    strokes: [
      // The root's lies on the centre line, the tip's is that of the span.
      ...joints.slice(1, -1).map((joint) => extension(joint, { x: joint.x, y })),
      straight("dimension", root, tip),
      ...on.map(tick),
    ],
    labels: half.length.map((length, index) => {
      const [from, to] = [on[index] ?? root, on[index + 1] ?? tip];
      const at = { x: (from.x + to.x) / 2, y };
      return { ...figure, text: partFigure(length, span / 2, format), at, places: ["above", "below"], gap: 5 };
    }),
  };
}

/** The chord at the tip, off its outboard edge. */
export function tipChordMarks(half: HalfOnPaper, span: number, sheet: PlanViewSheet, format: LengthFormat): Dimensions {
  const tip = panelsFromAbove(half).at(-1);
  if (!tip) return { strokes: [], labels: [] };
  return chordMarks({ from: tip.leading.to, to: tip.trailing.to }, outwardOf(tip) * tipOff, span, sheet, format);
}

/** The chord at the root, beside the stick. */
export function rootChordMarks(
  half: HalfOnPaper,
  span: number,
  sheet: PlanViewSheet,
  format: LengthFormat,
): Dimensions {
  const root = panelsFromAbove(half)[0];
  if (!root) return { strokes: [], labels: [] };
  return chordMarks(
    { from: root.leading.from, to: root.trailing.from },
    outwardOf(root) * rootOff,
    span,
    sheet,
    format,
  );
}

const outwardOf = ({ leading }: PanelFromAbove): number => Math.sign(leading.to.x - leading.from.x);

/** A chord of the wing, in m, told on a line that stands off by some px. */
function chordMarks(chord: Line, off: number, span: number, sheet: PlanViewSheet, format: LengthFormat): Dimensions {
  const [from, to] = [sheet.place(chord.from), sheet.place(chord.to)];
  const [top, end] = [from.y, to.y].map((y): Point => ({ x: from.x + off, y })) as [Point, Point];
  const at = { x: top.x, y: (top.y + end.y) / 2 };
  return {
    strokes: [extension(from, top), extension(to, end), ...dimensionLine(top, end)],
    labels: [
      {
        ...figure,
        text: partFigure(chord.to.y - chord.from.y, span / 2, format),
        at,
        places: [...(off < 0 ? (["left", "right"] as const) : (["right", "left"] as const)), "above", "below"],
        elsewhere: [top, end],
        gap: 9,
      },
    ],
  };
}

/** The mean aerodynamic chord where it lies on the left half. */
export function macMarks(
  { span, mac, mac_x, mac_y }: WingOnPaper,
  sheet: PlanViewSheet,
  format: LengthFormat,
): Dimensions {
  const [from, to] = [sheet.place({ x: -mac_y, y: mac_x }), sheet.place({ x: -mac_y, y: mac_x + mac })];
  const end = ({ x, y }: Point) => straight("angle", { x: x - 4, y }, { x: x + 4, y });
  const text = `mac ${partFigure(mac, span / 2, format)}`;
  const at = { x: from.x, y: (from.y + to.y) / 2 };
  const along = [0.3, 0.7].map((share) => ({ x: from.x, y: from.y + (to.y - from.y) * share }));
  return {
    strokes: [straight("angle", from, to), end(from), end(to)],
    labels: [{ ...figure, text, at, elsewhere: [...along, from, to], places: ["left", "right", "above", "below"] }],
  };
}

/** From the balance point back to a quarter of the tailplane's mean chord, beside the tailplane. */
export function tailArmMarks(
  { length, balance, tailplane }: TailArm,
  { span, right }: WingOnPaper,
  { place }: PlanViewSheet,
  format: LengthFormat,
): Dimensions {
  const front = place({ x: balance.y, y: balance.x });
  const back = place({ x: tailplane.mac_y, y: tailplane.quarter_x });
  const x = besideJoints(place({ x: tailplane.span / 2, y: 0 }).x, right, place);
  const text = `${partFigure(length, span / 2, format)} tail arm`;
  const at = { x, y: (front.y + back.y) / 2 };
  return {
    strokes: [
      extension(front, { x, y: front.y }),
      extension(back, { x, y: back.y }),
      ...dimensionLine({ x, y: front.y }, { x, y: back.y }),
    ],
    labels: [{ ...figure, text, at, places: ["right", "left"], elsewhere: alongLine(front, back, x) }],
  };
}

/** Just outside a tip of the tailplane, but not on a joint line of the wing. */
function besideJoints(tip: number, half: HalfOnPaper, place: PlanViewSheet["place"]): number {
  const joints = panelsFromAbove(half).map(({ leading }) => place(leading.to).x);
  const off = armOffs.find((each) => joints.every((joint) => Math.abs(joint - tip - each) > 6));
  return tip + (off ?? armOffs[0]);
}

const alongLine = (from: Point, to: Point, x: number): Point[] =>
  [0.6, 0.4, 0.7, 0.3].map((share) => ({ x, y: from.y + (to.y - from.y) * share }));

const rootOff = 24;
const tipOff = 14;
const armOffs = [16, 26, 10] as const;
