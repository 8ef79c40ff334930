import { define, list, number } from "../spec.ts";
import { longitudinalModesOf, longitudinalModesRecord } from "./mode-records.ts";

/** `longitudinal_roots(matrix)`. */
export const longitudinalRoots = define({
  name: "longitudinal_roots",
  summary: "Short period and phugoid of a textbook's matrix of the motion in the plane of symmetry.",
  topic: "stability",
  parameters: {
    matrix: list(
      number("1", "entry of the matrix"),
      "16 numbers, row by row, of the matrix in u, w (or angle of attack), q and pitch; in seconds and radians, otherwise in any units that go together",
    ),
  },
  result: longitudinalModesRecord,
  formula:
    "eigenvalues of the matrix; half_time = ln 2 / −rate, period = 2π / turning, damping_ratio = −rate / frequency",
  errors: ["The matrix has not 16 numbers."],
  assumptions: [
    "The short period is the faster pair of roots, swinging or not. Where a pair stands between two single roots it bears the name of the phugoid, and usual is false.",
    "Small disturbances of a steady, straight path.",
  ],
  sources: [{ text: "Eigenvalues of the linear equations of motion", mark: "derived" }],
  examples: [
    {
      summary: "two swings that do not touch each other: λ² + 2λ + 10 and λ² + 0.2λ + 1.01",
      arguments: { matrix: [0, 0, 0, -1.01, 0, -1, 3, 0, 0, -3, -1, 0, 1, 0, 0, -0.2] },
      result: {
        short_period: {
          rate: -1,
          half_time: Math.LN2,
          period: (2 * Math.PI) / 3,
          frequency: Math.sqrt(10),
          damping_ratio: 1 / Math.sqrt(10),
        },
        usual: true,
      },
    },
  ],
  compute: ({ matrix }, refuse) => longitudinalModesOf(matrix, refuse),
});
