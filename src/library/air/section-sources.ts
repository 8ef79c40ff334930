import type { Source } from "../spec.ts";

/** Where the model of thin sections comes from. */
export const sectionSources: readonly Source[] = [
  {
    text: "H. Glauert, The Elements of Aerofoil and Airscrew Theory, 1926: thin aerofoil with a parabolic mean line",
    mark: "derived",
  },
  {
    text: "Fit to wind-tunnel tests of thin plates and arcs at Reynolds numbers of 15 000 to 80 000, recalled, not retrieved",
    mark: "from memory",
  },
  {
    text: "E. V. Laitone, Experiments in Fluids 23 (1997) 405–409: below 70 000 a thin plate with a 5 % arc was best",
    mark: "verified",
  },
];

/** What the model leaves out. */
export const sectionAssumptions: readonly string[] = [
  "Thin balsa sections with a smooth but unpolished surface, Reynolds number 15 000 to 80 000; outside of that it is a guess.",
  "Drag is known to ±20 %, the largest lift to ±0.1. Nothing is said of laminar bubbles or of hysteresis.",
];
