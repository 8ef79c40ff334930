/**
 * The vortex lattice. What it offers to the rest of the library:
 *
 * - `solveLattice(glider, options)` solves a shape once (solve-lattice.ts) and holds its circulations and its loads.
 * - `flow.loads` are quadratic forms of the state (quadratic-loads.ts): `loadsAt(loads, state, into)` gives X Y Z L M N per
 *   unit of air density (so times ρ in N and N m) at any speed, angle, turning and control, in a fraction of a
 *   microsecond and without any further solving; `loadSlopes` their exact derivatives.
 * - The state (flow-state.ts) is u v w p q r of the body in SI, and two controls (angle · u) for tailplane and fin.
 * - Axes of state and loads: body axes, x forward along the line that incidences are counted from, y right, z down, about
 *   the point of the loads; `loadsAbout(loads, point)` moves both to a balance point, told in the notebook's axes (x aft
 *   from the wing root's leading edge, y right, z up).
 * - `derivativesAt`, `coefficientsAt` (wind-axes.ts) tell them as books do; `farFieldDrag`, `tailUpwash`, `stripCirculation`
 *   tell of drag, downwash and the lift of each strip at a state.
 *
 * It leaves out: profile drag, stall, the stick, the thickness of surfaces, and the rolling up of the wake.
 */

import { chosen } from "../chosen.ts";
import { degrees } from "../numerics/degrees.ts";
import { type Glider, gliderRecord } from "../shape/glider-record.ts";
import { rectangularWing } from "../shape/sample-wings.ts";
import { buildTailplane } from "../shape/tailplane.ts";
import { choice, define, type FieldValues, number, type Refuse } from "../spec.ts";
import { derivativesAt } from "./derivatives.ts";
import { farFieldDrag, stripCirculation } from "./far-field.ts";
import { type Flow, flowRecord } from "./flow-record.ts";
import { flowState } from "./flow-state.ts";
import { nearFieldDrag } from "./near-field.ts";
import { loadsAbout } from "./quadratic-loads.ts";
import { sectionSlope, sectionSlopeSource } from "./section-slope.ts";
import { type LatticeFlow, solveLattice } from "./solve-lattice.ts";
import { spanLoading } from "./span-loading.ts";
import { tailUpwash } from "./tail-downwash.ts";
import { coefficientsAt, neutralPlace, straightFlight } from "./wind-axes.ts";

const whole = (summary: string, least: number, most: number, usual: number) =>
  number("1", summary, { min: least, max: most, default: usual });

const parameters = {
  glider: gliderRecord,
  angle_of_attack: number("deg", "angle of the wind to the line that incidences are counted from", {
    above: -degrees(45),
    below: degrees(45),
    default: degrees(5),
  }),
  section_slope: sectionSlope,
  camber: number("%", "camber of wing panels whose table has none", { min: 0, max: 0.2, default: 0 }),
  axes: choice("axes of moments and turning: stability axes have x along the flight path", ["stability", "body"], {
    default: "stability",
  }),
  strips: whole("strips of each half wing", 2, 60, 12),
  rows: whole("rows of vortices along the wing's chord", 1, 12, 4),
  tail_strips: whole("strips of half the tailplane, and of the fin", 2, 40, 6),
  tail_rows: whole("rows along the chords of tailplane and fin", 1, 12, 3),
} as const;

/** A tailplane of aspect ratio 4, its quarter chord half a span behind the wing's, and a twentieth of it higher. */
const farTailplane = buildTailplane({
  span: 0.24,
  root_chord: 0.06,
  tip_chord: 0.06,
  x: 0.41,
  thickness: 0.001,
  sweep: 0,
  z: 0.0395,
  incidence: 0,
});
const wingAlone: Glider = { wing: rectangularWing, seat_height: 0, seat_angle: 0 };

/** `flow(glider, angle_of_attack, …)`. */
export const flow = define({
  name: "flow",
  summary: "The flow about a whole glider by vortex lattice: lift, induced drag, downwash and stability derivatives.",
  topic: "flow",
  parameters,
  result: flowRecord,
  formula:
    "horseshoe vortices on every panel, with the flow along the surface at each control point; forces ρ·V × Γ·l on bound vortices and on the legs that lie on the surface",
  errors: ["A count is no whole number.", "Two surfaces lie upon each other."],
  assumptions: [
    "The wake leaves along the line that incidences are counted from, flat and without rolling up; in sideslip it leaves each surface along the wind, while that of the wing passes the tail as it does without.",
    "Twist, incidence, seat and camber turn the surface's normal; the lattice itself lies along that line.",
    "A fin no farther from the tailplane than its thickness and the stick's height stands on it. Farther off, air gets through between, and both lose much of what they do for each other: there the fin's work steps.",
  ],
  sources: [
    { text: "Law of Biot and Savart; law of Kutta and Joukowski, on a lattice of horseshoe vortices", mark: "derived" },
    sectionSlopeSource,
  ],
  examples: [
    {
      summary: "a flat rectangle of aspect ratio 8: 4.586, 0.974 and 24.2 % by a finer lattice of another hand",
      arguments: { glider: wingAlone, angle_of_attack: degrees(1), section_slope: 2 * Math.PI },
      result: { lift_slope: 4.586, span_efficiency: 0.974, neutral_share: 0.242 },
      tolerance: 0.003,
    },
    {
      summary: "with a tailplane of aspect ratio 4: 5.058 and 60.2 % by another hand",
      arguments: {
        glider: { ...wingAlone, tailplane: farTailplane },
        angle_of_attack: degrees(1),
        section_slope: 2 * Math.PI,
      },
      result: { lift_slope: 5.058, neutral_share: 0.602 },
      tolerance: 0.003,
    },
  ],
  isSlow: true,
  compute: (given, refuse) => flowAbout(given, refuse),
});

/** The flow about a glider at an angle of attack. */
export function flowAbout(given: FieldValues<typeof parameters>, refuse: Refuse): Flow {
  const { glider, angle_of_attack: alpha } = given;
  const { wing, tailplane, balance, seat_height } = glider;
  const axes = chosen(given.axes, { stability: "stability", body: "body" } as const, "axes", refuse);
  const solved = solve(given, refuse);
  const x = balance?.x ?? wing.mac_x + wing.mac / 4;
  const z = balance?.z ?? seat_height;
  const loads = loadsAbout(solved.loads, [x, balance?.y ?? 0, z]);
  const reference = { area: wing.area, span: wing.span, chord: wing.mac };
  const at = (angle: number) => coefficientsAt(loads, angle, reference);
  const { lift, pitch } = at(alpha);

  const upwash = tailUpwash(solved);
  const downwashBy = (u: number, w: number) =>
    upwash ? -u * (upwash[flowState.u] as number) - w * (upwash[flowState.w] as number) : 0;
  const downwash = downwashBy(Math.cos(alpha), Math.sin(alpha));
  const downwash_slope = downwashBy(-Math.sin(alpha), Math.cos(alpha));
  // A tailplane ahead is not in the wing's wake, and feels it at once.
  const way = tailplane ? Math.max(0, tailplane.quarter_x - wing.mac_x - wing.mac / 4) : 0;

  const derivatives = derivativesAt(loads, alpha, reference, axes, { slope: downwash_slope, way });
  const state = straightFlight(alpha);
  const circulation = stripCirculation(solved.lattice, solved.circulation, state);
  const induced_drag = (2 * farFieldDrag(solved.lattice, solved.trace, circulation)) / wing.area;
  const neutral_x = neutralPlace(loads, alpha);
  return {
    angle_of_attack: alpha,
    lift_coefficient: lift,
    pitch_coefficient: pitch,
    induced_drag,
    near_drag: (2 * nearFieldDrag(solved, state)) / wing.area,
    span_efficiency: lift ** 2 / (Math.PI * wing.aspect_ratio * induced_drag),
    lift_slope: derivatives.lift_alpha,
    zero_lift_angle: zeroLift((angle) => at(angle).lift),
    neutral_x,
    neutral_share: (neutral_x - wing.mac_x) / wing.mac,
    static_margin: (neutral_x - x) / wing.mac,
    ...(tailplane && { downwash, downwash_slope }),
    derivatives,
    loading: spanLoading(solved.lattice, circulation, wing),
    span: wing.span,
    balance_x: x,
    balance_z: z,
    unknowns: solved.lattice.unknowns,
  };
}

function solve({ glider, ...options }: FieldValues<typeof parameters>, refuse: Refuse): LatticeFlow {
  for (const count of ["strips", "rows", "tail_strips", "tail_rows"] as const) {
    if (!Number.isInteger(options[count]))
      refuse(count, `${options[count]} is no whole number. Strips and rows are counted.`);
  }
  const solved = solveLattice(glider, {
    strips: options.strips,
    rows: options.rows,
    tailStrips: options.tail_strips,
    finStrips: options.tail_strips,
    tailRows: options.tail_rows,
    sectionSlope: options.section_slope,
    camber: options.camber,
  });
  return (
    solved ?? refuse("glider", "Two surfaces lie upon each other. Move the tailplane or the fin away from the wing.")
  );
}

/** The angle without lift, by the secant rule: lift is next to straight over the angle. */
function zeroLift(lift: (angle: number) => number): number {
  let [before, now] = [0, -0.05];
  for (let step = 0; step < 20; step++) {
    const [a, b] = [lift(before), lift(now)];
    if (Math.abs(b) < 1e-13 || a === b) break;
    [before, now] = [now, now - (b * (now - before)) / (b - a)];
  }
  return now;
}
