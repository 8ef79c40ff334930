import { compile as compileMath, unit } from "mathjs";
import { compile } from "../../src/cells/compile.ts";
import { runStep } from "../../src/cells/plan.ts";
import type { Result } from "../../src/cells/value.ts";
import { functions } from "../../src/library/index.ts";
import type { Bench } from "./bench.ts";
import { perCall, ratioText } from "./timing.ts";

const text = "0.5 * air * v^2 * area * cl";
const givens: readonly (readonly [name: string, formula: string])[] = [
  ["air", "1.2 kg/m^3"],
  ["v", "4.1 m/s"],
  ["area", "308 cm^2"],
  ["cl", "0.6"],
];

/** One formula with units evaluated over and over, both sides compiled before; the results are compared first. */
const formula: Bench = async () => {
  const cells = [
    ...givens.map(([name, given]) => ({ id: name, kind: "given" as const, name, formula: given })),
    { id: "lift", kind: "derived" as const, name: "lift", formula: text, unit: "N" },
  ];
  const program = compile(cells, functions);
  const results = new Map<string, Result>();
  for (const step of program.steps)
    results.set(
      step.id,
      runStep(step, (id) => results.get(id)),
    );
  const step = program.byId.get("lift");
  if (!step) throw new Error("got no step for lift, expected one");
  const inputs = step.inputs.map((id) => results.get(id) as Result);

  const math = compileMath(text);
  const scope = Object.fromEntries(givens.map(([name, given]) => [name, name === "cl" ? Number(given) : unit(given)]));
  const ours = results.get("lift");
  const theirs = math.evaluate(scope).toNumber("N");
  if (!ours?.ok || Math.abs((ours.value as number) - theirs) > 1e-12) throw new Error(`got ${theirs}, expected ours`);

  const fast = perCall(() => step.run(inputs));
  const slow = perCall(() => math.evaluate(scope));
  return [
    {
      figure: "formula with units evaluated, against mathjs with units",
      measured: `${(fast * 1e6).toFixed(0)} ns against ${(slow * 1e6).toFixed(0)} ns`,
      goal: "at least 100 times faster",
      ratio: `${ratioText(slow / fast)} times faster`,
    },
  ];
};

export default formula;
