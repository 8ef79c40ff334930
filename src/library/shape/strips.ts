import type { Half } from "./half-record.ts";
import type { Wing } from "./wing-record.ts";

/** One panel as the integrals over a wing need it; y is the distance from the centre line, so never negative. */
export interface Strip {
  /** True length, and width in the plan view. */
  readonly length: number;
  readonly width: number;
  readonly cant: number;
  readonly root: StripEnd;
  readonly tip: StripEnd;
}

/** One end of a panel: chord, leading edge x, y from the centre line, z of the lower face, distance along the panels. */
export interface StripEnd {
  readonly chord: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly distance: number;
}

/** The panels of both halves, each on its own: integrals over a wing are sums over them. */
export const wingStrips = (wing: Pick<Wing, "right" | "left">): readonly Strip[] => [
  ...halfStrips(wing.right),
  ...halfStrips(wing.left),
];

function halfStrips(half: Half): readonly Strip[] {
  return half.length.map((length, index) => {
    const root = end(half, index, half.root_chord[index]);
    const tip = end(half, index + 1, half.tip_chord[index]);
    return { length, width: tip.y - root.y, cant: half.cant[index] ?? Number.NaN, root, tip };
  });
}

function end(half: Half, station: number, chord = Number.NaN): StripEnd {
  const at = (list: readonly number[]) => list[station] ?? Number.NaN;
  const { x, y, z, distance } = half.stations;
  return { chord, x: at(x), y: Math.abs(at(y)), z: at(z), distance: at(distance) };
}
