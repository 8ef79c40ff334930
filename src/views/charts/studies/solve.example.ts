import type { SolveOutcome } from "../../../cells/index.ts";
import type { Example } from "../../drawings/example.ts";
import { exampleOutcome } from "./example-design.ts";
import type { StudyOptions } from "./study-chart.ts";

/** A value of the tip break of Plover is looked for: found once, found three times beside a gap, and not to be had. */
export const solveExamples: readonly Example<SolveOutcome, StudyOptions>[] = [
  {
    title: "a target that is reached once",
    data: exampleOutcome({ study: "solve", inputs: [{ input: "tip_break" }], results: ["eda"], target: "10 deg" }),
    options: { onChoose: () => {}, chosen: null },
  },
  {
    title: "a target that is reached three times, with values that fail",
    data: exampleOutcome({
      study: "solve",
      inputs: [{ input: "tip_break" }],
      results: ["foot_gap * abs(tip_break / 1 rad - 0.09)"],
      target: "0.5 mm",
    }),
    options: {},
  },
  {
    title: "a target that is out of reach",
    data: exampleOutcome({ study: "solve", inputs: [{ input: "tip_break" }], results: ["loss"], target: "8%" }),
    options: { onChoose: () => {} },
  },
  {
    title: "a target that is jumped past",
    data: exampleOutcome({
      study: "solve",
      inputs: [{ input: "tip_break" }],
      results: ["if tip_break < 9 deg then eda else eda + 2 deg"],
      target: "12.5 deg",
    }),
    options: {},
  },
];
