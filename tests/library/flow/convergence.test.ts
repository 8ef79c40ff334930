import { expect, test } from "vitest";
import { latticeConvergence } from "../../../src/library/flow/convergence.ts";
import type { Flow } from "../../../src/library/flow/flow-record.ts";

const all = latticeConvergence();
const finest = all.at(-1)?.flow as Flow;
const told: readonly ((flow: Flow) => number)[] = [
  (flow) => flow.lift_slope,
  (flow) => flow.span_efficiency,
  (flow) => flow.derivatives.roll_p,
  (flow) => flow.derivatives.roll_beta,
  (flow) => flow.derivatives.yaw_r,
  (flow) => flow.derivatives.pitch_q,
];
const offBy = (flow: Flow, of: (flow: Flow) => number) => Math.abs(of(flow) / of(finest) - 1);

test("finer lattices come ever nearer to the finest, in each coefficient", () => {
  for (const of of told) {
    const errors = all.slice(0, -1).map(({ flow }) => offBy(flow, of));
    expect(errors.at(-1)).toBeLessThan((errors[0] ?? 0) / 2);
  }
});

test("the lattice that formulas have by default is within two per cent of the finest", () => {
  const usual = all.find(({ strips }) => strips === 12)?.flow as Flow;
  for (const of of told) expect(offBy(usual, of)).toBeLessThan(0.02);
  expect(Math.abs(usual.neutral_share - finest.neutral_share)).toBeLessThan(0.005);
});
