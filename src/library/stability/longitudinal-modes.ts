import { define, number } from "../spec.ts";
import { longitudinalMatrix, sixBySix } from "./linear-motion.ts";
import { longitudinalModesOf, longitudinalModesRecord } from "./mode-records.ts";

/** `longitudinal_modes(mass, …)`: from coefficients in stability axes. */
export const longitudinalModes = define({
  name: "longitudinal_modes",
  summary: "Short period and phugoid from the coefficients of an aircraft in steady flight.",
  topic: "stability",
  parameters: {
    mass: number("g", "mass", { above: 0 }),
    pitch_inertia: number("g cm^2", "moment of inertia in pitch about the balance point", { above: 0 }),
    area: number("m^2", "area on which the coefficients stand", { above: 0 }),
    chord: number("mm", "chord on which the moments stand", { above: 0 }),
    speed: number("m/s", "speed", { above: 0 }),
    lift_coefficient: number("1", "lift coefficient"),
    drag_coefficient: number("1", "drag coefficient", { min: 0 }),
    lift_slope: number("1/rad", "change of lift with the angle of attack"),
    drag_slope: number("1/rad", "change of drag with the angle of attack"),
    moment_slope: number("1/rad", "change of the nose-up moment with the angle of attack"),
    pitch_damping: number("1/rad", "change of the nose-up moment with q·c/2V"),
    downwash_lag: number("1/rad", "change of the nose-up moment with the rate of the angle of attack times c/2V", {
      default: 0,
    }),
    path_angle: number("deg", "angle of the path above the horizon; of a glide below 0", { default: 0 }),
    density: number("kg/m^3", "density of the air", { above: 0, default: 1.225 }),
  },
  result: longitudinalModesRecord,
  formula:
    "eigenvalues of the equations of u, w, q and pitch with Xu = −2·CD, Xw = CL − CDα, Zu = −2·CL, Zw = −(CLα + CD), Mw = Cmα, Mq = Cmq, Mẇ = Cmα̇, each times its dynamic pressure, area, chord and speed",
  errors: [],
  assumptions: [
    "Stability axes; no thrust, or one that holds whatever the speed; coefficients that do not change with the speed.",
    "Lift due to pitching and to the rate of the angle of attack is left out. A light model also moves air along: modes of a glider counts it.",
  ],
  sources: [
    { text: "R. C. Nelson, Flight Stability and Automatic Control, 1998, chapter 4", mark: "from memory" },
    { text: "B. Etkin, L. D. Reid, Dynamics of Flight, 1996, equation 4.9,18", mark: "from memory" },
  ],
  examples: [
    {
      summary:
        "a glide ratio of 8 and a very stiff tail: the phugoid of Lanchester, √2·g/V, with a damping of 1/(8·√2)",
      arguments: {
        mass: 0.02,
        pitch_inertia: 1e-6,
        area: 0.02,
        chord: 0.05,
        speed: 5,
        lift_coefficient: (2 * 0.02 * 9.80665) / (1.225 * 25 * 0.02),
        drag_coefficient: (2 * 0.02 * 9.80665) / (1.225 * 25 * 0.02) / 8,
        lift_slope: 1e-6,
        drag_slope: 0,
        moment_slope: -1e4,
        pitch_damping: 0,
      },
      result: {
        phugoid: {
          rate: -9.80665 / (8 * 5),
          frequency: (Math.SQRT2 * 9.80665) / 5,
          damping_ratio: 1 / (8 * Math.SQRT2),
        },
      },
      tolerance: 1e-3,
    },
  ],
  compute: (given, refuse) => {
    const { mass, area, chord, speed } = given;
    const force = (0.5 * given.density * speed ** 2 * area) / speed;
    const moment = force * chord;
    const half = chord / (2 * speed);
    return longitudinalModesOf(
      longitudinalMatrix({
        mass,
        u: speed,
        w: 0,
        pitch: given.path_angle,
        inertia: sixBySix([
          [0, 0, mass],
          [2, 2, mass],
          [4, 4, given.pitch_inertia],
          [4, 2, -moment * half * given.downwash_lag],
        ]),
        derivatives: sixBySix([
          [0, 0, -2 * force * given.drag_coefficient],
          [0, 2, force * (given.lift_coefficient - given.drag_slope)],
          [2, 0, -2 * force * given.lift_coefficient],
          [2, 2, -force * (given.lift_slope + given.drag_coefficient)],
          [4, 2, moment * given.moment_slope],
          [4, 4, moment * speed * half * given.pitch_damping],
        ]),
      }),
      refuse,
    );
  },
});
