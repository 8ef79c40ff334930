import type { Atmosphere } from "../air/atmosphere.ts";
import { bodyArea } from "../air/body-drag-area.ts";
import { skewOf } from "../flow/flow-state.ts";
import { loadsAbout, loadsAt } from "../flow/quadratic-loads.ts";
import type { LatticeFlow } from "../flow/solve-lattice.ts";
import type { Part } from "../mass/part-record.ts";
import type { FuselageStick } from "../shape/fuselage-stick-record.ts";
import type { SectionLoads } from "./section-loads.ts";

/** All that the air does to a glider, about its balance point. */
export interface GliderLoads {
  /**
   * Adds X Y Z in N and L M N in N m, of body axes, at a state of the lattice (`flow-state.ts`, SI) about the balance
   * point; returns how far the most stalled strip has stalled, 0 to 1.
   */
  addAll(state: Float64Array, loads: Float64Array): number;
  /** Adds those of the lattice alone: lift without a stall, and induced drag. */
  addLattice(state: Float64Array, loads: Float64Array): void;
}

/** The loads of lattice, sections, stick and fittings (`otherArea`, m² of drag at the balance point) together. */
export function gliderLoads(
  flow: LatticeFlow,
  sections: SectionLoads,
  stick: FuselageStick | undefined,
  balance: Part,
  otherArea: number,
  { density, kinematic_viscosity: viscosity }: Atmosphere,
): GliderLoads {
  const [atOrigin, own] = [new Float64Array(8), new Float64Array(6)];
  // From the balance point to the origin of the lattice, in body axes.
  const [ox, oy, oz] = [balance.x, -balance.y, balance.z];
  const [sx, sz] = stick ? [balance.x - mean(stick.front_x, stick.rear_x), balance.z - stick.z] : [0, 0];
  const moveState = (state: Float64Array): void => {
    const [p, q, r] = [state[3] as number, state[4] as number, state[5] as number];
    atOrigin.set(state);
    atOrigin[0] = (state[0] as number) + q * oz - r * oy;
    atOrigin[1] = (state[1] as number) + r * ox - p * oz;
    atOrigin[2] = (state[2] as number) + p * oy - q * ox;
  };
  const lattice = loadsAbout(flow.loads, [balance.x, balance.y, balance.z]);
  const addLattice = (state: Float64Array, loads: Float64Array): void => {
    loadsAt(lattice, state, own);
    for (let i = 0; i < 6; i++) loads[i] = (loads[i] as number) + density * (own[i] as number);
  };
  const addMoved = (from: Float64Array, loads: Float64Array): void => {
    const [x, y, z] = [from[0] as number, from[1] as number, from[2] as number];
    const [l, m, n] = [from[3] as number, from[4] as number, from[5] as number];
    addLoad(loads, x, y, z, l + oy * z - oz * y, m + oz * x - ox * z, n + ox * y - oy * x);
  };
  const addAll = (state: Float64Array, loads: Float64Array): number => {
    addLattice(state, loads);
    own.fill(0);
    moveState(state);
    // The wake leaves askew by the sideslip at the balance point, near which the wing is.
    const stalled = sections.add(atOrigin, density, viscosity, own, skewOf(state));
    addMoved(own, loads);
    const [u, v, w] = [state[0] as number, state[1] as number, state[2] as number];
    const speed = Math.sqrt(u * u + v * v + w * w);
    // Along the wind: the stick at its middle, fittings at the balance point.
    const other = -0.5 * density * otherArea * speed;
    addLoad(loads, other * u, other * v, other * w, 0, 0, 0);
    if (stick) {
      const body = -0.5 * density * stickArea(stick, speed, viscosity) * speed;
      const [fx, fy, fz] = [body * u, body * v, body * w];
      addLoad(loads, fx, fy, fz, -sz * fy, sz * fx - sx * fz, sx * fy);
    }
    return stalled;
  };
  return { addAll, addLattice };
}

function addLoad(to: Float64Array, x: number, y: number, z: number, l: number, m: number, n: number): void {
  to[0] = (to[0] as number) + x;
  to[1] = (to[1] as number) + y;
  to[2] = (to[2] as number) + z;
  to[3] = (to[3] as number) + l;
  to[4] = (to[4] as number) + m;
  to[5] = (to[5] as number) + n;
}

/** Drag area of a stick, as body_drag_area has it; in nearly still air held at its least Reynolds number. */
const stickArea = (stick: FuselageStick, speed: number, viscosity: number): number =>
  bodyArea(
    stick.length,
    mean(stick.width, stick.end_width),
    mean(stick.height, stick.end_height),
    Math.max(1000, (speed * stick.length) / viscosity),
  );

const mean = (a: number, b: number) => (a + b) / 2;
