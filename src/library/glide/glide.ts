import { type Atmosphere, airAt, airParameter } from "../air/atmosphere.ts";
import { measuredParameter } from "../air/measured-polar.ts";
import { shapeParameter } from "../air/profile-drag.ts";
import { type SectionShape, sectionShapes } from "../air/section.ts";
import { sectionAssumptions, sectionSources } from "../air/section-sources.ts";
import { surfaceDrag, wingPieces } from "../air/wing-drag.ts";
import { chosen } from "../chosen.ts";
import { efficiency, efficiencySource } from "../flow/induced-drag.ts";
import { finRecord } from "../shape/fin-record.ts";
import { taperedFin, taperedTailplane } from "../shape/sample-tails.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { tailplaneRecord } from "../shape/tailplane-record.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number, type Refuse } from "../spec.ts";
import { freeFall } from "../units.ts";
import { glideRecord } from "./glide-record.ts";
import { steadyGlide } from "./steady-glide.ts";

/** `glide(mass, wing, lift_coefficient, …)`: the glide of a wing of thin sections with its tail, in closed form. */
export const glide = define({
  name: "glide",
  summary: "Speed, sink and glide ratio at a lift coefficient, with the drag of wing, tail and body added up.",
  topic: "glide",
  parameters: {
    mass: number("g", "mass of the glider", { above: 0 }),
    wing: wingRecord,
    lift_coefficient: number("1", "lift coefficient of the glide", { above: 0, max: 1.5 }),
    shape: shapeParameter,
    tailplane: { ...tailplaneRecord, summary: "the tailplane; left out, it has no drag", optional: true } as const,
    fin: { ...finRecord, summary: "the fin; left out, it has no drag", optional: true } as const,
    other_area: number("cm^2", "drag area of stick, pylon and fittings: see body_drag_area", { min: 0, default: 0 }),
    efficiency,
    air: airParameter,
    measured: measuredParameter,
  },
  result: glideRecord,
  formula:
    "speed = √(2·mass·g / (density · area · √(CL² + CD²))), sink = speed · CD/√(CL² + CD²), glide_ratio = CL/CD; CD = profile_drag + CL²/(π·efficiency·aspect_ratio) + drag of tail, fin and other_area over the wing's area",
  errors: [
    "The shape is none of the list.",
    "An arc has no column camber.",
    "A chord flies too slowly or too fast.",
    "The measured polar cannot be read.",
  ],
  assumptions: [
    "Every section of the wing works at the lift coefficient of the whole; the tail carries nothing and has the drag of a flat plate along the flow.",
    "Surfaces do not disturb each other. A flow solution says better how lift is spread and what it costs.",
    "sink_low and sink_high take all drag but the induced for as much less and more as that of the wing's sections is uncertain: 20 % where they were tested. Past the sections' largest lift the drag grows by what is missing.",
    ...sectionAssumptions,
  ],
  sources: [
    { text: "Balance of lift, drag and weight on a straight path", mark: "derived" },
    ...sectionSources,
    efficiencySource,
  ],
  examples: [
    {
      summary: "100 g on a wing of 1080 cm² and its small tail, at a lift coefficient of 0.6",
      arguments: {
        mass: 0.1,
        wing: threePanelWing,
        lift_coefficient: 0.6,
        tailplane: taperedTailplane,
        fin: taperedFin,
        other_area: 1e-4,
      },
      result: { lift_coefficient: 0.6, induced_drag: (0.36 * 0.108) / (Math.PI * 0.95) },
    },
  ],
  compute: (given, refuse) => {
    const { mass, wing, lift_coefficient: lift, tailplane, fin, other_area, air = airAt(0) } = given;
    const shape = chosen(given.shape, sectionShapes, "shape", refuse);
    // The Reynolds numbers take the speed of a shallow path; the true one is less by half a per cent at 10 to 1.
    const speed = Math.sqrt((2 * mass * freeFall) / (air.density * wing.area * lift));
    const tail = [
      ...(tailplane ? [plateDrag(tailplane.span, tailplane, speed, air, refuse)] : []),
      ...(fin ? [plateDrag(fin.height, fin, speed, air, refuse)] : []),
    ];
    const profile = surfaceDrag(wingPieces(wing), shape, lift, speed, air, refuse, given.measured);
    return steadyGlide({
      mass,
      area: wing.area,
      density: air.density,
      lift,
      profile: profile.area / wing.area,
      induced: lift ** 2 / (Math.PI * given.efficiency * wing.aspect_ratio),
      other: tail.reduce((sum, area) => sum + area, other_area) / wing.area,
      spread: profile.spread,
    });
  },
});

const plate = sectionShapes["flat plate"] as SectionShape;

/** Drag area of a flat surface along the flow. */
function plateDrag(
  length: number,
  surface: { readonly root_chord: number; readonly tip_chord: number; readonly thickness: number },
  speed: number,
  air: Atmosphere,
  refuse: Refuse,
): number {
  const { root_chord, tip_chord, thickness } = surface;
  return surfaceDrag([{ length, root_chord, tip_chord, thickness, camber: 0 }], plate, 0, speed, air, refuse).area;
}
