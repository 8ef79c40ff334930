import { smoothCurve } from "../numerics/smooth-curve.ts";
import type { Refuse } from "../spec.ts";
import { turbulent } from "./friction.ts";
import { type Polar, stripForces, wantedDrag } from "./polar.ts";

/**
 * The model of thin balsa sections at Reynolds numbers of 15 000 to 80 000: the skeleton is thin-aerofoil theory, its
 * numbers a fit from memory. The largest lift is known to ±0.1.
 */
export const lowestReynolds = 5000;
export const highestReynolds = 300_000;
export const liftSpread = 0.1;

/** Where tests of such sections lie. */
export const testedFrom = 15_000;
export const testedTo = 100_000;

/**
 * Share by which the drag may differ: 20 % where such sections were tested, and a tenth more for each halving or
 * doubling of the Reynolds number beyond that, up to 40 % (from memory; beyond the tests a judgement of ours).
 */
export function dragSpread(reynolds: number): number {
  const beyond = Math.max(0, Math.log2(testedFrom / reynolds), Math.log2(reynolds / testedTo));
  return 0.2 + 0.1 * Math.min(2, beyond);
}

/** Kinds of section, and the share of the leading edge's suction that each keeps: a sharp edge loses most of it. */
export const sectionShapes: Readonly<Record<string, { readonly suction: number; readonly camber: number | null }>> = {
  "flat plate": { suction: 0.25, camber: 0 },
  "flat-bottomed": { suction: 0.6, camber: 0.5 },
  arc: { suction: 0.25, camber: null },
};
export type SectionShape = (typeof sectionShapes)[string];

/** A section: thickness and camber as shares of the chord. */
export interface Section {
  readonly thickness: number;
  readonly camber: number;
  readonly suction: number;
}

/** Camber where none is told: none for a plate, half the thickness for a flat-bottomed section; an arc must tell. */
export function camberOf(shape: SectionShape, thickness: number, camber: number | undefined, refuse: Refuse): number {
  if (camber !== undefined) return camber;
  if (shape.camber === null) {
    return refuse("shape", "An arc needs its camber. Give it, or a column camber in the table of panels.");
  }
  return shape.camber * thickness;
}

/** Thin-aerofoil theory of a parabolic mean line of camber f (Glauert 1926): α₀ = −2f, ideal lift 4πf, c_m = −πf. */
export const zeroLiftAngle = ({ camber }: Section): number => -2 * camber;
export const idealLift = ({ camber }: Section): number => 4 * Math.PI * camber;
/** A fifth of the theory's moment is lost to the boundary layer (from memory). */
export const moment = ({ camber }: Section): number => -0.8 * Math.PI * camber;

/** Largest lift coefficient by camber: a flat plate 0.70, a 5 % arc 1.15, level from 6 % on (from memory, ±0.1). */
const largestLift = smoothCurve(
  [
    [0, 0.7],
    [0.021, 0.88],
    [0.04, 1.09],
    [0.05, 1.15],
    [0.06, 1.2],
  ],
  undefined,
  0,
);
export const maxLift = ({ camber }: Section): number => largestLift(camber);
/** Upside down every section stalls like a flat plate. */
export const minLift = -largestLift(0);

/** Lift slope per radian: 5.2 at a Reynolds number of 15 000 and below, 5.7 from 40 000 on (from memory). */
const slopeByLog = smoothCurve(
  [
    [Math.log(15_000), 5.2],
    [Math.log(40_000), 5.7],
  ],
  0,
  0,
);
export const liftSlopeAt = (reynolds: number): number => slopeByLog(Math.log(reynolds));

/**
 * The polar of a thin section. Drag: turbulent friction of both sides, raised by 15 %, by thickness and by camber, plus
 * what the leading edge loses of its suction away from the ideal lift.
 */
export function thinPolar(section: Section): Polar {
  const { thickness, camber, suction } = section;
  const form = 1.15 * 2 * (1 + 2 * thickness) * (1 + 5 * camber);
  const ideal = idealLift(section);
  const edge = (1 - suction) / (2 * Math.PI);
  const most = maxLift(section);
  return {
    zeroLiftAngle: zeroLiftAngle(section),
    moment: moment(section),
    slope: liftSlopeAt,
    maxLift: () => most,
    minLift: () => minLift,
    drag: (lift, reynolds) => form * turbulent(reynolds) + edge * (lift - ideal) ** 2,
    leastDrag: (reynolds) => form * turbulent(reynolds),
  };
}

/** Profile drag at a wanted lift; past the largest lift it grows by what that is exceeded by. */
export const sectionDrag = (section: Section, lift: number, reynolds: number): number =>
  wantedDrag(thinPolar(section), lift, reynolds);

/** Lift by angle, through the stall. */
export const sectionLift = (section: Section, angle: number, reynolds: number): number =>
  stripForces(thinPolar(section), liftSlopeAt(reynolds) * (angle - zeroLiftAngle(section)), reynolds).lift;
