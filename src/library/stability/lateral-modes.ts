import { define, number } from "../spec.ts";
import { lateralMatrix, sixBySix } from "./linear-motion.ts";
import { lateralModesOf, lateralModesRecord } from "./mode-records.ts";

const slope = (of: string, by: string) => number("1/rad", `change of ${of} with ${by}`);
const slip = "sideslip";
const rolling = "p·b/2V";
const yawing = "r·b/2V";

/** `lateral_modes(mass, …)`: from coefficients in stability axes. */
export const lateralModes = define({
  name: "lateral_modes",
  summary: "Roll, spiral and Dutch roll from the coefficients of an aircraft in steady flight.",
  topic: "stability",
  parameters: {
    mass: number("g", "mass", { above: 0 }),
    roll_inertia: number("g cm^2", "moment of inertia in roll, about the line of flight", { above: 0 }),
    yaw_inertia: number("g cm^2", "moment of inertia in yaw, square to the line of flight", { above: 0 }),
    area: number("m^2", "area on which the coefficients stand", { above: 0 }),
    span: number("mm", "span on which the moments stand", { above: 0 }),
    speed: number("m/s", "speed", { above: 0 }),
    side_by_slip: slope("the side force", slip),
    roll_by_slip: slope("the rolling moment", `${slip}: below 0, dihedral rights`),
    yaw_by_slip: slope("the yawing moment", `${slip}: above 0, the fin turns into the wind`),
    roll_by_roll: slope("the rolling moment", rolling),
    yaw_by_roll: slope("the yawing moment", rolling),
    roll_by_yaw: slope("the rolling moment", yawing),
    yaw_by_yaw: slope("the yawing moment", yawing),
    product: number("g cm^2", "product of inertia ∫ x·z dm, x forward and z down", { default: 0 }),
    path_angle: number("deg", "angle of the path above the horizon; of a glide below 0", { default: 0 }),
    density: number("kg/m^3", "density of the air", { above: 0, default: 1.225 }),
  },
  result: lateralModesRecord,
  formula:
    "eigenvalues of the equations of v, p, r and bank with Yv = CYβ, Lv = Clβ, Nv = Cnβ, Lp = Clp, Np = Cnp, Lr = Clr, Nr = Cnr, each times its dynamic pressure, area, span and speed",
  errors: ["The product of inertia is larger than the moments allow."],
  assumptions: [
    "Stability axes: Clr there is that of body axes less the angle of attack times Clp, and so on. Mixed up, a wing that spirals in looks as if it righted itself.",
    "The side force due to rolling and yawing is left out. A light model also moves air along: modes of a glider counts it.",
  ],
  sources: [
    { text: "R. C. Nelson, Flight Stability and Automatic Control, 1998, chapter 5", mark: "from memory" },
    { text: "B. Etkin, L. D. Reid, Dynamics of Flight, 1996, equation 4.9,19", mark: "from memory" },
  ],
  examples: [
    {
      summary: "no fin, no dihedral: rolling dies away by its own damping, ρ·V·S·b²·Clp/(4·Ixx)",
      arguments: {
        mass: 0.02,
        roll_inertia: 4e-5,
        yaw_inertia: 9e-5,
        area: 0.03,
        span: 0.5,
        speed: 4,
        side_by_slip: -0.1,
        roll_by_slip: 0,
        yaw_by_slip: 0,
        roll_by_roll: -0.5,
        yaw_by_roll: 0,
        roll_by_yaw: 0.2,
        yaw_by_yaw: -0.05,
        density: 1.2,
      },
      result: { roll: { rate: (-1.2 * 4 * 0.03 * 0.25 * 0.5) / (4 * 4e-5) } },
      tolerance: 1e-9,
    },
  ],
  compute: (given, refuse) => {
    const { mass, roll_inertia, yaw_inertia, product, area, span, speed } = given;
    if (product ** 2 >= roll_inertia * yaw_inertia) {
      refuse("product", "No body has such a product of inertia beside these moments. Check its unit.");
    }
    const force = (0.5 * given.density * speed ** 2 * area) / speed;
    const moment = force * span;
    const turning = (moment * span) / 2;
    return lateralModesOf(
      lateralMatrix({
        mass,
        u: speed,
        w: 0,
        pitch: given.path_angle,
        inertia: sixBySix([
          [1, 1, mass],
          [3, 3, roll_inertia],
          [5, 5, yaw_inertia],
          [3, 5, -product],
          [5, 3, -product],
        ]),
        derivatives: sixBySix([
          [1, 1, force * given.side_by_slip],
          [3, 1, moment * given.roll_by_slip],
          [5, 1, moment * given.yaw_by_slip],
          [3, 3, turning * given.roll_by_roll],
          [5, 3, turning * given.yaw_by_roll],
          [3, 5, turning * given.roll_by_yaw],
          [5, 5, turning * given.yaw_by_yaw],
        ]),
      }),
      refuse,
    );
  },
});
