import { degrees } from "../../src/library/numerics/degrees.ts";
import type { Panels } from "../../src/library/shape/panel-columns.ts";
import { buildWing } from "../../src/library/shape/wing.ts";
import { refuse } from "./call.ts";

/** The demo glider Plover as it is specified, in SI. */
export const ploverPanels: Panels = {
  length: [0.105, 0.08, 0.06],
  root_chord: [0.074, 0.07, 0.06],
  tip_chord: [0.07, 0.06, 0.04],
  sweep: [0, 0.004, 0.012],
  break: [degrees(3), degrees(7), degrees(11)],
  washout: [0, degrees(0.5), degrees(1)],
  thickness: [0.0032, 0.0024, 0.002],
};

export const ploverWing = buildWing(ploverPanels, undefined, refuse);

export const ploverTailplane = {
  span: 0.15,
  root_chord: 0.046,
  tip_chord: 0.034,
  x: 0.245,
  thickness: 0.0015,
  sweep: 0.005,
  z: 0.003,
  incidence: degrees(0.9),
};

export const ploverFin = {
  height: 0.05,
  root_chord: 0.046,
  tip_chord: 0.032,
  x: 0.248,
  thickness: 0.0015,
  sweep: 0.012,
  z: 0.004,
};

export const ploverStick = {
  density: 190,
  front_x: -0.085,
  rear_x: 0.295,
  width: 0.006,
  height: 0.009,
  end_width: 0.004,
  end_height: 0.005,
};

/** Height of the wing's seat and its nose-up angle. */
export const ploverSeat = { z: 0.012, incidence: degrees(2) };
