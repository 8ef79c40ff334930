import { numberText } from "../number-text.ts";
import type { Wing } from "../shape/wing-record.ts";
import { freeFall } from "../units.ts";
import { type BuiltPanel, cantDoubt, type Measured } from "./built-panels.ts";
import { rollEffect } from "./roll-effect.ts";

/** A difference between the halves and what it does. */
export interface BuildError {
  readonly error: string;
  readonly size: string;
  /** rad/s to the right, and what the measuring alone may pretend of it. */
  readonly roll_rate: number;
  readonly doubt: number;
  readonly matters: boolean;
  readonly remedy: string;
}

interface Conditions {
  readonly measured: Measured;
  readonly height_error: number;
  readonly length_error: number;
  readonly mass_error: number;
  readonly mass?: number | undefined;
  readonly speed: number;
  readonly lift_coefficient: number;
  readonly lift_slope: number;
}

/** The differences right against left beyond what is planned, each told by the roll that it makes; the worst first. */
export function errorsOf(
  wing: Wing,
  { right, left }: { right: readonly BuiltPanel[]; left: readonly BuiltPanel[] },
  given: Conditions,
): readonly BuildError[] {
  const { measured, height_error, length_error, speed, lift_coefficient, lift_slope } = given;
  const effect = rollEffect(wing);
  const rows = right.slice(0, left.length).flatMap((panel, k): BuildError[] => {
    const other = left[k] as BuiltPanel;
    const chord = ((wing.right.root_chord[k] ?? 0) + (wing.right.tip_chord[k] ?? 0)) / 2;
    const tipChord = wing.right.tip_chord[k] ?? 0;
    const off = (side: "right" | "left", value: "cant" | "twist") =>
      (side === "right" ? panel : other)[value] - (wing[side][value][k] ?? 0);
    const twist = off("right", "twist") - off("left", "twist");
    const lost = (side: "right" | "left") =>
      1 - Math.cos((side === "right" ? panel : other).cant) / Math.cos(wing[side].cant[k] ?? 0);
    const cant = off("right", "cant") - off("left", "cant");
    const perTwist = speed * effect.ofTwist(k);
    const perLift = speed * effect.ofLift(k, lift_coefficient, lift_slope);
    // 1 − cos(built)/cos(planned) changes by this with each of the two cants.
    const lostByCant = Math.abs(Math.sin(panel.cant)) / Math.cos(wing.right.cant[k] ?? 0);
    const name = `panel ${k + 1}, right against left`;
    return [
      ...(measured.right_rear && measured.left_rear
        ? [
            judged({
              error: `incidence of ${name}`,
              size: `${numberText(Math.abs(twist), "deg")} more washout on the ${twist > 0 ? "right" : "left"}`,
              roll_rate: perTwist * twist,
              doubt: (perTwist * 2 * height_error) / tipChord,
              remedy: twistRemedy(off("right", "twist"), off("left", "twist"), k + 1, chord),
            }),
          ]
        : []),
      judged({
        error: `cant of ${name}`,
        size: `${numberText(Math.abs(cant), "deg")} steeper on the ${cant > 0 ? "right" : "left"}`,
        roll_rate: perLift * (lost("right") - lost("left")),
        doubt: perLift * lostByCant * Math.SQRT2 * cantDoubt(panel, height_error, length_error),
        remedy: `see the joint inboard of panel ${k + 1}; a degree here does little`,
      }),
    ];
  });
  const masses = massError(wing, given, (moment) => speed * effect.ofMoment(moment, lift_slope));
  return [...rows, ...masses].sort((a, b) => Math.abs(b.roll_rate) - Math.abs(a.roll_rate));
}

/** What is more than the measuring may pretend matters, where it would be seen at all: half a degree a second. */
function judged(row: Omit<BuildError, "matters">): BuildError {
  const matters = Math.abs(row.roll_rate) > Math.max(row.doubt, 0.5 * (Math.PI / 180));
  return { ...row, matters, remedy: matters ? row.remedy : "leave it" };
}

/** What the panel that is farther off its plan takes, so that it is like the other one again. */
function twistRemedy(right: number, left: number, panel: number, chord: number): string {
  const size = Math.abs(right - left);
  const side = Math.abs(right) >= Math.abs(left) ? "right" : "left";
  // Twist counts nose-down, which is trailing edge up.
  const way = right > left === (side === "right") ? "down" : "up";
  return (
    `turn the trailing edge of the ${side} panel ${panel}, the one farther off its plan, ${way} by ` +
    `${numberText(chord * Math.sin(size), "mm")}, which is ${numberText(size, "deg")}: damp it, twist, and let it dry pinned down; ` +
    `or bend the last tenth of its chord ${way} as a tab, along the whole panel, by about ${numberText(size / tabEffect, "deg")}. Measure again before flying`
  );
}

/**
 * How far a tab of a tenth of the chord turns the zero-lift angle, of its own angle: τ = 1 − (θ − sin θ)/π at the hinge
 * cos θ = 2·0.1 − 1 (Glauert, ARC R&M 1095, 1927). Thin air at small chords takes some of that off again.
 */
const hinge = Math.acos(2 * 0.1 - 1);
const tabEffect = 1 - (hinge - Math.sin(hinge)) / Math.PI;

/** Where panels are weighed on both sides and the glider's mass is known: their differences, each at its panel's middle. */
function massError(
  wing: Wing,
  { measured: { right_mass, left_mass }, mass, mass_error, lift_coefficient }: Conditions,
  rollOf: (momentOverPressure: number) => number,
): BuildError[] {
  if (!right_mass || !left_mass || mass === undefined) return [];
  const { y } = wing.right.stations;
  const arms = right_mass.slice(0, left_mass.length).map((_, k) => ((y[k] ?? 0) + (y[k + 1] ?? 0)) / 2);
  const moment = arms.reduce((sum, arm, k) => sum + ((right_mass[k] ?? 0) - (left_mass[k] ?? 0)) * arm, 0);
  const pressure = (mass * freeFall) / (wing.area * lift_coefficient);
  const rollOfMoment = (of: number) => rollOf((of * freeFall) / pressure);
  const atTip = numberText(Math.abs(moment) / (y.at(-1) ?? Number.NaN), "g");
  const [heavy, light] = moment > 0 ? ["right", "left"] : ["left", "right"];
  return [
    judged({
      error: "mass of the panels, right against left",
      size: `as ${atTip} more at the ${heavy} tip`,
      roll_rate: rollOfMoment(moment),
      // Every panel's mass by itself.
      doubt: Math.abs(rollOfMoment(Math.SQRT2 * mass_error * Math.hypot(...arms))),
      remedy: `put ${atTip} on the ${light} tip`,
    }),
  ];
}
