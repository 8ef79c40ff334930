import type { ToleranceOutcome } from "../../../cells/index.ts";
import type { Example } from "../../drawings/example.ts";
import { exampleOutcome } from "./example-design.ts";
import type { StudyOptions } from "./study-chart.ts";

const degrees = (count: number): number => (count * Math.PI) / 180;

/** The wing of Plover built many times: with checks that some builds fail, with values that fail, and half way through. */
export const toleranceExamples: readonly Example<ToleranceOutcome, StudyOptions>[] = [
  {
    title: "two results with the limits of checks",
    data: exampleOutcome({
      study: "tolerance",
      inputs: [
        { input: "root_break", plus_minus: "1 deg", law: "normal" },
        { input: "middle_break", plus_minus: "1 deg", law: "triangular" },
        { input: "tip_break", plus_minus: "3 deg" },
      ],
      results: ["eda", "loss"],
      builds: 1500,
    }),
    options: {
      allowed: [
        { quantity: "eda", min: degrees(9), label: "enough dihedral" },
        { quantity: "loss", max: 0.04, label: "lift kept" },
      ],
    },
  },
  {
    title: "builds without a value, and no checks",
    data: exampleOutcome({
      study: "tolerance",
      inputs: [{ input: "jig_height", plus_minus: "10 mm", law: "normal" }],
      results: ["foot_gap"],
      checks: [],
      builds: 800,
    }),
    options: {},
  },
  {
    title: "a tolerance that is still going, all of it the same",
    data: exampleOutcome(
      { study: "tolerance", inputs: [{ input: "tip_break" }], results: ["jig_height"], builds: 100 },
      0.3,
    ),
    options: {},
  },
];
