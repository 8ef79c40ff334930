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
  {
    text: "J. Winslow and others, Journal of Aircraft, doi 10.2514/1.C034415: from 10 000 to 100 000 bent plates beat thick sections, flat plates depend little on the Reynolds number, thinner ones are better",
    mark: "verified",
  },
  {
    text: "M. S. Selig, J. F. Donovan, D. B. Fraser, Airfoils at Low Speeds, 1989: a flat plate of 2.1 % lifts and drags nearly alike at all Reynolds numbers tested, as turbulent flow would",
    mark: "verified",
  },
];

/** What the model leaves out. */
export const sectionAssumptions: readonly string[] = [
  "Thin balsa sections with a smooth but unpolished surface. Drag is known to ±20 % between Reynolds numbers of 15 000 and 100 000, the largest lift to ±0.1.",
  "Below 15 000 friction goes on by the same law and lift slope and stall stay as they are; above 100 000 likewise. That is a guess: the spread grows by a tenth of the drag for each halving or doubling, up to 40 %.",
  "Nothing is said of laminar bubbles or of hysteresis: thin plates show neither.",
];
