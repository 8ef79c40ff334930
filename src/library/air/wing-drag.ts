import { threePoints } from "../numerics/gauss-legendre.ts";
import type { Wing } from "../shape/wing-record.ts";
import type { Refuse } from "../spec.ts";
import type { Atmosphere } from "./atmosphere.ts";
import { type MeasuredTable, measuredPolar } from "./measured-polar.ts";
import { wantedDrag } from "./polar.ts";
import { camberOf, dragSpread, highestReynolds, lowestReynolds, type SectionShape, thinPolar } from "./section.ts";

/** Profile drag of a surface, and the Reynolds numbers at which it was found. */
export interface SurfaceDrag {
  /** Drag over dynamic pressure, m². */
  readonly area: number;
  readonly lowestReynolds: number;
  /** The least of the largest lifts of its sections. */
  readonly maxLift: number;
  /** Share by which the drag may differ: the mean of its sections, by drag. */
  readonly spread: number;
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
 * ∫ cd·c ds along the panels as cut. A measured polar takes the place of the model. Refuses speeds that the model does not
 * reach.
 */
export function surfaceDrag(
  pieces: readonly Piece[],
  shape: SectionShape,
  lift: number,
  speed: number,
  air: Atmosphere,
  refuse: Refuse,
  measured?: MeasuredTable,
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
      const thin = thinPolar(section);
      const polar = measured ? measuredPolar(measured, thin, refuse) : thin;
      const reynolds = chord * perMetre;
      return {
        area: weight * piece.length * chord * wantedDrag(polar, lift, reynolds),
        maxLift: polar.maxLift(reynolds),
        spread: dragSpread(reynolds),
      };
    }),
  );
  const area = cuts.reduce((sum, cut) => sum + cut.area, 0);
  return {
    area,
    lowestReynolds: least,
    maxLift: Math.min(...cuts.map((cut) => cut.maxLift)),
    spread: cuts.reduce((sum, cut) => sum + cut.area * cut.spread, 0) / area,
  };
}
