import { expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { compile } from "../../src/cells/compile.ts";
import { Graph } from "../../src/cells/graph.ts";
import { functions } from "../../src/library/index.ts";

const derived = (name: string, formula: string): Cell => ({ id: name, kind: "derived", name, formula });
const rest = [derived("b", "a + 1"), derived("c", "a + b"), derived("d", "c + 1"), derived("e", "c * d")];

test("the engine forgets a cell that others still name when it goes, however often it comes back", async () => {
  const graph = new Graph({ onResult: () => undefined, onSettled: () => undefined });
  let program = compile([derived("a", "1"), ...rest], functions);
  /** The names that the engine keeps, which it tells nobody. */
  const kept = (): number => (Reflect.get(graph, "module") as { _scope: Map<string, unknown> })._scope.size;
  graph.update(program);
  await graph.settled();
  const before = kept();
  for (let round = 0; round < 5; round++) {
    for (const cells of [rest, [{ ...derived("a", `${round}`), id: `a${round}` }, ...rest]]) {
      program = compile(cells, functions, program);
      graph.update(program);
      await graph.settled();
    }
    // e = (a + a + 1) · (a + a + 2)
    expect(graph.result("e")).toMatchObject({ value: (2 * round + 1) * (2 * round + 2) });
  }
  expect(kept()).toBe(before);
  program = compile(rest, functions, program);
  graph.update(program);
  await graph.settled();
  expect(graph.result("e")).toMatchObject({ ok: false, error: { code: "waits", root: "c" } });
});
