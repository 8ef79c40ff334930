import { expect, test } from "vitest";
import { gather } from "../../../src/library/mass/gather.ts";
import { massMatrix } from "../../../src/library/motion/inertia-matrix.ts";

const still = { ixx: 0, iyy: 0, izz: 0, ixy: 0, ixz: 0, iyz: 0 };
const points = [
  { mass: 0.003, x: -0.08, y: 0.01, z: 0.002 },
  { mass: 0.008, x: 0.03, y: -0.015, z: 0.018 },
  { mass: 0.001, x: 0.24, y: 0.002, z: -0.006 },
];

test("half of speed · matrix · speed is the energy of the points, moving and turning in body axes", () => {
  const whole = gather(points.map((point) => ({ ...point, ...still })));
  const matrix = massMatrix(whole);
  const [u, v, w, p, q, r] = [3, -0.4, 0.5, 1.1, -0.7, 2.3] as const;
  const speed = [u, v, w, p, q, r];
  const byMatrix = speed.reduce(
    (sum, a, i) => sum + speed.reduce((row, b, j) => row + 0.5 * a * (matrix[i * 6 + j] as number) * b, 0),
    0,
  );
  const byPoints = points.reduce((sum, { mass, x, y, z }) => {
    const [forward, right, down] = [whole.x - x, y - whole.y, whole.z - z];
    const at = [u + q * down - r * right, v + r * forward - p * down, w + p * right - q * forward];
    return sum + 0.5 * mass * at.reduce((square, of) => square + of * of, 0);
  }, 0);
  expect(byMatrix / byPoints).toBeCloseTo(1, 12);
});
