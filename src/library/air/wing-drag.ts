import { threePoints } from "../numerics/gauss-legendre.ts";
import type { Wing } from "../shape/wing-record.ts";
import type { Refuse } from "../spec.ts";
import type { Atmosphere } from "./atmosphere.ts";
import { camberOf, highestReynolds, lowestReynolds, maxLift, type SectionShape, sectionDrag } from "./section.ts";

/** Profile drag of a surface, and the Reynolds numbers at which it was found. */
export interface SurfaceDrag {
  /** Drag over dynamic pressure, m². */
  readonly area: number;
  readonly lowestReynolds: number;
  /** The least of the largest lifts of its sections. */
  readonly maxLift: number;
}

/** One straight taper of a surface: true length, chords, and what its section is like. */
interface Piece {
  readonly length: number;
  readonly root_chord: number;
  readonly tip_chord: number;
  readonly thickness: number;
  readonly camber: number | undefined;
}

/** The panels of both halves of a wing. */
export const wingPieces = (wing: Wing): readonly Piece[] =>
  [wing.right, wing.left].flatMap((half) =>
    half.length.map((length, i) => ({
      length,
      root_chord: half.root_chord[i] ?? Number.NaN,
      tip_chord: half.tip_chord[i] ?? Number.NaN,
      thickness: half.thickness[i] ?? Number.NaN,
      camber: half.camber[i],
    })),
  );

/**
 * Profile drag of a surface whose sections all work at one lift coefficient, each at its own Reynolds number:
 * ∫ cd·c ds along the panels as cut. Refuses speeds that the section model does not reach.
 */
export function surfaceDrag(
  pieces: readonly Piece[],
  shape: SectionShape,
  lift: number,
  speed: number,
  air: Atmosphere,
  refuse: Refuse,
): SurfaceDrag {
  const perMetre = speed / air.kinematic_viscosity;
  const chords = pieces.flatMap((piece) => [piece.root_chord, piece.tip_chord]);
  const [least, most] = [Math.min(...chords) * perMetre, Math.max(...chords) * perMetre];
  if (!(least >= lowestReynolds && most <= highestReynolds)) {
    const told = Math.round(least < lowestReynolds ? least : most);
    refuse(
      null,
      `A chord would fly at a Reynolds number of ${told}; the sections are known from ${lowestReynolds} to ${highestReynolds}. ` +
        `Take a ${least < lowestReynolds ? "longer chord or a higher" : "shorter chord or a lower"} speed.`,
    );
  }
  const cuts = pieces.flatMap((piece) =>
    threePoints.map(([share, weight]) => {
      const chord = piece.root_chord + (piece.tip_chord - piece.root_chord) * share;
      const thickness = piece.thickness / chord;
      const section = {
        thickness,
        camber: camberOf(shape, thickness, piece.camber, refuse),
        suction: shape.suction,
      };
      return {
        area: weight * piece.length * chord * sectionDrag(section, lift, chord * perMetre),
        maxLift: maxLift(section),
      };
    }),
  );
  return {
    area: cuts.reduce((sum, cut) => sum + cut.area, 0),
    lowestReynolds: least,
    maxLift: Math.min(...cuts.map((cut) => cut.maxLift)),
  };
}
