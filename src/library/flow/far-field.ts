import { partCount, partsOf } from "./flow-state.ts";
import type { Lattice } from "./lattice.ts";
import type { WakeTrace } from "./wake-trace.ts";

/**
 * Circulation of each strip, all its panels together, at a state. Where only the right half is held, so are the strips.
 */
export function stripCirculation(
  { strips, count }: Lattice,
  circulation: Float64Array,
  state: Float64Array,
): Float64Array {
  const parts = partsOf(state);
  const result = new Float64Array(strips.length);
  strips.forEach(({ first, rows }, s) => {
    for (let k = 0; k < partCount; k++) {
      for (let i = first; i < first + rows; i++) {
        result[s] = (result[s] as number) + (circulation[k * count + i] as number) * (parts[k] as number);
      }
    }
  });
  return result;
}

/**
 * Induced drag per unit of air density by what stays behind in the wake far downstream, for strips of these circulations
 * with equal halves: D = −½·ρ·Σ Γ·(v·n)·width over the trace of the wake (M. Munk, NACA TR 121, 1921; from memory).
 */
export function farFieldDrag(
  { strips, symmetric, tailFirst }: Lattice,
  { even }: WakeTrace,
  strength: Float64Array,
): number {
  const count = strips.length;
  let drag = 0;
  strips.forEach(({ surface }, i) => {
    let flow = 0;
    strips.forEach((other, j) => {
      // Two surfaces do the same to each other: the pair is taken where the wake of the one passes the other, with its cores.
      const passed =
        surface === "wing" ? tailFirst && other.surface === "tailplane" : !(tailFirst && surface === "tailplane");
      const pairs = (surface === "wing") === (other.surface === "wing") ? 1 : passed ? 2 : 0;
      flow += pairs * (even[i * count + j] as number) * (strength[j] as number);
    });
    drag -= ((symmetric && surface !== "fin" ? 2 : 1) * (strength[i] as number) * flow) / 2;
  });
  return drag;
}
