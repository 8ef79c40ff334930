/** The builds of a tolerance by a result: a histogram with its percentiles, and where checks set a limit. */
import type { ToleranceOutcome } from "../../../cells/index.ts";
import type { Box } from "../../drawings/geometry.ts";
import { type Label, placeLabels } from "../../drawings/labels.ts";
import { type Mark, mark, round } from "../../drawings/sketch.ts";
import { labelMarks, type Stroke, straight, strokeLines, strokeMarks, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { axisFor } from "../axis.ts";
import { hatching } from "../hatch.ts";
import { small } from "../panels.ts";
import type { Allowed } from "../trade-off-data.ts";
import { barRows } from "./bar-rows.ts";
import { outlineOf } from "./check-rows.ts";
import { titled } from "./study-chart.ts";
import { influenceText, spreadText } from "./tolerance-words.ts";

type Result = ToleranceOutcome["results"][number];

/** Draws the panel of a result from a height down; `bottom` is where it ends. */
export function histogramPanel(
  result: Result,
  limits: readonly Allowed[],
  sides: Pick<Box, "left" | "right" | "top">,
  panelHeight: number | undefined,
  measure: Measure,
) {
  const { text, unit, sample } = result;
  const head = barRows(
    [
      { text: titled(text, unit), class: "figure", isStrong: true },
      ...linesOf(spreadText(result).split("; "), "; ", sides.right - sides.left, measure).map((line) => ({
        text: line,
      })),
      ...linesOf(influenceText(result), ", ", sides.right - sides.left, measure)
        .slice(0, 3)
        .map((line) => ({ text: line })),
    ],
    sides,
    measure,
  );
  if (!sample) return { bars: [], hatch: [], lines: [], texts: head.marks, bottom: head.bottom, isHatched: false };
  const high = panelHeight ?? Math.round(Math.max(90, Math.min(150, 0.24 * (sides.right - sides.left))));
  const field = {
    left: sides.left + 4,
    right: sides.right - 4,
    top: head.bottom + 22,
    bottom: head.bottom + 22 + high,
  };
  const { histogram, least, most } = sample;
  const edges = limits.flatMap(({ min, max }) => [min ?? [], max ?? []].flat());
  const axis = axisFor([least, most], edges, {
    range: [field.left, field.right],
    unit,
    count: Math.max(2, Math.round((field.right - field.left) / 100)),
    room: (tick) => 1.5 * measure(tick, small) + 8,
  });
  const tallest = Math.max(...histogram.counts);
  const up = (count: number): number => field.bottom - (count / tallest) * (high - 6);
  const bars = histogram.counts.flatMap((count, index): Mark[] => {
    if (count === 0) return [];
    const width = histogram.width || (most - least || 1) / 8;
    const isSingle = histogram.width === 0;
    const from = isSingle ? axis.place(histogram.from) - 3 : axis.place(histogram.from + index * width);
    const to = isSingle ? from + 6 : axis.place(histogram.from + (index + 1) * width);
    return [
      mark("rect", {
        class: "histogram-bar",
        x: round(from),
        y: round(up(count)),
        width: round(Math.max(0.5, to - from)),
        height: round(field.bottom - up(count)),
      }),
    ];
  });
  const shares = [
    ["2.5", "2.5%"],
    ["50", "half"],
    ["97.5", "97.5%"],
  ] as const;
  const percentiles = shares.map(([share, name]) => ({
    at: axis.place(sample.percentiles[share] ?? Number.NaN),
    name,
  }));
  const upright = (name: string, at: number): Stroke =>
    straight(name, { x: at, y: field.top - 2 }, { x: at, y: field.bottom });
  const inField = (at: number): boolean => at > field.left && at < field.right;
  const limitStrokes = edges
    .map(axis.place)
    .filter(inField)
    .map((at) => upright("fails-edge", at));
  const failing = limits.flatMap(({ min, max }): Box[] => [
    ...(min === undefined ? [] : [{ ...field, right: Math.min(field.right, axis.place(min)) }]),
    ...(max === undefined ? [] : [{ ...field, left: Math.max(field.left, axis.place(max)) }]),
  ]);
  const regions = failing.filter(({ left, right }) => right - left > 1);
  const placed = placeLabels(
    [
      ...percentiles.map(
        ({ at, name }): Label => ({
          ...small,
          class: "note",
          text: name,
          at: { x: at, y: field.top - 4 },
          places: ["above", "right", "left"],
          gap: 4,
          leader: false,
        }),
      ),
      ...limits.flatMap((limit) => limitLabels(limit, field, axis.place, measure)),
    ],
    {
      sheet: { left: sides.left, right: sides.right + 8, top: head.bottom, bottom: field.bottom },
      lines: strokeLines([...percentiles.map(({ at }) => upright("percentile", at)), ...limitStrokes]),
      boxes: bars.map(boxOf),
      measure,
    },
  ).placed;
  const boxes = placed.map(({ box }) => ({
    left: box.left - 3,
    right: box.right + 3,
    top: box.top - 3,
    bottom: box.bottom + 3,
  }));
  const line = field.bottom;
  const ticks = axis.ticks.map(({ at, text: tick }) => {
    const wide = measure(tick, small);
    const x = Math.max(sides.left, Math.min(at - wide / 2, sides.right + 8 - wide));
    return textAt("note", tick, { x, y: line + 18 }, small);
  });
  return {
    bars,
    hatch: strokeMarks(hatching(regions.map(outlineOf), boxes)),
    lines: strokeMarks([
      straight("grid", { x: field.left, y: line }, { x: field.right, y: line }),
      ...axis.ticks.map(({ at }) => straight("grid", { x: at, y: line }, { x: at, y: line + 5 })),
      ...percentiles.map(({ at }) => upright("percentile", at)),
      ...limitStrokes,
    ]),
    texts: [...head.marks, ...labelMarks(placed), ...ticks],
    bottom: line + 24,
    isHatched: regions.length > 0,
  };
}

/** At its limit, on the side where it fails. */
function limitLabels(
  { min, max, label }: Allowed,
  { left, right, top, bottom }: Box,
  place: (value: number) => number,
  measure: Measure,
): Label[] {
  const text = `✕ ${shorten(label, (right - left) / 3, small, measure)}`;
  const at = (value: number | undefined, side: "left" | "right"): Label[] => {
    if (value === undefined) return [];
    const x = place(value);
    const heights = [0.08, 0.2, 0.35, 0.5, 0.75].map((share) => top + share * (bottom - top));
    const [first, ...elsewhere] = [...heights, top - 4].map((y) => ({ x, y }));
    if (x <= left || x >= right || !first) return [];
    const other = side === "left" ? "right" : "left";
    return [
      {
        ...small,
        class: "figure-moved",
        text,
        at: first,
        elsewhere,
        places: [side, other, "above"],
        gap: 6,
        leader: false,
      },
    ];
  };
  return [...at(min, "left"), ...at(max, "right")];
}

/** Words joined as far as they fit, in as many lines as they need. */
function linesOf(words: readonly string[], joint: string, room: number, measure: Measure): string[] {
  const lines: string[] = [];
  for (const word of words) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)}${joint}${word}`;
    if (lines.length > 0 && measure(longer, small) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function boxOf({ attributes }: Mark): Box {
  const [x = 0, y = 0, width = 0, height = 0] = ["x", "y", "width", "height"].map((name) => Number(attributes[name]));
  return { left: x, top: y, right: x + width, bottom: y + height };
}
