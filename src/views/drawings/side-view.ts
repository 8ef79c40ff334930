/**
 * The side view of a glider, or of a wing alone, at true proportion: stick, root section and tailplane at their
 * incidences, panels and fin behind, balance point and neutral point, with a baseline as a thin line.
 */
import { ghostRing, hasLegend, legendMarks, namedPoints, pointLabelsAcross } from "./balance-marks.ts";
import type { LengthFormat } from "./dimension-text.ts";
import { together } from "./dimensions.ts";
import { type GliderDrawingData, glidersDrawn } from "./glider.ts";
import { type GliderContent, gliderLayers } from "./glider-layers.ts";
import { type GliderDrawingOptions, gliderDrawingOptions } from "./glider-options.ts";
import { ghostNames, headMarks } from "./head.ts";
import { extentOf, ghostStrokes, type Piece, placePiece, plainPiece } from "./pieces.ts";
import { withRoom } from "./placing.ts";
import { sideDimensions, type Telling } from "./side-view-dimensions.ts";
import { type SideOutline, sideOutline } from "./side-view-outline.ts";
import { countRows, type Rows, rowMarks, rowsUnder, wholeMarks } from "./side-view-rows.ts";
import { type SideViewSheet, sideViewSheet } from "./side-view-sheet.ts";
import { sideViewWords } from "./side-view-words.ts";
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

/** Draws a side view. Throws on an option it does not know and on a wing without a chord. */
export const sideView = (
  data: GliderDrawingData,
  options: GliderDrawingOptions,
  surroundings: Surroundings,
): SVGSVGElement => liveSideView(data, options, surroundings).element;

/** Draws a side view that follows new data in place. */
export const liveSideView = (
  data: GliderDrawingData,
  options: GliderDrawingOptions,
  surroundings: Surroundings,
): LiveDrawing<GliderDrawingData, GliderDrawingOptions> => liveDrawing(sketchSideView, data, options, surroundings);

function sketchSideView(data: GliderDrawingData, options: GliderDrawingOptions): Mark {
  checkOptions(options, gliderDrawingOptions, "side view");
  const { name, width = 660, height = 600, unit = "mm", fraction, measure = estimateWidth } = options;
  const format: LengthFormat = { unit, fraction };
  const { gliders, classes } = glidersDrawn(data);
  const outlines = gliders.map(sideOutline) as [SideOutline, ...SideOutline[]];
  const [outline] = outlines;
  const pieces = outlines.map(({ under, over }) => [...under, ...over]);
  const rows = rowsUnder(outline, extentOf(pieces[0] ?? []));
  const points = outlines.flatMap(({ balance, neutral }) => [balance, neutral].filter((point) => point !== undefined));
  // The datum belongs to the drawing, and so do points that lie off the wood.
  const extent = extentOf([...pieces.flat(), plainPiece([{ x: 0, y: 0 }, ...points])]);
  const room = { extent, rows: countRows(rows), hasLegend: hasLegend(width, points.length) };
  const telling = { whole: data.glider.wing.span / 2, format };
  const laidOut = (growth: number) => {
    const sheet = sideViewSheet(room, Math.max(240, width), height, growth);
    const content = contentOf(data, outlines, classes, rows, sheet, telling, measure);
    return { sheet, ...gliderLayers(content, sheet.room, measure) };
  };
  const { sheet, layers, leftOut } = withRoom(laidOut);
  const head = { seen: `seen from the left, ${unit}`, unit, leftOut, ...ghostNames(data) };
  return sheetMark("side-view", sheet, `Side view of ${name}`, () => sideViewWords(data, outline, format), [
    ...layers,
    layer("head", headMarks(head, sheet.headLine, sheet.room, measure)),
  ]);
}

function contentOf(
  { glider, baseline }: GliderDrawingData,
  [outline, ...others]: readonly [SideOutline, ...SideOutline[]],
  classes: readonly string[],
  rows: Rows,
  sheet: SideViewSheet,
  telling: Telling,
  measure: Measure,
): GliderContent {
  const placed = (pieces: readonly Piece[] = []): Piece[] => pieces.map((piece) => placePiece(piece, sheet.place));
  const [under, over] = [placed(outline.under), placed(outline.over)];
  const before = baseline && others[0];
  const { balance, neutral } = outline;
  const points = namedPoints(balance && sheet.place(balance), neutral && sheet.place(neutral));
  return {
    under,
    over,
    ghost: [
      ...others.flatMap((each, index) =>
        ghostStrokes([...placed(each.under), ...placed(each.over)], [...under, ...over], classes[index]),
      ),
      ...(before?.balance ? ghostRing(sheet.place(before.balance), balance && points.at(-1)) : []),
    ],
    datums: [datum(sheet)],
    points,
    legend: sheet.legend ? legendMarks(points, sheet.legend, measure) : [],
    setDimensions: wholeMarks(rows, sheet, telling, measure),
    dimensions: together([
      ...rowMarks(rows, glider.static_margin, sheet, telling, measure),
      sideDimensions(glider, outline, sheet, telling),
      { strokes: [], labels: sheet.legend ? [] : pointLabelsAcross(points) },
    ]),
  };
}

/** The line that heights are counted from. */
function datum({ place, extent }: SideViewSheet): Stroke {
  const { y } = place({ x: 0, y: 0 });
  return straight("datum", { x: extent.left - 12, y }, { x: extent.right + 8, y });
}
