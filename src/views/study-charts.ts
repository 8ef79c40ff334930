/** The one list of charts of studies, by the sort of study. */
import type { Outcome } from "../cells/index.ts";
import { liveBestChart } from "./charts/studies/best.ts";
import { liveMapChart } from "./charts/studies/map.ts";
import { liveSensitivityChart } from "./charts/studies/sensitivity.ts";
import { liveSolveChart } from "./charts/studies/solve.ts";
import type { StudyOptions } from "./charts/studies/study-chart.ts";
import { liveSweepChart } from "./charts/studies/sweep.ts";
import { liveToleranceChart } from "./charts/studies/tolerance.ts";
import type { LiveDrawing, Surroundings } from "./drawings/sketch.ts";

type Sort = Outcome["study"];
type OutcomeOf<S extends Sort> = Extract<Outcome, { readonly study: S }>;
type Live<S extends Sort> = (
  outcome: OutcomeOf<S>,
  options: StudyOptions,
  surroundings: Surroundings,
) => LiveDrawing<OutcomeOf<S>, StudyOptions>;

const charts: { readonly [S in Sort]: Live<S> } = {
  sweep: liveSweepChart,
  map: liveMapChart,
  sensitivity: liveSensitivityChart,
  tolerance: liveToleranceChart,
  solve: liveSolveChart,
  best: liveBestChart,
};

/** Draws the chart of an outcome; it takes further outcomes of the same sort in place. */
export const liveStudyChart = (
  outcome: Outcome,
  options: StudyOptions,
  surroundings: Surroundings,
): LiveDrawing<Outcome, StudyOptions> =>
  // Each takes outcomes of its own sort only, and is handed no other.
  (charts[outcome.study] as unknown as Live<Sort>)(outcome, options, surroundings);
