import type { SweepOutcome } from "../../../cells/index.ts";
import type { Example } from "../../drawings/example.ts";
import { exampleOutcome } from "./example-design.ts";
import type { StudyOptions } from "./study-chart.ts";

/** The tip break of Plover swept: held against two trials, with variants that fail, and half way through. */
export const sweepExamples: readonly Example<SweepOutcome, StudyOptions>[] = [
  {
    title: "two results of the design and of two trials",
    data: exampleOutcome({
      study: "sweep",
      inputs: [{ input: "tip_break", points: 21 }],
      results: ["eda", "loss"],
      trials: ["flat middle", "long tips"],
    }),
    options: { bands: [0.006, null], onChoose: () => {} },
  },
  {
    title: "one result, which has no value at large breaks",
    data: exampleOutcome({
      study: "sweep",
      inputs: [{ input: "tip_break" }],
      results: ["foot_gap"],
      checks: ["enough_dihedral"],
    }),
    options: { chosen: [(4 * Math.PI) / 180] },
  },
  {
    title: "a sweep that is still going",
    data: exampleOutcome({ study: "sweep", inputs: [{ input: "tip_break" }], results: ["eda"], checks: [] }, 0.4),
    options: {},
  },
];
