import { flowState, stateCount } from "../flow/flow-state.ts";
import { loadsAbout } from "../flow/quadratic-loads.ts";
import { tailUpwash } from "../flow/tail-downwash.ts";
import type { Gliding } from "../glide/gliding.ts";

/**
 * The wing's wake takes a while to reach the tail: while the angle of attack grows, the tail still feels the lesser
 * downwash of a moment ago, and lifts more. Added as 6 × 6 acceleration terms (only the column of ẇ): of a tail at l
 * behind the wing Δα = (∂ε/∂α)·l·ẇ/V² (B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, section 5.6; from
 * memory), so that the speed falls out of force and moment. Zero without a tail behind the wing.
 */
export function downwashLag({ flow, glider, balance, density }: Gliding): Float64Array {
  const matrix = new Float64Array(36);
  const { tailplane, wing } = glider;
  if (!tailplane) return matrix;
  const { form } = loadsAbout(flow.loads, [balance.x, balance.y, balance.z]);
  const entry = (load: number, k: number, l: number) => form[(load * stateCount + k) * stateCount + l] as number;
  // Force and moment for the tail's angle, over speed squared: both halves of the symmetric form.
  const [force, moment] = [2, 4].map((load) => 2 * density * entry(load, flowState.u, flowState.tailplane));
  const wingQuarter = wing.mac_x + wing.mac / 4;
  const reach = Math.max(0, tailplane.quarter_x - wingQuarter);
  const downwashSlope = -(tailUpwash(flow)?.[flowState.w] ?? 0);
  const lag = downwashSlope * reach;
  matrix[2 * 6 + 2] = -(force ?? 0) * lag;
  matrix[4 * 6 + 2] = -(moment ?? 0) * lag;
  return matrix;
}
