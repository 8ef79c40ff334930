import { type Atmosphere, airAt, airParameter } from "../air/atmosphere.ts";
import { measuredParameter } from "../air/measured-polar.ts";
import { shapeParameter } from "../air/profile-drag.ts";
import { dragSpread, liftSlopeAt, sectionShapes } from "../air/section.ts";
import { chosen } from "../chosen.ts";
import { flowState, stateCount } from "../flow/flow-state.ts";
import { type LatticeFlow, solveLattice } from "../flow/solve-lattice.ts";
import type { Part } from "../mass/part-record.ts";
import { type Glider, gliderRecord } from "../shape/glider-record.ts";
import { type FieldValues, number, type Refuse } from "../spec.ts";
import { freeFall } from "../units.ts";
import { type GliderLoads, gliderLoads } from "./gliding-loads.ts";
import { sectionOf, withCamber } from "./gliding-sections.ts";
import { type SectionLoads, sectionLoads } from "./section-loads.ts";
import type { Glides } from "./steady-flight.ts";

/** What every function of a flying glider takes. */
export const glidingParameters = {
  glider: { ...gliderRecord, summary: "the glider, with its balance" } as const,
  shape: shapeParameter,
  other_area: number("cm^2", "drag area of pylon, hook and fittings: see body_drag_area", { min: 0, default: 0 }),
  measured: measuredParameter,
  air: airParameter,
};
export type GlidingValues = FieldValues<typeof glidingParameters>;

/** A glider with all that flies of it: lattice, sections, stick and fittings. */
export interface Gliding extends Glides, GliderLoads {
  readonly glider: Glider;
  readonly balance: Part;
  readonly air: Atmosphere;
  readonly flow: LatticeFlow;
  readonly sections: SectionLoads;
  /** Share by which all drag but the induced may differ, at a speed. */
  spread(speed: number): number;
}

/** Panels of the lattice: enough for loads within a per cent. */
const counts = { rows: 4, tailStrips: 6, finStrips: 5, tailRows: 3 };
/** Strips of a half wing: with fewer to a panel the outermost would be too wide for what happens at a tip. */
const stripsOf = ({ left, right }: Glider["wing"]): number =>
  Math.max(16, 4 * Math.max(left.length.length, right.length.length));
/** The lift coefficient whose speed tells the lift slope of the lattice's sections. */
const usualLift = 0.6;

/** Solves the flow of a glider and puts sections, stick and fittings to it. Refuses one without balance. */
export function glidingOf(given: GlidingValues, refuse: Refuse): Gliding {
  const { other_area, measured, air = airAt(0) } = given;
  const shape = chosen(given.shape, sectionShapes, "shape", refuse);
  const { balance } = given.glider;
  if (!balance) return refuse("glider", "Its balance is not known. Give glider(…) a balance.");
  const glider = withCamber(given.glider, shape, measured, refuse);
  const { wing } = glider;
  const reynoldsAt = (speed: number) => (speed * wing.mac) / air.kinematic_viscosity;
  const usualSpeed = Math.sqrt((2 * balance.mass * freeFall) / (air.density * wing.area * usualLift));
  const flow = solveLattice(glider, {
    ...counts,
    strips: stripsOf(wing),
    sectionSlope: liftSlopeAt(reynoldsAt(usualSpeed)),
    camber: 0,
  });
  if (!flow) return refuse("glider", "The flow cannot be solved: two surfaces lie upon each other. Move one of them.");
  const sections = sectionLoads(flow, (strip) => sectionOf(strip, glider, shape, measured, refuse));
  const loads = gliderLoads(flow, sections, glider.stick, balance, other_area, air);
  return {
    ...{ glider, balance, air, flow, sections, mass: balance.mass, density: air.density },
    ...loads,
    ...steadyLoads(loads, air.density),
    spread: (speed) => dragSpread(reynoldsAt(speed)),
  };
}

/** The loads of straight flight and of turning, over the dynamic pressure. */
function steadyLoads({ addAll, addLattice }: GliderLoads, density: number): Pick<Glides, "loads" | "pitchDamping"> {
  const [state, all, lattice] = [new Float64Array(stateCount), new Float64Array(6), new Float64Array(6)];
  const setState = (angle: number, speed: number, tail: number, pitchPerMetre: number): void => {
    state.fill(0);
    state[flowState.u] = speed * Math.cos(angle);
    state[flowState.w] = speed * Math.sin(angle);
    state[flowState.q] = speed * pitchPerMetre;
    state[flowState.tailplane] = tail * (state[flowState.u] as number);
  };
  const momentAt = (angle: number, speed: number, pitchPerMetre: number): number => {
    setState(angle, speed, 0, pitchPerMetre);
    addAll(state, all.fill(0));
    return all[4] as number;
  };
  return {
    loads: (angle, speed, tail) => {
      setState(angle, speed, tail, 0);
      const stalled = addAll(state, all.fill(0));
      addLattice(state, lattice.fill(0));
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const pressure = 0.5 * density * speed ** 2;
      const against = (of: Float64Array) => (-(of[0] as number) * cos - (of[2] as number) * sin) / pressure;
      return {
        lift: ((all[0] as number) * sin - (all[2] as number) * cos) / pressure,
        drag: against(all),
        induced: against(lattice),
        moment: (all[4] as number) / pressure,
        stalled,
      };
    },
    pitchDamping: (angle, speed) => {
      const step = 0.01;
      const change = momentAt(angle, speed, step) - momentAt(angle, speed, -step);
      return change / (2 * step) / (0.5 * density * speed ** 2);
    },
  };
}
