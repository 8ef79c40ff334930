import type { Wing } from "../shape/wing-record.ts";
import type { Flow } from "./flow-record.ts";
import type { Lattice } from "./lattice.ts";

/** How lift is spread along the wing, from the left tip to the right, at strips of these circulations at unit speed. */
export function spanLoading(lattice: Lattice, strength: Float64Array, wing: Wing): Flow["loading"] {
  const places = lattice.strips.flatMap(({ surface, edge }, s) => {
    if (surface !== "wing") return [];
    const place = { y: edge.y, chord: edge.chord, strength: strength[s] as number };
    return lattice.symmetric ? [place, { ...place, y: 0 - edge.y }] : [place];
  });
  places.sort((a, b) => a.y - b.y);
  return {
    y: places.map(({ y }) => y),
    chord: places.map(({ chord }) => chord),
    section_lift: places.map(({ chord, strength: each }) => (2 * each) / chord),
    load: places.map(({ strength: each }) => (2 * each) / wing.mean_chord),
  };
}
