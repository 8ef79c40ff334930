import { describe, expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { numberProbe, probe } from "../../src/cells/probe.ts";
import type { Result } from "../../src/cells/value.ts";
import { functions } from "../../src/library/index.ts";
import { cellsOf } from "./notebook-text.ts";

const program = compile(cellsOf("given a [mm] = 3 mm\nscaled(x) = x * a\nbad = 1 / 0"), functions);
const present = runPlan(program);
const computed = (text: string) => {
  const step = probe(program, text, "p");
  return step.run(step.inputs.map((id) => present.get(id) as Result));
};

describe("a probe", () => {
  test("computes a formula over the cells of a program, function cells among them", () => {
    expect(computed("2 * a + 1 cm")).toMatchObject({ ok: true, value: expect.closeTo(0.016, 12) });
    expect(computed("scaled(4)")).toMatchObject({ ok: true, value: expect.closeTo(0.012, 12) });
    expect(computed("bad + 1")).toMatchObject({ ok: false, error: { code: "waits", root: "bad" } });
  });

  test("has the error of its formula, and stands in no program", () => {
    expect(probe(program, "2 * aa", "p").error?.message).toBe("There is no cell named aa. Did you mean a?");
    expect(probe(program, "a + 1", "p").error?.code).toBe("wrong_dimension");
    expect(program.byId.get("p")).toBeUndefined();
  });

  test("that must be a number says what else it is", () => {
    const otherwise = () => "not a number";
    expect(numberProbe(program, "a", "p", otherwise).id).toBe("p");
    expect(() => numberProbe(program, "a > 1 mm", "p", otherwise)).toThrow("not a number");
    expect(() => numberProbe(program, "a +", "p", otherwise)).toThrow("The formula ends where a value is needed.");
  });
});
