import { type Edge, type Facet, widthOf } from "./facets.ts";
import { type Lattice, type Range, type Run, type Strip, type Surface, surfaces } from "./lattice.ts";
import type { Cuts } from "./span-spacing.ts";

/** Facets beside each other, how they are cut into strips, and the rows along their chords. */
export interface Piece {
  readonly surface: Surface;
  readonly facets: readonly Facet[];
  readonly cuts: readonly Cuts[];
  readonly rows: number;
}

/** Core of a wing's leg where it passes the tail, as a share of the strip's width. */
const coreShare = 0.25;
/** The same of a tailplane ahead, over the wing's widest strip. */
const aheadShare = 0.5;

/** The lattice of these pieces, wing before tailplane before fin. */
export function filled(
  pieces: readonly Piece[],
  symmetric: boolean,
  tailFirst: boolean,
  sectionSlope: number,
): Lattice {
  let [stripCount, count, mostNodes] = [0, 0, 0];
  for (const { cuts, rows } of pieces) {
    for (const { middles } of cuts) {
      stripCount += middles.length;
      count += middles.length * rows;
      mostNodes += (middles.length + 1) * rows;
    }
  }
  const filling: Filling = {
    strips: new Array<Strip>(stripCount),
    nodes: new Float64Array(3 * mostNodes),
    cores: new Float64Array(mostNodes),
    from: new Int32Array(count),
    to: new Int32Array(count),
    control: new Float64Array(3 * count),
    bound: new Float64Array(3 * count),
    normal: new Float64Array(2 * count),
    tilted: new Float64Array(3 * count),
    legs: new Float64Array(2 * count),
  };
  const at: Place = { strip: 0, panel: 0, node: 0 };
  const runsOf: Record<Surface, Run[]> = { wing: [], tailplane: [], fin: [] };
  const ranges: Record<Surface, Range> = { wing: none, tailplane: none, fin: none };
  for (const surface of surfaces) {
    const start = at.panel;
    for (const piece of pieces) if (piece.surface === surface) addPiece(filling, piece, at, runsOf[surface]);
    ranges[surface] = { start, end: at.panel };
  }
  if (tailFirst) widenCores(filling, runsOf.tailplane);
  return {
    ...filling,
    ...ranges,
    nodes: filling.nodes.subarray(0, 3 * at.node),
    cores: filling.cores.subarray(0, at.node),
    symmetric,
    tailFirst,
    count,
    unknowns: symmetric ? count + ranges.fin.start : count,
    runsOf,
    floor: (1e-9 * widest(filling.nodes)) ** 2 + 1e-300,
    sectionSlope,
  };
}

const none: Range = { start: 0, end: 0 };

/** The lists of a lattice, which are filled strip by strip. */
type Filling = Pick<Lattice, "nodes" | "cores" | "from" | "to" | "control" | "bound" | "normal" | "tilted" | "legs"> & {
  readonly strips: Strip[];
};

/** How far the lists are filled. */
interface Place {
  strip: number;
  panel: number;
  node: number;
}

function addPiece(lists: Filling, { surface, facets, cuts, rows }: Piece, at: Place, runs: Run[]): void {
  let last: Edge | undefined;
  let run: { -readonly [key in keyof Run]: Run[key] } | undefined;
  facets.forEach((facet, index) => {
    const { edges, middles } = cuts[index] ?? { edges: [], middles: [] };
    const width = widthOf(facet);
    for (let strip = 0; strip < middles.length; strip++) {
      const start = edges[strip] ?? 0;
      const middle = middles[strip] as number;
      const end = edges[strip + 1] ?? 1;
      const core = coreShare * width * (end - start);
      const a = along(facet, start);
      const b = along(facet, end);
      if (last && run && sameEdge(last, a)) {
        run.strips++;
        // A leg between two strips has the core of their mean width.
        const before = Math.sqrt(lists.cores[at.node - 1] as number);
        lists.cores.fill(((before + core) / 2) ** 2, at.node - rows, at.node);
      } else {
        run = { node: at.node, panel: at.panel, strips: 1, rows };
        runs.push(run);
        addNodes(lists, a, rows, core, at);
      }
      addNodes(lists, b, rows, core, at);
      addStrip(lists, surface, facet, a, b, middle, (middle - start) / (end - start), rows, at);
      last = b;
    }
  });
}

/**
 * The tips of a tailplane ahead pass the middle of the wing, where strips are wide. With cores of the tips' own narrow
 * strips a vortex would count for more or less by where it passes between two control points.
 */
function widenCores({ strips, cores }: Filling, runs: readonly Run[]): void {
  const widths = strips.flatMap((s) => (s.surface === "wing" ? [lengthOf(s.acrossY, s.acrossZ)] : []));
  const core = (aheadShare * Math.max(...widths)) ** 2;
  for (const { node, strips: count, rows } of runs) {
    for (let i = node; i < node + (count + 1) * rows; i++) cores[i] = Math.max(cores[i] as number, core);
  }
}

/** A node a row along an edge, at the quarter of the row. */
function addNodes({ nodes, cores }: Filling, { x, y, z, chord }: Edge, rows: number, core: number, at: Place): void {
  for (let row = 0; row < rows; row++) {
    const node = at.node++;
    nodes[3 * node] = x + (chord * (row + 0.25)) / rows;
    nodes[3 * node + 1] = y;
    nodes[3 * node + 2] = z;
    cores[node] = core ** 2;
  }
}

/** A strip between the last two edges, from a to b; its control points lie at `share` of the way from the one to the other. */
function addStrip(
  lists: Filling,
  surface: Surface,
  facet: Facet,
  a: Edge,
  b: Edge,
  middle: number,
  share: number,
  rows: number,
  at: Place,
): void {
  const { nodes, control, bound, normal, tilted, legs } = lists;
  const edge = along(facet, middle);
  const acrossY = b.y - a.y;
  const acrossZ = b.z - a.z;
  const width = lengthOf(acrossY, acrossZ);
  const ny = -acrossZ / width;
  const nz = acrossY / width;
  const { camber } = facet;
  const sinOwn = Math.sin(facet.incidence);
  const cosOwn = Math.cos(facet.incidence);
  const sinSeat = Math.sin(facet.seat);
  const cosSeat = Math.cos(facet.seat);
  const first = at.panel;
  // With n rows a parabola has its angle of zero lift, which is the slope at ¾ of the chord, but 1/n² less of its moment than
  // thin-aerofoil theory says (found by trying: 3/4, 8/9, 15/16 …). Stretched about that place it has both.
  const stretch = rows > 1 ? rows ** 2 / (rows ** 2 - 1) : 1;
  for (let row = 0; row < rows; row++) {
    const panel = at.panel++;
    const end = at.node - rows + row;
    const start = end - rows;
    const place = (row + 0.75) / rows;
    lists.from[panel] = start;
    lists.to[panel] = end;
    control[3 * panel] = edge.x + edge.chord * place;
    control[3 * panel + 1] = edge.y;
    control[3 * panel + 2] = edge.z;
    for (let axis = 0; axis < 3; axis++) {
      bound[3 * panel + axis] =
        (1 - share) * (nodes[3 * start + axis] as number) + share * (nodes[3 * end + axis] as number);
    }
    normal[2 * panel] = ny;
    normal[2 * panel + 1] = nz;
    // Normal of the true surface: its own incidence and the slope of its mean line, a parabola of height `camber`, turn it
    // in the plane of x and the flat normal; the seat turns it about y.
    const slope = 4 * camber * (1 - 2 * (0.75 + (place - 0.75) * stretch));
    const perLength = 1 / lengthOf(1, slope);
    const sin = (sinOwn - cosOwn * slope) * perLength;
    const cos = (cosOwn + sinOwn * slope) * perLength;
    tilted[3 * panel] = sin * cosSeat + nz * cos * sinSeat;
    tilted[3 * panel + 1] = ny * cos;
    tilted[3 * panel + 2] = nz * cos * cosSeat - sin * sinSeat;
    legs[2 * panel] = a.x + a.chord - (nodes[3 * start] as number);
    legs[2 * panel + 1] = b.x + b.chord - (nodes[3 * end] as number);
  }
  // Bound vortices lie at (row + ¼)/rows of the chord, whose mean over the rows is this.
  const mean = 0.5 - 0.25 / rows;
  const sweep = (b.x + mean * b.chord - a.x - mean * a.chord) / width;
  lists.strips[at.strip++] = { surface, panel: facet.panel, first, rows, edge, acrossY, acrossZ, sweep };
}

/** The edge at a share of the way across a facet. */
function along({ start, end }: Facet, share: number): Edge {
  return {
    x: start.x + share * (end.x - start.x),
    y: start.y + share * (end.y - start.y),
    z: start.z + share * (end.z - start.z),
    chord: start.chord + share * (end.chord - start.chord),
  };
}

function sameEdge(a: Edge, b: Edge): boolean {
  const near = 1e-12 * (a.chord + b.chord);
  const isNear = (gap: number) => Math.abs(gap) < near;
  return isNear(a.x - b.x) && isNear(a.y - b.y) && isNear(a.z - b.z) && isNear(a.chord - b.chord);
}

/** Farther off the middle no node lies. */
function widest(nodes: Float64Array): number {
  let widest = 0;
  for (let y = 1; y < nodes.length; y += 3) widest = Math.max(widest, Math.abs(nodes[y] as number));
  return widest;
}

/** For each strip and panel, where Math.hypot is many times slower. */
const lengthOf = (a: number, b: number): number => Math.sqrt(a * a + b * b);
