/** Gliders of any plausible shape, and some that nobody would build, for tests of drawings. */
import fc from "fast-check";
import type { Glider, Wing } from "../../../src/library/index.ts";
import { made } from "../../../src/views/drawings/example-gliders.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const orNone = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 4 });
const degrees = (min: number, max: number) => between((min * Math.PI) / 180, (max * Math.PI) / 180);

const panel = fc.record({
  length: between(0.015, 0.3),
  root_chord: between(0.02, 0.12),
  tip_chord: between(0.02, 0.12),
  sweep: between(-0.02, 0.04),
  cant: degrees(0, 30),
  washout: degrees(-1, 2),
  thickness: between(0.001, 0.006),
  skew: fc.oneof(fc.constant(0), degrees(-12, 12)),
});

/** One to six panels; chords step at the joints, or go on from panel to panel. */
const panels = fc.tuple(fc.array(panel, { minLength: 1, maxLength: 6 }), fc.boolean()).map(([rows, steps]) => ({
  length: rows.map((row) => row.length),
  root_chord: rows.map((row, index) => (steps ? row.root_chord : (rows[index - 1] ?? row).tip_chord)),
  tip_chord: rows.map((row) => row.tip_chord),
  sweep: rows.map((row) => row.sweep),
  break: rows.map((row, index) => row.cant - (rows[index - 1]?.cant ?? 0)),
  washout: rows.map((row) => row.washout),
  thickness: rows.map((row) => row.thickness),
  skew: rows.map((row, index) => (index === 0 ? 0 : row.skew)),
}));

export const anyWing: fc.Arbitrary<Wing> = fc
  .tuple(panels, fc.option(panels, { nil: undefined, freq: 2 }))
  .map(([right, left]) => made("wing", { panels: right, left }));

const tailplane = fc
  .record({
    span: between(0.05, 0.35),
    root_chord: between(0.02, 0.08),
    tip_chord: between(0.02, 0.08),
    x: between(0.1, 0.5),
    thickness: between(0.001, 0.003),
    sweep: between(-0.01, 0.03),
    z: between(-0.01, 0.06),
    incidence: degrees(-4, 4),
  })
  .map((given) => made("tailplane", given));

const fin = fc
  .record({
    height: between(0.02, 0.1),
    root_chord: between(0.02, 0.08),
    tip_chord: between(0.01, 0.06),
    x: between(0.1, 0.5),
    thickness: between(0.001, 0.003),
    sweep: between(-0.01, 0.04),
    z: between(-0.02, 0.02),
  })
  .map((given) => made("fin", given));

const stick = fc
  .record({
    front_x: between(-0.2, 0.05),
    length: between(0.1, 0.6),
    width: between(0.002, 0.01),
    height: between(0.003, 0.015),
    z: between(-0.01, 0.01),
  })
  .map(({ length, ...given }) => made("fuselage_stick", { ...given, rear_x: given.front_x + length }));

const balance = fc
  .record({ x: between(-0.03, 0.12), y: fc.oneof(fc.constant(0), between(-0.01, 0.01)), z: between(-0.02, 0.04) })
  .map((place) => ({ mass: 0.02, ...place, ixx: 1e-5, iyy: 1e-5, izz: 2e-5, ixy: 0, ixz: 0, iyz: 0 }));

export const anyGlider: fc.Arbitrary<Glider> = fc
  .record({
    wing: anyWing,
    tailplane: orNone(tailplane),
    fin: orNone(fin),
    stick: orNone(stick),
    balance: orNone(balance),
    neutral_x: orNone(between(-0.01, 0.15)),
    seat_height: between(-0.01, 0.04),
    seat_angle: fc.oneof(fc.constant(0), degrees(-3, 6)),
  })
  .map((given) => made("glider", given));

/** Gliders that somebody might build: up to four panels a side, tail behind the wing, all parts there, balanced. */
export const likelyGlider: fc.Arbitrary<Glider> = fc
  .record({
    half: between(0.19, 0.32),
    shares: fc.array(between(1, 2.5), { minLength: 1, maxLength: 4 }),
    taper: fc.array(between(0.6, 1), { minLength: 4, maxLength: 4 }),
    root: between(0.06, 0.1),
    cant: fc.array(degrees(1, 9), { minLength: 4, maxLength: 4 }),
    tail: between(3, 4.5),
    tailSpan: between(0.12, 0.2),
    nose: between(0.8, 1.4),
    balance: between(0.3, 0.5),
    margin: between(0.05, 0.3),
    seat: between(0.006, 0.02),
    angle: degrees(0.5, 4),
  })
  .map(({ half, shares, taper, root, cant, tail, tailSpan, nose, balance, margin, seat, angle }) => {
    const whole = shares.reduce((sum, share) => sum + share, 0);
    const length = shares.map((share) => (share / whole) * half);
    const chord = [root];
    for (const share of taper) chord.push((chord.at(-1) ?? root) * share);
    const each = (list: readonly number[], from = 0) => list.slice(from, from + length.length);
    const wing: Wing = made("wing", {
      panels: {
        length,
        root_chord: each(chord),
        tip_chord: each(chord, 1),
        sweep: length.map((_, index) => ((chord[index] ?? 0) - (chord[index + 1] ?? 0)) / 2),
        break: each(cant),
        washout: length.map(() => 0),
        thickness: length.map(() => 0.003),
      },
    });
    const x = tail * root;
    const at = wing.mac_x + balance * wing.mac;
    return made("glider", {
      wing,
      tailplane: made("tailplane", {
        span: tailSpan,
        root_chord: 0.05,
        tip_chord: 0.04,
        x,
        thickness: 0.0015,
        z: 0.003,
      }),
      fin: made("fin", {
        height: 0.05,
        root_chord: 0.046,
        tip_chord: 0.03,
        x,
        thickness: 0.0015,
        sweep: 0.012,
        z: 0.004,
      }),
      stick: made("fuselage_stick", { front_x: -nose * root, rear_x: x + 0.06, width: 0.005, height: 0.008 }),
      balance: { mass: 0.02, x: at, y: 0, z: seat - 0.003, ixx: 1e-5, iyy: 1e-5, izz: 2e-5, ixy: 0, ixz: 0, iyz: 0 },
      neutral_x: at + margin * wing.mac,
      seat_height: seat,
      seat_angle: angle,
    });
  });

/** Widths of phones to wide boards, heights of small screens to large, units and shop fractions. */
export const anyOptions = fc.record({
  width: fc.integer({ min: 320, max: 900 }),
  height: fc.integer({ min: 260, max: 700 }),
  unit: fc.constantFrom("mm", "in", "m"),
  fraction: fc.constantFrom(undefined, 16),
});
