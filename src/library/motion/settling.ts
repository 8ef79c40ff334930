/** What a recovery from a bank came to, told from its history. */

/** A flight as it went on, sampled at equal steps: one entry a sample, angles in rad, speed m/s, height m above the start. */
export interface Flight {
  readonly time: readonly number[];
  readonly bank: readonly number[];
  readonly speed: readonly number[];
  readonly height: readonly number[];
}

/** The steady glide that it aims at: seldom wings level, since free flight aims at a circle. */
export interface Aim {
  readonly bank: number;
  readonly speed: number;
  /** Downwards, m/s. */
  readonly sink: number;
}

/** How far off still counts as settled: 5° of bank, a tenth of the speed. */
const near = { bank: Math.PI / 36, speed: 0.1 };

/**
 * The sample from which on bank and speed stay near the aim; null where they are off it at the end, or came near only
 * in the last half second.
 */
export function settledFrom({ time, bank, speed }: Flight, aim: Aim): number | null {
  const end = time.at(-1) ?? 0;
  let from = time.length;
  while (from > 0 && isNear(bank[from - 1] ?? 0, speed[from - 1] ?? 0, aim)) from--;
  return from < time.length && end - (time[from] ?? end) >= 0.5 ? from : null;
}

/**
 * ∫ |bank − aimed bank| dt over what the bank was off at first, s: smooth where a settling time jumps. Trapezoids. Null
 * where the flight begins within a tenth of a degree of the aim: a share of next to nothing says nothing.
 */
export function bankedIntegral({ time, bank }: Flight, aim: Aim): number | null {
  const off = bank.map((each) => Math.abs(each - aim.bank));
  const first = off[0] ?? 0;
  if (first < Math.PI / 1800) return null;
  const sum = off.slice(1).reduce((total, each, i) => {
    return total + 0.5 * (each + (off[i] ?? 0)) * ((time[i + 1] ?? 0) - (time[i] ?? 0));
  }, 0);
  return sum / first;
}

/** Height lost until a sample beyond what the steady glide would have lost by then, m. */
export function heightLost({ time, height }: Flight, aim: Aim, until: number): number {
  const at = Math.min(until, time.length - 1);
  return (height[0] ?? 0) - (height[at] ?? 0) - aim.sink * ((time[at] ?? 0) - (time[0] ?? 0));
}

/** How it ended. */
export type Verdict = "settles" | "keeps circling" | "spirals in" | "swings" | "stalls";

/**
 * A plain word for the whole flight: "stalls" where the angle of attack went past the stall on the way and it did not
 * settle; "spirals in" where the bank still grows at the end, or the speed is more than half above the trim's and not on
 * its way back: a steep spiral may come to rest at some bank, and comes down as a spiral does. "Swings" where the bank
 * still goes from side to side of the aim or, with the bank on it, the speed is still off, and "keeps circling" where the
 * bank stays on one side. Common practice.
 */
export function verdictOf(flight: Flight, aim: Aim, hasStalled: boolean): Verdict {
  if (settledFrom(flight, aim) !== null) return "settles";
  const { bank, speed, time } = flight;
  const half = Math.floor(time.length / 2);
  const off = bank.map((each) => each - aim.bank);
  const [middle, last] = [off.slice(half, half + Math.ceil(half / 2)), off.slice(half + Math.ceil(half / 2))];
  const late = off.slice(half);
  const goesBothWays = Math.max(...late) > near.bank && Math.min(...late) < -near.bank;
  const grows = largest(last) > largest(middle) + near.bank && largest(last) > Math.abs(off[0] ?? 0);
  const [then, atLast] = [speed[half] ?? 0, speed.at(-1) ?? 0];
  const races = atLast > 1.5 * aim.speed && atLast > 0.9 * then;
  if (hasStalled && goesBothWays) return "stalls";
  if (!goesBothWays && (grows || races)) return "spirals in";
  if (goesBothWays) return "swings";
  if (hasStalled) return "stalls";
  return largest(late) > near.bank ? "keeps circling" : "swings";
}

const isNear = (bank: number, speed: number, aim: Aim): boolean =>
  Math.abs(bank - aim.bank) <= near.bank && Math.abs(speed / aim.speed - 1) <= near.speed;

const largest = (values: readonly number[]): number => Math.max(0, ...values.map(Math.abs));
