import { skewOf, stateCount } from "./flow-state.ts";

/** Numbers of a load: forces X Y Z and moments L M N, body axes (x forward, y right, z down). */
export const loadCount = 6;

const formSize = stateCount * stateCount;

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
  const u = state[0] as number;
  const v = state[1] as number;
  const w = state[2] as number;
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

/** The same loads with state and moments about another point, whose sideslip then is the one that turns the wake. */
export function loadsAbout(loads: QuadraticLoads, point: QuadraticLoads["point"]): QuadraticLoads {
  // From the new point to the old one, in body axes.
  const [x, y, z] = [point[0] - loads.point[0], loads.point[1] - point[1], point[2] - loads.point[2]];
  return { form: moved(loads.form, x, y, z), skew: moved(loads.skew, x, y, z), point };
}

/** Forms with the point of state and moments moved, so that the old one is at x y z from the new one, body axes. */
function moved(old: Float64Array, x: number, y: number, z: number): Float64Array {
  const form = old.slice();
  for (let c = 0; c < loadCount; c++) {
    for (let k = 0; k < stateCount; k++) moveTurning(form, c * formSize + k * stateCount, 1, x, y, z);
    for (let k = 0; k < stateCount; k++) moveTurning(form, c * formSize + k, stateCount, x, y, z);
  }
  for (let i = 0; i < formSize; i++) {
    const at = (c: number) => form[c * formSize + i] as number;
    const fx = at(0);
    const fy = at(1);
    const fz = at(2);
    form[3 * formSize + i] = at(3) + y * fz - z * fy;
    form[4 * formSize + i] = at(4) + z * fx - x * fz;
    form[5 * formSize + i] = at(5) + x * fy - y * fx;
  }
  return form;
}

/**
 * A row or column of a form, its numbers `stride` apart: as the speed at the old point is that at the new one + turning ×
 * way, those of p, q and r take up those of u, v and w times the way.
 */
function moveTurning(form: Float64Array, start: number, stride: number, x: number, y: number, z: number): void {
  const byU = form[start] as number;
  const byV = form[start + stride] as number;
  const byW = form[start + 2 * stride] as number;
  const p = start + 3 * stride;
  const q = start + 4 * stride;
  const r = start + 5 * stride;
  form[p] = (form[p] as number) + y * byW - z * byV;
  form[q] = (form[q] as number) + z * byU - x * byW;
  form[r] = (form[r] as number) + x * byV - y * byU;
}
