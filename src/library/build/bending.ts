/** How lift lies over the span. */
export type Loading = "elliptic" | "uniform";

/**
 * Bending moment at a share of the half span, of lift n·W half of which each half carries: (n·W/2)·s times
 * elliptic: (4/π)·[(1 − η²)^1.5/3 − (η/2)·(acos η − η·√(1 − η²))], at the root n·W·b/(3π); uniform: (1 − η)²/2.
 * Closed form of ∫ l·(y − y₀) dy (derived).
 */
export function bendingMoment(load: number, halfSpan: number, share: number, loading: Loading): number {
  const eta = Math.min(1, Math.max(0, share));
  const half = (load / 2) * halfSpan;
  if (loading === "uniform") return half * (1 - eta) ** 2 * 0.5;
  const root = Math.sqrt(1 - eta * eta);
  return half * (4 / Math.PI) * (root ** 3 / 3 - (eta / 2) * (Math.acos(eta) - eta * root));
}
