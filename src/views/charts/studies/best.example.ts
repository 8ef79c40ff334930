import type { BestOutcome } from "../../../cells/index.ts";
import type { Example } from "../../drawings/example.ts";
import { exampleOutcome } from "./example-design.ts";
import type { StudyOptions } from "./study-chart.ts";

const inputs = [{ input: "tip_break" }, { input: "middle_break" }];

/** The breaks of Plover looked for: a front of two results, the least of one, one that no check lets be, and half way. */
export const bestExamples: readonly Example<BestOutcome, StudyOptions>[] = [
  {
    title: "the front of two results",
    data: exampleOutcome({
      study: "best",
      inputs,
      results: ["loss", "eda"],
      goals: ["least", "most"],
      checks: ["enough_dihedral"],
    }),
    options: { bands: [0.002, 0.006], onChoose: () => {}, chosen: null },
  },
  {
    title: "the least of one result",
    data: exampleOutcome({ study: "best", inputs, results: ["loss"], goals: ["least"], checks: ["enough_dihedral"] }),
    options: { onChoose: () => {} },
  },
  {
    title: "one that no check lets be",
    data: exampleOutcome({
      study: "best",
      inputs: [{ input: "tip_break", range: ["0 deg", "0.5 deg"] }],
      results: ["loss"],
      goals: ["least"],
      checks: ["enough_dihedral"],
    }),
    options: {},
  },
  {
    title: "a best at an end of two ranges",
    data: exampleOutcome({ study: "best", inputs, results: ["loss"], goals: ["least"], checks: [] }),
    options: { chosen: [0, 0] },
  },
  {
    title: "a best that has not found anything yet",
    data: exampleOutcome({ study: "best", inputs, results: ["loss"], goals: ["least"], checks: [] }, 0),
    options: {},
  },
];
