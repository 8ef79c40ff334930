import { degrees } from "../numerics/degrees.ts";
import type { Refuse } from "../spec.ts";
import { turbulent } from "./friction.ts";

/**
 * The model of thin balsa sections at Reynolds numbers of 15 000 to 80 000: the skeleton is thin-aerofoil theory, its
 * numbers a fit from memory. Drag is known to ±20 %, the largest lift to ±0.1.
 */
export const dragSpread = 0.2;
export const lowestReynolds = 5000;
export const highestReynolds = 300_000;

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

/** Largest lift coefficient by camber: a flat plate 0.70, a 5 % arc 1.15 (from memory, ±0.1). */
export const maxLift = ({ camber }: Section): number => interpolate(largestLifts, camber);
const largestLifts: readonly (readonly [number, number])[] = [
  [0, 0.7],
  [0.021, 0.88],
  [0.04, 1.09],
  [0.05, 1.15],
  [0.06, 1.2],
];

/** Lift slope per radian: 5.2 at a Reynolds number of 15 000 and below, 5.7 from 40 000 on (from memory). */
export const liftSlopeAt = (reynolds: number): number =>
  interpolate(
    [
      [Math.log(15_000), 5.2],
      [Math.log(40_000), 5.7],
    ],
    Math.log(reynolds),
  );

/**
 * Profile drag: turbulent friction of both sides, raised by 15 %, by thickness and by camber, plus what the leading edge
 * loses of its suction away from the ideal lift; past the largest lift, what the wanted lift exceeds it by.
 */
export function sectionDrag(section: Section, lift: number, reynolds: number): number {
  const { thickness, camber, suction } = section;
  const friction = 1.15 * 2 * turbulent(reynolds) * (1 + 2 * thickness) * (1 + 5 * camber);
  const edge = ((1 - suction) * (lift - idealLift(section)) ** 2) / (2 * Math.PI);
  return friction + edge + Math.max(0, lift - maxLift(section));
}

/** Lift by angle: straight up to the largest lift, then 15 % less over 5 deg; below, a plate's stall upside down. */
export function sectionLift(section: Section, angle: number, reynolds: number): number {
  const slope = liftSlopeAt(reynolds);
  const straight = slope * (angle - zeroLiftAngle(section));
  const most = maxLift(section);
  const past = (lift: number, limit: number) => 1 - 0.15 * Math.min(1, (lift - limit) / slope / degrees(5));
  if (straight > most) return most * past(straight, most);
  const least = maxLift({ ...section, camber: 0 });
  return straight < -least ? -least * past(-straight, least) : straight;
}

/** Straight between the points, level beyond their ends. */
function interpolate(points: readonly (readonly [x: number, y: number])[], x: number): number {
  let [left] = points;
  for (const right of points) {
    if (left && x < right[0]) {
      if (left === right) return right[1];
      return left[1] + ((right[1] - left[1]) * (x - left[0])) / (right[0] - left[0]);
    }
    left = right;
  }
  return left?.[1] ?? Number.NaN;
}
