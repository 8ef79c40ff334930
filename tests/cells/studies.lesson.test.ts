/** What the lesson on straightness says of its studies in words is what they come to, and what closed forms give. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readNotebook } from "../../src/cells/notebook-file.ts";
import { prepareStudy, studyNamed } from "../../src/cells/studies/prepare.ts";
import type { SensitivityOutcome } from "../../src/cells/studies/sensitivity.ts";
import type { SolveOutcome } from "../../src/cells/studies/solve.ts";
import type { ToleranceOutcome } from "../../src/cells/studies/tolerance.ts";
import { rowsOf } from "../../src/cells/studies/work.ts";
import { functions } from "../../src/library/index.ts";
import { root } from "../../src/tools/place.js";

const notebook = readNotebook(readFileSync(join(root, "notebooks", "how-straight.json"), "utf8"));
const degree = Math.PI / 180;

function outcomeOf(name: string): unknown {
  const study = prepareStudy(notebook, studyNamed(notebook, name), functions);
  return study.conclude(rowsOf(study));
}

const deviationOf = ({ results }: ToleranceOutcome, index: number): number =>
  (results[index]?.sample?.deviation ?? Number.NaN) / degree;

describe("the lesson on straightness", () => {
  const apart = outcomeOf("on_blocks") as ToleranceOutcome;
  const together = outcomeOf("on_one_jig") as ToleranceOutcome;
  /** Leverage outboard of the break: ∫ y dy over the outer panel and over the half. */
  const outer = 1 - (130 / 240) ** 2;
  const even = (size: number, share: number): number => (size / Math.sqrt(3)) * Math.sqrt(1 + share * share);

  test("says how many builds pass, what to tighten first and what that would bring", () => {
    expect(apart.passing?.share).toBeCloseTo(0.54, 1.5);
    expect(together.passing?.share).toBeCloseTo(0.89, 1.5);
    expect(apart.tighten[0]).toMatchObject({ target: "right_half[1].washout", isSure: true });
    expect(together.tighten[0]).toMatchObject({ target: "right_half[1].break", isSure: true });
    expect(apart.tighten[0]?.passing).toBeCloseTo(0.7, 1.5);
    expect(together.tighten[0]?.passing).toBeCloseTo(0.97, 1.5);
  });

  test("spreads twist and righting as closed forms have it, apart and together", () => {
    // Variances of a difference and of a mean of two of correlation r (JCGM 100:2008, 5.2.2). 2000 builds of such laws
    // tell a deviation to about one part in seventy; three times that is allowed.
    const within = 3 / 70;
    const twist = (r: number): number => even(0.5, outer) * Math.sqrt(2 * (1 - r));
    const righting = (r: number): number => even(1, outer) * Math.sqrt((1 + r) / 2);
    const cases = [
      [deviationOf(apart, 0), twist(0)],
      [deviationOf(together, 0), twist(0.9)],
      [deviationOf(apart, 1), righting(0)],
      [deviationOf(together, 1), righting(0.9)],
    ];
    for (const [found = 0, told = 1] of cases) expect(Math.abs(found / told - 1)).toBeLessThan(within);
    expect(deviationOf(apart, 1)).toBeCloseTo(0.51, 2);
    expect(deviationOf(together, 1)).toBeCloseTo(0.7, 2);
  });

  test("finds the twist at which a tenth is lost on both sides of the drawn washout", () => {
    const { solutions } = outcomeOf("how_far") as SolveOutcome;
    const off = 0.3983 / outer;
    expect(solutions.map(({ at }) => at / degree)).toEqual([expect.closeTo(1 - off, 3), expect.closeTo(1 + off, 3)]);
  });

  test("ranks the washouts first for the bank and the breaks first for the righting", () => {
    const { results } = outcomeOf("what_counts") as SensitivityOutcome;
    const first = results.map(({ ranked }) => ranked.slice(0, 2).map(({ target }) => target));
    expect(first).toEqual([
      ["right_half[1].washout", "right_half[2].washout"],
      ["right_half[1].break", "right_half[2].break"],
    ]);
  });
});
