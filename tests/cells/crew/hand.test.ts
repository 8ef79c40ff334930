import { describe, expect, test } from "vitest";
import { Hand } from "../../../src/cells/crew/hand.ts";
import type { Answer } from "../../../src/cells/crew/orders.ts";
import { functions } from "../../../src/library/index.ts";
import type { FunctionTable } from "../../../src/library/spec.ts";
import { cellsOf } from "../notebook-text.ts";

function hired(table: FunctionTable = functions) {
  const answers: Answer[] = [];
  const turns: (() => void)[] = [];
  let clock = 0;
  const hand = new Hand({
    functions: table,
    stretch: 5,
    now: () => clock++,
    answer: (answer) => answers.push(structuredClone(answer)),
    later: (act) => turns.push(act),
  });
  return { hand, answers, turns };
}

const cells = cellsOf("a = 2\nb = a * 3\ncheck c = b > 4 and a < 1 / 0\nd = nope");

describe("a hand", () => {
  test("answers with a value, with an error, and follows the changes it is told", () => {
    const { hand, answers } = hired();
    hand.take({ kind: "cell", key: 1, change: { cells }, id: "2" });
    hand.take({ kind: "cell", key: 2, change: { changed: [] }, id: "4" });
    const [other] = cellsOf("a = 5");
    hand.take({ kind: "cell", key: 3, change: { changed: [[0, other as (typeof cells)[0]]] }, id: "2" });
    expect(answers).toMatchObject([
      { key: 1, result: { ok: true, value: 6 } },
      { key: 2, result: { ok: false, error: { code: "unknown_name" } } },
      { key: 3, result: { ok: true, value: 15 } },
    ]);
  });

  test("tells a fault of ours instead of falling silent", () => {
    const { hand, answers } = hired();
    hand.take({ kind: "cell", key: 1, change: { cells }, id: "x" });
    expect(answers).toEqual([{ kind: "fault", key: 1, message: "got the cell x, expected one that computes" }]);
  });

  test("warms itself on a function, unless a message comes first", () => {
    const ran: string[] = [];
    const table: FunctionTable = new Map(
      [...functions].map(([name, spec]) => [name, { ...spec, compute: () => ran.push(name) }]),
    );
    const { hand, turns } = hired(table);
    hand.take({ kind: "warm", name: "flow" });
    hand.take({ kind: "cell", key: 1, change: { cells }, id: "1" });
    turns.shift()?.();
    expect(ran).toEqual([]);
    hand.take({ kind: "warm", name: "flow" });
    turns.shift()?.();
    expect(ran).toEqual(["flow"]);
  });

  test("can warm itself on the lattice as it is", () => {
    const { hand, turns } = hired();
    hand.take({ kind: "warm", name: "flow" });
    turns.shift()?.();
  });
});
