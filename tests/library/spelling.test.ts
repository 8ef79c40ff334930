import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nearest, spelling } from "../../src/library/spelling.ts";

const names = ["span", "Span", "tip_break", "root_break", "deg", "m", "mm", "eda"];

describe("the nearest to a misspelt word", () => {
  test.each([
    ["spam", "span", "a letter changed"],
    ["sapn", "span", "two neighbours swapped"],
    ["spann", "span", "a letter too many"],
    ["tip_brek", "tip_break", "a letter left out"],
    ["SPAN", "span", "case alone"],
    ["degrees", "deg", "a word that begins with it"],
    ["M", "m", "a single letter in the other case"],
  ])("%s is %s: %s", (word, expected) => expect(nearest(word, names)).toBe(expected));
  test.each(["zzzzzz", "b", "", "breaks_of_root_and_tip"])("%s is none", (word) =>
    expect(nearest(word, names)).toBe(null),
  );
  test("is the first of several that are equally near", () => {
    expect(nearest("ca", ["cab", "cb", "ca2"])).toBe("cab");
    expect(nearest("cat", ["cats", "bat", "cut"])).toBe("cats");
    expect(nearest("cat", ["bat", "cats", "cut"])).toBe("bat");
  });
  test("leaves out the one that is not meant", () => {
    expect(spelling(names)("spam", "span")).toBe("Span");
    expect(spelling(names)("degrees", "deg")).toBe(null);
  });
  test("is found among thousands of names", () => {
    const many = spelling(Array.from({ length: 2000 }, (_, index) => `bend_${index}`));
    expect(many("bned_1200")).toBe("bend_1200");
    expect(many("twist_1200")).toBe(null);
  });
});

test("the prepared search gives what the plain one gives, for any words", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "A", "c", "_"), maxLength: 5 });
  fc.assert(
    fc.property(word, fc.uniqueArray(word, { maxLength: 8 }), (asked, candidates) => {
      expect(nearest(asked, candidates)).toBe(plainNearest(asked, candidates));
    }),
    { seed: 21, numRuns: 3000 },
  );
});

/** Every candidate by its distance, from the definition. */
function plainNearest(asked: string, candidates: readonly string[]): string | null {
  const most = asked.length === 1 ? 0.5 : Math.min(2, Math.floor(asked.length / 2));
  const away = (name: string) => Math.min(edits(asked, name), edits(asked.toLowerCase(), name.toLowerCase()) + 0.5);
  const least = Math.min(...candidates.map(away));
  if (least <= most) return candidates.find((name) => away(name) === least) ?? null;
  const begun = candidates.filter((name) => name.length > 1 && asked.startsWith(name));
  return begun.toSorted((a, b) => b.length - a.length)[0] ?? null;
}

function edits(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  const [lastA, lastB] = [a.slice(0, -1), b.slice(0, -1)];
  const isSwapped = a.length > 1 && b.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1);
  return Math.min(
    edits(lastA, b) + 1,
    edits(a, lastB) + 1,
    edits(lastA, lastB) + (a.at(-1) === b.at(-1) ? 0 : 1),
    ...(isSwapped ? [edits(a.slice(0, -2), b.slice(0, -2)) + 1] : []),
  );
}
