import { describe, expect, test } from "vitest";
import { thinPolar } from "../../../src/library/air/section.ts";
import { flowState, stateCount } from "../../../src/library/flow/flow-state.ts";
import { solveLattice } from "../../../src/library/flow/solve-lattice.ts";
import { sectionLoads } from "../../../src/library/glide/section-loads.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { refuse } from "../call.ts";
import { withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";
import { ploverWith } from "./plover-glider.ts";

const camber = 0.021;
const wingPolar = thinPolar({ thickness: 0.043, camber, suction: 0.6 });
const tailPolar = thinPolar({ thickness: 0.03, camber: 0, suction: 0.25 });
const density = 1.225;
const viscosity = 1.46e-5;

function loadsOf(glider = ploverWith()) {
  const flow = solveLattice(glider, {
    strips: 12,
    rows: 4,
    tailStrips: 5,
    finStrips: 5,
    tailRows: 3,
    sectionSlope: 5.3,
    camber,
  });
  if (!flow) throw new Error("got no flow");
  const sections = sectionLoads(flow, ({ surface }) =>
    surface === "wing" ? { polar: wingPolar, camber } : { polar: tailPolar, camber: 0 },
  );
  return {
    sections,
    at: (change: Partial<Record<keyof typeof flowState, number>>) => {
      const state = new Float64Array(stateCount);
      state[flowState.u] = 4;
      for (const [name, value] of Object.entries(change)) state[flowState[name as keyof typeof flowState]] = value;
      const loads = new Float64Array(6);
      const stalled = sections.add(state, density, viscosity, loads);
      return { loads: [...loads], stalled, state };
    },
  };
}
const plover = loadsOf();
const area = ploverWing.area;
const pressure = 0.5 * density * 16;

describe("what sections add to a lattice", () => {
  test("is drag along the wind, as the strips add up, and no side force, roll or yaw in straight flight", () => {
    const { loads, state, stalled } = plover.at({ w: 0.2 });
    const [x = 0, y, z = 0, l, , n] = loads;
    expect(stalled).toBe(0);
    for (const across of [y, l, n]) expect(Math.abs(across ?? 1)).toBeLessThan(1e-12);
    expect(z / x).toBeCloseTo(0.2 / 4, 10);
    const sum = plover.sections
      .strips(state, viscosity)
      .reduce((all, { strip, forces }) => all + forces.drag * strip.area, 0);
    // Raised panels meet a little less than the whole speed across their span.
    expect(-x / pressure / sum).toBeCloseTo(1, 2);
    expect(sum / area).toBeGreaterThan(0.03);
    expect(sum / area).toBeLessThan(0.05);
  });
  test("lies at the local lift and Reynolds number of each strip", () => {
    const strips = plover.sections.strips(plover.at({ w: 0.2 }).state, viscosity);
    const wing = strips.filter(({ strip }) => strip.surface === "wing");
    expect(wing.reduce((sum, { strip }) => sum + strip.area, 0) / ploverWing.developed_area).toBeCloseTo(1, 2);
    for (const { strip, reynolds, straight } of wing) {
      expect(reynolds / ((4 * strip.chord) / viscosity)).toBeCloseTo(1, 1);
      expect(straight).toBeGreaterThan(0);
      expect(straight).toBeLessThan(0.8);
    }
  });
  test("damps rolling and yawing by about a quarter of the profile drag", () => {
    // Both strip integrals of a drag that is the same everywhere: −CD/4 to −CD/3 by the taper (derived).
    const half = ploverWing.span / 2;
    const { loads: rolling } = plover.at({ w: 0.2, p: 0.5 });
    const { loads: yawing } = plover.at({ w: 0.2, r: 0.5 });
    const [drag] = plover.at({ w: 0.2 }).loads;
    const profile = -(drag ?? 0) / pressure / area;
    const perRate = (moment: number) => moment / (pressure * area * ploverWing.span) / ((0.5 * half) / 4);
    expect(perRate(rolling[3] ?? 0) / profile).toBeGreaterThan(-0.4);
    expect(perRate(rolling[3] ?? 0) / profile).toBeLessThan(-0.1);
    expect(perRate(yawing[5] ?? 0) / profile).toBeGreaterThan(-0.6);
    expect(perRate(yawing[5] ?? 0) / profile).toBeLessThan(-0.2);
  });
  test("turns its sign with the motion out of the plane of symmetry, and only there", () => {
    const some = { w: 0.3, q: 0.4, tailplane: 0.1 };
    const { loads: right } = plover.at({ ...some, v: 0.3, p: 0.5, r: -0.4 });
    const { loads: left } = plover.at({ ...some, v: -0.3, p: -0.5, r: 0.4 });
    [1, -1, 1, -1, 1, -1].forEach((sign, i) => {
      expect(left[i]).toBeCloseTo(sign * (right[i] ?? 0), 10);
    });
  });
  test("is the same whether the lattice holds one half or both", () => {
    const nearly = withColumns(ploverPanels, { thickness: ploverPanels.thickness.map((each) => each * (1 + 1e-9)) });
    const twoHalves = buildWing(ploverPanels, nearly, refuse);
    expect(twoHalves.mirrored).toBe(false);
    const whole = loadsOf(ploverWith({ wing: twoHalves }));
    const motion = { v: 0.3, w: 0.3, p: 0.5, q: 0.3, r: -0.4, tailplane: 0.1, fin: 0.05 };
    const [one, both] = [plover.at(motion).loads, whole.at(motion).loads];
    for (const [i, each] of one.entries()) expect(both[i]).toBeCloseTo(each, 8);
  });
  test("takes lift back where the wing stalls, most where it stalls first, and pitches the nose down by it", () => {
    const calm = plover.at({ w: 0.3 });
    const steep = plover.at({ w: 0.85 });
    expect(calm.stalled).toBe(0);
    expect(steep.stalled).toBeGreaterThan(0.3);
    // Z is down: what is taken back acts downward.
    expect(steep.loads[2]).toBeGreaterThan(0.1 * pressure * area);
    const strips = plover.sections.strips(steep.state, viscosity).filter(({ strip }) => strip.surface === "wing");
    const most = strips.reduce((best, each) => (each.forces.stalled > best.forces.stalled ? each : best));
    expect(most.forces.lift).toBeLessThan(most.straight);
  });
});
