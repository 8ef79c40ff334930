import { type Measure, wrapped } from "../drawings/text-size.ts";
import { type Axis, axisFor } from "./axis.ts";
import { small } from "./panels.ts";
import type { Along, PlotData, PlotPanel } from "./plot-data.ts";

/** A panel on its sheet, px. */
export interface PlotField {
  readonly panel: PlotPanel;
  readonly x: Axis;
  readonly axis: Axis;
  readonly top: number;
  readonly bottom: number;
  /** Baselines of the words over it, and of the ticks and words under it; null where the panel below tells them. */
  readonly titleLine: number;
  readonly tickLine: number | null;
}

/** How a plot lies on its sheet. */
export interface PlotSheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly panels: readonly PlotField[];
  /** The lines of the note, each with its baseline. */
  readonly notes: readonly { readonly text: string; readonly y: number }[];
}

/** A sheet without room for long texts beside points. */
export const isNarrow = (width: number): boolean => width < 480;

/** Lays the panels on a sheet of a width; `height` is what there is for all of them. */
export function plotSheet(data: PlotData, width: number, height: number | undefined, measure: Measure): PlotSheet {
  const isTight = height !== undefined && height < 320;
  const { words, between, ticks, least } = isTight ? tight : roomy;
  const note = isTight ? undefined : ((isNarrow(width) ? data.narrowNote : undefined) ?? data.note);
  const right = width - rightEdge;
  const told = note === undefined ? [] : wrapped(note, right - 4, small, measure);
  const panels = data.panels.filter(({ isMinor }) => !isMinor || !isTight);
  const axesBelow = panels.filter(({ x }, index) => x !== undefined || index === panels.length - 1).length;
  const fixed = edge + panels.length * (words + between) + axesBelow * ticks + told.length * noteStep + 8;
  const usual =
    [Math.min(320, 0.5 * width), Math.min(150, 0.24 * width)][panels.length - 1] ?? Math.min(94, 0.2 * width);
  const room = height === undefined ? usual : (height - fixed) / panels.length;
  const high = Math.round(Math.max(least, Math.min(usual, room)));
  let at = edge;
  const laid = panels.map((panel, index) => {
    const top = at + words;
    const bottom = top + high;
    const tellsX = panel.x !== undefined || index === panels.length - 1;
    at = bottom + between + (tellsX ? ticks : 0);
    const count = Math.max(2, Math.min(5, Math.round(high / 28)));
    const range = panel.isDown ? ([top, bottom] as const) : ([bottom, top] as const);
    const axis = axisFor(valuesOf(panel, "y"), limitsOf(panel, "y"), { range, unit: panel.y.unit, count });
    return { panel, axis, top, bottom, titleLine: top - words + 11, tickLine: tellsX ? bottom + 17 : null };
  });
  const widest = Math.max(0, ...laid.flatMap(({ axis }) => axis.ticks.map(({ text }) => measure(text, small))));
  const left = Math.max(36, Math.ceil(widest) + 14);
  const axisX = (of: readonly PlotPanel[], { unit, isExact }: Along): Axis =>
    axisFor(
      of.flatMap((panel) => valuesOf(panel, "x")),
      of.flatMap((panel) => limitsOf(panel, "x")),
      {
        range: [left, right],
        unit,
        ...(isExact && { isExact }),
        count: Math.round((right - left) / 90),
        room: (text) => 1.5 * measure(text, small) + 8,
      },
    );
  const shared = axisX(
    panels.filter(({ x }) => x === undefined),
    data.x,
  );
  const notes = told.map((text, index) => ({ text, y: at - between + (index + 1) * noteStep }));
  return {
    width,
    height: (notes.at(-1)?.y ?? at - between) + 8,
    left,
    right,
    panels: laid.map((each) => ({ ...each, x: each.panel.x ? axisX([each.panel], each.panel.x) : shared })),
    notes,
  };
}

const edge = 8;
/** Room over each panel for its words, between panels, below an axis for ticks and words, and the least height of a panel. */
const roomy = { words: 22, between: 12, ticks: 40, least: 58 };
/** The same where a figure stands above the page, which must keep the most of the screen: minor panels and notes wait. */
const tight = { words: 18, between: 6, ticks: 36, least: 43 };
const noteStep = 17;
const rightEdge = 18;

/** Every value that a panel draws along an axis. */
function valuesOf({ curves, spots = [], bands = [], reach = {} }: PlotPanel, axis: "x" | "y"): number[] {
  const places = [
    ...curves.flatMap((curve) => curve.places),
    ...spots,
    ...bands.flatMap(({ low, high }) => [...low, ...high]),
  ];
  return [...places.map((place) => place[axis]), ...(reach[axis] ?? [])].filter(Number.isFinite);
}

const limitsOf = ({ limits = [] }: PlotPanel, axis: "x" | "y"): number[] =>
  limits.filter((limit) => limit.axis === axis).map(({ at }) => at);
