import { flowState, stateCount } from "./flow-state.ts";

/** Numbers of a load: forces X Y Z and moments L M N, body axes (x forward, y right, z down). */
export const loadCount = 6;

/**
 * Loads as quadratic forms in the state (`flow-state.ts`), per unit of air density: load c is
 * Σ form[c][k][l]·state[k]·state[l], in N per kg/m³ and N m per kg/m³. The state and the moments are about `point`
 * (metres; x aft, y right, z up). Forms are symmetric in k and l.
 */
export interface QuadraticLoads {
  readonly form: Float64Array;
  readonly point: readonly [x: number, y: number, z: number];
}

/** Sets `loads` to X Y Z L M N per unit of density at a state. */
export function loadsAt({ form }: QuadraticLoads, state: Float64Array, loads: Float64Array): void {
  let at = 0;
  for (let c = 0; c < loadCount; c++) {
    let sum = 0;
    for (let k = 0; k < stateCount; k++) {
      const s = state[k] as number;
      let row = 0;
      for (let l = 0; l < stateCount; l++) row += (form[at++] as number) * (state[l] as number);
      sum += s * row;
    }
    loads[c] = sum;
  }
}

/** Rates of change of the loads with each number of the state: `loadCount` rows of `stateCount`. */
export function loadSlopes({ form }: QuadraticLoads, state: Float64Array): Float64Array {
  const slopes = new Float64Array(loadCount * stateCount);
  for (let row = 0; row < slopes.length; row++) {
    let sum = 0;
    for (let l = 0; l < stateCount; l++) sum += (form[row * stateCount + l] as number) * (state[l] as number);
    slopes[row] = 2 * sum;
  }
  return slopes;
}

/** The same loads with state and moments about another point. */
export function loadsAbout(loads: QuadraticLoads, point: QuadraticLoads["point"]): QuadraticLoads {
  // From the new point to the old one, in body axes.
  const [x, y, z] = [point[0] - loads.point[0], loads.point[1] - point[1], point[2] - loads.point[2]];
  const { u, v, w, p, q, r } = flowState;
  // The speed at the old point is that at the new one + turning × way.
  const toOld = new Float64Array(stateCount * stateCount);
  for (let k = 0; k < stateCount; k++) toOld[k * stateCount + k] = 1;
  const set = (row: number, column: number, value: number) => {
    toOld[row * stateCount + column] = value;
  };
  set(u, q, z);
  set(u, r, -y);
  set(v, r, x);
  set(v, p, -z);
  set(w, p, y);
  set(w, q, -x);
  const form = new Float64Array(loads.form.length);
  const size = stateCount * stateCount;
  for (let c = 0; c < loadCount; c++) {
    form.set(congruent(loads.form.subarray(c * size, (c + 1) * size), toOld), c * size);
  }
  for (let i = 0; i < size; i++) {
    const at = (c: number) => form[c * size + i] as number;
    const [fx, fy, fz] = [at(0), at(1), at(2)];
    form[3 * size + i] = at(3) + y * fz - z * fy;
    form[4 * size + i] = at(4) + z * fx - x * fz;
    form[5 * size + i] = at(5) + x * fy - y * fx;
  }
  return { form, point };
}

/** Tᵀ·Q·T. */
function congruent(form: Float64Array, turn: Float64Array): Float64Array {
  const [half, whole] = [new Float64Array(form.length), new Float64Array(form.length)];
  const n = stateCount;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (form[i * n + k] as number) * (turn[k * n + j] as number);
      half[i * n + j] = sum;
    }
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (turn[k * n + i] as number) * (half[k * n + j] as number);
      whole[i * n + j] = sum;
    }
  }
  return whole;
}
