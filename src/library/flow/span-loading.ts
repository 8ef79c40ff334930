import type { Wing } from "../shape/wing-record.ts";
import type { Flow } from "./flow-record.ts";
import type { Lattice } from "./lattice.ts";

/**
 * How lift is spread along the wing, from the left tip to the right, at strips of these circulations at unit speed; and the
 * ellipse over the span, from tip to tip, that lifts as much: L. Prandtl, NACA Report 116 (1921), the loading of least
 * induced drag of a flat wing. Its height is 4/π of the mean load.
 */
export function spanLoading(lattice: Lattice, strength: Float64Array, wing: Wing): Flow["loading"] {
  const places = lattice.strips.flatMap(({ surface, edge, acrossY }, s) => {
    if (surface !== "wing") return [];
    const place = { y: edge.y, width: Math.abs(acrossY), chord: edge.chord, strength: strength[s] as number };
    return lattice.symmetric ? [place, { ...place, y: 0 - edge.y }] : [place];
  });
  places.sort((a, b) => a.y - b.y);
  const lift = places.reduce((sum, { width, strength: each }) => sum + 2 * each * width, 0);
  const [left = 0, right = 0] = [wing.left, wing.right].map(({ stations }) => Math.abs(stations.y.at(-1) ?? 0));
  const height = ((4 / Math.PI) * lift) / (wing.span * wing.mean_chord);
  // A place as share of the half span, from the middle between the tips.
  const share = (y: number): number => (2 * y - (right - left)) / (right + left);
  return {
    y: places.map(({ y }) => y),
    chord: places.map(({ chord }) => chord),
    section_lift: places.map(({ chord, strength: each }) => (2 * each) / chord),
    load: places.map(({ strength: each }) => (2 * each) / wing.mean_chord),
    ellipse: places.map(({ y }) => height * Math.sqrt(Math.max(0, 1 - share(y) ** 2))),
  };
}
