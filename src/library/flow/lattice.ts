import type { Glider } from "../shape/glider-record.ts";
import { backwards, type Edge, type Facet, type FinPiece, finPieces, tailFacets, wingFacets } from "./facets.ts";
import { type Cuts, cutFacets } from "./span-spacing.ts";

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
  /** The nodes of each surface. */
  readonly nodesOf: Readonly<Record<Surface, Range>>;
  /** Square of the core of each node's leg, felt by other surfaces only. */
  readonly cores: Float64Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly stripOf: Int32Array;
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

/** The lattice of a glider: its wing as bent and twisted, tailplane and fin where there are any. */
export function latticeOf(glider: Glider, options: LatticeOptions): Lattice {
  const { wing, tailplane, fin } = glider;
  const symmetric = wing.mirrored && !tailplane?.tilt;
  const builder = new LatticeBuilder(options);
  const addHalves = (surface: "wing" | "tailplane", right: Facet[], left: Facet[], strips: number, rows: number) => {
    const cut = (half: readonly Facet[]) => cutFacets(half.map(widthOf), strips, options.evenStrips ? "none" : "outer");
    if (!symmetric) builder.add(surface, backwards(left), turned(cut(left)), rows);
    builder.add(surface, right, cut(right), rows);
  };
  const [right, left] = [wing.right, wing.left].map((half) => wingFacets(half, glider, options.camber));
  addHalves("wing", right ?? [], left ?? [], options.strips, options.rows);
  if (tailplane) {
    const { tailStrips, tailRows } = options;
    addHalves("tailplane", tailFacets(tailplane, "right"), tailFacets(tailplane, "left"), tailStrips, tailRows);
  }
  if (fin) {
    const pieces = finPieces(fin, glider);
    builder.add(
      "fin",
      pieces.map(({ facet }) => facet),
      cutFin(pieces, options.finStrips),
      options.tailRows,
    );
  }
  return builder.finish(symmetric);
}

const widthOf = ({ start, end }: Facet): number => Math.hypot(end.y - start.y, end.z - start.z);

/** The same cuts from the tip inwards. */
const turned = (cuts: readonly Cuts[]): Cuts[] => {
  const back = (shares: readonly number[]) => shares.map((share) => 1 - share).reverse();
  return cuts.map(({ edges, middles }) => ({ edges: back(edges), middles: back(middles) })).reverse();
};

/** Strips of a fin's pieces by their height, narrow at free ends and not where the fin stands on the tailplane. */
function cutFin(pieces: readonly FinPiece[], strips: number): Cuts[] {
  const height = pieces.reduce((sum, { facet }) => sum + widthOf(facet), 0);
  return pieces.flatMap(({ facet, free }) => {
    const width = widthOf(facet);
    const count = Math.max(2, Math.round((strips * width) / height));
    const cuts = cutFacets([width], count, free === "both" ? "both" : "outer");
    return free === "foot" ? turned(cuts) : cuts;
  });
}

/** Gathers nodes and panels surface by surface. */
class LatticeBuilder {
  private readonly nodes: number[] = [];
  private readonly cores: number[] = [];
  private readonly from: number[] = [];
  private readonly to: number[] = [];
  private readonly stripOf: number[] = [];
  private readonly control: number[] = [];
  private readonly bound: number[] = [];
  private readonly normal: number[] = [];
  private readonly tilted: number[] = [];
  private readonly legs: number[] = [];
  private readonly strips: Strip[] = [];
  private readonly ends = { wing: 0, tailplane: 0, fin: 0 };
  private readonly nodeEnds = { wing: 0, tailplane: 0, fin: 0 };

  constructor(private readonly options: LatticeOptions) {}

  add(surface: Strip["surface"], facets: readonly Facet[], cuts: readonly Cuts[], rows: number): void {
    let last: Edge | undefined;
    let lastNodes = 0;
    facets.forEach((facet, index) => {
      const { edges, middles } = cuts[index] ?? { edges: [], middles: [] };
      const width = widthOf(facet);
      middles.forEach((middle, strip) => {
        const [start, end] = [edges[strip] ?? 0, edges[strip + 1] ?? 1];
        const core = coreShare * width * (end - start);
        const [a, b] = [along(facet, start), along(facet, end)];
        const joined = last !== undefined && sameEdge(last, a);
        const fromNodes = joined ? lastNodes : this.addNodes(a, rows, core);
        // A leg between two strips has the core of their mean width.
        if (joined)
          this.cores.fill((Math.sqrt(this.cores[lastNodes] ?? 0) + core) ** 2 / 4, lastNodes, lastNodes + rows);
        const toNodes = this.addNodes(b, rows, core);
        this.addStrip(surface, facet, [a, b], middle, (middle - start) / (end - start), rows, [fromNodes, toNodes]);
        last = b;
        lastNodes = toNodes;
      });
    });
    this.ends[surface] = this.stripOf.length;
    this.nodeEnds[surface] = this.cores.length;
  }

  /** A node a row along an edge, at the quarter of the row; returns the first. */
  private addNodes(edge: Edge, rows: number, core: number): number {
    const first = this.cores.length;
    for (let row = 0; row < rows; row++) {
      this.nodes.push(edge.x + (edge.chord * (row + 0.25)) / rows, edge.y, edge.z);
      this.cores.push(core ** 2);
    }
    return first;
  }

  private addStrip(
    surface: Strip["surface"],
    facet: Facet,
    [a, b]: readonly [Edge, Edge],
    middle: number,
    share: number,
    rows: number,
    [fromNodes, toNodes]: readonly [number, number],
  ): void {
    const edge = along(facet, middle);
    const [acrossY, acrossZ] = [b.y - a.y, b.z - a.z];
    const width = Math.hypot(acrossY, acrossZ);
    const [ny, nz] = [-acrossZ / width, acrossY / width];
    const first = this.stripOf.length;
    for (let row = 0; row < rows; row++) {
      const [start, end] = [fromNodes + row, toNodes + row];
      const place = (edge.chord * (row + 0.75)) / rows;
      this.from.push(start);
      this.to.push(end);
      this.stripOf.push(this.strips.length);
      this.control.push(edge.x + place, edge.y, edge.z);
      const node = (which: number, axis: number) => this.nodes[which * 3 + axis] ?? Number.NaN;
      for (const axis of [0, 1, 2]) this.bound.push((1 - share) * node(start, axis) + share * node(end, axis));
      this.normal.push(ny, nz);
      this.tilted.push(...tilt(facet, place / edge.chord, ny, nz));
      this.legs.push(a.x + a.chord - node(start, 0), b.x + b.chord - node(end, 0));
    }
    // Bound vortices lie at (row + ¼)/rows of the chord, whose mean over the rows is this.
    const mean = 0.5 - 0.25 / rows;
    const sweep = (b.x + mean * b.chord - a.x - mean * a.chord) / width;
    this.strips.push({ surface, panel: facet.panel, first, rows, edge, acrossY, acrossZ, sweep });
  }

  finish(symmetric: boolean): Lattice {
    const inHalf =
      this.stripOf.length - (this.ends.fin && this.ends.fin - Math.max(this.ends.wing, this.ends.tailplane));
    return {
      symmetric,
      count: this.stripOf.length,
      unknowns: this.stripOf.length + (symmetric ? inHalf : 0),
      strips: this.strips,
      ...rangesOf(this.ends),
      nodesOf: rangesOf(this.nodeEnds),
      nodes: Float64Array.from(this.nodes),
      cores: Float64Array.from(this.cores),
      from: Int32Array.from(this.from),
      to: Int32Array.from(this.to),
      stripOf: Int32Array.from(this.stripOf),
      control: Float64Array.from(this.control),
      bound: Float64Array.from(this.bound),
      normal: Float64Array.from(this.normal),
      tilted: Float64Array.from(this.tilted),
      legs: Float64Array.from(this.legs),
      sectionSlope: this.options.sectionSlope,
    };
  }
}

/** Wing, tailplane and fin follow each other; one that is not there has an empty range. */
function rangesOf(ends: Readonly<Record<Surface, number>>): Record<Surface, Range> {
  const { wing } = ends;
  const tailplane = Math.max(wing, ends.tailplane);
  const fin = Math.max(tailplane, ends.fin);
  return {
    wing: { start: 0, end: wing },
    tailplane: { start: wing, end: tailplane },
    fin: { start: tailplane, end: fin },
  };
}

/** Core of a wing's leg where it passes the tail, as a share of the strip's width. */
const coreShare = 0.25;

/** The edge at a share of the way across a facet. */
function along({ start, end }: Facet, share: number): Edge {
  const between = (a: number, b: number) => a + share * (b - a);
  return {
    x: between(start.x, end.x),
    y: between(start.y, end.y),
    z: between(start.z, end.z),
    chord: between(start.chord, end.chord),
  };
}

const sameEdge = (a: Edge, b: Edge): boolean =>
  [a.x - b.x, a.y - b.y, a.z - b.z, a.chord - b.chord].every((gap) => Math.abs(gap) < 1e-12 * (a.chord + b.chord));

/**
 * Normal of the true surface at a place along the chord: the panel's own incidence and the slope of its mean line, a
 * parabola of height `camber`, turn it in the plane of x and the flat normal; the seat turns it about y.
 */
function tilt({ incidence, seat, camber }: Facet, place: number, ny: number, nz: number): [number, number, number] {
  const angle = incidence - Math.atan(4 * camber * (1 - 2 * place));
  const [x, z] = [Math.sin(angle), nz * Math.cos(angle)];
  return [x * Math.cos(seat) + z * Math.sin(seat), ny * Math.cos(angle), z * Math.cos(seat) - x * Math.sin(seat)];
}
