/** Roots of a function that can only be computed, one value at a time. Each search pauses after every value. */

/** A function; NaN where it cannot be computed. */
export type Curve = (x: number) => number;

/** A place where a curve comes to zero, touches it, or passes it in a jump. */
export interface Crossing {
  readonly at: number;
  readonly kind: "crosses" | "touches" | "jumps";
}

/**
 * The crossing between two places with values of opposite sign, by Brent's method (R. P. Brent, Algorithms for
 * Minimization without Derivatives, 1973, chapter 4; from memory): inverse quadratic steps, halving where they do not
 * serve. Where the curve has no small value there it jumps: past a pole, or between two branches.
 */
export function* crossingBetween(f: Curve, from: number, to: number, atFrom: number, atTo: number) {
  let [a, b, fa, fb] = [from, to, atFrom, atTo];
  let [c, fc] = [a, fa];
  let step = b - a;
  let before = step;
  for (let count = 0; count < 200; count++) {
    if (Math.sign(fb) === Math.sign(fc)) {
      [c, fc, step] = [a, fa, b - a];
      before = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) [a, b, c, fa, fb, fc] = [b, c, b, fb, fc, fb];
    const half = (c - b) / 2;
    const near = 2 * Number.EPSILON * Math.abs(b) + 1e-15 * Math.abs(to - from);
    if (Math.abs(half) <= near || fb === 0) break;
    if (Math.abs(before) >= near && Math.abs(fa) > Math.abs(fb)) {
      const [p, q] = interpolation(a, b, c, fa, fb, fc);
      const serves = 2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(before * q));
      before = serves ? step : half;
      step = serves ? p / q : half;
    } else {
      step = half;
      before = half;
    }
    [a, fa] = [b, fb];
    b += Math.abs(step) > near ? step : near * Math.sign(half);
    fb = f(b);
    yield null;
    if (Number.isNaN(fb)) return { at: b, kind: "jumps" } as Crossing;
  }
  const isSmall = Math.abs(fb) <= 1e-6 * Math.max(Math.abs(atFrom), Math.abs(atTo));
  return { at: b, kind: isSmall ? "crosses" : "jumps" } as Crossing;
}

/** A step from b to where a curve through the last three places, or two, comes to zero: p / q with p at least 0. */
function interpolation(a: number, b: number, c: number, fa: number, fb: number, fc: number): readonly [number, number] {
  const s = fb / fa;
  let p: number;
  let q: number;
  if (a === c) {
    p = (c - b) * s;
    q = 1 - s;
  } else {
    const [t, r] = [fa / fc, fb / fc];
    p = s * ((c - b) * t * (t - r) - (b - a) * (r - 1));
    q = (t - 1) * (r - 1) * (s - 1);
  }
  return p > 0 ? [p, -q] : [-p, q];
}

/**
 * What lies where a curve of one sign bends towards zero between two places and may touch it, or pass it twice: golden
 * section (J. Kiefer, Proceedings of the American Mathematical Society 4 (1953) 502–506; from memory) towards the value
 * of least size, and as soon as one of the other sign is met, the crossings on both sides of it.
 */
export function* crossingsInDip(f: Curve, from: number, to: number, atFrom: number, atTo: number) {
  const sign = Math.sign(atFrom);
  const share = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [c, d] = [b - share * (b - a), a + share * (b - a)];
  let fc = f(c);
  yield null;
  let fd = f(d);
  yield null;
  for (let count = 0; count < 60; count++) {
    for (const [x, fx] of [
      [c, fc],
      [d, fd],
    ] as const) {
      if (Math.sign(fx) !== -sign) continue;
      const left: Crossing = yield* crossingBetween(f, from, x, atFrom, fx);
      const right: Crossing = yield* crossingBetween(f, x, to, fx, atTo);
      return [left, right];
    }
    if (fc === 0 || fd === 0 || Number.isNaN(fc) || Number.isNaN(fd)) break;
    if (Math.abs(fc) < Math.abs(fd)) {
      [b, d, fd] = [d, c, fc];
      c = b - share * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + share * (b - a);
      fd = f(d);
    }
    yield null;
  }
  const [at, least] = Math.abs(fc) < Math.abs(fd) ? [c, fc] : [d, fd];
  const touches = Math.abs(least) <= 1e-10 * Math.max(Math.abs(atFrom), Math.abs(atTo));
  return touches ? [{ at, kind: "touches" } as Crossing] : [];
}
