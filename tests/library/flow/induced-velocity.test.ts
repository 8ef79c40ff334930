import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { latticeOf } from "../../../src/library/flow/build-lattice.ts";
import { flowsAt, lookFrom, sightFor, velocitiesAt } from "../../../src/library/flow/induced-velocity.ts";
import { surfaces } from "../../../src/library/flow/lattice.ts";
import { threePoints } from "../../../src/library/numerics/gauss-legendre.ts";
import { plover, usual } from "./sample-flows.ts";

type Vector = readonly [x: number, y: number, z: number];

const lattice = latticeOf(plover(), { ...usual, strips: 7, rows: 2, tailRows: 2 });

const add = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Law of Biot and Savart, dv = Γ·dl × way/(4π·r³), added up over pieces of a vortex of unit circulation. */
function addedUp(from: Vector, direction: Vector, pieces: readonly number[], place: Vector): Vector {
  let velocity: Vector = [0, 0, 0];
  let start = 0;
  for (const length of pieces) {
    for (const [share, weight] of threePoints) {
      const way = add(add(place, from, -1), direction, -start - share * length);
      velocity = add(velocity, cross(direction, way), (weight * length) / (4 * Math.PI * Math.hypot(...way) ** 3));
    }
    start += length;
  }
  return velocity;
}

/** Pieces of a leg that ends ten kilometres behind, each a twentieth longer than the one before. */
const ofLeg = Array.from({ length: 300 }, (_, i) => 0.002 * 1.05 ** i);

function ofHorseshoe(panel: number, place: Vector): Vector {
  const node = (index = 0): Vector =>
    [0, 1, 2].map((axis) => lattice.nodes[3 * index + axis] ?? Number.NaN) as unknown as Vector;
  const [from, to] = [node(lattice.from[panel]), node(lattice.to[panel])];
  const across = add(to, from, -1);
  const bound = addedUp(from, across, new Array<number>(100).fill(0.01), place);
  const legs = add(addedUp(to, [1, 0, 0], ofLeg, place), addedUp(from, [1, 0, 0], ofLeg, place), -1);
  return add(bound, legs);
}

/** Farther from all vortices than the pieces above are long. */
const places = fc.record({
  x: fc.double({ min: -0.1, max: 0.4, noNaN: true }),
  y: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  z: fc.oneof(fc.double({ min: 0.12, max: 0.3, noNaN: true }), fc.double({ min: -0.3, max: -0.06, noNaN: true })),
  turn: fc.double({ min: -3, max: 3, noNaN: true }),
});

describe("what horseshoe vortices induce", () => {
  test("is the law of Biot and Savart added up along each of them, whole and along a normal", () => {
    const sight = sightFor(lattice);
    const velocities = new Float64Array(3 * lattice.count);
    const flows = new Float64Array(lattice.count + 2);
    fc.assert(
      fc.property(places, ({ x, y, z, turn }) => {
        const [ny, nz] = [Math.sin(turn), Math.cos(turn)];
        for (const surface of surfaces) {
          const runs = lattice.runsOf[surface];
          lookFrom(lattice, runs, false, y, z, 0, 1, sight);
          velocitiesAt(lattice, runs, sight, x, velocities);
          lookFrom(lattice, runs, false, y, z, ny, nz, sight);
          flowsAt(lattice, runs, sight, x, flows, 2);
        }
        for (let panel = 0; panel < lattice.count; panel += 5) {
          const wanted = ofHorseshoe(panel, [x, y, z]);
          const near = 1e-6 * Math.hypot(...wanted) + 1e-9;
          for (const axis of [0, 1, 2] as const) {
            expect(Math.abs((velocities[3 * panel + axis] ?? Number.NaN) - wanted[axis])).toBeLessThan(near);
          }
          expect(Math.abs((flows[2 + panel] ?? Number.NaN) - ny * wanted[1] - nz * wanted[2])).toBeLessThan(near);
        }
      }),
      { numRuns: 15 },
    );
  });

  test("of a leg with a core is less by distance squared over distance and core squared", () => {
    const sight = sightFor(lattice);
    const [plain, cored] = [new Float64Array(3 * lattice.count), new Float64Array(3 * lattice.count)];
    // So far behind that only legs count, and above the middle of the first strip of the wing.
    const [x, y, z] = [1e6, lattice.strips[0]?.edge.y ?? 0, 0.05];
    for (const [isCored, into] of [
      [false, plain],
      [true, cored],
    ] as const) {
      lookFrom(lattice, lattice.runsOf.wing, isCored, y, z, 0, 1, sight);
      velocitiesAt(lattice, lattice.runsOf.wing, sight, x, into);
    }
    const leg = (end: number) => {
      const [dy, dz] = [y - (lattice.nodes[3 * end + 1] ?? 0), z - (lattice.nodes[3 * end + 2] ?? 0)];
      const square = dy * dy + dz * dz;
      return { up: dy / (2 * Math.PI * square), share: square / (square + (lattice.cores[end] ?? 0)) };
    };
    const [from, to] = [leg(lattice.from[0] ?? 0), leg(lattice.to[0] ?? 0)];
    expect(plain[2]).toBeCloseTo(to.up - from.up, 5);
    expect(cored[2]).toBeCloseTo(to.up * to.share - from.up * from.share, 5);
    expect(Math.abs((cored[2] ?? 0) - (plain[2] ?? 0))).toBeGreaterThan(1e-4);
  });

  test("has no bound part at a place on the bound vortex itself", () => {
    const sight = sightFor(lattice);
    const into = new Float64Array(3 * lattice.count);
    const [x = 0, y = 0, z = 0] = lattice.bound;
    lookFrom(lattice, lattice.runsOf.wing, false, y, z, 0, 1, sight);
    velocitiesAt(lattice, lattice.runsOf.wing, sight, x, into);
    expect(into.slice(0, 3).every(Number.isFinite)).toBe(true);
    expect(into[0]).toBe(0);
  });
});
