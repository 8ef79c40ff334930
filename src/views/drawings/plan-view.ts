/**
 * The plan view of a glider, or of a wing alone, at true proportion: panels with their joint lines, mean aerodynamic
 * chord, balance point and neutral point, tailplane, fin and stick, with a baseline as a thin line.
 */
import { ghostRing, hasLegend, legendMarks, type NamedPoint, namedPoints, pointLabels } from "./balance-marks.ts";
import type { LengthFormat } from "./dimension-text.ts";
import { type Dimensions, together } from "./dimensions.ts";
import type { Point } from "./geometry.ts";
import { type GliderDrawingData, type GliderOnPaper, glidersDrawn } from "./glider.ts";
import { type GliderContent, gliderLayers } from "./glider-layers.ts";
import { type GliderDrawingOptions, gliderDrawingOptions } from "./glider-options.ts";
import { ghostNames, headMarks } from "./head.ts";
import { ghostStrokes, type Piece, placePiece, plainPiece } from "./pieces.ts";
import { withRoom } from "./placing.ts";
import {
  lengthMarks,
  macMarks,
  rootChordMarks,
  spanMarks,
  tailArmMarks,
  tipChordMarks,
} from "./plan-view-dimensions.ts";
import { type PlanOutline, planOutline } from "./plan-view-outline.ts";
import { type PlanViewSheet, planViewSheet } from "./plan-view-sheet.ts";
import { planViewWords } from "./plan-view-words.ts";
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  type Surroundings,
  sheetMark,
} from "./sketch.ts";
import { type Stroke, straight } from "./strokes.ts";
import { estimateWidth, type Measure } from "./text-size.ts";

/** Draws a plan view. Throws on an option it does not know and on a wing without a span. */
export const planView = (
  data: GliderDrawingData,
  options: GliderDrawingOptions,
  surroundings: Surroundings,
): SVGSVGElement => livePlanView(data, options, surroundings).element;

/** Draws a plan view that follows new data in place. */
export const livePlanView = (
  data: GliderDrawingData,
  options: GliderDrawingOptions,
  surroundings: Surroundings,
): LiveDrawing<GliderDrawingData, GliderDrawingOptions> => liveDrawing(sketchPlanView, data, options, surroundings);

function sketchPlanView(data: GliderDrawingData, options: GliderDrawingOptions): Mark {
  checkOptions(options, gliderDrawingOptions, "plan view");
  const { name, width = 660, height = 600, unit = "mm", fraction, measure = estimateWidth } = options;
  const format: LengthFormat = { unit, fraction };
  const { gliders, classes } = glidersDrawn(data);
  const outlines = gliders.map(planOutline);
  const points = gliders.flatMap((glider) => [...balanceOf(glider), ...neutralOf(glider)]);
  const content = {
    pieces: [...outlines.flatMap(({ under, over }) => [...under, ...over]), plainPiece(points)],
    wings: outlines.flatMap(({ over }) => over.slice(0, 1)),
    hasLegend: hasLegend(width, points.length),
    hasTailplane: data.glider.tailplane !== undefined,
  };
  const laidOut = (growth: number) => {
    const sheet = planViewSheet(content, Math.max(240, width), height, growth);
    return { sheet, ...gliderLayers(contentOf(data, outlines, classes, sheet, format, measure), sheet.room, measure) };
  };
  const { sheet, layers, leftOut } = withRoom(laidOut);
  const seen = `seen from above, ${unit}; panels as cut`;
  const head = { seen, unit, leftOut, ...ghostNames(data) };
  return sheetMark("plan-view", sheet, `Plan view of ${name}`, () => planViewWords(data, format), [
    ...layers,
    layer("head", headMarks(head, sheet.headLine, sheet.room, measure)),
  ]);
}

/** Where the glider balances, and where it is neutral, from above; empty where that is not known. */
const balanceOf = ({ balance }: GliderOnPaper): Point[] => (balance ? [{ x: balance.y, y: balance.x }] : []);
const neutralOf = ({ neutral_x }: GliderOnPaper): Point[] => (neutral_x === undefined ? [] : [{ x: 0, y: neutral_x }]);

function contentOf(
  { glider, baseline }: GliderDrawingData,
  [outline, ...others]: readonly PlanOutline[],
  classes: readonly string[],
  sheet: PlanViewSheet,
  format: LengthFormat,
  measure: Measure,
): GliderContent {
  const placed = (pieces: readonly Piece[] = []): Piece[] => pieces.map((piece) => placePiece(piece, sheet.place));
  const [under, over] = [placed(outline?.under), placed(outline?.over)];
  const [balance, neutral] = [balanceOf(glider), neutralOf(glider)].map(([point]) => point && sheet.place(point));
  const points = namedPoints(balance, neutral);
  return {
    under,
    over,
    ghost: [
      ...others.flatMap((each, index) =>
        ghostStrokes([...placed(each.under), ...placed(each.over)], [...under, ...over], classes[index]),
      ),
      ...(baseline ? balanceOf(baseline.glider) : []).flatMap((point) =>
        ghostRing(sheet.place(point), balance && points.at(-1)),
      ),
    ],
    datums: [centreLine(sheet)],
    points,
    legend: sheet.legend ? legendMarks(points, sheet.legend, measure) : [],
    setDimensions: spanMarks(glider, sheet, format, measure),
    dimensions: dimensionsOf(glider, points, sheet, format),
  };
}

/** Through the middle, from just under the span's line to just over the tailplane's. */
function centreLine({ place, extent }: PlanViewSheet): Stroke {
  const { x } = place({ x: 0, y: 0 });
  return straight("datum", { x, y: extent.top - 9 }, { x, y: extent.bottom + 9 });
}

function dimensionsOf(
  glider: GliderOnPaper,
  points: readonly NamedPoint[],
  sheet: PlanViewSheet,
  format: LengthFormat,
): Dimensions {
  const { wing, tailplane, balance, tail_arm } = glider;
  const { right, left, span, mirrored } = wing;
  const arm = tailplane && balance && tail_arm !== undefined ? { length: tail_arm, balance, tailplane } : undefined;
  return together([
    lengthMarks(right, span, sheet, format),
    tipChordMarks(left, span, sheet, format),
    rootChordMarks(left, span, sheet, format),
    ...(mirrored ? [] : [lengthMarks(left, span, sheet, format), tipChordMarks(right, span, sheet, format)]),
    ...(right.root_chord[0] === left.root_chord[0] ? [] : [rootChordMarks(right, span, sheet, format)]),
    macMarks(wing, sheet, format),
    ...(arm ? [tailArmMarks(arm, wing, sheet, format)] : []),
    { strokes: [], labels: sheet.legend ? [] : pointLabels(points) },
  ]);
}
