/**
 * The front view of a wing at true proportion: wood with its thickness, datum and centre line, span, heights of the
 * breaks on one half and cants on the other, and a baseline as a thin line behind.
 */
import type { LengthFormat } from "./dimension-text.ts";
import { angleMarks, heightMarks, spanMarks } from "./front-view-dimensions.ts";
import { type FrontViewSheet, frontViewSheet } from "./front-view-sheet.ts";
import { datumStrokes, edgeStrokes, jointPoints, lowerFace, woodMark } from "./front-view-wood.ts";
import { frontViewWords, isMirrored } from "./front-view-words.ts";
import { furtherClass, ghostNames, headMarks } from "./head.ts";
import type { Label } from "./labels.ts";
import { type DrawingOptions, drawingOptions } from "./options.ts";
import { bestPlacing, withRoom } from "./placing.ts";
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  mark,
  round,
  type Surroundings,
  sheetMark,
} from "./sketch.ts";
import { labelMarks, leaderStrokes, ring, type Stroke, strokeLines, strokeMarks } from "./strokes.ts";
import { estimateWidth, type Measure } from "./text-size.ts";
import { type Outline, type WingInFront, wingOutline } from "./wing-outline.ts";

export type { WingInFront } from "./wing-outline.ts";

/** What a front view is drawn from. */
export interface FrontViewData {
  readonly wing: WingInFront;
  /** Drawn as a thin line behind, under its name: "baseline", "as flown". */
  readonly baseline?: { readonly wing: WingInFront; readonly name: string } | undefined;
  /** Other designs, such as trials: dashed lines, each under its name. */
  readonly further?: readonly { readonly wing: WingInFront; readonly name: string }[] | undefined;
}

/** How a front view is drawn. */
export type FrontViewOptions = DrawingOptions;

/** Draws a front view. Throws on an option it does not know and on a wing without a span. */
export const frontView = (data: FrontViewData, options: FrontViewOptions, surroundings: Surroundings): SVGSVGElement =>
  liveFrontView(data, options, surroundings).element;

/** Draws a front view that follows new data in place. */
export const liveFrontView = (
  data: FrontViewData,
  options: FrontViewOptions,
  surroundings: Surroundings,
): LiveDrawing<FrontViewData, FrontViewOptions> => liveDrawing(sketchFrontView, data, options, surroundings);

function sketchFrontView(data: FrontViewData, options: FrontViewOptions): Mark {
  checkOptions(options, drawingOptions, "front view");
  const { name, width = 660, unit = "mm", fraction, measure = estimateWidth } = options;
  const outline = wingOutline(data.wing);
  const baseline = data.baseline && wingOutline(data.baseline.wing);
  const further = (data.further ?? []).map(({ wing }) => wingOutline(wing));
  const others = [...(baseline ? [baseline] : []), ...further];
  const format: LengthFormat = { unit, fraction };
  const laidOut = (growth: number) => {
    const sheet = frontViewSheet(outline, others, Math.max(240, width), growth);
    return { sheet, ...contentOf(data, outline, ghostsOf(baseline, further), sheet, format, measure) };
  };
  // Room is added upwards, in the open space over the wing.
  const { sheet, layers, leftOut } = withRoom(laidOut);
  const head = { seen: `seen from the front, ${unit}`, unit, leftOut, ...ghostNames(data) };
  return sheetMark("front-view", sheet, `Front view of ${name}`, () => frontViewWords(data, format), [
    ...layers,
    layer("head", headMarks(head, sheet.headLine, sheet.room, measure)),
  ]);
}

/** The lower faces of what it was and of further designs, each with its class. */
const ghostsOf = (baseline: Outline | undefined, further: readonly Outline[]): Stroke[] => [
  ...(baseline ? [{ class: "ghost", points: lowerFace(baseline) }] : []),
  ...further.map((each, index) => ({ class: furtherClass(index), points: lowerFace(each) })),
];

function contentOf(
  { wing }: FrontViewData,
  outline: Outline,
  ghosts: readonly Stroke[],
  sheet: FrontViewSheet,
  format: LengthFormat,
  measure: Measure,
) {
  const ghost = ghosts.map((each): Stroke => ({ ...each, points: each.points.map(sheet.place) }));
  const edges = edgeStrokes(outline, wing, sheet);
  const joints = jointPoints(outline, wing).map(sheet.place);
  const span = spanMarks(wing.span, outline, sheet, format, measure);
  const mirrored = isMirrored(wing);
  const heights = [
    heightMarks(outline.right, wing.span, sheet, format),
    ...(mirrored ? [] : [heightMarks(outline.left, wing.span, sheet, format)]),
  ];
  const angles = [...(mirrored ? [] : [angleMarks(outline.right, sheet)]), angleMarks(outline.left, sheet)];
  const strokes = [
    ...datumStrokes(outline, sheet),
    ...span.strokes,
    ...[...heights, ...angles].flatMap((each) => each.strokes),
  ];
  const labels: Label[] = [...heights, ...angles].flatMap((each) => each.labels);
  const ground = {
    sheet: sheet.room,
    lines: [...strokeLines([...ghost, ...edges, ...strokes]), ...joints.flatMap((joint) => ring(joint, jointRadius))],
    boxes: [span.box],
    measure,
  };
  const { placed, leftOut, faults } = bestPlacing(labels, ground);
  const layers = [
    layer(
      "wood-layer",
      [...outline.right, ...outline.left].map((panel) => woodMark(panel, sheet)),
    ),
    layer("ghost-layer", strokeMarks(ghost)),
    layer("lines-layer", strokeMarks([...strokes, ...leaderStrokes(placed)])),
    layer("edge-layer", strokeMarks(edges)),
    layer(
      "joint-layer",
      joints.map(({ x, y }) => mark("circle", { class: "joint", cx: round(x), cy: round(y), r: jointRadius })),
    ),
    layer("figure-layer", [span.figure, ...labelMarks(placed)]),
  ];
  return { layers, leftOut: leftOut.length, faults };
}

const jointRadius = 2.6;
