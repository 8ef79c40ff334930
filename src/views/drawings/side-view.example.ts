import type { Example } from "./example.ts";
import { bow, mended, plover, ploverBefore, stepped } from "./example-gliders.ts";
import { type GliderDrawingData, wingAlone } from "./glider.ts";
import type { GliderDrawingOptions } from "./glider-options.ts";

/** Plover as it was and is, a wing alone in inches, a glider without a stick, and one that is nearly neutral. */
export const sideViewExamples: readonly Example<GliderDrawingData, GliderDrawingOptions>[] = [
  {
    title: "wing and tail at their angles, over a flatter seat",
    data: { glider: plover, baseline: { glider: ploverBefore, name: "as flown" } },
    options: { name: "plover" },
  },
  {
    title: "a wing alone with a level centre panel, in inches",
    data: { glider: wingAlone(stepped) },
    options: { name: "tip_wing", unit: "in", fraction: 16 },
  },
  { title: "no stick, not weighed yet", data: { glider: mended }, options: { name: "mended" } },
  { title: "a bow on a short stick without a fin, nearly neutral", data: { glider: bow }, options: { name: "bow" } },
];
