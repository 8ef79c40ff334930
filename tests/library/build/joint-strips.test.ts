import { expect, test } from "vitest";
import { jointStrips } from "../../../src/library/build/joint-strips.ts";
import { jointMass } from "../../../src/library/mass/joint-mass.ts";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

const strips = (wing: unknown, given: Record<string, unknown> = {}) =>
  call(jointStrips, { wing, ...given }) as {
    mass: number;
    strips: { width: number[]; layer: number[] };
    count: number;
  };

test("strips weigh what joint_mass says of joints along the flow", () => {
  const plain = buildWing(withColumns(ploverPanels, { washout: [0, 0, 0] }), undefined, refuse);
  const mass = (call(jointMass, { wing: plain, cloth: 0.025, root_width: 0.03 }) as Part).mass;
  expect(strips(plain, { root_width: 0.03 }).mass).toBeCloseTo(mass, 12);
});

test("layers step: each is narrower than the one above it", () => {
  const { strips: cut, count } = strips(ploverWing, { layers: 3, width: 0.024, step: 0.002 });
  expect(count).toBe(30);
  expect(cut.layer.slice(0, 3)).toEqual([1, 2, 3]);
  expect(cut.width.slice(0, 3).map((width) => Math.round(width * 1e6))).toEqual([16000, 20000, 24000]);
});

test("strips whose steps leave no width are refused by the name of their joint", () => {
  expect(() => strips(ploverWing, { layers: 4, width: 0.012, step: 0.002 })).toThrow(/root joint.*layer 1 no width/);
  expect(() => strips(ploverWing, { layers: 1.5 })).toThrow(/whole number/);
});

test("a strip that reaches past a panel is refused by the name of its joint", () => {
  expect(() => strips(ploverWing, { width: 0.13, root_width: 0.03 })).toThrow(
    /right 2–3 joint half of the strip is 65 mm wide, and panel right 3 60 mm long/,
  );
  expect(() => strips(ploverWing, { root_width: 1 })).toThrow(/Over the root joint/);
});
