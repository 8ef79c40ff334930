/**
 * The front view of a wing at true proportion: wood with its thickness, datum and centre line, span, heights of the
 * breaks on one half and cants on the other, and a baseline as a thin line behind.
 */
import { angleMarks, heightMarks, spanMarks } from "./front-view-dimensions.ts";
import { headMarks } from "./front-view-head.ts";
import { type FrontViewSheet, frontViewSheet } from "./front-view-sheet.ts";
import { datumStrokes, edgeStrokes, jointPoints, lowerFace, woodMark } from "./front-view-wood.ts";
import { frontViewWords, isMirrored, type LengthFormat } from "./front-view-words.ts";
import { type Ground, type Label, type Placing, placeLabels } from "./labels.ts";
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  mark,
  round,
  type Surroundings,
  textMark,
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
}

/** How a front view is drawn. */
export interface FrontViewOptions {
  /** Name of the wing, for the title. */
  readonly name: string;
  /** Width of the sheet in px, 660 unless said, at least 240. */
  readonly width?: number;
  /** Unit of the lengths, mm unless said, and shop fractions for inches. */
  readonly unit?: string;
  readonly fraction?: number | undefined;
  /** How wide texts are; an estimate for the font of the page unless said. */
  readonly measure?: Measure;
}

/** Draws a front view. Throws on an option it does not know and on a wing without a span. */
export const frontView = (data: FrontViewData, options: FrontViewOptions, surroundings: Surroundings): SVGSVGElement =>
  liveFrontView(data, options, surroundings).element;

/** Draws a front view that follows new data in place. */
export const liveFrontView = (
  data: FrontViewData,
  options: FrontViewOptions,
  surroundings: Surroundings,
): LiveDrawing<FrontViewData, FrontViewOptions> => liveDrawing(sketchFrontView, data, options, surroundings);

const known = { name: true, width: true, unit: true, fraction: true, measure: true } as const;

function sketchFrontView(data: FrontViewData, options: FrontViewOptions): Mark {
  checkOptions(options, known, "front view");
  const { name, width = 660, unit = "mm", fraction, measure = estimateWidth } = options;
  const outline = wingOutline(data.wing);
  const baseline = data.baseline && wingOutline(data.baseline.wing);
  const format: LengthFormat = { unit, fraction };
  const laidOut = (growth: number) => {
    const sheet = frontViewSheet(outline, baseline, Math.max(240, width), growth);
    return { sheet, ...contentOf(data, outline, baseline, sheet, format, measure) };
  };
  // Where labels find no good place the sheet grows upwards, into the open space over the wing, if that mends it.
  let best = laidOut(0);
  if (best.faults > 0) {
    const grown = laidOut(3);
    if (grown.faults < best.faults) best = grown;
  }
  const { sheet, layers, leftOut } = best;
  return mark(
    "svg",
    {
      class: "drawing front-view",
      role: "img",
      width: sheet.width,
      height: sheet.height,
      viewBox: `0 0 ${sheet.width} ${sheet.height}`,
    },
    [
      textMark("title", {}, `Front view of ${name}`),
      textMark("desc", {}, frontViewWords(data.wing, data.baseline, format)),
      ...layers,
      layer("head", headMarks(sheet, format, data.baseline?.name, leftOut, measure)),
    ],
  );
}

function contentOf(
  { wing }: FrontViewData,
  outline: Outline,
  baseline: Outline | undefined,
  sheet: FrontViewSheet,
  format: LengthFormat,
  measure: Measure,
) {
  const ghost: Stroke[] = baseline ? [{ class: "ghost", points: lowerFace(baseline).map(sheet.place) }] : [];
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

/** Strong labels have the first choice; where that leaves a fault the others, if that is better. */
function bestPlacing(labels: readonly Label[], ground: Ground) {
  let best: Placing | undefined;
  for (const sign of [-1, 1]) {
    const next = placeLabels(
      labels.toSorted((a, b) => sign * (a.weight - b.weight)),
      ground,
    );
    if (!best || faultsOf(next) < faultsOf(best)) best = next;
    if (faultsOf(best) === 0) break;
  }
  const found = best ?? { placed: [], leftOut: labels };
  return { ...found, faults: faultsOf(found) };
}

/** A label left out is worse than any number of leaders that run over a line. */
const faultsOf = ({ placed, leftOut }: Placing): number =>
  100 * leftOut.length + placed.filter(({ isOverLine }) => isOverLine).length;

const jointRadius = 2.6;
