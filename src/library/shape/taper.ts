import { integrateProduct } from "../numerics/integrate-product.ts";

/** A surface whose edges run straight from root to tip. */
export interface Taper {
  /** From root to tip, square to the chords. */
  readonly length: number;
  readonly root_chord: number;
  readonly tip_chord: number;
  /** How far the tip's leading edge lies behind the root's. */
  readonly sweep: number;
}

/** Area of a taper, and where its mean aerodynamic chord lies: behind the root's leading edge, and out from the root. */
export interface TaperMeans {
  readonly area: number;
  readonly mac: number;
  readonly behind: number;
  readonly out: number;
}

/** Means of a straight taper: ∫ c² ds / S, ∫ c·x ds / S and ∫ c·s ds / S, each in closed form (derived). */
export function taperMeans({ length, root_chord, tip_chord, sweep }: Taper): TaperMeans {
  const along = (root: number, tip: number) => integrateProduct(length, root_chord, tip_chord, root, tip);
  const area = along(1, 1);
  return {
    area,
    mac: along(root_chord, tip_chord) / area,
    behind: along(0, sweep) / area,
    out: along(0, length) / area,
  };
}
