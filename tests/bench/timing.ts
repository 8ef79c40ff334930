/** Milliseconds a call, the best of several runs, each long enough to be read off a clock. */
export function perCall(run: () => unknown, { milliseconds = 200, rounds = 7 } = {}): number {
  let calls = 1;
  while (time(run, calls) < milliseconds / 10) calls *= 2;
  calls = Math.max(1, Math.round((calls * milliseconds) / 10 / Math.max(time(run, calls), 0.01)));
  return Math.min(...Array.from({ length: rounds }, () => time(run, calls) / calls));
}

/** The median of numbers. */
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** The value below which a share of the numbers lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/** A ratio as people say it: three figures at most. */
export const ratioText = (ratio: number): string => `${Number(ratio.toPrecision(ratio < 10 ? 3 : 2))}`;

function time(run: () => unknown, calls: number): number {
  const start = performance.now();
  for (let call = 0; call < calls; call++) run();
  return performance.now() - start;
}
