import type { Edge } from "./facets.ts";

/** How many strips and rows a lattice has. */
export interface LatticeCounts {
  /** Strips of a half wing, and rows of vortices along its chord. */
  readonly strips: number;
  readonly rows: number;
  /** Strips of half the tailplane, and of the fin, and rows along their chords. */
  readonly tailStrips: number;
  readonly finStrips: number;
  readonly tailRows: number;
}

export interface LatticeOptions extends LatticeCounts {
  /** Lift slope of every section, per radian: 2π in theory. */
  readonly sectionSlope: number;
  /** Camber of wing panels that tell none. */
  readonly camber: number;
  /** Strips of equal width in place of narrow ones at the tips, as hand computations have them. */
  readonly evenStrips?: true;
}

/** A span of indices, the end left out. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

export type Surface = "wing" | "tailplane" | "fin";
/** In the order in which a lattice holds them. */
export const surfaces: readonly Surface[] = ["wing", "tailplane", "fin"];

/** A strip: a column of panels, one row behind the other. */
export interface Strip {
  readonly surface: Surface;
  /** Number of the wing's panel it lies on, from the root. */
  readonly panel: number;
  /** First of its panels; the others follow. */
  readonly first: number;
  readonly rows: number;
  /** At its control points: leading edge, and chord. */
  readonly edge: Edge;
  /** Across it, square to x: its width in y, its rise in z. */
  readonly acrossY: number;
  readonly acrossZ: number;
  /** How far its bound vortices run aft over its width: tangent of their sweep, the mean of the rows. */
  readonly sweep: number;
}

/**
 * Strips beside each other that share the edges between them. Node and panel are the first ones; both lie strip by strip,
 * in each the rows one behind the other, so that the next of a row is `rows` further on.
 */
export interface Run {
  readonly node: number;
  readonly panel: number;
  readonly strips: number;
  readonly rows: number;
}

/**
 * A vortex lattice. Places are in metres, x aft, y to the right tip, z up, three numbers a point. Each panel carries a
 * horseshoe vortex: bound along a quarter of the panel from node `from` to node `to`, with legs along x from both.
 * Where the glider is its own mirror image only the right half and the fin are held (`symmetric`), the fin last.
 */
export interface Lattice {
  readonly symmetric: boolean;
  /** Panels held, and with their mirror images. */
  readonly count: number;
  readonly unknowns: number;
  readonly strips: readonly Strip[];
  readonly wing: Range;
  readonly tailplane: Range;
  readonly fin: Range;
  readonly nodes: Float64Array;
  readonly runsOf: Readonly<Record<Surface, readonly Run[]>>;
  /** Whether the tailplane flies ahead of the wing, so that its wake passes the wing. */
  readonly tailFirst: boolean;
  /** Square of the core of each node's leg: see `hasCore`. */
  readonly cores: Float64Array;
  /** Added to the square distance from a leg without a core: keeps it above 0 where the leg passes exactly through. */
  readonly floor: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Where the flow must follow the surface, and where the bound vortex takes its force. */
  readonly control: Float64Array;
  readonly bound: Float64Array;
  /** Normal of the panel as it lies in the lattice, chord along x: two numbers, y and z. */
  readonly normal: Float64Array;
  /** Normal of the true surface: seat, washout, incidence and camber included. */
  readonly tilted: Float64Array;
  /** Lengths of its legs upon the surface, at `from` and at `to`. */
  readonly legs: Float64Array;
  readonly sectionSlope: number;
}

/**
 * Whether the legs of a surface have their cores where another feels them: the wing's where they pass the tail, and those
 * of a tailplane ahead where they pass the wing.
 */
export const hasCore = ({ tailFirst }: Pick<Lattice, "tailFirst">, of: Surface, on: Surface): boolean =>
  of === "wing" ? on !== "wing" : tailFirst && of === "tailplane" && on === "wing";
