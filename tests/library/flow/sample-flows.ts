import { expect } from "vitest";
import { derivativesAt } from "../../../src/library/flow/derivatives.ts";
import { farFieldDrag, stripCirculation } from "../../../src/library/flow/far-field.ts";
import type { LatticeOptions } from "../../../src/library/flow/lattice.ts";
import { loadsAbout } from "../../../src/library/flow/quadratic-loads.ts";
import { type LatticeFlow, solveLattice } from "../../../src/library/flow/solve-lattice.ts";
import { type Coefficients, coefficientsAt, straightFlight } from "../../../src/library/flow/wind-axes.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { buildFin } from "../../../src/library/shape/fin.ts";
import type { Glider } from "../../../src/library/shape/glider-record.ts";
import type { Panels } from "../../../src/library/shape/panel-columns.ts";
import { buildTailplane } from "../../../src/library/shape/tailplane.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { refuse } from "../call.ts";
import { ploverFin, ploverPanels, ploverTailplane } from "../plover.ts";

/** Counts of the lattice as formulas have them by default, with sections of the theory's slope and no camber. */
export const usual: LatticeOptions = {
  strips: 12,
  rows: 4,
  tailStrips: 6,
  finStrips: 6,
  tailRows: 3,
  sectionSlope: 2 * Math.PI,
  camber: 0,
};

/** One panel a side, 1 m wide in the plan view unless a length is given. */
export function plainWing(aspectRatio: number, change: { cant?: number; sweep?: number; taper?: number } = {}): Glider {
  const { cant = 0, sweep = 0, taper = 1 } = change;
  const root = 2 / (aspectRatio * (1 + taper));
  const panels: Panels = {
    length: [0.5 / Math.cos(cant)],
    root_chord: [root],
    tip_chord: [root * taper],
    sweep: [sweep],
    break: [cant],
    washout: [0],
    thickness: [0.003],
  };
  return wingAlone(panels);
}

export const wingAlone = (panels: Panels, left?: Panels): Glider => ({
  wing: buildWing(panels, left, refuse),
  seat_height: 0,
  seat_angle: 0,
});

/** The demo glider, with changes. */
export function plover(
  change: {
    panels?: Partial<Panels>;
    tailplane?: Partial<typeof ploverTailplane>;
    fin?: Partial<typeof ploverFin>;
    seatAngle?: number;
  } = {},
): Glider {
  return {
    wing: buildWing({ ...ploverPanels, ...change.panels }, undefined, refuse),
    tailplane: buildTailplane({ ...ploverTailplane, ...change.tailplane }),
    fin: buildFin({ ...ploverFin, ...change.fin }),
    seat_height: 0.012,
    seat_angle: change.seatAngle ?? degrees(2),
  };
}

/** The demo glider's balance point. */
export const ploverPoint = [0.0335, 0, 0.0145] as const;

export function solved(glider: Glider, change: Partial<LatticeOptions> = {}): LatticeFlow {
  const flow = solveLattice(glider, { ...usual, ...change });
  if (!flow) throw new Error("got no solution, expected one");
  return flow;
}

export const referenceOf = ({ wing }: Glider) => ({ area: wing.area, span: wing.span, chord: wing.mac });

/** Coefficients about the origin, or another point. */
export const coefficients = (
  glider: Glider,
  alpha: number,
  change: Partial<LatticeOptions> = {},
  point: readonly [number, number, number] = [0, 0, 0],
): Coefficients => coefficientsAt(loadsAbout(solved(glider, change).loads, point), alpha, referenceOf(glider));

/** Derivatives about the origin, or another point; the downwash without its delay. */
export const derivatives = (
  glider: Glider,
  alpha: number,
  change: Partial<LatticeOptions> = {},
  point: readonly [number, number, number] = [0, 0, 0],
  axes: "stability" | "body" = "stability",
) =>
  derivativesAt(loadsAbout(solved(glider, change).loads, point), alpha, referenceOf(glider), axes, {
    slope: 0,
    way: 0,
  });

/** Induced drag coefficient by the far field. */
export function farDrag(glider: Glider, alpha: number, change: Partial<LatticeOptions> = {}): number {
  const { lattice, trace, circulation } = solved(glider, change);
  const strength = stripCirculation(lattice, circulation, straightFlight(alpha));
  return (2 * farFieldDrag(lattice, trace, strength)) / glider.wing.area;
}

/** An elliptic wing in so many straight pieces, with a straight line of half chords, flat or bent to a V. */
export function ellipticWing(aspectRatio: number, pieces: number, cant = 0): Glider {
  const at = (i: number) => {
    const angle = (Math.PI / 2) * (i / pieces);
    return { y: 0.5 * Math.sin(angle), chord: (4 / Math.PI / aspectRatio) * Math.max(Math.cos(angle), 0.005) };
  };
  const each = (value: (from: ReturnType<typeof at>, to: ReturnType<typeof at>) => number) =>
    Array.from({ length: pieces }, (_, i) => value(at(i), at(i + 1)));
  return wingAlone({
    length: each((a, b) => b.y - a.y),
    root_chord: each((a) => a.chord),
    tip_chord: each((_, b) => b.chord),
    sweep: each((a, b) => (a.chord - b.chord) / 2),
    break: each(() => 0).map((_, i) => (i === 0 ? cant : 0)),
    washout: each(() => 0),
    thickness: each(() => 0.001),
  });
}

/** Holds where a value is within a share of what is expected. */
export const near = (found: number, expected: number, share: number, what = "") =>
  expect(Math.abs(found - expected), `${what} got ${found}, expected ${expected}`).toBeLessThanOrEqual(
    share * Math.abs(expected),
  );
