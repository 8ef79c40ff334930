import { Runtime, type Variable } from "@observablehq/runtime";
import { editCell } from "../../src/cells/notebook.ts";
import { Session } from "../../src/cells/session.ts";
import { functions } from "../../src/library/index.ts";
import type { Bench } from "./bench.ts";
import { median, ratioText } from "./timing.ts";

const length = 1000;
const rounds = 100;

/** The head of a chain is changed and the tail waited for: our session, and the engine below it bare, turn and turn about. */
const chain: Bench = async () => {
  const ours = ourChain();
  const bare = bareChain();
  const times: { ours: number[]; bare: number[] } = { ours: [], bare: [] };
  for (let round = 0; round < rounds; round++) {
    times.ours.push(await timed(() => ours(round)));
    times.bare.push(await timed(() => bare(round)));
  }
  // The first rounds warm both up.
  const [own, engine] = [median(times.ours.slice(10)), median(times.bare.slice(10))];
  return [
    {
      figure: "1,000-cell chain recomputed, against the bare runtime",
      measured: `${own.toFixed(2)} ms against ${engine.toFixed(2)} ms`,
      goal: "at most 1.5 times",
      ratio: `${ratioText(own / engine)} times`,
    },
  ];
};

async function timed(run: () => Promise<number>): Promise<number> {
  const start = performance.now();
  await run();
  return performance.now() - start;
}

/** A change of the head by an edit of the notebook, as a slider makes it: compiled, scheduled, told to listeners. */
function ourChain(): (head: number) => Promise<number> {
  const session = new Session(functions);
  const cells = Array.from({ length }, (_, index) =>
    index === 0
      ? { id: "c0", kind: "given" as const, name: "c0", formula: "0" }
      : { id: `c${index}`, kind: "derived" as const, name: `c${index}`, formula: `c${index - 1} + 1` },
  );
  session.open({ title: "chain", cells, trials: [] });
  return async (head) => {
    session.edit((notebook) => editCell(notebook, "c0", { formula: `${head}.5` }));
    await session.settled();
    const result = session.result(`c${length - 1}`);
    if (!result?.ok || result.value !== head + 0.5 + length - 1) throw new Error(`got a wrong end of the chain`);
    return result.value;
  };
}

/** The engine with the same scheduling on microtasks, each variable observed as every cell is. */
function bareChain(): (head: number) => Promise<number> {
  class Prompt extends Runtime {
    override _computeSoon(): Promise<void> {
      return Promise.resolve().then(() => this._computeNow());
    }
  }
  const module = new Prompt().module();
  let arrived: (value: number) => void = () => undefined;
  const variables: Variable[] = Array.from({ length }, (_, index) =>
    module.variable({ fulfilled: (value) => index === length - 1 && arrived(value as number) }),
  );
  variables.forEach((variable, index) => {
    if (index > 0) variable.define(`c${index}`, [`c${index - 1}`], (before: number) => before + 1);
  });
  return (head) =>
    new Promise((resolve) => {
      arrived = resolve;
      variables[0]?.define("c0", [], () => head + 0.5);
    });
}

export default chain;
