/** What plan and side view of a glider have in common: how their content comes to stand on the sheet, layer by layer. */
import type { NamedPoint } from "./balance-marks.ts";
import type { Dimensions, SetDimension } from "./dimensions.ts";
import type { Box } from "./geometry.ts";
import { type Piece, pieceMark, pieceStrokes } from "./pieces.ts";
import { bestPlacing } from "./placing.ts";
import { layer, type Mark } from "./sketch.ts";
import { labelMarks, leaderStrokes, type Stroke, strokeLines, strokeMarks } from "./strokes.ts";
import type { Measure } from "./text-size.ts";

/** All that a drawing of a glider shows, in px. */
export interface GliderContent {
  /** Pieces that lie one over the other, the lowest first, under all others. */
  readonly under: readonly Piece[];
  readonly over: readonly Piece[];
  readonly ghost: readonly Stroke[];
  /** Centre and datum lines. */
  readonly datums: readonly Stroke[];
  readonly points: readonly NamedPoint[];
  /** The line that names the points, where their names do not stand beside them. */
  readonly legend: readonly Mark[];
  readonly setDimensions: readonly SetDimension[];
  readonly dimensions: Dimensions;
}

/**
 * The layers of a drawing with all its labels placed, and how many found no room. Only these count as faults: names of
 * points in the midst of a glider have leaders over its lines as a rule.
 */
export function gliderLayers(content: GliderContent, room: Box, measure: Measure) {
  const { under, over, ghost, datums, points, legend, setDimensions, dimensions } = content;
  const edges = over.flatMap(pieceStrokes);
  const strokes = [...datums, ...setDimensions.flatMap((each) => each.strokes), ...dimensions.strokes];
  const drawn = [...under.flatMap(pieceStrokes), ...edges, ...ghost, ...strokes];
  const { placed, leftOut } = bestPlacing(dimensions.labels, {
    sheet: room,
    lines: [...strokeLines(drawn), ...points.flatMap(({ lines }) => lines)],
    boxes: setDimensions.map(({ box }) => box),
    measure,
  });
  const layers: readonly Mark[] = [
    layer(
      "under-layer",
      under.flatMap((piece) => [pieceMark(piece), ...strokeMarks(pieceStrokes(piece))]),
    ),
    layer("wood-layer", over.map(pieceMark)),
    layer("ghost-layer", strokeMarks(ghost)),
    layer("edge-layer", strokeMarks(edges)),
    layer("lines-layer", strokeMarks([...strokes, ...leaderStrokes(placed)])),
    layer(
      "mark-layer",
      points.flatMap(({ marks }) => marks),
    ),
    layer("legend-layer", legend),
    layer("figure-layer", [...setDimensions.map((each) => each.figure), ...labelMarks(placed)]),
  ];
  return { layers, leftOut: leftOut.length, faults: leftOut.length };
}
