/** Gliders for the examples of drawings, made by the functions that formulas call. Lengths in mm, angles in degrees. */
import { type FuselageStick, functions, type Glider, type Panels, type Part, type Wing } from "../../library/index.ts";

/** The value of a call to a library function; what is left out takes its default. */
export function made<T>(name: string, given: Readonly<Record<string, unknown>>): T {
  const spec = functions.get(name);
  if (!spec) throw new Error(`got ${name} in an example, expected a function of the library`);
  const values = Object.entries(spec.parameters).map(([key, shape]) => [key, given[key] ?? shape.default]);
  return spec.compute(Object.fromEntries(values), (parameter, message) => {
    throw new Error(`got a faulty ${parameter} for ${name} in an example: ${message}`);
  }) as T;
}

/** The panels of one side. */
export interface Side {
  readonly length: readonly number[];
  readonly break: readonly number[];
  readonly thickness: readonly number[];
  /** Chord at each joint from root to tip, 70 mm throughout unless said. */
  readonly chord?: readonly number[];
  /** Chord at each panel's outboard edge, where it is not that of the next panel's inboard edge. */
  readonly tip_chord?: readonly number[];
  readonly sweep?: readonly number[];
  readonly skew?: readonly number[];
}

export const wingOf = (right: Side, left?: Side): Wing =>
  made("wing", { panels: panelsOf(right), left: left && panelsOf(left) });

function panelsOf({ length, break: breaks, thickness, chord, tip_chord, sweep, skew }: Side): Panels {
  const each = (list: readonly number[] | undefined, otherwise: number): number[] =>
    length.map((_, index) => (list?.[index] ?? otherwise) / 1000);
  return {
    length: each(length, 0),
    root_chord: each(chord, 70),
    tip_chord: each(tip_chord ?? chord?.slice(1), 70),
    sweep: each(sweep, 0),
    break: breaks.map(radians),
    washout: length.map(() => 0),
    thickness: each(thickness, 0),
    ...(skew && { skew: skew.map(radians) }),
  };
}

/** Plover with its tail, weighed. */
export const plover = ploverWith({});

/** Plover with flatter tips on a flatter seat, its balance point farther forward. */
export const ploverBefore = ploverWith({ tipBreak: 7, seat: 1.5, balance: 29, tailSpan: 140 });

function ploverWith({ tipBreak = 11, seat = 2, balance = 31.4, tailSpan = 150 }): Glider {
  return made("glider", {
    wing: wingOf({
      length: [105, 80, 60],
      break: [3, 7, tipBreak],
      thickness: [3.2, 2.4, 2],
      chord: [74, 70, 60, 40],
      sweep: [0, 4, 12],
    }),
    tailplane: made("tailplane", {
      span: tailSpan / 1000,
      root_chord: 0.046,
      tip_chord: 0.034,
      x: 0.245,
      thickness: 0.0015,
      sweep: 0.005,
      z: 0.003,
      incidence: radians(0.9),
    }),
    fin: made("fin", {
      height: 0.05,
      root_chord: 0.046,
      tip_chord: 0.032,
      x: 0.248,
      thickness: 0.0015,
      sweep: 0.012,
      z: 0.004,
    }),
    stick: stickOf(-85, 295),
    balance: partAt(balance, 11),
    neutral_x: 0.0428,
    seat_height: 0.012,
    seat_angle: radians(seat),
  });
}

function stickOf(front: number, rear: number): FuselageStick {
  return made("fuselage_stick", {
    front_x: front / 1000,
    rear_x: rear / 1000,
    width: 0.006,
    height: 0.009,
    end_width: 0.004,
    end_height: 0.005,
  });
}

/** A part of 17 g by its balance point; its inertia stands in no drawing. */
function partAt(x: number, z: number): Part {
  return {
    mass: 0.017,
    x: x / 1000,
    y: 0,
    z: z / 1000,
    ixx: 9e-5,
    iyy: 1.6e-4,
    izz: 2.3e-4,
    ixy: 0,
    ixz: 0,
    iyz: 0,
  };
}

/** A level centre panel with raised tips, chords that step at the joint, and skew joint lines. */
export const stepped = wingOf({
  length: [140, 90],
  break: [0, 18],
  thickness: [3, 2.5],
  chord: [80, 60],
  tip_chord: [68, 36],
  sweep: [6, 14],
  skew: [0, 6],
});

/** Halves that differ after a repair, with a tailplane and a fin that stands on it, not weighed yet. */
export const mended: Glider = made("glider", {
  wing: wingOf(
    { length: [110, 85], break: [5, 9], thickness: [3, 2.5], chord: [72, 66, 42], sweep: [2, 9] },
    { length: [110, 70], break: [6, 9.5], thickness: [3, 2.5], chord: [72, 66, 46], sweep: [2, 8] },
  ),
  tailplane: made("tailplane", { span: 0.13, root_chord: 0.04, tip_chord: 0.04, x: 0.2, thickness: 0.0015 }),
  fin: made("fin", { height: 0.045, root_chord: 0.038, tip_chord: 0.026, x: 0.198, thickness: 0.0015, sweep: 0.012 }),
  seat_height: 0.008,
  seat_angle: radians(3),
});

/** Six panels a side bent to a bow on a short stick, nearly neutral. */
export const bow: Glider = made("glider", {
  wing: wingOf({
    length: [60, 55, 50, 45, 40, 35],
    break: [2, 4, 5, 6, 6, 7],
    thickness: [3, 3, 2.5, 2, 2, 1.5],
    chord: [80, 80, 76, 70, 60, 46, 24],
    sweep: [0, 1, 2, 4, 8, 14],
  }),
  tailplane: made("tailplane", {
    span: 0.2,
    root_chord: 0.05,
    tip_chord: 0.03,
    x: 0.23,
    thickness: 0.002,
    sweep: 0.01,
  }),
  stick: stickOf(-60, 282),
  balance: partAt(45, 6),
  neutral_x: 0.048,
  seat_height: 0.01,
  seat_angle: radians(1.5),
});

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
