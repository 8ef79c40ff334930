import fc from "fast-check";
import type { Panels } from "../../src/library/index.ts";

/** The seed and number of runs of every property test. */
export const runs = { seed: 20240611, numRuns: 200 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const panel = fc.record({
  length: between(0.01, 0.5),
  root_chord: between(0.02, 0.2),
  tip_chord: between(0.02, 0.2),
  sweep: between(-0.03, 0.05),
  break: between(-0.05, 0.25),
  washout: between(-0.02, 0.05),
  thickness: between(0.001, 0.005),
  skew: between(-0.2, 0.2),
  camber: between(0, 0.06),
  density: between(80, 200),
});

/** One to five panels of any plausible shape; chords may step at the joints, breaks may be negative. */
export const anyPanels: fc.Arbitrary<Panels> = fc.array(panel, { minLength: 1, maxLength: 5 }).map((rows) => ({
  length: rows.map((row) => row.length),
  root_chord: rows.map((row) => row.root_chord),
  tip_chord: rows.map((row) => row.tip_chord),
  sweep: rows.map((row) => row.sweep),
  break: rows.map((row) => row.break),
  washout: rows.map((row) => row.washout),
  thickness: rows.map((row) => row.thickness),
  skew: rows.map((row, index) => (index === 0 ? 0 : row.skew)),
  camber: rows.map((row) => row.camber),
  density: rows.map((row) => row.density),
}));

/** The same panels with some columns changed. */
export const withColumns = (panels: Panels, change: Partial<Panels>): Panels => ({ ...panels, ...change });

/** The same wing with every length of it multiplied. */
export const scaled = (panels: Panels, factor: number): Panels =>
  withColumns(panels, {
    length: panels.length.map((each) => each * factor),
    root_chord: panels.root_chord.map((each) => each * factor),
    tip_chord: panels.tip_chord.map((each) => each * factor),
    sweep: panels.sweep.map((each) => each * factor),
    thickness: panels.thickness.map((each) => each * factor),
  });

/** The same panels without any break. */
export const laidFlat = (panels: Panels): Panels => withColumns(panels, { break: panels.break.map(() => 0) });

/** The same wing with one panel (counted from 0) cut in two at a share of its length, glued straight. */
export function split(panels: Panels, at: number, share: number): Panels {
  const cut = (list: readonly number[], inner: number, outer: number) => [
    ...list.slice(0, at),
    inner,
    outer,
    ...list.slice(at + 1),
  ];
  const of = (list: readonly number[] | undefined) => list?.[at] ?? Number.NaN;
  const chord = of(panels.root_chord) + (of(panels.tip_chord) - of(panels.root_chord)) * share;
  const same = (list: readonly number[] | undefined) => cut(list ?? [], of(list), of(list));
  return {
    length: cut(panels.length, of(panels.length) * share, of(panels.length) * (1 - share)),
    root_chord: cut(panels.root_chord, of(panels.root_chord), chord),
    tip_chord: cut(panels.tip_chord, chord, of(panels.tip_chord)),
    sweep: cut(panels.sweep, of(panels.sweep) * share, of(panels.sweep) * (1 - share)),
    break: cut(panels.break, of(panels.break), 0),
    washout: cut(panels.washout, of(panels.washout), 0),
    thickness: same(panels.thickness),
    skew: cut(panels.skew ?? [], of(panels.skew), 0),
    camber: same(panels.camber),
    density: same(panels.density),
  };
}
