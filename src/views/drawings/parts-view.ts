/**
 * Parts that are cut from sheet, such as blanks or a jig, in small: each outline with what is scored on it, its name and
 * its size, all in one scale, and parts that were otherwise as a thin line behind.
 */
import type { Part, Stroke as PartStroke } from "../sheets/parts.ts";
import { type LengthFormat, lengthText, partFigure } from "./dimension-text.ts";
import type { Point } from "./geometry.ts";
import { headMarks } from "./head.ts";
import type { Label } from "./labels.ts";
import { type DrawingOptions, drawingOptions } from "./options.ts";
import { type PartsSheet, type PlacedPart, partsSheet } from "./parts-view-sheet.ts";
import { bestPlacing } from "./placing.ts";
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  mark,
  type Surroundings,
  sheetMark,
} from "./sketch.ts";
import { labelMarks, leaderStrokes, pathThrough, type Stroke, strokeLines, strokeMarks } from "./strokes.ts";
import { estimateWidth } from "./text-size.ts";

/** What a view of parts is drawn from. */
export interface PartsViewData {
  readonly parts: readonly Part[];
  /** Those of another time that differ, drawn behind where they have the same name. */
  readonly baseline?: { readonly parts: readonly Part[]; readonly name: string } | undefined;
}
export type PartsViewOptions = DrawingOptions & { readonly height?: number | undefined };
const partsViewOptions = { ...drawingOptions, height: true } as const;

/** Draws parts. Throws on an option it does not know and where there are no parts. */
export const partsView = (data: PartsViewData, options: PartsViewOptions, surroundings: Surroundings): SVGSVGElement =>
  livePartsView(data, options, surroundings).element;

/** Draws parts, following new data in place. */
export const livePartsView = (
  data: PartsViewData,
  options: PartsViewOptions,
  surroundings: Surroundings,
): LiveDrawing<PartsViewData, PartsViewOptions> => liveDrawing(sketchPartsView, data, options, surroundings);

function sketchPartsView({ parts, baseline }: PartsViewData, options: PartsViewOptions): Mark {
  checkOptions(options, partsViewOptions, "view of parts");
  const { name, width = 660, height = 600, unit = "mm", fraction, measure = estimateWidth } = options;
  const format: LengthFormat = { unit, fraction };
  const textOf = (part: Part): string => `${part.name}, ${sizeText(part, format)}`;
  const labelWidth = (part: Part): number => measure(textOf(part), figure);
  const sheet = partsSheet(parts, Math.max(240, width), height, labelWidth);
  const scored = sheet.placed.flatMap((each) => strokesOf(each, "score", "scored"));
  const cuts = sheet.placed.flatMap((each) => strokesOf(each, "cut", "edge"));
  const before = new Map(baseline?.parts.map((part) => [part.name, part]));
  const ghosts = sheet.placed.flatMap((each) => {
    const part = before.get(each.part.name);
    return part ? strokesOf({ ...each, part }, "cut", "ghost") : [];
  });
  const labels = sheet.placed.map(
    ({ part, middle, under, isLabelWithin }): Label => ({
      ...figure,
      text: textOf(part),
      class: "figure",
      ...(isLabelWithin
        ? { at: middle, places: [{ x: 0, y: 0 }, "above", "below"], elsewhere: elsewhereIn(part, middle, sheet) }
        : { at: under, places: ["below"] }),
      isAmid: true,
    }),
  );
  const lines = strokeLines([...ghosts, ...cuts, ...scored]);
  const marks = sheet.placed.map((each) => marksOf(each, sheet, measure));
  const placing = (own: readonly Label[][]) =>
    bestPlacing([...labels, ...own.flat()], { sheet: sheet.room, lines, measure });
  const first = placing(marks);
  // A row of marks with gaps in it misleads: where one of a row has no room, none is drawn.
  const whole = marks.filter((own) => own.length < 3 || !own.some((mark) => first.leftOut.includes(mark)));
  const { placed, leftOut } = whole.length < marks.length ? placing(whole) : first;
  const head = {
    seen: `as cut, ${unit}`,
    unit,
    // A mark that finds no room is on the sheet at true size; a part without its name is said.
    leftOut: leftOut.filter((label) => labels.includes(label)).length,
    baseline: ghosts.length > 0 ? baseline?.name : undefined,
  };
  return sheetMark("parts-view", sheet, `Parts of ${name}`, () => partsWords(parts, format), [
    layer(
      "wood-layer",
      cuts.map(({ points }) => mark("path", { class: "wood", d: pathThrough(points, "Z") })),
    ),
    layer("ghost-layer", strokeMarks(ghosts)),
    layer("lines-layer", strokeMarks([...scored, ...leaderStrokes(placed)])),
    layer("edge-layer", strokeMarks(cuts.map((each) => ({ ...each, width: 1.3 })))),
    layer("figure-layer", labelMarks(placed)),
    layer("head", headMarks(head, sheet.headLine, sheet.room, measure)),
  ]);
}

const figure = { size: 12, weight: 400 } as const;
const small = { size: 11, weight: 400 } as const;

const strokesOf = ({ part, place }: PlacedPart, only: PartStroke["layer"], name: string): Stroke[] =>
  part.strokes
    .filter(({ layer: on }) => on === only)
    .map(({ points }) => ({ class: name, points: points.map(([x, y]) => place(x, y)) }));

/** The words that stand along a part, such as its leading edge or the joint over it, where the part has room for them. */
function marksOf({ part, place }: PlacedPart, { scale }: PartsSheet, measure: typeof estimateWidth): Label[] {
  return part.labels.flatMap(({ text, at: [x, y], angle }) => {
    const isAlong = Math.abs(angle) < 30 && !text.startsWith(part.name);
    if (!isAlong || measure(text, small) + 24 > part.width * scale || part.height * scale < 40) return [];
    const places = [{ x: 0, y: 0 }, "below", "above"] as const;
    return [{ ...small, text, class: "figure", at: place(x, y), places, isAmid: true, leader: false }];
  });
}

/** A quarter up and down within the part, for where its middle is taken by a line. */
const elsewhereIn = ({ height }: Part, { x, y }: Point, { scale }: PartsSheet): Point[] =>
  [0.25, -0.25].map((share) => ({ x, y: y + share * height * scale }));

const sizeText = ({ width, height }: Part, format: LengthFormat): string => {
  const whole = Math.max(width, height, 100) / 1000;
  return `${partFigure(width / 1000, whole, format)} × ${partFigure(height / 1000, whole, format)}`;
};

/** What a view of parts shows, in words. */
function partsWords(parts: readonly Part[], format: LengthFormat): string {
  const told = parts.map(({ name, width, height, thickness }) => {
    const [across, up, thick] = [width, height, thickness].map((size) => lengthText(size / 1000, format));
    return `${name} ${across} by ${up}, ${thick} thick`;
  });
  return `${parts.length} ${parts.length === 1 ? "part" : "parts"}: ${told.join("; ")}.`;
}
