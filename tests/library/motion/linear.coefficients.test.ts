/** The full equations of motion against the textbook's way: coefficients in stability axes, then their matrices. */
import { expect, test } from "vitest";
import { derivativesAt } from "../../../src/library/flow/derivatives.ts";
import { flowState, stateCount } from "../../../src/library/flow/flow-state.ts";
import { loadSlopes, loadsAbout } from "../../../src/library/flow/quadratic-loads.ts";
import { coefficientsAt, straightFlight } from "../../../src/library/flow/wind-axes.ts";
import { aimOf } from "../../../src/library/motion/aim.ts";
import { disturbanceMatrix, lateralPart, longitudinalPart } from "../../../src/library/motion/linear.ts";
import { lateralMatrix, longitudinalMatrix, sixBySix } from "../../../src/library/stability/linear-motion.ts";
import { lateralModesOf, longitudinalModesOf } from "../../../src/library/stability/mode-records.ts";
import { refuse } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";

const glider = ploverWith();
const {
  gliding,
  body: whole,
  circle,
} = aimOf(
  { glider, shape: "flat-bottomed", other_area: 0 } as Parameters<typeof aimOf>[0],
  { tail: 0, rudder: 0 },
  refuse,
);
const { mass } = whole;
const { density, balance } = gliding;
// The lattice alone, no air carried along, nor a wake that is late; and a push forward in place of a glide.
const body = {
  ...whole,
  apparent: new Float64Array(36),
  air: (at: Float64Array, loads: Float64Array) => {
    const state = new Float64Array(8);
    state.set(at.subarray(0, 6));
    gliding.addLattice(state, loads.fill(0));
  },
};
const { u, w } = circle;
const [speed, alpha] = [Math.hypot(u, w), Math.atan2(w, u)];
const steady = { ...circle, pitch: alpha };

const area = glider.wing.area;
const [span, chord] = [glider.wing.span, glider.wing.mac];
const loads = loadsAbout(gliding.flow.loads, [balance.x, balance.y, balance.z]);
const reference = { area, span, chord };
const c = derivativesAt(loads, alpha, reference, "stability", { slope: 0, way: 0 });
const { lift, drag, pitch } = coefficientsAt(loads, alpha, reference);
const slopes = loadSlopes(loads, straightFlight(alpha));
const byPitching = (load: number) => slopes[load * stateCount + flowState.q] ?? Number.NaN;
const force = 0.5 * density * speed * area;
const [cos, sin] = [Math.cos(alpha), Math.sin(alpha)];
const inertia = (i: number, j: number) => whole.rigid[(i + 3) * 6 + j + 3] ?? Number.NaN;
const [ixx, ixz, izz] = [inertia(0, 0), inertia(0, 2), inertia(2, 2)];
const turnedProduct = ixz * (cos ** 2 - sin ** 2) + (izz - ixx) * sin * cos;
// Moments about axes turned by the angle of attack; what stands in a mass matrix is minus the product of inertia.
const motion = {
  mass,
  inertia: sixBySix([
    [0, 0, mass],
    [1, 1, mass],
    [2, 2, mass],
    [3, 3, ixx * cos ** 2 + izz * sin ** 2 + 2 * ixz * sin * cos],
    [4, 4, inertia(1, 1)],
    [5, 5, izz * cos ** 2 + ixx * sin ** 2 - 2 * ixz * sin * cos],
    [3, 5, turnedProduct],
    [5, 3, turnedProduct],
  ]),
  derivatives: sixBySix([
    // B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, table 4.4, without a propeller.
    [0, 0, -2 * force * drag],
    [0, 2, force * (lift - c.drag_alpha)],
    // Books leave out what pitching does to drag.
    [0, 4, density * speed * (cos * byPitching(0) + sin * byPitching(2))],
    [2, 0, -2 * force * lift],
    [2, 2, -force * (drag + c.lift_alpha)],
    [2, 4, -(force * chord * c.lift_q) / 2],
    [4, 0, 2 * force * chord * pitch],
    [4, 2, force * chord * c.pitch_alpha],
    [4, 4, (force * chord ** 2 * c.pitch_q) / 2],
    [1, 1, force * c.side_beta],
    [1, 3, (force * span * c.side_p) / 2],
    [1, 5, (force * span * c.side_r) / 2],
    [3, 1, force * span * c.roll_beta],
    [3, 3, (force * span ** 2 * c.roll_p) / 2],
    [3, 5, (force * span ** 2 * c.roll_r) / 2],
    [5, 1, force * span * c.yaw_beta],
    [5, 3, (force * span ** 2 * c.yaw_p) / 2],
    [5, 5, (force * span ** 2 * c.yaw_r) / 2],
  ]),
  u: speed,
  w: 0,
  pitch: 0,
};

test("roll, spiral and Dutch roll of the equations of motion are those of coefficients in stability axes", () => {
  const found = lateralModesOf(lateralPart(disturbanceMatrix(body, steady)), refuse);
  const wanted = lateralModesOf(lateralMatrix(motion), refuse);
  for (const mode of ["roll", "spiral", "dutch_roll"] as const) {
    expect(found[mode].rate / wanted[mode].rate).toBeCloseTo(1, 6);
    expect(found[mode].frequency ?? 0).toBeCloseTo(wanted[mode].frequency ?? 0, 5);
  }
});

test("so are the short period and the phugoid", () => {
  const found = longitudinalModesOf(longitudinalPart(disturbanceMatrix(body, steady)), refuse);
  const wanted = longitudinalModesOf(longitudinalMatrix(motion), refuse);
  for (const mode of ["short_period", "phugoid"] as const) {
    expect(found[mode].rate / wanted[mode].rate).toBeCloseTo(1, 6);
    expect((found[mode].frequency ?? 0) / (wanted[mode].frequency ?? 1)).toBeCloseTo(1, 6);
  }
});
