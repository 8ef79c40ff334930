/**
 * Where a function that has opposite signs at both ends of an interval is 0 (C. J. F. Ridders, IEEE Transactions on
 * Circuits and Systems 26 (1979) 979–980, from memory): to 1e-14 of the interval, which
 * every step at least halves.
 */
export function rootWithin(of: (x: number) => number, from: number, to: number): number {
  let [a, b, atA, atB] = [from, to, of(from), of(to)];
  let before = Number.NaN;
  const tiny = 1e-14 * Math.abs(to - from);
  if (atA === 0) return a;
  if (atB === 0) return b;
  if (!areOpposite(atA, atB)) throw new Error(`got ${atA} and ${atB} at the ends, expected opposite signs`);
  for (let step = 0; step < 60; step++) {
    const middle = (a + b) / 2;
    const atMiddle = of(middle);
    const x = middle + ((middle - a) * Math.sign(atA) * atMiddle) / Math.sqrt(atMiddle ** 2 - atA * atB);
    if (!Number.isFinite(x)) return middle;
    const atX = of(x);
    if (atX === 0 || Math.abs(x - before) <= tiny || Math.abs(b - a) <= tiny) return x;
    before = x;
    if (areOpposite(atMiddle, atX)) [a, b, atA, atB] = [middle, x, atMiddle, atX];
    else if (areOpposite(atA, atX)) [b, atB] = [x, atX];
    else [a, atA] = [x, atX];
  }
  return (a + b) / 2;
}

/** By their signs alone: a product of two small numbers may vanish. */
const areOpposite = (a: number, b: number) => Math.sign(a) * Math.sign(b) < 0;

/**
 * Where a function with one valley between two ends is least, by golden sections (J. Kiefer, Proceedings of the American
 * Mathematical Society 4 (1953) 502–506, from memory). Good to half the digits of a number; the least value itself to all.
 */
export function leastWithin(of: (x: number) => number, from: number, to: number): number {
  const share = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [left, right] = [b - share * (b - a), a + share * (b - a)];
  let [atLeft, atRight] = [of(left), of(right)];
  for (let step = 0; step < 45; step++) {
    if (atLeft < atRight) {
      [b, right, atRight] = [right, left, atLeft];
      left = b - share * (b - a);
      atLeft = of(left);
    } else {
      [a, left, atLeft] = [left, right, atRight];
      right = a + share * (b - a);
      atRight = of(right);
    }
  }
  return (a + b) / 2;
}

/**
 * The place that a function leads back to itself, from a start near it, for a function that changes slowly (Steffensen's
 * steps: two applications, then the secant through them). Left where it is when forty of them do not settle it.
 */
export function fixedPoint(of: (x: number) => number, start: number): number {
  let x = start;
  for (let step = 0; step < 40; step++) {
    const once = of(x);
    if (Math.abs(once - x) <= 1e-14 * Math.abs(once)) return once;
    const twice = of(once);
    const bend = twice - 2 * once + x;
    const next = bend === 0 ? twice : x - (once - x) ** 2 / bend;
    x = Number.isFinite(next) && next > 0 === once > 0 ? next : twice;
  }
  return x;
}
