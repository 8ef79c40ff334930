import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { tipDihedralWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, record } from "../spec.ts";
import { airAt, airParameter } from "./atmosphere.ts";
import { measuredParameter } from "./measured-polar.ts";
import { sampleSection } from "./sample-sections.ts";
import { sectionDrag, sectionShapes } from "./section.ts";
import { sectionAssumptions, sectionSources } from "./section-sources.ts";
import { surfaceDrag, wingPieces } from "./wing-drag.ts";

const profileDragRecord = record(
  "profile_drag",
  "profile drag of a wing with its spread",
  {
    drag_coefficient: number("1", "drag coefficient on the area of the plan view"),
    low: number("1", "as low as it may be"),
    high: number("1", "as high as it may be"),
    reynolds: number("1", "Reynolds number of the mean aerodynamic chord"),
    lowest_reynolds: number("1", "Reynolds number of the shortest chord"),
    max_lift: number("1", "largest lift coefficient of the section that stalls first, ±0.1"),
  },
  (drag) =>
    `${numberText(drag.drag_coefficient, "1")}, from ${numberText(drag.low, "1")} to ${numberText(drag.high, "1")}`,
);

/** The kind of section of a wing, as parameter. */
export const shapeParameter = choice("kind of section", Object.keys(sectionShapes), { default: "flat-bottomed" });

/** `profile_drag(wing, lift_coefficient, speed, shape, air, measured)`. */
export const profileDrag = define({
  name: "profile_drag",
  summary: "The profile drag of a wing of thin sections, panel by panel at the Reynolds numbers of their chords.",
  topic: "air",
  parameters: {
    wing: wingRecord,
    lift_coefficient: number("1", "lift coefficient of every section", { min: -1.5, max: 2 }),
    speed: number("m/s", "speed", { above: 0 }),
    shape: shapeParameter,
    air: airParameter,
    measured: measuredParameter,
  },
  result: profileDragRecord,
  formula: "∫ cd·c ds along the panels as cut, over the area of the plan view; cd as in section_drag",
  errors: [
    "The shape is none of the list.",
    "An arc has no column camber.",
    "A chord flies at a Reynolds number below 5000 or above 300 000.",
    "The measured polar has too few rows at a Reynolds number, two of equal lift, or angles that do not fit.",
  ],
  assumptions: [
    "Every section works at the same lift coefficient. Washout and the fall of lift towards the tips make the real ones differ.",
    "Camber is that of the column camber where the table of panels has one; else none for a flat plate, half the thickness for a flat-bottomed section.",
    ...sectionAssumptions,
  ],
  sources: sectionSources,
  examples: [
    {
      summary: "level centre, 20 deg tips, 90 mm chord, 3 mm thick, at a lift coefficient of 0.5 and 5 m/s",
      arguments: { wing: tipDihedralWing, lift_coefficient: 0.5, speed: 5 },
      // One section throughout: its drag times the area as cut over that of the plan view.
      result: {
        drag_coefficient:
          (sectionDrag(
            { ...sampleSection, thickness: 1 / 30, camber: 1 / 60 },
            0.5,
            0.45 / airAt(0).kinematic_viscosity,
          ) *
            tipDihedralWing.developed_area) /
          tipDihedralWing.area,
        reynolds: 0.45 / airAt(0).kinematic_viscosity,
      },
    },
  ],
  compute: ({ wing, lift_coefficient, speed, shape, air = airAt(0), measured }, refuse) => {
    const kind = chosen(shape, sectionShapes, "shape", refuse);
    const drag = surfaceDrag(wingPieces(wing), kind, lift_coefficient, speed, air, refuse, measured);
    const drag_coefficient = drag.area / wing.area;
    return {
      drag_coefficient,
      low: drag_coefficient * (1 - drag.spread),
      high: drag_coefficient * (1 + drag.spread),
      reynolds: (speed * wing.mac) / air.kinematic_viscosity,
      lowest_reynolds: drag.lowestReynolds,
      max_lift: drag.maxLift,
    };
  },
});
