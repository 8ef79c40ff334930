import { expect, test } from "vitest";
import { functions } from "../../src/library/index.ts";

/** In ms; the slowest of the others takes a tenth of it. */
const frameShare = 5;

test("a function that takes more than a share of a frame says that it is slow", () => {
  const others = [...functions.values()].filter(({ isSlow }) => !isSlow);
  const slow = others.flatMap(({ name, examples, parameters, compute }) => {
    const defaults = Object.entries(parameters).map(([parameter, { default: value }]) => [parameter, value]);
    const takes = examples.some(({ arguments: given }) => {
      const values = { ...Object.fromEntries(defaults), ...given };
      // The quickest of several runs: the first is slow, and so is any that is interrupted.
      for (let run = 0; run < 8; run++) {
        const start = performance.now();
        try {
          compute(values, refuse);
        } catch {
          return false;
        }
        if (performance.now() - start < frameShare) return false;
      }
      return true;
    });
    return takes ? [name] : [];
  });
  expect(slow).toEqual([]);
});

const refuse = (_: string | null, message: string): never => {
  throw new Error(message);
};
