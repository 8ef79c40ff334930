/** Tails for the examples of functions that take one. */
import { degrees } from "../numerics/degrees.ts";
import { buildFin } from "./fin.ts";
import { buildTailplane } from "./tailplane.ts";

/** 150 mm span, chords 46 and 34 mm, 245 mm behind the wing root, 1.5 mm thick, at 0.9 deg. */
export const taperedTailplane = buildTailplane({
  span: 0.15,
  root_chord: 0.046,
  tip_chord: 0.034,
  x: 0.245,
  thickness: 0.0015,
  sweep: 0.005,
  z: 0.003,
  incidence: degrees(0.9),
});

/** 50 mm high, chords 46 and 32 mm, 248 mm behind the wing root, 1.5 mm thick. */
export const taperedFin = buildFin({
  height: 0.05,
  root_chord: 0.046,
  tip_chord: 0.032,
  x: 0.248,
  thickness: 0.0015,
  sweep: 0.012,
  z: 0.004,
});
