import type { Example } from "./example.ts";
import { wingOf } from "./example-gliders.ts";
import type { FrontViewData, FrontViewOptions } from "./front-view.ts";

/** Three panels a side of Plover, a wing without a root joint, halves that differ, a tall one, and trials. */
export const frontViewExamples: readonly Example<FrontViewData, FrontViewOptions>[] = [
  {
    title: "three panels a side over a flatter baseline",
    data: {
      wing: wingOf({ length: [105, 80, 60], break: [3, 7, 11], thickness: [3.2, 2.4, 2] }),
      baseline: {
        wing: wingOf({ length: [105, 80, 60], break: [3, 7, 7], thickness: [3.2, 2.4, 2] }),
        name: "as flown",
      },
    },
    options: { name: "main_wing" },
  },
  {
    title: "a level centre panel with raised tips, in inches",
    data: { wing: wingOf({ length: [140, 90], break: [0, 18], thickness: [3, 2.5] }) },
    options: { name: "tip_wing", unit: "in", fraction: 16 },
  },
  {
    title: "halves that differ, after a repair",
    data: {
      wing: wingOf(
        { length: [110, 85], break: [5, 9], thickness: [3, 2.5] },
        { length: [110, 70], break: [6, 9.5], thickness: [3, 2.5] },
      ),
    },
    options: { name: "mended" },
  },
  {
    title: "six panels a side, bent to a bow",
    data: {
      wing: wingOf({ length: [60, 55, 50, 45, 40, 35], break: [2, 4, 5, 6, 6, 7], thickness: [3, 3, 2.5, 2, 2, 1.5] }),
    },
    options: { name: "bow" },
  },
  {
    title: "three panels a side over the baseline and two trials",
    data: {
      wing: wingOf({ length: [105, 80, 60], break: [3, 7, 11], thickness: [3.2, 2.4, 2] }),
      baseline: {
        wing: wingOf({ length: [105, 80, 60], break: [3, 7, 7], thickness: [3.2, 2.4, 2] }),
        name: "the baseline",
      },
      further: [
        {
          wing: wingOf({ length: [105, 80, 75], break: [3, 7, 16], thickness: [3.2, 2.4, 2] }),
          name: "steep long tips",
        },
        { wing: wingOf({ length: [105, 80, 60], break: [0, 2, 5], thickness: [3.2, 2.4, 2] }), name: "nearly flat" },
      ],
    },
    options: { name: "main_wing" },
  },
];
