import { expect, test } from "vitest";
import { glidingOf } from "../../../src/library/glide/gliding.ts";
import { downwashLag } from "../../../src/library/motion/downwash-lag.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { refuse } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";
import { ploverTailplane } from "../plover.ts";

test("a tailplane ahead is not in the wing's wake and feels the wing at once; one behind feels it late", () => {
  const lagOf = (x: number) => {
    const glider = ploverWith({ tailplane: buildTailplane({ ...ploverTailplane, x }) });
    return downwashLag(glidingOf({ glider, shape: "flat-bottomed", other_area: 0 }, refuse));
  };
  expect(lagOf(-0.2).every((each) => each === 0)).toBe(true);
  expect(lagOf(0.245)[4 * 6 + 2]).toBeGreaterThan(0);
});
