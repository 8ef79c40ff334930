/** The numbers of a figure as comma-separated values, headed by what they are and where they are from. */
import { unitOf } from "../../library/at-first.ts";
import { type ChartTable, csvText } from "../charts/chart-table.ts";
import type { Along, Place, PlotData } from "../charts/plot-data.ts";
import { studyTables } from "../charts/studies/study-tables.ts";
import type { Quantity, SweepPoint, TradeOffData } from "../charts/trade-off-data.ts";
import { exportWords } from "../export-words.ts";
import type { FigureNumbers } from "../shown-figure.ts";

export interface CsvSource {
  readonly title: string;
  readonly shows: string;
  readonly notebook: string;
  readonly trial: string | null;
}

/** All that a figure is drawn from; numbers stand in the unit of their column. */
export function csvOf(numbers: FigureNumbers, { title, shows, notebook, trial }: CsvSource): string {
  const { head } = exportWords;
  const rows = [
    [head.title, title],
    ...(shows ? [[head.shows, shows]] : []),
    [head.notebook, notebook],
    ...(trial === null ? [] : [[head.trial, trial]]),
  ];
  return csvText(rows, tablesOf(numbers));
}

function tablesOf(numbers: FigureNumbers): readonly ChartTable[] {
  switch (numbers.sort) {
    case "trade-off":
      return tradeOffTables(numbers.data);
    case "plot":
      return plotTables(numbers.data);
    case "study":
      return studyTables(numbers.data);
  }
}

/** A table for each curve, and one of the designs that are marked. */
function tradeOffTables({ sweep, x, y, points, present, baseline, curve, further = [] }: TradeOffData): ChartTable[] {
  const columns = [sweep, x, ...y].map(({ name, unit }) => ({ name, unit }));
  const rowOf = (point: SweepPoint): (number | string | null)[] => [
    inUnit(point.value, sweep.unit),
    ...[point.x, ...point.y].map((value, index) => inUnit(value, ([x, ...y][index] as Quantity).unit)),
    point.reason ?? "",
  ];
  const table = (title: string, of: readonly SweepPoint[]): ChartTable => ({
    title,
    columns: [...columns, { name: "why there is none", unit: "" }],
    rows: of.map(rowOf),
  });
  const marked = [
    ...(present ? [["as it is", present] as const] : []),
    ...(baseline ? [[baseline.name, baseline] as const] : []),
  ];
  return [
    table(curve ?? `${sweep.name} over its range`, points),
    ...further.map((each) => table(each.name, each.points)),
    {
      title: "marked",
      columns: [{ name: "design", unit: "" }, ...columns],
      rows: marked.map(([name, point]) => [name, ...rowOf(point).slice(0, -1)]),
    },
  ];
}

/** A table for each curve of each panel, and one for the points that are told in it. */
function plotTables({ x, panels }: PlotData): ChartTable[] {
  return panels.flatMap((panel) => {
    const along = panel.x ?? x;
    const columns = [along, panel.y].map(({ label, unit }) => ({ name: label, unit: unit === "1" ? "" : unit }));
    const curves = panel.curves.map(
      ({ name, look, places }): ChartTable => ({
        title: [panel.y.label, name, look === "ghost" ? "before" : ""].filter(Boolean).join(", "),
        columns,
        rows: places.map((place) => placeRow(place, along, panel.y)),
      }),
    );
    const spots = panel.spots ?? [];
    if (spots.length === 0) return curves;
    return [
      ...curves,
      {
        title: `${panel.y.label}, marked`,
        columns: [...columns, { name: "what it is", unit: "" }],
        rows: spots.map((spot) => [...placeRow(spot, along, panel.y), spot.text]),
      },
    ];
  });
}

const placeRow = (place: Place, x: Along, y: Along): (number | null)[] => [
  inUnit(place.x, x.unit),
  inUnit(place.y, y.unit),
];

function inUnit(value: number | null, unit: string): number | null {
  if (value === null || !Number.isFinite(value)) return null;
  const { factor, offset } = unitOf(unit === "" ? "1" : unit);
  return (value - offset) / factor;
}
