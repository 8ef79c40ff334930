import type { Part } from "./part-record.ts";

/** A thing with mass at its own balance point, with inertia about that point where it is told. */
export type Body = Pick<Part, "mass" | "x" | "y" | "z"> & Partial<Part>;

/**
 * Several bodies taken as one. Parallel axes (Huygens, Steiner): I = Σ (own + m·d²), products Σ (own + m·Δx·Δy) with
 * the sign of ∫ x·y dm. The masses must add up to more than nothing.
 */
export function gather(bodies: readonly Body[]): Part {
  const total = (amount: (body: Body) => number) => bodies.reduce((sum, body) => sum + amount(body), 0);
  const mass = total((body) => body.mass);
  if (!(mass > 0)) throw new Error(`got a mass of ${mass}, expected one above 0`);
  const x = total((body) => body.mass * body.x) / mass;
  const y = total((body) => body.mass * body.y) / mass;
  const z = total((body) => body.mass * body.z) / mass;
  return {
    mass,
    x,
    y,
    z,
    ixx: total((body) => (body.ixx ?? 0) + body.mass * ((body.y - y) ** 2 + (body.z - z) ** 2)),
    iyy: total((body) => (body.iyy ?? 0) + body.mass * ((body.x - x) ** 2 + (body.z - z) ** 2)),
    izz: total((body) => (body.izz ?? 0) + body.mass * ((body.x - x) ** 2 + (body.y - y) ** 2)),
    ixy: total((body) => (body.ixy ?? 0) + body.mass * (body.x - x) * (body.y - y)),
    ixz: total((body) => (body.ixz ?? 0) + body.mass * (body.x - x) * (body.z - z)),
    iyz: total((body) => (body.iyz ?? 0) + body.mass * (body.y - y) * (body.z - z)),
  };
}
