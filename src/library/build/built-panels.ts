import { numberText } from "../number-text.ts";
import type { Half } from "../shape/half-record.ts";
import type { Panels } from "../shape/panel-columns.ts";
import type { Wing } from "../shape/wing-record.ts";
import { type FieldValues, number, type Refuse, table } from "../spec.ts";

/** What was measured of a finished wing, one row a panel, the root panel first. */
export const measuredTable = table("what was measured, one row a panel, the root panel first", {
  right_height: number("mm", "lower face above the table at the leading edge of the panel's outer end, right"),
  left_height: number("mm", "lower face above the table at the leading edge of the panel's outer end, left"),
  right_rear: number("mm", "lower face above the table at the trailing edge there, right", { optional: true }),
  left_rear: number("mm", "lower face above the table at the trailing edge there, left", { optional: true }),
  right_length: number("mm", "length of the lower face, right; left out, as planned", { above: 0, optional: true }),
  left_length: number("mm", "length of the lower face, left; left out, as planned", { above: 0, optional: true }),
  right_thickness: number("mm", "thickness of the panel as sanded, right; left out, as planned", {
    above: 0,
    optional: true,
  }),
  left_thickness: number("mm", "thickness of the panel as sanded, left; left out, as planned", {
    above: 0,
    optional: true,
  }),
  right_mass: number("g", "mass of the panel, right", { above: 0, optional: true }),
  left_mass: number("g", "mass of the panel, left", { above: 0, optional: true }),
});
export type Measured = FieldValues<(typeof measuredTable)["fields"]>;

/** A panel as it was built. */
export interface BuiltPanel {
  readonly length: number;
  readonly cant: number;
  readonly twist: number;
  readonly thickness: number;
}

/**
 * Refuses what does not fit the wing: fewer rows or more than it has panels (of unlike halves, the one that has more), and
 * what can only be told right against left but was measured on one side alone.
 */
export function refuseMisfit(wing: Pick<Wing, "right" | "left">, measured: Measured, refuse: Refuse): void {
  const count = Math.max(wing.right.length.length, wing.left.length.length);
  for (const [name, column] of Object.entries(measured)) {
    if (column === undefined || column.length === count) continue;
    refuse(
      "measured",
      column.length < count
        ? `The column ${name} has ${column.length} of ${count} panels. Measure panel ${column.length + 1} too, and give it a row.`
        : `The column ${name} has ${column.length} rows, and the wing has ${count} ${count === 1 ? "panel" : "panels"} a side. Take out the row that is none of them.`,
    );
  }
  for (const of of ["rear", "mass"] as const) {
    for (const [side, other] of [
      ["right", "left"],
      ["left", "right"],
    ] as const) {
      if (!measured[`${side}_${of}`] || measured[`${other}_${of}`]) continue;
      refuse(
        "measured",
        `There is a column ${side}_${of} and no ${other}_${of}, so the sides cannot be told apart. Measure both, or leave both out.`,
      );
    }
  }
}

/**
 * Cant and twist of each panel of one half. The leading edge of a panel rises by length · sin cant and, where it is swept,
 * by sweep · sin twist · cos cant besides; its trailing edge lies chord · sin twist · cos cant higher (derived). Twist not
 * measured is as planned.
 */
export function builtPanels(
  half: Half,
  side: "right" | "left",
  measured: Measured,
  start: number,
  refuse: Refuse,
): BuiltPanel[] {
  const heights = measured[`${side}_height`];
  const rears = measured[`${side}_rear`];
  const lengths = measured[`${side}_length`];
  const thicknesses = measured[`${side}_thickness`];
  return half.length.map((planned, k) => {
    const length = lengths?.[k] ?? planned;
    const height = heights[k] ?? 0;
    const rise = height - (k === 0 ? start : (heights[k - 1] ?? 0));
    const chord = half.tip_chord[k] ?? Number.NaN;
    const sweep = half.sweep[k] ?? 0;
    const raised = (rears?.[k] ?? 0) - height;
    const plannedTwist = half.twist[k] ?? 0;
    const cant = rears
      ? Math.asin((rise - (sweep * raised) / chord) / length)
      : cantOfRise(rise, length, sweep * Math.sin(plannedTwist));
    if (!Number.isFinite(cant)) {
      refuse(
        "measured",
        `The outer end of panel ${side} ${k + 1} lies ${numberText(Math.abs(rise), "mm")} ${rise < 0 ? "below" : "above"} its inner end, and the panel is ` +
          `${numberText(length, "mm")} long. Measure both heights again.`,
      );
    }
    const sine = raised / (chord * Math.cos(cant));
    if (rears && !(Math.abs(sine) < 0.5)) {
      refuse(
        "measured",
        `The trailing edge of panel ${side} ${k + 1} stands ${numberText(raised, "mm")} against its leading edge, on a chord of ${numberText(chord, "mm")}. Measure both again.`,
      );
    }
    const twist = rears ? Math.asin(sine) : plannedTwist;
    return { length, cant, twist, thickness: thicknesses?.[k] ?? half.thickness[k] ?? Number.NaN };
  });
}

/** The cant at which length · sin cant + turned · cos cant is the rise; NaN where none is. */
const cantOfRise = (rise: number, length: number, turned: number): number =>
  Math.asin(rise / Math.hypot(length, turned)) - Math.atan2(turned, length);

/** Of one panel's cant: two heights and a length, each by itself (GUM, first order). */
export const cantDoubt = ({ length, cant }: BuiltPanel, height: number, along: number): number =>
  Math.sqrt(2 * height ** 2 + (Math.sin(cant) * along) ** 2) / (length * Math.cos(cant));

/** The panels of a half as built, as `wing` takes them: what an oblique joint gave is in the measured washout. */
export function asPanels(half: Half, built: readonly BuiltPanel[]): Panels {
  const gained = (value: (panel: BuiltPanel) => number) =>
    built.map((panel, k) => value(panel) - (k === 0 ? 0 : value(built[k - 1] as BuiltPanel)));
  return {
    length: built.map(({ length }) => length),
    root_chord: half.root_chord,
    tip_chord: half.tip_chord,
    sweep: half.sweep,
    break: gained(({ cant }) => cant),
    washout: gained(({ twist }) => twist),
    thickness: built.map(({ thickness }) => thickness),
    ...(half.camber.length > 0 && { camber: half.camber }),
    ...(half.density.length > 0 && { density: half.density }),
  };
}
