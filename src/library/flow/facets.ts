import type { Fin } from "../shape/fin-record.ts";
import type { Glider } from "../shape/glider-record.ts";
import type { Half } from "../shape/half-record.ts";
import type { Tailplane } from "../shape/tailplane-record.ts";

/** An edge of a facet along the flow: the foremost point of its chord, and the chord; metres, x aft, y right, z up. */
export interface Edge {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly chord: number;
}

/**
 * A flat, straight-tapered piece of a lifting surface between two edges. Wing and tailplane run from left to right, the
 * fin upwards. Its chords lie along x in the lattice; the angles below only turn the normal that the flow must obey.
 */
export interface Facet {
  readonly start: Edge;
  readonly end: Edge;
  /** Nose-up angle in its own plane, against the part it belongs to. */
  readonly incidence: number;
  /** Nose-up angle of that part as a whole, about the y axis. */
  readonly seat: number;
  readonly camber: number;
  /** Number of the panel from the root. */
  readonly panel: number;
}

/** The facets of a half wing from the root outwards, on its seat. Panels without a camber of their own take `camber`. */
export function wingFacets(half: Half, glider: Pick<Glider, "seat_angle" | "seat_height">, camber: number): Facet[] {
  const { x, y, z } = half.stations;
  const at = (list: readonly number[], index: number) => list[index] ?? Number.NaN;
  const edge = (station: number, chord: number) =>
    seated({ x: at(x, station), y: at(y, station), z: at(z, station), chord }, glider);
  return half.length.map((_, i) => ({
    start: edge(i, at(half.root_chord, i)),
    end: edge(i + 1, at(half.tip_chord, i)),
    incidence: -at(half.twist, i),
    seat: glider.seat_angle,
    camber: half.camber[i] ?? camber,
    panel: i + 1,
  }));
}

/** A half of a tailplane, from the root outwards, tilted about the middle of its root. */
export function tailFacets(tailplane: Tailplane, side: "right" | "left"): Facet[] {
  const { x, y, chord } = tailplane.stations;
  const { incidence, tilt } = tailplane;
  const at = (list: readonly number[], index: number) => list[index] ?? Number.NaN;
  const toSide = side === "right" ? 1 : -1;
  const z = tailHeight(tailplane);
  const edge = (i: number): Edge => {
    const out = toSide * at(y, i);
    return { x: at(x, i), y: out * Math.cos(tilt), z: z + out * Math.sin(tilt), chord: at(chord, i) };
  };
  return [{ start: edge(0), end: edge(1), incidence, seat: 0, camber: 0, panel: 1 }];
}

/** A tailplane lies in the middle of its thickness. */
const tailHeight = ({ z, thickness }: Tailplane): number => z + thickness / 2;

/** A piece of the fin, and which of its ends are free. */
export interface FinPiece {
  readonly facet: Facet;
  readonly free: "both" | "foot" | "top";
}

/**
 * The fin from its foot upwards: whole, or cut at the tailplane where it passes through it. A foot above the tailplane, or
 * a top below it, that is no farther from it than wood can fill, its thickness and the stick's height, is joined to it: no
 * air gets through there, and a gap in the lattice, however small, would take away much of what the two do for each other.
 * One that reaches through keeps all of its height, so that nothing steps where it begins to.
 */
export function finPieces(fin: Fin, { tailplane, stick }: Pick<Glider, "tailplane" | "stick">): FinPiece[] {
  let [foot = 0, top = 0] = fin.stations.z;
  const edge = (height: number): Edge => {
    const share = (height - fin.z) / fin.height;
    const along = ([a = 0, b = 0]: readonly number[]) => a + share * (b - a);
    return { x: along(fin.stations.x), y: 0, z: height, chord: along(fin.stations.chord) };
  };
  const piece = (from: number, to: number, free: FinPiece["free"]): FinPiece => ({
    facet: { start: edge(from), end: edge(to), incidence: 0, seat: 0, camber: 0, panel: 1 },
    free,
  });
  if (!tailplane) return [piece(foot, top, "both")];
  const { x, root_chord } = tailplane;
  const z = tailHeight(tailplane);
  const meet = fin.x < x + root_chord && x < fin.x + fin.root_chord;
  const filled = meet ? tailplane.thickness + (stick?.end_height ?? 0) : 0;
  // So little of a fin is not worth strips of its own.
  const least = 1e-4 * fin.height;
  if (foot > z - least && foot <= z + filled) foot = z;
  if (top < z + least && top >= z - filled) top = z;
  if (foot > z || top < z) return [piece(foot, top, "both")];
  return [...(foot < z ? [piece(foot, z, "foot")] : []), ...(top > z ? [piece(z, top, "top")] : [])];
}

/** How wide a facet is, square to x, m. */
export const widthOf = ({ start, end }: Facet): number => Math.hypot(end.y - start.y, end.z - start.z);

/** The same facets from the last to the first, each from its end to its start. */
export const backwards = (facets: readonly Facet[]): Facet[] =>
  facets.map((facet) => ({ ...facet, start: facet.end, end: facet.start })).reverse();

/** Seat angle and height: the quarter of the chord moves about the leading edge of the wing's root. */
function seated({ x, y, z, chord }: Edge, glider: Pick<Glider, "seat_angle" | "seat_height">): Edge {
  const [cos, sin] = [Math.cos(glider.seat_angle), Math.sin(glider.seat_angle)];
  const quarter = x + chord / 4;
  return {
    x: quarter * cos + z * sin - chord / 4,
    y,
    z: glider.seat_height + z * cos - quarter * sin,
    chord,
  };
}
