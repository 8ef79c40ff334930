import type { Part } from "../mass/part-record.ts";

/**
 * Mass matrix of a rigid body in body axes (x forward, y right, z down) about its balance point: 6 × 6, row by row, for
 * the accelerations of u v w p q r. A part's axes (x aft, y right, z up) are turned about y by half a turn, so that the
 * moments and ∫ x·z dm stay and the other two products change their sign; products stand with a minus.
 */
export function massMatrix({ mass, ixx, iyy, izz, ixy, ixz, iyz }: Omit<Part, "x" | "y" | "z">): Float64Array {
  const matrix = new Float64Array(36);
  for (const axis of [0, 1, 2]) matrix[axis * 7] = mass;
  const rotary = [
    [ixx, ixy, -ixz],
    [ixy, iyy, iyz],
    [-ixz, iyz, izz],
  ];
  rotary.forEach((row, i) => {
    row.forEach((value, j) => {
      matrix[(i + 3) * 6 + j + 3] = value;
    });
  });
  return matrix;
}
