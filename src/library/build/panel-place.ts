import { directions } from "../mass/seat.ts";
import type { Vector } from "../numerics/vector3.ts";
import type { Wing } from "../shape/wing-record.ts";

/** A panel as it is cut and as it stands in the finished wing. Its root is its inboard end. */
export interface PanelPlace {
  readonly side: "right" | "left";
  /** 1 towards the right tip, −1 towards the left. */
  readonly sign: 1 | -1;
  /** 1 is the root panel. */
  readonly number: number;
  /** "right 2". */
  readonly name: string;
  readonly length: number;
  readonly root_chord: number;
  readonly tip_chord: number;
  readonly sweep: number;
  readonly thickness: number;
  readonly cant: number;
  /** Nose-down angle about its own span, against the root of the wing laid level. */
  readonly twist: number;
  /** Leading edge of the lower face at its root. */
  readonly corner: Vector;
  /** Unit vectors: along the chord aft, along the span outward, square to both and upward. */
  readonly aft: Vector;
  readonly out: Vector;
  readonly up: Vector;
}

/** The panels of both halves, right side first, each from the root out. */
export const panelPlaces = (wing: Pick<Wing, "right" | "left">): readonly PanelPlace[] => [
  ...halfPlaces(wing, "right"),
  ...halfPlaces(wing, "left"),
];

function halfPlaces(wing: Pick<Wing, "right" | "left">, side: "right" | "left"): readonly PanelPlace[] {
  const half = wing[side];
  const sign = side === "right" ? 1 : -1;
  let twist = 0;
  return half.length.map((length, index) => {
    const at = (list: readonly number[]) => list[index] ?? Number.NaN;
    twist += ownTwist(half, index);
    return {
      side,
      sign,
      number: index + 1,
      name: `${side} ${index + 1}`,
      length,
      root_chord: at(half.root_chord),
      tip_chord: at(half.tip_chord),
      sweep: at(half.sweep),
      thickness: at(half.thickness),
      cant: at(half.cant),
      twist,
      corner: [at(half.stations.x), at(half.stations.y), at(half.stations.z)],
      ...directions(sign, at(half.cant), twist, { x: 0, z: 0, incidence: 0 }),
    };
  });
}

/**
 * Nose-down angle that a panel gains at its inboard joint, about its own span. A wing tells what an oblique joint gives
 * (tan G · tan λ) as it is measured square to the panel inboard of it; about the panel's own span it is sin G · tan λ
 * (derived), and only with that do the edges meet along the line they were cut on.
 */
function ownTwist({ twist, break: breaks, skew }: Wing["right"], index: number): number {
  const [bend, oblique] = [breaks[index] ?? 0, Math.tan(skew[index] ?? 0)];
  const gained = (twist[index] ?? 0) - (index === 0 ? 0 : (twist[index - 1] ?? 0));
  return gained + Math.atan(Math.tan(bend) * oblique) - Math.atan(Math.sin(bend) * oblique);
}
