import { between, from, type Vector } from "../numerics/vector3.ts";
import type { Body } from "./gather.ts";
import type { SectionFill } from "./section-fill.ts";
import { solid } from "./solid.ts";

/** A flat piece of sheet with straight edges, whose sections are all alike. */
export interface Plate {
  /** From one end to the other, square to the chords. */
  readonly length: number;
  readonly root: PlateEnd;
  readonly tip: PlateEnd;
  readonly thickness: number;
  readonly density: number;
  /** Directions of the chord, from the leading edge aft, and of the thickness, from the lower face up. */
  readonly aft: Vector;
  readonly up: Vector;
  readonly section: SectionFill;
}
export interface PlateEnd {
  /** Leading edge of the lower face. */
  readonly corner: Vector;
  readonly chord: number;
}

/** The bodies that have the moments of the plate, exactly. */
export const plate = ({ length, root, tip, thickness, density, aft, up, section }: Plate): readonly Body[] =>
  solid(length, (share) => {
    const chord = root.chord + (tip.chord - root.chord) * share;
    const corner = between(root.corner, tip.corner, share);
    return {
      mass: density * chord * thickness * section.share,
      centre: from(corner, [section.x * chord, aft], [section.z * thickness, up]),
      scatter: [
        { mean: section.xx * chord ** 2, a: aft, b: aft },
        { mean: section.zz * thickness ** 2, a: up, b: up },
        { mean: 2 * section.xz * chord * thickness, a: aft, b: up },
      ],
    };
  });
