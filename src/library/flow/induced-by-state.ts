import { parity, stateCount } from "./flow-state.ts";
import { components, type InducedVelocity, type Place } from "./induced-velocity.ts";
import type { Lattice, Range } from "./lattice.ts";

/** The velocity that a lattice's vortices, and their mirror images, induce at one place after the other. */
export interface InducedByState {
  /** Goes to a place; see `InducedVelocity`. */
  readonly moveTo: (place: Place, behindWing: boolean, own: number) => void;
  /** Adds to `into`, three numbers for each number of the state, what the panels of a range induce there. */
  readonly add: ({ start, end }: Range, into: Float64Array) => void;
}

/** The same for vortices of given circulations, `stateCount` lists of panels. */
export function inducedByState(lattice: Lattice, induced: InducedVelocity, circulation: Float64Array): InducedByState {
  const { symmetric, count, fin } = lattice;
  const [here, there, even, odd] = [components(count), components(count), components(count), components(count)];
  const mirrorImages = symmetric ? fin.start : 0;
  return {
    moveTo(place, behindWing, own) {
      induced(place, behindWing, own, here);
      if (symmetric) induced([place[0], -place[1], place[2]], behindWing, -1, there);
      for (let axis = 0; axis < 3; axis++) {
        const [right, image] = [here[axis] as Float64Array, there[axis] as Float64Array];
        const [sum, difference] = [even[axis] as Float64Array, odd[axis] as Float64Array];
        const sign = axis === 1 ? -1 : 1;
        for (let j = 0; j < mirrorImages; j++) {
          const mirrored = sign * (image[j] as number);
          sum[j] = (right[j] as number) + mirrored;
          difference[j] = (right[j] as number) - mirrored;
        }
        for (let j = mirrorImages; j < count; j++) sum[j] = difference[j] = right[j] as number;
      }
    },
    add({ start, end }, into) {
      for (let l = 0; l < stateCount; l++) {
        const [x, y, z] = parity[l] === 1 ? even : odd;
        let [vx, vy, vz] = [0, 0, 0];
        for (let j = start; j < end; j++) {
          const strength = circulation[l * count + j] as number;
          vx += strength * (x[j] as number);
          vy += strength * (y[j] as number);
          vz += strength * (z[j] as number);
        }
        into[3 * l] = (into[3 * l] as number) + vx;
        into[3 * l + 1] = (into[3 * l + 1] as number) + vy;
        into[3 * l + 2] = (into[3 * l + 2] as number) + vz;
      }
    },
  };
}
