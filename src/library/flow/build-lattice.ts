import type { Glider } from "../shape/glider-record.ts";
import { backwards, type Facet, type FinPiece, finPieces, tailFacets, widthOf, wingFacets } from "./facets.ts";
import { filled, type Piece } from "./fill-lattice.ts";
import type { Lattice, LatticeOptions } from "./lattice.ts";
import { type Cuts, cutFacets } from "./span-spacing.ts";

/** The lattice of a glider: its wing as bent and twisted, tailplane and fin where there are any. */
export function latticeOf(glider: Glider, options: LatticeOptions): Lattice {
  const { wing, tailplane, fin } = glider;
  const symmetric = wing.mirrored && !tailplane?.tilt;
  const pieces: Piece[] = [];
  const addHalves = (surface: "wing" | "tailplane", right: Facet[], left: Facet[], strips: number, rows: number) => {
    const cut = (half: readonly Facet[]) => cutFacets(half.map(widthOf), strips, options.evenStrips ? "none" : "outer");
    if (!symmetric) pieces.push({ surface, facets: backwards(left), cuts: turned(cut(left)), rows });
    pieces.push({ surface, facets: right, cuts: cut(right), rows });
  };
  const [right, left] = [wing.right, wing.left].map((half) => wingFacets(half, glider, options.camber));
  addHalves("wing", right ?? [], left ?? [], options.strips, options.rows);
  if (tailplane) {
    const { tailStrips, tailRows } = options;
    addHalves("tailplane", tailFacets(tailplane, "right"), tailFacets(tailplane, "left"), tailStrips, tailRows);
  }
  if (fin) {
    const parts = finPieces(fin, glider);
    const facets = parts.map(({ facet }) => facet);
    pieces.push({ surface: "fin", facets, cuts: cutFin(parts, options.finStrips), rows: options.tailRows });
  }
  const tailFirst = tailplane !== undefined && tailplane.quarter_x < wing.mac_x + wing.mac / 4;
  return filled(pieces, symmetric, tailFirst, options.sectionSlope);
}

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
