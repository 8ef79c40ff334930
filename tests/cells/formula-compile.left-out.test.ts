import { expect, test } from "vitest";
import { compile } from "../../src/cells/compile.ts";
import { runPlan } from "../../src/cells/plan.ts";
import { functions } from "../../src/library/index.ts";
import { define, functionTable, number, record } from "../../src/library/spec.ts";

test("a field that a result leaves out says where that is so, in its summary and to who asks for it", () => {
  const swing = number("s", "time for one swing", { optional: true, absent: "where it does not swing" });
  expect(swing.summary).toBe("time for one swing; left out where it does not swing");
  const push = define({
    name: "push",
    summary: "What a push does.",
    topic: "test",
    parameters: { stiffness: number("1", "how stiff it is") },
    result: record("motion", "a motion", { swing }, () => "a motion"),
    formula: "x",
    errors: [],
    assumptions: [],
    sources: [],
    examples: [],
    compute: ({ stiffness }) => (stiffness > 0 ? { swing: 2 } : {}),
  });
  const derived = (name: string, formula: string) => ({ id: name, kind: "derived", name, formula }) as const;
  const cells = [derived("stiff", "push(1).swing"), derived("slack", "push(0).swing")];
  const results = runPlan(compile(cells, functionTable([...functions.values(), push])));
  expect(results.get("stiff")).toMatchObject({ ok: true, value: 2 });
  expect(results.get("slack")).toMatchObject({
    error: { message: "There is no swing here: it is left out where it does not swing." },
  });
});
