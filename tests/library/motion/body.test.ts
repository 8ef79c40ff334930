import { expect, test } from "vitest";
import { anglesOf, attitudeOf } from "../../../src/library/motion/attitude.ts";
import { type AirLoads, type Body, equationsOfMotion, stateSize } from "../../../src/library/motion/body.ts";
import { massMatrix } from "../../../src/library/motion/inertia-matrix.ts";
import { rungeKutta } from "../../../src/library/numerics/runge-kutta.ts";

const part = { mass: 0.017, ixx: 1.6e-4, iyy: 1.1e-4, izz: 2.6e-4, ixy: 3e-6, ixz: -7e-6, iyz: 2e-6 };
const noAir: AirLoads = (_, loads) => {
  loads.fill(0);
};
const bodyOf = (patch: Partial<Body> = {}): Body => ({
  mass: part.mass,
  rigid: massMatrix(part),
  apparent: new Float64Array(36),
  gravity: 9.80665,
  air: noAir,
  ...patch,
});
const stateOf = (first: readonly number[], angles = { bank: 0, pitch: 0, heading: 0 }): Float64Array =>
  Float64Array.from([...first, ...attitudeOf(angles), 0, 0, 0]);

function flown(body: Body, state: Float64Array, seconds: number, step = 0.002): Float64Array {
  const move = rungeKutta(stateSize, equationsOfMotion(body));
  for (let i = 0; i < Math.round(seconds / step); i++) move(state, step);
  return state;
}
const attitude = (state: Float64Array) => [...state.slice(6, 10)] as [number, number, number, number];

test("without air it falls on a parabola, whatever way it turns", () => {
  const start = stateOf([3, 0.5, -0.4, 2, -1, 3], { bank: 0.3, pitch: 0.2, heading: 1 });
  const speed = new Float64Array(stateSize);
  equationsOfMotion(bodyOf())(start, speed);
  const [north, east, down] = [...speed.slice(10)] as [number, number, number];
  const end = flown(bodyOf(), start.slice(), 0.8);
  expect(end[10]).toBeCloseTo(north * 0.8, 6);
  expect(end[11]).toBeCloseTo(east * 0.8, 6);
  expect(end[12]).toBeCloseTo(down * 0.8 + 0.5 * 9.80665 * 0.64, 6);
});

test("a free turn keeps its energy and its angular momentum", () => {
  const momentum = (state: Float64Array): number[] => {
    const rotary = (i: number) =>
      [0, 1, 2].reduce((sum, j) => sum + (body.rigid[(i + 3) * 6 + j + 3] as number) * (state[3 + j] as number), 0);
    return [0, 1, 2].map(rotary);
  };
  const energy = (state: Float64Array) =>
    momentum(state).reduce((sum, of, i) => sum + 0.5 * of * (state[3 + i] as number), 0);
  const body = bodyOf({ gravity: 0 });
  const start = stateOf([0, 0, 0, 5, 0.4, 0.3]);
  const end = flown(body, start.slice(), 4);
  expect(energy(end) / energy(start)).toBeCloseTo(1, 8);
  expect(Math.hypot(...momentum(end)) / Math.hypot(...momentum(start))).toBeCloseTo(1, 8);
  expect(Math.hypot(...attitude(end))).toBeCloseTo(1, 9);
});

test("a body of revolution wobbles at the rate of Euler's equations, (ixx − iyy) / iyy · p", () => {
  const round = { mass: 0.017, ixx: 4e-4, iyy: 1e-4, izz: 1e-4, ixy: 0, ixz: 0, iyz: 0 };
  const body = bodyOf({ rigid: massMatrix(round), gravity: 0 });
  const end = flown(body, stateOf([0, 0, 0, 2, 0.1, 0]), 0.5);
  // ṙ = (ixx − iyy)/izz · p·q, q̇ = −(…)·p·r: a turn of 3·2 rad/s.
  expect(end[3]).toBeCloseTo(2, 12);
  expect(end[4]).toBeCloseTo(0.1 * Math.cos(3), 8);
  expect(end[5]).toBeCloseTo(0.1 * Math.sin(3), 8);
});

test("a steady turn about the vertical holds bank and pitch, and comes round to its heading", () => {
  const [bank, pitch, rate] = [0.5, -0.1, 1.3];
  const turning = [-Math.sin(pitch), Math.sin(bank) * Math.cos(pitch), Math.cos(bank) * Math.cos(pitch)];
  const start = stateOf([0, 0, 0, ...turning.map((of) => of * rate)], { bank, pitch, heading: 0 });
  // Moments that hold the turn: ω × (I ω).
  const body = bodyOf({ gravity: 0 });
  const held = new Float64Array(stateSize);
  equationsOfMotion(body)(start, held);
  const rotary = [0, 1, 2].map((i) =>
    [0, 1, 2].reduce((sum, j) => sum - (body.rigid[(i + 3) * 6 + j + 3] as number) * (held[3 + j] as number), 0),
  );
  const air: AirLoads = (_, loads) => loads.set([0, 0, 0, ...rotary]);
  const end = anglesOf(attitude(flown({ ...body, air }, start, (2 * Math.PI) / rate, (2 * Math.PI) / rate / 2000)));
  expect(end.bank).toBeCloseTo(bank, 8);
  expect(end.pitch).toBeCloseTo(pitch, 8);
  expect(end.heading).toBeCloseTo(0, 7);
});

test("apparent mass makes it fall slower in heave, and weighs nothing", () => {
  const apparent = new Float64Array(36);
  apparent[2 * 6 + 2] = 0.13 * part.mass;
  const slope = new Float64Array(stateSize);
  equationsOfMotion(bodyOf({ apparent }))(stateOf([0, 0, 0, 0, 0, 0]), slope);
  expect(slope[2]).toBeCloseTo(9.80665 / 1.13, 10);
  expect(slope[0]).toBe(0);
});

test("mirrored left and right, it flies the mirrored flight", () => {
  const symmetric = { ...part, ixy: 0, iyz: 0 };
  const air: AirLoads = (state, loads) => {
    const [u, v, w, p, q, r] = state as unknown as number[] as [number, number, number, number, number, number];
    loads.set([-0.01 * u * u, -0.02 * v, -0.05 * w, -1e-4 * p - 2e-4 * v, -1e-4 * q - 1e-4 * w, -1e-4 * r + 1e-4 * v]);
  };
  const body = bodyOf({ rigid: massMatrix(symmetric), air });
  const right = flown(body, stateOf([4, 0.3, 0.2, 1, 0.1, -0.5], { bank: 0.6, pitch: -0.1, heading: 0.2 }), 2);
  const left = flown(body, stateOf([4, -0.3, 0.2, -1, 0.1, 0.5], { bank: -0.6, pitch: -0.1, heading: -0.2 }), 2);
  const signs = [1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1];
  signs.forEach((sign, i) => {
    expect(left[i]).toBeCloseTo(sign * (right[i] as number), 9);
  });
});
