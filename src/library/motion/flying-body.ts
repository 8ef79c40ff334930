import { type Facet, finPieces, tailFacets, wingFacets } from "../flow/facets.ts";
import { flowState, stateCount } from "../flow/flow-state.ts";
import type { Gliding } from "../glide/gliding.ts";
import type { Glider } from "../shape/glider-record.ts";
import { freeFall } from "../units.ts";
import { apparentMass } from "./apparent-mass.ts";
import type { Body } from "./body.ts";
import { downwashLag } from "./downwash-lag.ts";
import { massMatrix } from "./inertia-matrix.ts";

/** How the tail is set against what is built: tailplane nose-up, fin turned so that it steers to the right; radians. */
export interface TailSetting {
  readonly tail: number;
  readonly rudder: number;
}

/** A body that flies, and how far the most stalled strip has stalled at the last loads that were asked of it, 0 to 1. */
export interface FlyingBody extends Body {
  readonly stalled: () => number;
}

/** The glider as a body in motion: its mass and inertia, the air it carries along, and all loads of the air. */
export function flyingBody(gliding: Gliding, { tail, rudder }: TailSetting): FlyingBody {
  const { balance, density, glider } = gliding;
  const carried = apparentMass(facetsOf(glider), [balance.x, balance.y, balance.z]);
  const lag = downwashLag(gliding);
  const state = new Float64Array(stateCount);
  let stalled = 0;
  return {
    mass: balance.mass,
    rigid: massMatrix(balance),
    apparent: carried.map((each, i) => density * each + (lag[i] ?? 0)),
    gravity: freeFall,
    air: (at, loads) => {
      for (let i = 0; i < 6; i++) state[i] = at[i] as number;
      state[flowState.tailplane] = tail * (at[0] as number);
      state[flowState.fin] = rudder * (at[0] as number);
      loads.fill(0);
      stalled = gliding.addAll(state, loads);
    },
    stalled: () => stalled,
  };
}

/** Every surface of a glider, both halves. */
function facetsOf(glider: Glider): readonly Facet[] {
  const { wing, tailplane, fin } = glider;
  return [
    ...wingFacets(wing.right, glider, 0),
    ...wingFacets(wing.left, glider, 0),
    ...(tailplane ? [...tailFacets(tailplane, "right"), ...tailFacets(tailplane, "left")] : []),
    ...(fin ? finPieces(fin, glider).map(({ facet }) => facet) : []),
  ];
}
