import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { orderOf } from "../../src/cells/order.ts";

type Needs = Readonly<Record<string, readonly string[]>>;
const orderOfNeeds = (needs: Needs) => orderOf(Object.keys(needs), (id) => needs[id] ?? []);

/** Whether one id needs another, by way of any others. */
function reaches(needs: Needs, from: string, to: string): boolean {
  const seen = new Set<string>();
  const queue = [...(needs[from] ?? [])];
  for (const id of queue) {
    if (seen.has(id)) continue;
    seen.add(id);
    queue.push(...(needs[id] ?? []));
  }
  return seen.has(to);
}

const ids = "abcdefgh".split("");
const randomNeeds: fc.Arbitrary<Needs> = fc
  .tuple(...ids.map(() => fc.uniqueArray(fc.constantFrom(...ids), { maxLength: 3 })))
  .map((lists) => Object.fromEntries(lists.map((list, index) => [ids[index], list])));

describe("any cells that need each other", () => {
  test("stand once each, after all that they need, besides those of their own loop", () => {
    const property = fc.property(randomNeeds, (needs) => {
      const { order } = orderOfNeeds(needs);
      expect([...order].sort()).toEqual(ids);
      for (const id of ids) {
        for (const need of needs[id] ?? []) {
          if (!reaches(needs, need, id)) expect(order.indexOf(need)).toBeLessThan(order.indexOf(id));
        }
      }
    });
    fc.assert(property, { seed: 41, numRuns: 500 });
  });

  test("are in a loop exactly where they need themselves", () => {
    const property = fc.property(randomNeeds, (needs) => {
      const { loops } = orderOfNeeds(needs);
      expect([...loops.keys()].sort()).toEqual(ids.filter((id) => reaches(needs, id, id)));
    });
    fc.assert(property, { seed: 42, numRuns: 500 });
  });

  test("are told their own way around, each step of which is needed, none twice", () => {
    const property = fc.property(randomNeeds, (needs) => {
      for (const [id, way] of orderOfNeeds(needs).loops) {
        expect(way[0]).toBe(id);
        expect(new Set(way).size).toBe(way.length);
        for (const [index, each] of way.entries()) expect(needs[each]).toContain(way[(index + 1) % way.length]);
      }
    });
    fc.assert(property, { seed: 43, numRuns: 500 });
  });
});

test("the way around is the shortest", () => {
  const { loops } = orderOfNeeds({ a: ["b", "c"], b: ["d"], c: ["a"], d: ["a"] });
  expect(loops.get("a")).toEqual(["a", "c"]);
  expect(loops.get("b")).toEqual(["b", "d", "a"]);
});

test("cells that need nothing keep the order in which they stand", () => {
  expect(orderOfNeeds({ c: [], a: [], b: [] }).order).toEqual(["c", "a", "b"]);
});

test("a chain of 100,000 is no deeper than one of ten", () => {
  const names = Array.from({ length: 100_000 }, (_, index) => `${index}`);
  const { order } = orderOf(names, (id) => (id === "99999" ? [] : [`${Number(id) + 1}`]));
  expect(order.slice(0, 2)).toEqual(["99999", "99998"]);
});
