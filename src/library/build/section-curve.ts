import type { Point } from "./polygon.ts";

/**
 * Upper line of a flat-bottomed section from the leading edge to the trailing edge, its high point at a share of the
 * chord: 1 − uⁿ high before and behind it, as the wing's mass has it, where n leaves this share of the blank's volume.
 * Left unsanded it is the blank itself.
 */
export function flatBottomed(chord: number, thickness: number, sanded: number, high: number, count: number): Point[] {
  if (sanded >= 1) {
    return [
      [0, 0],
      [0, thickness],
      [chord, thickness],
      [chord, 0],
    ];
  }
  const power = sanded / (1 - sanded);
  return spaced(count).map((x): Point => {
    const u = x < high ? 1 - x / high : (x - high) / (1 - high);
    return [x * chord, thickness * (1 - u ** power)];
  });
}

/** A circular arc over a chord, so high in its middle as the camber says (derived: r = (c²/4 + f²) / 2f). */
export function arc(chord: number, camber: number, count: number): Point[] {
  const rise = camber * chord;
  const radius = (chord ** 2 / 4 + rise ** 2) / (2 * rise);
  return spaced(count).map((x): Point => {
    const fromMiddle = (x - 0.5) * chord;
    return [x * chord, Math.sqrt(Math.max(0, radius ** 2 - fromMiddle ** 2)) - (radius - rise)];
  });
}

/** From 0 to 1, closer together at both ends. */
const spaced = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => (1 - Math.cos((Math.PI * index) / (count - 1))) / 2);
