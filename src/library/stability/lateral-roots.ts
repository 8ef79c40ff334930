import { define, list, number } from "../spec.ts";
import { lateralModesOf, lateralModesRecord } from "./mode-records.ts";

/** `lateral_roots(matrix)`. */
export const lateralRoots = define({
  name: "lateral_roots",
  summary: "Roll, spiral and Dutch roll of a textbook's matrix of the motion in roll, yaw and sideslip.",
  topic: "stability",
  parameters: {
    matrix: list(
      number("1", "entry of the matrix"),
      "16 numbers, row by row, of the matrix in sideslip (speed or angle), p, r and bank; in seconds and radians, otherwise in any units that go together",
    ),
  },
  result: lateralModesRecord,
  formula:
    "eigenvalues of the matrix; half_time = ln 2 / −rate, period = 2π / turning, damping_ratio = −rate / frequency",
  errors: ["The matrix has not 16 numbers."],
  assumptions: [
    "Of the roots that do not swing the fastest is the roll and the one with least sideslip for its bank the spiral. Two pairs are the Dutch roll and, with less sideslip for its bank, roll and spiral joined: both then tell that pair.",
    "Small disturbances of a steady, straight path.",
  ],
  sources: [
    { text: "Eigenvalues of the linear equations of motion", mark: "derived" },
    {
      text: "B. Etkin, L. D. Reid, Dynamics of Flight, 1996, section 6.8: roll and spiral joined in a lateral phugoid",
      mark: "verified",
    },
  ],
  examples: [
    {
      summary: "a swing of sideslip and yaw, λ² + 0.8λ + 4.16, beside single roots of −5 and 0.05",
      arguments: { matrix: [-0.4, 0, -2, 0, 0, -4.95, 0, 0.25, 2, 0, -0.4, 0, 0, 1, 0, 0] },
      result: {
        dutch_roll: {
          rate: -0.4,
          half_time: Math.LN2 / 0.4,
          period: Math.PI,
          frequency: Math.sqrt(4.16),
          damping_ratio: 0.4 / Math.sqrt(4.16),
        },
        roll: { rate: -5, half_time: Math.LN2 / 5 },
        spiral: { rate: 0.05, double_time: Math.LN2 / 0.05 },
        joined: false,
      },
    },
  ],
  compute: ({ matrix }, refuse) => lateralModesOf(matrix, refuse),
});
