import type { MapOutcome } from "../../../cells/index.ts";
import type { Example } from "../../drawings/example.ts";
import { exampleOutcome } from "./example-design.ts";
import type { StudyOptions } from "./study-chart.ts";

/** Two breaks of Plover over a grid: with two checks and trials, with values that fail, and half way through. */
export const mapExamples: readonly Example<MapOutcome, StudyOptions>[] = [
  {
    title: "two results, checks and trials",
    data: exampleOutcome({
      study: "map",
      inputs: [{ input: "tip_break" }, { input: "middle_break" }],
      results: ["eda", "loss"],
    }),
    options: { bands: [0.006, null], onChoose: () => {}, chosen: [(6 * Math.PI) / 180, (7 * Math.PI) / 180] },
  },
  {
    title: "one result, which has no value where both are large",
    data: exampleOutcome({
      study: "map",
      inputs: [{ input: "tip_break" }, { input: "middle_break", points: 15 }],
      results: ["foot_gap"],
      checks: [],
    }),
    options: {},
  },
  {
    title: "a map that is still going, on a check without a margin",
    data: exampleOutcome(
      {
        study: "map",
        inputs: [{ input: "tip_break" }, { input: "middle_break" }],
        results: ["eda"],
        checks: ["either"],
      },
      0.55,
    ),
    options: {},
  },
];
