import { type Polar, type StripForces, stripForces } from "../air/polar.ts";
import { parity, partCount, partsOf } from "../flow/flow-state.ts";
import type { Strip } from "../flow/lattice.ts";
import type { LatticeFlow } from "../flow/solve-lattice.ts";

/** What sections add to the loads of a lattice, at any motion. */
export interface SectionLoads {
  /**
   * Adds X Y Z in N and L M N in N m (body axes, moments about the origin of the lattice) at a state of the lattice about
   * that origin (`flow-state.ts`, SI) and returns how far the most stalled strip has stalled, 0 to 1. `skew` as in partsOf.
   */
  add(state: Float64Array, density: number, viscosity: number, loads: Float64Array, skew?: number): number;
  /** The forces of each strip at a state, for a drawing of them and for tests. */
  strips(state: Float64Array, viscosity: number): readonly StripState[];
}

/** A strip at a state. */
export interface StripState {
  readonly strip: SectionStrip;
  /** Lift coefficient that the lattice says, without a stall. */
  readonly straight: number;
  readonly reynolds: number;
  readonly forces: StripForces;
}

/** A strip on either half, in the axes of the lattice (x aft, y right, z up). */
export interface SectionStrip {
  readonly surface: Strip["surface"];
  readonly panel: number;
  /** A quarter of its chord. */
  readonly place: Place;
  /** Direction along its span, from left to right or upward, square to x. */
  readonly spanY: number;
  readonly spanZ: number;
  readonly chord: number;
  readonly area: number;
  readonly polar: Polar;
  /** Nose-up moment coefficient beyond that of the mean line, which the lattice has already. */
  readonly extraMoment: number;
  /** Circulation for each part of the flow. */
  readonly circulation: Float64Array;
}

/**
 * Sections on the strips of a solved lattice, each at its own lift and Reynolds number: drag along the wind that the
 * strip meets by its motion, lift taken back where the section stalls, square to wind and span, and the section's moment
 * where it differs from that of the mean line. The lattice's own forces are not in it; nor does a stall change what the
 * vortices induce. `polarOf` tells the section of a strip and the camber with which the lattice was built.
 */
export function sectionLoads(
  flow: LatticeFlow,
  polarOf: (strip: Strip) => { readonly polar: Polar; readonly camber: number },
): SectionLoads {
  const strips = flow.lattice.strips.flatMap((strip) => bothHalves(flow, strip, polarOf(strip)));
  const wind = { x: 0, y: 0, z: 0 };
  const parts = new Float64Array(partCount);
  return {
    add: (state, density, viscosity, loads, skew) => {
      let stalled = 0;
      partsOf(state, parts, skew);
      for (const strip of strips) {
        const { place, spanY, spanZ, chord, area, polar, extraMoment, circulation } = strip;
        setWind(place, state);
        const across = speedAcross(spanY, spanZ);
        if (!(across > 0)) continue;
        const straight = straightLift(circulation, parts, across * chord);
        const forces = stripForces(polar, straight, (across * chord) / viscosity);
        if (forces.stalled > stalled) stalled = forces.stalled;
        const { x: ax, y: ay, z: az } = wind;
        const drag = 0.5 * density * area * forces.drag * Math.sqrt(ax * ax + ay * ay + az * az);
        const lift = 0.5 * density * area * (forces.lift - straight) * across;
        // Square to wind and span: wind × span.
        const fx = drag * ax + lift * (ay * spanZ - az * spanY);
        const fy = drag * ay - lift * ax * spanZ;
        const fz = drag * az + lift * ax * spanY;
        const couple = 0.5 * density * area * chord * extraMoment * across * across;
        loads[0] = (loads[0] as number) - fx;
        loads[1] = (loads[1] as number) + fy;
        loads[2] = (loads[2] as number) - fz;
        loads[3] = (loads[3] as number) + place.z * fy - place.y * fz;
        loads[4] = (loads[4] as number) + place.z * fx - place.x * fz + couple * spanY;
        loads[5] = (loads[5] as number) + place.y * fx - place.x * fy - couple * spanZ;
      }
      return stalled;
    },
    strips: (state, viscosity) =>
      strips.map((strip) => {
        setWind(strip.place, state);
        const across = speedAcross(strip.spanY, strip.spanZ);
        const straight = straightLift(strip.circulation, partsOf(state), across * strip.chord);
        const reynolds = (across * strip.chord) / viscosity;
        return { strip, straight, reynolds, forces: stripForces(strip.polar, straight, reynolds) };
      }),
  };

  /** Sets the wind that a place meets by the motion, in the axes of the lattice. */
  function setWind({ x, y, z }: Place, state: Float64Array): void {
    const [p, q, r] = [state[3] as number, state[4] as number, state[5] as number];
    wind.x = (state[0] as number) - z * q - y * r;
    wind.y = -(state[1] as number) - z * p + x * r;
    wind.z = (state[2] as number) + y * p + x * q;
  }

  function speedAcross(spanY: number, spanZ: number): number {
    const { x, y, z } = wind;
    const along = y * spanY + z * spanZ;
    return Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along));
  }
}

/** A place in metres: x aft, y right, z up. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Lift coefficient that the lattice says: 2Γ/(V·c), with V·c given. */
function straightLift(circulation: Float64Array, parts: Float64Array, speedTimesChord: number): number {
  let strength = 0;
  for (let k = 0; k < partCount; k++) strength += (circulation[k] as number) * (parts[k] as number);
  return speedTimesChord > 0 ? (2 * strength) / speedTimesChord : 0;
}

/** A strip, and its mirror image where the lattice holds only the right half. */
function bothHalves(
  { lattice, circulation }: LatticeFlow,
  strip: Strip,
  { polar, camber }: { readonly polar: Polar; readonly camber: number },
): readonly SectionStrip[] {
  const { edge, acrossY, acrossZ, surface, panel } = strip;
  const width = Math.hypot(acrossY, acrossZ);
  const strength = new Float64Array(partCount);
  for (let k = 0; k < partCount; k++) {
    for (let row = strip.first; row < strip.first + strip.rows; row++) {
      strength[k] = (strength[k] as number) + (circulation[k * lattice.count + row] as number);
    }
  }
  const own: SectionStrip = {
    surface,
    panel,
    place: { x: edge.x + edge.chord / 4, y: edge.y, z: edge.z },
    spanY: acrossY / width,
    spanZ: acrossZ / width,
    chord: edge.chord,
    area: edge.chord * width,
    polar,
    extraMoment: polar.moment + Math.PI * camber,
    circulation: strength,
  };
  if (!lattice.symmetric || surface === "fin") return [own];
  return [
    own,
    { ...own, place: { ...own.place, y: -own.place.y }, spanZ: -own.spanZ, circulation: strength.map(mirrored) },
  ];
}

/** Circulation on the other half: the same for u, w, q and the tailplane's angle, the opposite for the others. */
const mirrored = (strength: number, k: number) => strength * (parity[k] ?? 1);
