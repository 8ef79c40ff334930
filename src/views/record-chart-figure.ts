/** Charts of one result, such as a flight: each takes a record of its kind, and draws it over what it was at first. */
import type { ChartCell } from "../cells/index.ts";
import type { PlotOptions } from "./charts/record-plots.ts";
import type { FigureContext, FigureMaker, Made } from "./figure.ts";
import { liveFigure } from "./live-figure.ts";
import { recordChartWords } from "./record-chart-words.ts";
import { sameValue } from "./same-value.ts";
import { words } from "./words.ts";

/** The types of record that a chart takes, and what makes them. */
interface RecordChart {
  readonly takes: readonly string[];
  readonly made: string;
}

const charts: Readonly<Record<string, RecordChart>> = {
  span_loading: { takes: ["flow"], made: "flow(…)" },
  sink_polar: { takes: ["sink_polar"], made: "sink_polar(…)" },
  modes: { takes: ["modes", "longitudinal_modes", "lateral_modes"], made: "modes(…)" },
  flight_history: { takes: ["recovery"], made: "recovery(…) or release(…)" },
};

/** The makers of these charts, by view. */
export const recordChartFigures: Readonly<Record<string, FigureMaker<ChartCell>>> = Object.fromEntries(
  Object.entries(charts).map(([view, chart]) => [view, (context) => figureOf(view, chart, context)]),
);

/** The types of record that a view can show; undefined for a view that shows no record. */
export const recordsOf = (view: string): readonly string[] | undefined =>
  Object.hasOwn(charts, view) ? charts[view]?.takes : undefined;

/** What draws is a piece of its own, which comes with the first such chart. */
async function figureOf(view: string, { takes, made }: RecordChart, first: FigureContext<ChartCell>): Promise<Made> {
  const { livePlot, recordPlots, withLines } = await import("./charts/record-plots.ts");
  const plot = recordPlots[view];
  if (!plot) throw new Error(`got no plot of ${view}, expected one of each chart of a record`);
  return liveFigure(
    first,
    livePlot,
    ({ desk, cell, result, width, height, measure }) => {
      const part = result.parts?.at(-1);
      if (cell.of === undefined || !part?.ok) return recordChartWords.needs(made);
      const { shape, value } = part;
      if (shape.kind !== "record" || shape.type === null || !takes.includes(shape.type)) {
        return recordChartWords.needs(made);
      }
      const before = desk.baseline.result(cell.id)?.parts?.at(-1);
      const moved = before?.ok && !sameValue(before.value, value) ? before.value : undefined;
      const lines = desk.ghosts.lines(cell.id).flatMap(({ name, result: other }) => {
        const its = other.parts?.at(-1);
        const fits = its?.ok && its.shape.kind === "record" && its.shape.type === shape.type;
        return fits ? [{ name, plot: plot(shape.type ?? "", value, its.value) }] : [];
      });
      const { title, ...data } = withLines(plot(shape.type, value, moved), lines);
      const options: PlotOptions = { width, height: height ?? undefined, measure };
      const named = {
        ...data,
        title: cell.title ?? `${title} of ${cell.of}`,
        before: moved === undefined ? undefined : words.baseline,
      };
      return [named, options] as const;
    },
    (data) => ({ sort: "plot", data }),
  );
}
