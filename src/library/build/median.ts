/** The middle value, or the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.floor(middle)] ?? Number.NaN) + (sorted[Math.ceil(middle) - 1] ?? Number.NaN)) / 2;
}

/** Standard deviation of a sample (n − 1); 0 of a single value. */
export function deviation(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
  return Math.sqrt(values.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (values.length - 1));
}

/** Student's t, two-sided 95 %, by degrees of freedom: the usual table up to 10, beyond it 1.96 + 2.5/ν, within 1 %. */
export function studentT(freedom: number): number {
  const table = [12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228];
  return table[freedom - 1] ?? 1.96 + 2.5 / freedom;
}
