import type { Refuse } from "../spec.ts";
import type { Half, Stations } from "./half-record.ts";
import type { Panels } from "./panel-columns.ts";

/**
 * One half of a wing from its panels. `parameter` names the argument they came by, for a refusal. Refuses where there
 * is no panel, the columns differ in length, a panel would stand at 90° or more, or the root joint has a skew.
 */
export function buildHalf(panels: Panels, side: "right" | "left", parameter: string, refuse: Refuse): Half {
  const count = panels.length.length;
  if (count === 0) refuse(parameter, "A wing needs at least one panel a side. Add a row.");
  for (const [name, column] of Object.entries(panels)) {
    if (column !== undefined && column.length !== count) {
      refuse(parameter, `The column ${name} has ${column.length} entries, length has ${count}. Give each panel one.`);
    }
  }
  const skew = panels.skew ?? panels.length.map(() => 0);
  if (skew[0] !== 0) refuse(parameter, "The root joint lies along the flow. Set the skew of panel 1 to 0 deg.");
  const cant = runningSum(panels.break);
  cant.forEach((angle, index) => {
    if (standsUpright(angle)) {
      const degrees = Math.round((angle * 1800) / Math.PI) / 10;
      refuse(
        parameter,
        `Panel ${index + 1} would stand at ${degrees} deg: the breaks up to it add up to 90 deg or more. Make one smaller.`,
      );
    }
  });
  return {
    length: panels.length,
    root_chord: panels.root_chord,
    tip_chord: panels.tip_chord,
    sweep: panels.sweep,
    break: panels.break,
    cant,
    twist: runningSum(panels.washout.map((washout, i) => washout - washIn(panels.break[i] ?? 0, skew[i] ?? 0))),
    thickness: panels.thickness,
    skew,
    camber: panels.camber ?? [],
    density: panels.density ?? [],
    stations: buildStations(panels, cant, side === "right" ? 1 : -1),
  };
}

/** True for a cant of 90° or more, also by no more than a rounding error less: its panel has no width in the plan view. */
export const standsUpright = (cant: number): boolean => !(Math.abs(cant) < Math.PI / 2 - 1e-9);

/** Fold at a joint: tan θ = tan G / cos λ for the break G seen from the front and the skew λ (derived, oblique joint). */
export const fold = (breakAngle: number, skew: number): number => Math.atan(Math.tan(breakAngle) / Math.cos(skew));

/** Nose-up angle that an oblique joint gives to the panel outboard of it: tan δ = tan G · tan λ (derived). */
const washIn = (breakAngle: number, skew: number): number => Math.atan(Math.tan(breakAngle) * Math.tan(skew));

function buildStations(panels: Panels, cant: readonly number[], toRight: 1 | -1): Stations {
  const along = (component: (length: number, angle: number) => number) => [
    0,
    ...runningSum(panels.length.map((length, index) => component(length, cant[index] ?? 0))),
  ];
  return {
    distance: along((length) => length),
    x: [0, ...runningSum(panels.sweep)],
    y: along((length, angle) => toRight * length * Math.cos(angle)),
    z: along((length, angle) => length * Math.sin(angle)),
    chord: [...panels.root_chord, ...panels.tip_chord.slice(-1)],
  };
}

function runningSum(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value) => {
    sum += value;
    return sum;
  });
}
