import type { Example } from "./example.ts";
import { bow, mended, plover, ploverBefore, stepped } from "./example-gliders.ts";
import { type GliderDrawingData, wingAlone } from "./glider.ts";
import type { GliderDrawingOptions } from "./glider-options.ts";

/** Plover as it was and is, a wing alone in inches, halves that differ, and many panels. */
export const planViewExamples: readonly Example<GliderDrawingData, GliderDrawingOptions>[] = [
  {
    title: "three panels a side with a tail, over a smaller tailplane",
    data: { glider: plover, baseline: { glider: ploverBefore, name: "as flown" } },
    options: { name: "plover" },
  },
  {
    title: "a wing alone whose chords step at skew joints, in inches",
    data: { glider: wingAlone(stepped) },
    options: { name: "tip_wing", unit: "in", fraction: 16 },
  },
  {
    title: "halves that differ, without a stick, not weighed yet",
    data: { glider: mended },
    options: { name: "mended" },
  },
  {
    title: "six panels a side, the balance point just ahead of the neutral point",
    data: { glider: bow },
    options: { name: "bow" },
  },
];
