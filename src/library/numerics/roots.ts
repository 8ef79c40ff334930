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
 * Where a function with one valley between two ends is least: parabolas through the three best places so far, and golden
 * sections where they lead nowhere (R. P. Brent, Algorithms for Minimization Without Derivatives, 1973, chapter 5, from
 * memory). Good to half the digits of a number, as no function can tell nearer; its least value is good to all.
 */
export function leastWithin(of: (x: number) => number, from: number, to: number): number {
  const golden = (3 - Math.sqrt(5)) / 2;
  const near = 1e-8 * Math.abs(to - from);
  let [a, b] = [from, to];
  let x = a + golden * (b - a);
  let [second, third] = [x, x];
  let atX = of(x);
  let [atSecond, atThird] = [atX, atX];
  let [step, before] = [0, 0];
  for (let round = 0; round < 60; round++) {
    const middle = (a + b) / 2;
    if (Math.abs(x - middle) <= 2 * near - (b - a) / 2) break;
    const wanted = parabolaStep(x, second, third, atX, atSecond, atThird);
    const isGood = Math.abs(wanted) < Math.abs(before) / 2 && x + wanted > a && x + wanted < b;
    [before, step] = isGood ? [step, wanted] : [x < middle ? b - x : a - x, golden * (x < middle ? b - x : a - x)];
    const next = x + (Math.abs(step) >= near ? step : near * Math.sign(step || 1));
    const atNext = of(next);
    if (atNext <= atX) {
      if (next < x) b = x;
      else a = x;
      [third, atThird, second, atSecond, x, atX] = [second, atSecond, x, atX, next, atNext];
    } else {
      if (next < x) a = next;
      else b = next;
      if (atNext <= atSecond || second === x) [third, atThird, second, atSecond] = [second, atSecond, next, atNext];
      else if (atNext <= atThird || third === x || third === second) [third, atThird] = [next, atNext];
    }
  }
  return x;
}

/** From x to the bottom of the parabola through three places; not finite where there is none. */
function parabolaStep(x: number, a: number, b: number, atX: number, atA: number, atB: number): number {
  const r = (x - a) * (atX - atB);
  const q = (x - b) * (atX - atA);
  return ((x - b) * q - (x - a) * r) / (-2 * (q - r));
}

/**
 * The place that a function leads back to itself, from a start near it, for a function that changes slowly (Steffensen's
 * steps: two applications, then the secant through them). Left where it is when forty of them do not settle it.
 */
export function fixedPoint(of: (x: number) => number, start: number): number {
  let x = start;
  for (let step = 0; step < 40; step++) {
    const once = of(x);
    if (Math.abs(once - x) <= 1e-12 * Math.abs(once)) return once;
    const twice = of(once);
    const bend = twice - 2 * once + x;
    const next = bend === 0 ? twice : x - (once - x) ** 2 / bend;
    x = Number.isFinite(next) && next > 0 === once > 0 ? next : twice;
  }
  return x;
}
