/** The chart of a map: contours of each result over two inputs, hatched where a check fails. */
import type { MapOutcome } from "../../../cells/index.ts";
import { type LiveDrawing, later, layer, type Mark, mark, round, type Surroundings } from "../../drawings/sketch.ts";
import { strokeMarks, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { choiceLayer } from "../choice-layer.ts";
import type { Choice } from "../choices.ts";
import { type ChartState, liveChart, type SketchedChart } from "../live-chart.ts";
import { small } from "../panels.ts";
import { gapNote } from "./gaps.ts";
import { type LegendItem, legendMarks } from "./legend.ts";
import { mapField } from "./map-field.ts";
import { gridPlace, type MapField, mapSheet } from "./map-sheet.ts";
import { mapGaps, mapTitle, mapWords, placeNames } from "./map-words.ts";
import { noteMark } from "./note-line.ts";
import { bandName, chartMark, hint, readOptions, type StudyOptions, titled } from "./study-chart.ts";

/** Draws the chart of a map, also of one that is still going. Throws on an option it does not know. */
export const mapChart = (data: MapOutcome, options: StudyOptions, surroundings: Surroundings): SVGSVGElement =>
  liveMapChart(data, options, surroundings).element;

/** Draws the chart of a map that follows new data in place. */
export const liveMapChart = (
  data: MapOutcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<MapOutcome, StudyOptions> =>
  liveChart(
    sketchMap,
    (choice, state) => {
      const at = placesOf(state.data)[choice.panel]?.[choice.index];
      if (at) state.options.onChoose?.(inputsAt(state.data, at));
    },
    data,
    options,
    surroundings,
  );

/** A place of the grid. */
interface Place {
  readonly field: number;
  readonly column: number;
  readonly row: number;
}

const inputsAt = ({ inputs }: MapOutcome, { column, row }: Place): number[] => [
  inputs[0]?.values[column] ?? Number.NaN,
  inputs[1]?.values[row] ?? Number.NaN,
];

/** The places that can be chosen, row by row from the top, field after field; of a fine grid every second, third … */
function placesOf({ inputs, results }: MapOutcome): Place[][] {
  const [columns, rows] = [0, 1].map((axis) => inputs[axis]?.values.length ?? 0) as [number, number];
  const by = Math.max(1, Math.ceil(Math.sqrt((columns * rows * results.length) / mostTargets)));
  const along = (count: number): number[] => Array.from({ length: Math.ceil(count / by) }, (_, index) => index * by);
  return results.flatMap((_, field) =>
    along(rows)
      .reverse()
      .map((row) => along(columns).map((column): Place => ({ field, column, row }))),
  );
}

function sketchMap({ data, options, focus, under }: ChartState<MapOutcome, StudyOptions>): SketchedChart {
  const { width, measure, bands, chosen } = readOptions(options, "chart of a map");
  const { inputs, results } = data;
  const sheet = mapSheet(data, width, options.panelHeight, measure);
  const places = placesOf(data);
  const spots = places.map((row) =>
    row.map(({ field, column, row: at }) => (sheet.fields[field] as MapField).place({ x: column, y: at })),
  );
  const hand = under ?? focus;
  const inHand = hand ? places[hand.panel]?.[hand.index] : undefined;
  const chosenAt = (chosen ?? []).map((value, axis) => gridPlace(inputs[axis]?.values ?? [], value));
  const [chosenX = null, chosenY = null] = chosenAt;
  const fields = sheet.fields.map((field) =>
    mapField(
      field,
      data,
      {
        band: bands[field.index] ?? null,
        chosen: chosenX === null || chosenY === null ? null : field.place({ x: chosenX, y: chosenY }),
        near: inHand ? field.place({ x: inHand.column, y: inHand.row }) : null,
      },
      measure,
    ),
  );
  const nameOf = placeNames(data);
  const legend = legendMarks(legendOf(fields), { left: 4, right: sheet.right, top: sheet.bottom + 6 }, measure);
  const noteLine = legend.bottom + 18;
  const layers = [
    layer(
      "area-layer",
      fields.flatMap(({ areas }) => areas),
    ),
    layer("hatch-layer", strokeMarks(fields.flatMap(({ hatch }) => hatch))),
    layer(
      "frame-layer",
      sheet.fields.map(({ left, right, top, bottom }) =>
        mark("path", {
          class: "grid",
          d: `M${round(left)},${round(top)}L${round(right)},${round(top)}L${round(right)},${round(bottom)}L${round(left)},${round(bottom)}Z`,
        }),
      ),
    ),
    layer("contour-layer", strokeMarks(fields.flatMap(({ lines }) => lines))),
    layer(
      "design-layer",
      fields.flatMap(({ designs }) => designs),
    ),
    layer(
      "figure-layer",
      fields.flatMap(({ texts }) => texts),
    ),
    layer(
      "axis-layer",
      sheet.fields.flatMap((field) => axisMarks(field, data, measure)),
    ),
    layer("legend-layer", legend.marks),
    layer(
      "note-layer",
      noteMark(
        {
          inHand: inHand ? nameOf(inHand.column, inHand.row) : null,
          failed: gapNote(mapGaps(data), (inputs[0]?.values.length ?? 0) * (inputs[1]?.values.length ?? 0)),
          hint: options.onChoose && results.length > 0 ? hint : "",
        },
        { left: 4, right: sheet.right, y: noteLine },
        measure,
      ),
    ),
    later("g", () => choicesOf(spots, places, data, focus, nameOf)),
  ];
  const size = { width: sheet.width, height: Math.ceil(noteLine + 10) };
  return {
    mark: chartMark("map", size, options.title ?? mapTitle(data), () => mapWords(data, bands), layers),
    spots,
    // A map is points all over: wherever it is pressed the nearest is meant.
    reach: reachOf(spots),
  };
}

/** From the middle between four neighbours to each of them, px. */
function reachOf([row = [], next = []]: SketchedChart["spots"]): number {
  const [first, beside] = row;
  const across = first && beside ? beside.x - first.x : 0;
  const up = first && next[0] ? next[0].y - first.y : 0;
  return Math.max(20, Math.hypot(across, up) / 2 + 1);
}

/** The name of the result, the ticks of both axes and what they say. */
function axisMarks(field: MapField, { inputs, results }: MapOutcome, measure: Measure): Mark[] {
  const { left, right, bottom, textLeft } = field;
  const [across, up] = inputs;
  const result = results[field.index];
  const along = field.x.ticks.map(({ at, text }) => {
    const wide = measure(text, small);
    return textAt("note", text, { x: Math.min(at - wide / 2, right + 14 - wide), y: bottom + 17 }, small);
  });
  const ticks = field.y.ticks.map(({ at, text }) =>
    textAt("note", text, { x: left - 8 - measure(text, small), y: at + 4 }, small),
  );
  const line = (name: string, text: string, y: number, style: { size: number; weight: number }): Mark =>
    textAt(name, shorten(text, right - textLeft, style, measure), { x: textLeft, y }, style);
  const below = shorten(titled(across?.target ?? "", across?.unit ?? "1"), right - textLeft, small, measure);
  return [
    ...along,
    ...ticks,
    line("figure", titled(result?.text ?? "", result?.unit ?? "1"), field.nameLine, { size: 13, weight: 600 }),
    line("note", titled(up?.target ?? "", up?.unit ?? "1"), field.upLine, small),
    textAt("note", below, { x: right - measure(below, small), y: bottom + 36 }, small),
  ];
}

const legendOf = (fields: readonly { readonly hasBand: boolean; readonly isHatched: boolean }[]): LegendItem[] => [
  ...(fields.some(({ hasBand }) => hasBand) ? [{ sample: "area", class: "band", text: bandName } as const] : []),
  ...(fields.some(({ isHatched }) => isHatched)
    ? [{ sample: "hatch", class: "hatch", text: "a check fails" } as const]
    : []),
];

/** A target for each place; the Tab key reaches the one in focus, else the one nearest to the present design. */
function choicesOf(
  spots: SketchedChart["spots"],
  places: readonly (readonly Place[])[],
  data: MapOutcome,
  focus: Choice | null,
  nameOf: (column: number, row: number) => string,
): Mark {
  const targets = spots.map((row, panel) =>
    row.map((spot, index) => {
      const place = places[panel]?.[index];
      return { ...spot, name: place ? nameOf(place.column, place.row) : "" };
    }),
  );
  return choiceLayer(targets, focus ?? presentPlace(places, data));
}

function presentPlace(places: readonly (readonly Place[])[], { inputs, marks }: MapOutcome): Choice {
  const present = marks.find(({ trial }) => trial === null);
  const [x = 0, y = 0] = (present?.at ?? []).map((value, axis) => gridPlace(inputs[axis]?.values ?? [], value) ?? 0);
  let best: Choice = { panel: 0, index: 0 };
  let nearest = Number.POSITIVE_INFINITY;
  places.forEach((row, panel) => {
    row.forEach(({ field, column, row: at }, index) => {
      const away = Math.hypot(column - x, at - y) + field;
      if (away < nearest) [best, nearest] = [{ panel, index }, away];
    });
  });
  return best;
}

/** Targets of a sheet: more would be slow to make, and lie closer than a pointer can tell. */
const mostTargets = 900;
