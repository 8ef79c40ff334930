/**
 * How the wood of a section lies in the box of chord by thickness that it is sanded from: x from the leading edge as a
 * share of the chord, z from the lower face as a share of the thickness.
 */
export interface SectionFill {
  /** Share of the box that is wood. */
  readonly share: number;
  readonly x: number;
  readonly z: number;
  /** Means of (x − mean)², (z − mean)² and their product over the wood. */
  readonly xx: number;
  readonly zz: number;
  readonly xz: number;
}

/** A strip of even thickness. */
export const fullSection: SectionFill = { share: 1, x: 0.5, z: 0.5, xx: 1 / 12, zz: 1 / 12, xz: 0 };

/**
 * A flat-bottomed section with its high point at a share of the chord, sanded to a share (above 0, at most 1) of its
 * box. Before and behind the high point its height over the thickness is 1 − uⁿ, where u goes from 0 there to 1 at the
 * edge, and n makes the wood fill the share: n / (n + 1). Moments in closed form (derived) with r = 1/n, so that a
 * section left unsanded is the strip itself.
 */
export function sandedSection(share: number, high: number): SectionFill {
  const r = (1 - share) / share;
  const lean = 1 - 2 * high;
  const x = (1 + r) / (2 * (1 + 2 * r));
  const z = 1 / (2 + r);
  const fromHigh = ((1 + r) / (3 * (1 + 3 * r))) * (high ** 3 + (1 - high) ** 3);
  return {
    share,
    x: high + x * lean,
    z,
    xx: fromHigh - (x * lean) ** 2,
    zz: 2 / ((2 + r) * (3 + r)) - z ** 2,
    xz: lean * (1 / (4 * (1 + 2 * r)) - x * z),
  };
}
