import { expect, test } from "vitest";
import { modes } from "../../../src/library/motion/modes.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildFin } from "../../../src/library/shape/fin.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { ploverWith } from "../glide/plover-glider.ts";
import { ploverFin, ploverPanels } from "../plover.ts";

const spiralOf = (glider: ReturnType<typeof ploverWith>, tail_turn = 0): number => {
  const found = call(modes, { glider, shape: "flat-bottomed", other_area: 0, tail_turn }) as ReturnType<
    typeof modes.compute
  >;
  return found.lateral.spiral.rate;
};
/** Largest second difference over the mean first one: a jump of any size would stand out. */
function roughness(values: readonly number[]): number {
  const first = values.slice(1).map((value, i) => value - (values[i] ?? 0));
  const second = first.slice(1).map((value, i) => Math.abs(value - (first[i] ?? 0)));
  return Math.max(...second) / (Math.abs((values.at(-1) ?? 0) - (values[0] ?? 0)) / first.length);
}
const steps = Array.from({ length: 13 }, (_, i) => i);

test.each([
  ["the tip's break", (i: number) => ploverWith({ wing: wingAt(9 + i / 3) })],
  ["the height of the fin", (i: number) => ploverWith({ fin: buildFin({ ...ploverFin, height: 0.04 + i * 0.001 }) })],
])("the spiral changes smoothly with %s: no step where a wake passes the fin", (_, gliderAt) => {
  const rates = steps.map((i) => spiralOf(gliderAt(i)));
  expect(roughness(rates)).toBeLessThan(0.25);
});

test("the spiral changes smoothly with the angle of attack, set by the tailplane", () => {
  const rates = steps.map((i) => spiralOf(ploverWith(), degrees(-0.6 + i * 0.1)));
  expect(roughness(rates)).toBeLessThan(0.25);
});

function wingAt(tipBreak: number) {
  const panels = { ...ploverPanels, break: ploverPanels.break.map((each, i) => (i === 2 ? degrees(tipBreak) : each)) };
  return buildWing(panels, undefined, refuse);
}
