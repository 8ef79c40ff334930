import type { Facet } from "../flow/facets.ts";
import { threePoints } from "../numerics/gauss-legendre.ts";

/**
 * Apparent mass of thin flat surfaces about a point (x aft, y right, z up), per unit of air density: 6 × 6 for the
 * accelerations of u v w p q r in body axes (x forward, y right, z down). Each strip carries πc²/4 a metre of its span,
 * square to itself at half its chord, and πc⁴/128 against turning about its span (T. Theodorsen, NACA Report 496 (1935),
 * the non-circulatory terms with b = c/2; strip by strip, which says a little too much at tips).
 */
export function apparentMass(facets: readonly Facet[], [px, py, pz]: readonly [number, number, number]): Float64Array {
  const matrix = new Float64Array(36);
  for (const { start, end } of facets) {
    const [acrossY, acrossZ] = [end.y - start.y, end.z - start.z];
    const width = Math.hypot(acrossY, acrossZ);
    if (width === 0) continue;
    // In body axes: along the span, and square to the surface.
    const [sy, sz] = [acrossY / width, -acrossZ / width];
    const [ny, nz] = [-sz, sy];
    for (const [share, weight] of threePoints) {
      const between = (a: number, b: number) => a + share * (b - a);
      const chord = between(start.chord, end.chord);
      const x = px - between(start.x, end.x) - chord / 2;
      const y = between(start.y, end.y) - py;
      const z = pz - between(start.z, end.z);
      // How fast the strip moves along its normal, for each speed and turning of the body.
      const normal = [0, ny, nz, y * nz - z * ny, -x * nz, x * ny];
      add(matrix, normal, (weight * width * Math.PI * chord ** 2) / 4);
      add(matrix, [0, 0, 0, 0, sy, sz], (weight * width * Math.PI * chord ** 4) / 128);
    }
  }
  return matrix;
}

/** Adds size · row · rowᵀ. */
function add(matrix: Float64Array, row: readonly number[], size: number): void {
  row.forEach((a, i) => {
    row.forEach((b, j) => {
      matrix[i * 6 + j] = (matrix[i * 6 + j] as number) + size * a * b;
    });
  });
}
