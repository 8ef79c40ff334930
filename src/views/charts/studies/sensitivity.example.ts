import type { SensitivityOutcome } from "../../../cells/index.ts";
import type { Example } from "../../drawings/example.ts";
import { exampleOutcome } from "./example-design.ts";
import type { StudyOptions } from "./study-chart.ts";

/** What moves the wing of Plover: its breaks as they are built and a length that nobody stated, values that fail, half way. */
export const sensitivityExamples: readonly Example<SensitivityOutcome, StudyOptions>[] = [
  {
    title: "two results, one input without a stated ±, a check that falls",
    data: exampleOutcome({
      study: "sensitivity",
      inputs: [
        { input: "root_break" },
        { input: "middle_break" },
        { input: "tip_break", plus_minus: "3 deg" },
        { input: "panels[1].length" },
      ],
      results: ["eda", "loss"],
    }),
    options: {},
  },
  {
    title: "a result that has no value with one input moved",
    data: exampleOutcome({
      study: "sensitivity",
      inputs: [{ input: "tip_break" }, { input: "jig_height", plus_minus: "9 mm" }, { input: "middle_break" }],
      results: ["foot_gap - 2 mm", "sqrt(jig_height / 1 mm - 22)"],
      checks: [],
    }),
    options: {},
  },
  {
    title: "a sensitivity that is still going",
    data: exampleOutcome({ study: "sensitivity", inputs: [], results: ["eda"], checks: [] }, 0.5),
    options: {},
  },
];
