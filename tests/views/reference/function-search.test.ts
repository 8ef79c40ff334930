import { expect, test } from "vitest";
import { functions } from "../../../src/library/index.ts";
import { findFunctions, topicsOf } from "../../../src/views/reference/function-search.ts";

const names = (query: string): string[] => findFunctions(functions, query).map(({ name }) => name);

test("an empty query finds all, in the order of the library", () => {
  expect(names("")).toEqual([...functions.keys()]);
  expect(names("  ")).toHaveLength(functions.size);
});

test("a name comes first, then those that begin with it, then those that mention it", () => {
  const found = names("wing");
  expect(found.slice(0, 2)).toEqual(["wing", "wing_mass"]);
  expect(found).toContain("equivalent_dihedral");
});

test("words of a name, of a summary, a topic, a unit, a parameter or a field find a function; all must be met", () => {
  expect(names("equivalent dihedral")[0]).toBe("equivalent_dihedral");
  expect(names("square root")).toContain("sqrt");
  expect(names("arithmetic sine")).toContain("sin");
  expect(names("kg/m^3")).toContain("material");
  expect(names("lift_coefficient mass")).toContain("glide");
  expect(names("tip_height")).toContain("wing");
  expect(names("SIDESLIP")).toContain("equivalent_dihedral");
  expect(names("wing nosuchword")).toEqual([]);
});

test("topics hold every function once, and stand in the order of the library", () => {
  const topics = topicsOf(functions.values());
  expect(topics[0]?.name).toBe([...functions.values()][0]?.topic);
  expect(topics.flatMap((topic) => topic.functions.map(({ name }) => name)).sort()).toEqual(
    [...functions.keys()].sort(),
  );
  for (const { name, functions: all } of topics) expect(all.every(({ topic }) => topic === name)).toBe(true);
});
