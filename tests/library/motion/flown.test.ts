/** Plover flown by the equations of motion, held to what must be so whatever the air does. */
import { describe, expect, test } from "vitest";
import { flowAbout } from "../../../src/library/flow/flow.ts";
import { aimOf } from "../../../src/library/motion/aim.ts";
import { attitudeOf } from "../../../src/library/motion/attitude.ts";
import { type Body, equationsOfMotion, stateSize } from "../../../src/library/motion/body.ts";
import { flown } from "../../../src/library/motion/flown.ts";
import { fly } from "../../../src/library/motion/fly.ts";
import { disturbanceMatrix, lateralPart } from "../../../src/library/motion/linear.ts";
import { type Recovery, recoveryRecord } from "../../../src/library/motion/recovery-record.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { rungeKutta } from "../../../src/library/numerics/runge-kutta.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { lateralModesOf } from "../../../src/library/stability/mode-records.ts";
import { refuse } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";
import { ploverPanels } from "../plover.ts";

const ploverGlider = ploverWith();
const given = { glider: ploverGlider, shape: "flat-bottomed", other_area: 0 } as Parameters<typeof aimOf>[0];
const straight = { tail: 0, rudder: 0 };
const aimed = aimOf(given, straight, refuse);
const letGo = (bank: number, share = 1) => {
  const { u, w, pitch } = aimed.circle;
  return { u: u * share, w: w * share, angles: { bank, pitch, heading: 0 } };
};
const stateAt = (bank: number): Float64Array => {
  const { u, w, angles } = letGo(bank);
  return Float64Array.from([u, 0, w, 0, 0, 0, ...attitudeOf(angles), 0, 0, 0]);
};

describe("a bank to the left and one to the right", () => {
  const [right, left] = [degrees(30), -degrees(30)].map((bank) => flown(aimed, letGo(bank), 6, refuse));

  test("are each other's mirror image", () => {
    expect(left?.settling_time).toBe(right?.settling_time);
    expect(left?.height_lost).toBeCloseTo(right?.height_lost ?? Number.NaN, 9);
    right?.history.bank.forEach((bank, i) => {
      expect(left?.history.bank[i]).toBeCloseTo(-bank, 8);
    });
  });

  test("both settle, within the model and below the stall", () => {
    expect(right).toMatchObject({ verdict: "settles", inside_model: true, limits: "stayed where the model holds" });
    expect(right).not.toHaveProperty("left_model");
    expect(right?.stall_angle).toBeGreaterThan(right?.worst_angle ?? Number.NaN);
  });
});

test("a step half as long changes nothing that could be seen", () => {
  const [usual, fine] = [0.01, 0.005].map((step) =>
    fly(aimed.body, stateAt(degrees(60)), { seconds: 4, step, every: 0.02 / step }),
  );
  usual?.bank.forEach((bank, i) => {
    expect(fine?.bank[i]).toBeCloseTo(bank, 5);
  });
  expect(fine?.height.at(-1)).toBeCloseTo(usual?.height.at(-1) ?? Number.NaN, 5);
});

test("what the air takes is what height and speed lose", () => {
  // Without the downwash's lag, which is no mass, the carried air is part of the moving mass.
  const apparent = aimed.body.apparent.map(
    (each, i) => (each + (aimed.body.apparent[(i % 6) * 6 + Math.floor(i / 6)] ?? 0)) / 2,
  );
  const body: Body = { ...aimed.body, apparent };
  const energy = (state: Float64Array): number => {
    let moving = 0;
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < 6; j++) {
        const mass = (body.rigid[i * 6 + j] as number) + (apparent[i * 6 + j] as number);
        moving += 0.5 * (state[i] as number) * mass * (state[j] as number);
      }
    }
    return moving - body.mass * body.gravity * (state[12] as number);
  };
  // One number more is carried along: the work of the air.
  const equations = equationsOfMotion(body);
  const loads = new Float64Array(6);
  const move = rungeKutta(stateSize + 1, (state, slope) => {
    equations(state, slope);
    body.air(state, loads);
    slope[stateSize] = loads.reduce((sum, load, i) => sum + load * (state[i] as number), 0);
  });
  const state = new Float64Array(stateSize + 1);
  state.set(stateAt(degrees(45)));
  const first = energy(state);
  for (let i = 0; i < 300; i++) move(state, 0.01);
  const work = state[stateSize] as number;
  expect(work).toBeLessThan(0);
  expect((energy(state) - first) / work).toBeCloseTo(1, 6);
});

test("a bank of one degree goes as the linear modes say", () => {
  const matrix = disturbanceMatrix(aimed.body, aimed.circle);
  const flight = fly(aimed.body, stateAt(degrees(1)), { seconds: 3 });
  const linear = new Float64Array(8);
  linear[6] = degrees(1);
  const move = rungeKutta(8, (state, slope) => {
    for (let i = 0; i < 8; i++) {
      slope[i] = state.reduce((sum, each, k) => sum + (matrix[i * 8 + k] as number) * each, 0);
    }
  });
  flight.bank.forEach((bank, i) => {
    expect(bank / degrees(1)).toBeCloseTo((linear[6] as number) / degrees(1), 2);
    if (i < flight.bank.length - 1) for (const half of [0.01, 0.01]) move(linear, half);
  });
});

test("a glider that cannot trim is told what to move", () => {
  const { balance } = ploverGlider;
  const behind = { ...ploverGlider, ...(balance && { balance: { ...balance, x: balance.x + 0.04 } }) };
  expect(() => aimOf({ ...given, glider: behind }, straight, refuse)).toThrow(/Move the balance point forward/);
});

test("a balance that is one point is refused, as nothing would hold it against turning", () => {
  const none = { ixx: 0, iyy: 0, izz: 0, ixy: 0, ixz: 0, iyz: 0 };
  const { balance } = ploverGlider;
  const point = { ...ploverGlider, ...(balance && { balance: { ...balance, ...none } }) };
  expect(() => aimOf({ ...given, glider: point }, straight, refuse)).toThrow(/no inertia in roll, pitch, yaw/);
});

const line = recoveryRecord.text as unknown as (value: Recovery) => string;

describe("let go in the bank of its trim, but too fast", () => {
  const fast = flown(aimed, letGo(0, 1.5), 20, refuse);

  test("has no bank to add up, and says that it lost less height than in the glide", () => {
    expect(fast).not.toHaveProperty("banked_integral");
    expect(line(fast)).toMatch(/^settles in [\d.]+ s, [\d.]+ m less lost than in the glide/);
  });

  test("swings, as its speed still does when it is watched for too short a time", () => {
    expect(flown(aimed, letGo(0, 1.5), 2, refuse).verdict).toBe("swings");
  });
});

test("upside down it turns over, settles, and says that part of it is outside the model", () => {
  const angles = { bank: degrees(180), pitch: 0, heading: 0 };
  const turned = flown(aimed, { u: 6, w: 0, angles }, 20, refuse);
  expect(turned.verdict).toBe("settles");
  expect(turned.height_lost).toBeGreaterThan(5);
  expect(line(turned)).toMatch(/partly outside the model$/);
});

test("rolling dies away by its damping over the inertia in roll, that of the air carried along among it", () => {
  const { glider } = given;
  const { speed, gliding, circle } = aimed;
  const { derivatives } = flowAbout(
    {
      glider,
      angle_of_attack: Math.atan2(circle.w, circle.u),
      section_slope: 5.4,
      camber: 0.02,
      axes: "stability",
      strips: 16,
      rows: 4,
      tail_strips: 6,
      tail_rows: 3,
    } as never,
    refuse,
  );
  const { area, span } = glider.wing;
  const inertia = (aimed.body.rigid[21] ?? 0) + (aimed.body.apparent[21] ?? 0);
  const damping = (derivatives.roll_p * gliding.density * speed * area * span ** 2) / 4;
  const { roll } = lateralModesOf(lateralPart(disturbanceMatrix(aimed.body, circle)), refuse);
  // The sections' drag damps a little more, and the fin takes part.
  expect(Math.abs(roll.rate / (damping / inertia) - 1)).toBeLessThan(0.03);
});

test("bent down it spirals in, from a small bank or a large one, however long it is watched", () => {
  const panels = { ...ploverPanels, break: [degrees(-8), 0, 0] };
  const bentDown = aimOf(
    { ...given, glider: ploverWith({ wing: buildWing(panels, undefined, refuse) }) },
    straight,
    refuse,
  );
  const { u, w, pitch } = bentDown.circle;
  for (const [bank, seconds] of [
    [5, 30],
    [30, 12],
    [30, 30],
    [-30, 30],
  ] as const) {
    const result = flown(bentDown, { u, w, angles: { bank: degrees(bank), pitch, heading: 0 } }, seconds, refuse);
    expect(result.verdict).toBe("spirals in");
    expect(result.spiral_double_time).toBeLessThan(1);
  }
});
