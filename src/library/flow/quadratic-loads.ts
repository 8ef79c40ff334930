import { flowState, skewOf, stateCount } from "./flow-state.ts";

/** Numbers of a load: forces X Y Z and moments L M N, body axes (x forward, y right, z down). */
export const loadCount = 6;

/**
 * Loads as quadratic forms in the state (`flow-state.ts`), per unit of air density: load c is
 * Σ (form[c][k][l] + sin β·skew[c][k][l])·state[k]·state[l], in N per kg/m³ and N m per kg/m³, with the sideslip β. The
 * state and the moments are about `point` (metres; x aft, y right, z up). Forms are symmetric in k and l.
 */
export interface QuadraticLoads {
  readonly form: Float64Array;
  /** What a wake that leaves askew adds. */
  readonly skew: Float64Array;
  readonly point: readonly [x: number, y: number, z: number];
}

/** Sets `loads` to X Y Z L M N per unit of density at a state. */
export function loadsAt({ form, skew }: QuadraticLoads, state: Float64Array, loads: Float64Array): void {
  const sine = skewOf(state);
  for (let c = 0; c < loadCount; c++) {
    loads[c] = valueOfForm(form, c, state) + (sine === 0 ? 0 : sine * valueOfForm(skew, c, state));
  }
}

function valueOfForm(form: Float64Array, c: number, state: Float64Array): number {
  let at = c * stateCount * stateCount;
  let sum = 0;
  for (let k = 0; k < stateCount; k++) {
    let row = 0;
    for (let l = 0; l < stateCount; l++) row += (form[at++] as number) * (state[l] as number);
    sum += (state[k] as number) * row;
  }
  return sum;
}

/** Rates of change of the loads with each number of the state: `loadCount` rows of `stateCount`. */
export function loadSlopes({ form, skew }: QuadraticLoads, state: Float64Array): Float64Array {
  const slopes = new Float64Array(loadCount * stateCount);
  const sine = skewOf(state);
  const [u, v, w] = [state[0] as number, state[1] as number, state[2] as number];
  const speed = Math.sqrt(u * u + v * v + w * w);
  for (let c = 0; c < loadCount; c++) {
    for (let k = 0; k < stateCount; k++) {
      const row = c * stateCount + k;
      let sum = 0;
      for (let l = 0; l < stateCount; l++) {
        const at = row * stateCount + l;
        sum += ((form[at] as number) + sine * (skew[at] as number)) * (state[l] as number);
      }
      slopes[row] = 2 * sum;
    }
    if (speed === 0) continue;
    // sin β = v/V changes with u, v and w.
    const skewed = valueOfForm(skew, c, state) / speed;
    const at = c * stateCount;
    slopes[at] = (slopes[at] as number) - (skewed * sine * u) / speed;
    slopes[at + 1] = (slopes[at + 1] as number) + skewed * (1 - sine * sine);
    slopes[at + 2] = (slopes[at + 2] as number) - (skewed * sine * w) / speed;
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
  const size = stateCount * stateCount;
  const moved = (old: Float64Array): Float64Array => {
    const form = new Float64Array(old.length);
    for (let c = 0; c < loadCount; c++) {
      form.set(congruent(old.subarray(c * size, (c + 1) * size), toOld), c * size);
    }
    for (let i = 0; i < size; i++) {
      const at = (c: number) => form[c * size + i] as number;
      const [fx, fy, fz] = [at(0), at(1), at(2)];
      form[3 * size + i] = at(3) + y * fz - z * fy;
      form[4 * size + i] = at(4) + z * fx - x * fz;
      form[5 * size + i] = at(5) + x * fy - y * fx;
    }
    return form;
  };
  return { form: moved(loads.form), skew: moved(loads.skew), point };
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
