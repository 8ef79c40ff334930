import { expect, test } from "vitest";
import { type TrimUnits, trimUnits } from "../../../src/library/build/trim-units.ts";
import { sampleGlider } from "../../../src/library/glide/sample-gliders.ts";
import { trim } from "../../../src/library/glide/trim.ts";
import type { Trim } from "../../../src/library/glide/trim-record.ts";
import { call } from "../call.ts";

const units = (given: Record<string, unknown> = {}) => call(trimUnits, { glider: sampleGlider, ...given }) as TrimUnits;

test("a shim under the tailplane's leading edge makes it glide faster, one under its trailing edge slower, as trim has it", () => {
  const { changes, per_shim } = units();
  const [as = 0, faster = 0, slower = 0] = changes.speed;
  expect(faster).toBeGreaterThan(as);
  expect(slower).toBeLessThan(as);
  expect(changes.effect[1]).toMatch(/faster$/);
  const turned = call(trim, { glider: sampleGlider, tail_turn: per_shim }) as Trim;
  expect(faster).toBeCloseTo(turned.speed, 9);
});

test("clay in the nose moves the balance forward and makes it glide faster", () => {
  const { changes, shift } = units({ clay: 0.0002 });
  expect(shift).toBeLessThan(0);
  expect(changes.speed[3] ?? 0).toBeGreaterThan(changes.speed[0] ?? 0);
});

test("a shim that makes it settle no more is told, not refused", () => {
  const { changes } = units({ shim: 0.008 });
  expect(changes.effect.slice(1, 3).filter((effect) => /settles no more/.test(effect))).not.toEqual([]);
  expect(changes.effect[0]).toBe("settles");
});

test("a glider without tailplane, or without a place for the clay, is refused", () => {
  const { tailplane: _tail, ...tailless } = sampleGlider;
  expect(() => units({ glider: tailless })).toThrow(/no tailplane/);
  const { stick: _stick, ...stickless } = sampleGlider;
  expect(() => units({ glider: stickless })).toThrow(/clay_x/);
});
