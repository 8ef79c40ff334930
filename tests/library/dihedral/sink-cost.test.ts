import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sinkCost } from "../../../src/library/dihedral/sink-cost.ts";
import { tiltLoss } from "../../../src/library/dihedral/tilt-loss.ts";
import { steadyGlide } from "../../../src/library/glide/steady-glide.ts";
import { curvedWing } from "../../../src/library/shape/curved-wing.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import type { Wing } from "../../../src/library/shape/wing-record.ts";
import { call, refuse } from "../call.ts";
import { anyPanels, laidFlat, runs } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

const cost = (wing: Wing, given: Record<string, unknown> = {}) => call(sinkCost, { wing, ...given }) as number;
const build = (panels: Parameters<typeof buildWing>[0]) => buildWing(panels, undefined, refuse);

/** What glides at a lift coefficient of 0.6, with a drag of 0.045 on the area as cut and an efficiency of 0.95. */
const gliding = (wing: Wing) => ({
  mass: 0.02,
  area: wing.area,
  density: 1.2,
  lift: 0.6,
  profile: (0.045 * wing.developed_area) / wing.area,
  induced: (0.36 * wing.area) / (Math.PI * 0.95 * wing.span ** 2),
  other: 0,
  spread: 0,
});

/** Its sink on a shallow path: speed times drag over lift. */
function shallowSink(wing: Wing): number {
  const { mass, area, density, lift, profile, induced } = gliding(wing);
  return (Math.sqrt((2 * mass * 9.80665) / (density * area * lift)) * (profile + induced)) / lift;
}

describe("what a bend costs in the glide", () => {
  test("is the sink of the bent wing over that of its panels laid flat", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const [bent, flat] = [build(panels), build(laidFlat(panels))];
        expect(shallowSink(bent) / shallowSink(flat) - 1).toBeCloseTo(cost(bent), 12);
      }),
      runs,
    );
  });
  test("is that of Plover's true paths too, within a fiftieth of it", () => {
    const [bent, flat] = [ploverWing, build(laidFlat(ploverPanels))].map((wing) => steadyGlide(gliding(wing)).sink);
    const share = ((bent ?? 0) / (flat ?? 1) - 1) / cost(ploverWing);
    expect(Math.abs(share - 1)).toBeLessThan(0.02);
  });
  test("is nothing for a flat wing, and less than the loss of lift slope for a real one", () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        expect(Math.abs(cost(build(laidFlat(panels))))).toBeLessThan(1e-12);
      }),
      runs,
    );
    const loss = call(tiltLoss, { wing: ploverWing }) as number;
    expect(cost(ploverWing)).toBeGreaterThan(0.5 * loss);
    expect(cost(ploverWing)).toBeLessThan(loss);
  });
  test("is less for a bow than for a plain V of the same equivalent dihedral", () => {
    const curved = (bend: number) =>
      call(curvedWing, {
        span: 0.48,
        root_chord: 0.074,
        tip_chord: 0.04,
        dihedral: 0.21,
        panels: 6,
        thickness: 0.003,
        bend,
      }) as Wing;
    expect(cost(curved(1))).toBeLessThan(cost(curved(0)));
  });
});
