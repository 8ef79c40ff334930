/** True where two maps have the same keys. */
export const sameKeys = <T>(a: ReadonlyMap<T, unknown>, b: ReadonlyMap<T, unknown>): boolean =>
  a.size === b.size && [...a.keys()].every((key) => b.has(key));
