import type { Root } from "../numerics/small-matrix.ts";

/** Roots of the motion in the plane of symmetry, by name. */
export interface LongitudinalRoots {
  readonly shortPeriod: readonly Root[];
  readonly phugoid: readonly Root[];
  /** Whether they are the two of the textbook; else a third oscillation stands between two roots that do not swing. */
  readonly usual: boolean;
}

/**
 * Names the four roots of a matrix in u, w (or the angle of attack), q and the pitch. The short period is the faster two,
 * be they a pair or two that no longer swing. Where a pair stands between a faster and a slower single root, as happens
 * with the balance point near or behind the neutral point, the pair takes the phugoid's name and the two single roots the
 * short period's.
 */
export function nameLongitudinal(roots: readonly Root[]): LongitudinalRoots {
  const [fast, second, third, slow] = [...roots].sort((a, b) => speed(b) - speed(a));
  if (!fast || !second || !third || !slow) throw new Error(`got ${roots.length} roots, expected four`);
  const isSplit = fast.imaginary === 0 && second.imaginary !== 0;
  if (isSplit) return { shortPeriod: [fast, slow], phugoid: [second, third], usual: false };
  return { shortPeriod: [fast, second], phugoid: [third, slow], usual: true };
}

/** Roots of the motion out of the plane of symmetry, by name. */
export interface LateralRoots {
  readonly roll: readonly Root[];
  readonly spiral: readonly Root[];
  readonly dutchRoll: readonly Root[];
  /** Whether roll and spiral have become one slow oscillation: then both hold its pair. */
  readonly joined: boolean;
}

/**
 * Names the four roots of a matrix in sideslip (angle or speed), p, r and bank. Of the roots that do not swing, the one
 * that dies away fastest is the roll; the Dutch roll is the pair, or the two single roots, with most sideslip for the
 * bank; the spiral is what is left. Two pairs are the Dutch roll and, slower, roll and spiral joined (the lateral phugoid:
 * B. Etkin, L. D. Reid, Dynamics of Flight, 1996, section 6.8). Without a fin a single root that grows, with more sideslip
 * than the pair, is what the Dutch roll has come to.
 */
export function nameLateral(roots: readonly Root[]): LateralRoots {
  if (roots.length !== 4) throw new Error(`got ${roots.length} roots, expected four`);
  const swinging = roots.filter((root) => root.imaginary !== 0);
  swinging.sort((a, b) => Math.abs(b.imaginary) - Math.abs(a.imaginary));
  const [first, second, ...further] = roots.filter((root) => root.imaginary === 0).sort((a, b) => a.real - b.real);
  if (!first || !second) return joined(swinging.slice(2), swinging.slice(0, 2));
  const [pair] = swinging;
  if (!pair) {
    const [spiral, ...dutchRoll] = [second, ...further].sort((a, b) => slip(a) - slip(b));
    return { roll: [first], spiral: spiral ? [spiral] : [], dutchRoll, joined: false };
  }
  if (second.real > 0 && slip(second) > slip(pair)) {
    const [roll, spiral] = pair.real < first.real ? [swinging, [first]] : [[first], swinging];
    return { roll, spiral, dutchRoll: [second], joined: false };
  }
  if (slip(first) > slip(pair) && slip(second) > slip(pair)) return joined(swinging, [first, second]);
  return { roll: [first], spiral: [second], dutchRoll: swinging, joined: false };
}

const joined = (pair: readonly Root[], dutchRoll: readonly Root[]): LateralRoots => ({
  roll: pair,
  spiral: pair,
  dutchRoll,
  joined: true,
});

const speed = (root: Root) => Math.hypot(root.real, root.imaginary);
/** Sideslip for the bank. */
const slip = ({ sizes }: Root) => (sizes[0] ?? 0) / (sizes[3] ?? 0);
