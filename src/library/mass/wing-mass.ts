import { degrees } from "../numerics/degrees.ts";
import { plainVWing } from "../shape/sample-wings.ts";
import type { Wing } from "../shape/wing-record.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";
import { type Body, gather } from "./gather.ts";
import { partRecord } from "./part-record.ts";
import { plate } from "./plate.ts";
import { directions, type Seat, seated, seatParameters } from "./seat.ts";
import { type SectionFill, sandedSection } from "./section-fill.ts";
import { densities, sanding } from "./wing-wood.ts";

/** Of the example: length of each half, its mass, and its balance point above the root, s·sin Γ + t/2·cos Γ. */
const vLength = 0.4 / Math.cos(degrees(12));
const vMass = 2 * 100 * 0.003 * vLength * 0.09;
const vRise = ((vLength * 0.25) / 0.54) * Math.sin(degrees(12)) + 0.0015 * Math.cos(degrees(12));

/** `wing_mass(wing, density, …)`: the bare wood of a wing as one part, with its inertia. */
export const wingMass = define({
  name: "wing_mass",
  summary: "The bare wood of a wing as one part: mass, balance point, inertia, from its panels and their density.",
  topic: "mass",
  parameters: {
    wing: wingRecord,
    ...sanding,
    ...seatParameters,
    high_point: number("%", "where the section is thickest, from the leading edge", {
      above: 0,
      below: 1,
      default: 0.3,
    }),
  },
  result: partRecord,
  formula:
    "mass = Σ density · sanded · thickness · length · (root_chord + tip_chord) / 2; balance point and inertia by integrals over each panel in its place",
  errors: ["No density is given, and the table of panels has none either."],
  assumptions: [
    "x aft from the root's leading edge, y to the right tip, z up. Joints, glue and finish are not in it: see joint_mass.",
    "Each panel keeps its thickness from root to tip, with the lower face flat.",
    "A sanded section is 1 − uⁿ high before and behind its high point, which fills the share that is left; unsanded it is the plain strip.",
    "Washout turns each panel about its own leading edge, the seat's incidence the whole wing about the root's.",
  ],
  sources: [
    { text: "Integrals of a straight taper with similar sections, exact; parallel-axis theorem", mark: "derived" },
    { text: "Share left after sanding a thin flat-bottomed section: 0.75 to 0.8", mark: "common practice" },
  ],
  examples: [
    {
      summary: "a plain V at 12 deg, 110 to 70 mm chord, 3 mm thick, of 100 kg/m³, unsanded, on a seat 12 mm up",
      arguments: { wing: plainVWing, density: 100, z: 0.012 },
      result: {
        mass: vMass,
        x: 0.0247 / 0.27 / 2,
        y: 0,
        z: 0.012 + vRise,
        // About the root's lower edge m·(mean of s² + t²/3), less m·rise² to bring it to the balance point.
        ixx: vMass * ((vLength ** 2 * 0.32) / 1.08 + 0.003 ** 2 / 3 - vRise ** 2),
        ixy: 0,
        iyz: 0,
      },
    },
  ],
  compute: ({ wing, density, sanded, high_point, z, incidence }, refuse) =>
    gather(wingWood(wing, densities(wing, density, refuse), sandedSection(sanded, high_point), { x: 0, z, incidence })),
});

/** The panels of both halves as bodies; `density` is told by side and panel. */
function wingWood(
  wing: Wing,
  density: Readonly<Record<"right" | "left", readonly number[]>>,
  section: SectionFill,
  seat: Seat,
): readonly Body[] {
  return (["right", "left"] as const).flatMap((side) => {
    const half = wing[side];
    const of = (list: readonly number[], index: number) => list[index] ?? Number.NaN;
    const { x, y, z } = half.stations;
    const corner = (station: number) => seated([of(x, station), of(y, station), of(z, station)], seat);
    return half.length.flatMap((length, i) => {
      const { aft, up } = directions(side === "right" ? 1 : -1, of(half.cant, i), of(half.twist, i), seat);
      return plate({
        length,
        root: { corner: corner(i), chord: of(half.root_chord, i) },
        tip: { corner: corner(i + 1), chord: of(half.tip_chord, i) },
        thickness: of(half.thickness, i),
        density: of(density[side], i),
        aft,
        up,
        section,
      });
    });
  });
}
