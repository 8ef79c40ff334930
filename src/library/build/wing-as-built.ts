import { equivalentDihedral } from "../dihedral/equivalent-dihedral.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { plainVWing } from "../shape/sample-wings.ts";
import { buildWing } from "../shape/wing.ts";
import { type Wing, wingRecord } from "../shape/wing-record.ts";
import { boolean, define, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";
import { type BuildError, errorsOf } from "./build-errors.ts";
import {
  asPanels,
  type BuiltPanel,
  builtPanels,
  cantDoubt,
  type Measured,
  measuredTable,
  refuseMisfit,
} from "./built-panels.ts";
import { jointName } from "./joint-name.ts";

const wingAsBuiltRecord = record(
  "wing_as_built",
  "a wing as it was built against its plan",
  {
    panels: table("each panel", {
      panel: number("1", "panel, 1 at the root"),
      planned: number("deg", "planned cant of the right one"),
      right: number("deg", "cant of the right one as built"),
      left: number("deg", "cant of the left one as built"),
      apart: number("deg", "right less left, against the plan"),
      doubt: number("deg", "how far off each of these cants may be for the measuring alone"),
      planned_washout: number("deg", "planned nose-down angle of the right one against the root"),
      right_washout: number("deg", "nose-down angle of the right one as built"),
      left_washout: number("deg", "nose-down angle of the left one as built"),
      washout_apart: number("deg", "right less left, against the plan"),
      washout_doubt: number("deg", "how far off that difference may be for the measuring alone"),
      planned_thickness: number("mm", "planned thickness of the right one"),
      right_thickness: number("mm", "thickness of the right one as sanded, or as planned where it is not measured"),
      left_thickness: number("mm", "the same of the left one"),
      thickness_doubt: number(
        "mm",
        "how far off each of these may be for the measuring alone; 0 where none is measured",
      ),
    }),
    joints: table("each joint", {
      joint: text("the joint"),
      planned: number("deg", "planned fold, from the front"),
      built: number("deg", "fold as built"),
      off: number("deg", "built less planned"),
      doubt: number("deg", "how far off that may be for the measuring alone"),
      remedy: text("what to do about it"),
    }),
    errors: table("what makes it roll, the worst first", {
      error: text("what is not alike"),
      size: text("by how much"),
      roll_rate: number("deg/s", "steady roll to the right that it would make by itself"),
      doubt: number("deg/s", "what the measuring alone may pretend"),
      matters: boolean("true where it is more than that"),
      remedy: text("what to do about it, and by how much"),
    }),
    roll_rate: number("deg/s", "all of them together, to the right"),
    equivalent_dihedral: number("deg", "of the wing as built"),
    planned_dihedral: number("deg", "of the plan"),
    dihedral_doubt: number("deg", "how far off the first may be for the measuring alone"),
    worst: text("the error that matters most; none where none is more than the measuring"),
    remedy: text("what to do first"),
    wing: { ...wingRecord, summary: "the wing as built: for glider(…), and what flies of it" },
  },
  ({ equivalent_dihedral, dihedral_doubt, worst }) =>
    `${numberText(equivalent_dihedral, "deg")} ± ${numberText(dihedral_doubt, "deg")} of equivalent dihedral; ` +
    (worst === "none" ? "nothing off by more than the measuring" : `worst: ${worst}`),
);
export type WingAsBuilt = ValueOf<typeof wingAsBuiltRecord>;

/** `wing_as_built(wing, measured, …)`: measured heights against the plan. */
export const wingAsBuilt = define({
  name: "wing_as_built",
  summary:
    "Angles of a finished wing from measured heights and lengths, right against left and against the plan: which error matters most, and what to do.",
  topic: "build",
  parameters: {
    wing: { ...wingRecord, summary: "the wing as planned" },
    measured: measuredTable,
    root_height: number("mm", "root's lower face above the table", { default: 0 }),
    height_error: number("mm", "how far off a height may be", { above: 0, default: 0.0005 }),
    length_error: number("mm", "how far off a length may be", { min: 0, default: 0.0005 }),
    thickness_error: number("mm", "how far off a thickness may be", { above: 0, default: 0.00005 }),
    mass_error: number("g", "how far off the mass of a panel may be", { above: 0, default: 1e-5 }),
    tolerance: number("deg", "what a joint may be off", { above: 0, default: degrees(1) }),
    mass: number("g", "mass of the whole glider, to tell what unlike panels do", { above: 0, optional: true }),
    speed: number("m/s", "speed of the glide", { above: 0, default: 5 }),
    lift_coefficient: number("1", "lift coefficient of the glide", { above: 0, default: 0.6 }),
    lift_slope: number("1/rad", "lift slope of the wing", { above: 0, default: 4.5 }),
  },
  result: wingAsBuiltRecord,
  formula:
    "sin cant = (rise of the leading edge − sweep · rise of the trailing edge over it / chord) / length; sin washout = rise of the trailing edge over the leading edge / (chord · cos cant); doubt of a cant = √(2·height_error² + (sin cant · length_error)²)/(length · cos cant); roll rate by strip theory",
  errors: [
    "A column has fewer rows than the wing has panels, or more.",
    "Trailing edges or masses are measured on one side alone.",
    "A rise is as long as the panel, or a trailing edge stands off by half the chord.",
  ],
  assumptions: [
    "The wing stands on its root, both halves free, the root's chord flat on the table.",
    "Washout is that of each panel's outer end. Without rear heights it is taken as planned.",
    "Doubts are added up as squares: every height by itself. A table that is not flat counts twice.",
    "Roll rates hold the glider straight and tell which error weighs most. What the flow makes of it: put wing into glider(…), then rolling_tendency and circle.",
    "Thicknesses are those of the panels as sanded: a joint is resanded by the thinner of its two.",
    "Damp turns panels: measure incidence again before flying.",
  ],
  sources: [
    { text: "Trigonometry of measured heights; propagation of uncertainty (GUM, first order)", mark: "derived" },
    {
      text: "Roll against roll damping by strips: p = 1.5·δ·V/b of a constant chord whose half is off by δ",
      mark: "derived",
    },
    {
      text: "H. Glauert, Theoretical relationships for an aerofoil with hinged flap, ARC R&M 1095, 1927: a flap of a tenth of the chord turns the zero-lift angle by 0.4 of its own",
      mark: "derived",
    },
    {
      text: "Joints within 1 deg, incidence right and left within a quarter to half a degree",
      mark: "common practice",
    },
  ],
  examples: [
    {
      summary: "a V of 12 deg built at 13 and 11.5 deg, the right tip's trailing edge 1 mm higher than the left one's",
      arguments: {
        wing: plainVWing,
        measured: {
          right_height: [(0.4 / Math.cos(degrees(12))) * Math.sin(degrees(13))],
          left_height: [(0.4 / Math.cos(degrees(12))) * Math.sin(degrees(11.5))],
          right_rear: [(0.4 / Math.cos(degrees(12))) * Math.sin(degrees(13)) + 0.001],
          left_rear: [(0.4 / Math.cos(degrees(12))) * Math.sin(degrees(11.5))],
        },
      },
      result: {
        panels: {
          right: [degrees(13)],
          left: [degrees(11.5)],
          apart: [degrees(1.5)],
          right_washout: [Math.asin(0.001 / (0.07 * Math.cos(degrees(13))))],
        } as never,
        worst: "incidence of panel 1, right against left",
      },
    },
  ],
  compute: (given, refuse) => {
    const { wing, measured, root_height, height_error, length_error } = given;
    refuseMisfit(wing, measured, refuse);
    const sides = measure(wing, measured, root_height, refuse);
    const built = wingOf(wing, sides, refuse);
    const dihedral = (of: Wing) => equivalentDihedral.compute({ wing: of }, refuse);
    const errors = errorsOf(wing, sides, given);
    const worst = errors.find(({ matters }) => matters);
    const panels = sides.right.slice(0, Math.min(sides.right.length, sides.left.length));
    const index = panels.map((_, k) => k);
    const at = (list: readonly number[], k: number) => list[k] ?? 0;
    const panelOf = (side: "right" | "left", k: number) => sides[side][k] as BuiltPanel;
    const eda = dihedral(built);
    return {
      panels: {
        panel: index.map((k) => k + 1),
        planned: index.map((k) => at(wing.right.cant, k)),
        right: index.map((k) => panelOf("right", k).cant),
        left: index.map((k) => panelOf("left", k).cant),
        apart: index.map(
          (k) => panelOf("right", k).cant - at(wing.right.cant, k) - (panelOf("left", k).cant - at(wing.left.cant, k)),
        ),
        doubt: index.map((k) => cantDoubt(panelOf("right", k), height_error, length_error)),
        planned_washout: index.map((k) => at(wing.right.twist, k)),
        right_washout: index.map((k) => panelOf("right", k).twist),
        left_washout: index.map((k) => panelOf("left", k).twist),
        washout_apart: index.map(
          (k) =>
            panelOf("right", k).twist - at(wing.right.twist, k) - (panelOf("left", k).twist - at(wing.left.twist, k)),
        ),
        washout_doubt: index.map((k) =>
          measured.right_rear && measured.left_rear ? (2 * height_error) / at(wing.right.tip_chord, k) : 0,
        ),
        planned_thickness: index.map((k) => at(wing.right.thickness, k)),
        right_thickness: index.map((k) => panelOf("right", k).thickness),
        left_thickness: index.map((k) => panelOf("left", k).thickness),
        thickness_doubt: index.map(() =>
          measured.right_thickness || measured.left_thickness ? given.thickness_error : 0,
        ),
      },
      joints: jointRows(wing, sides, given),
      errors: {
        error: errors.map(({ error }) => error),
        size: errors.map(({ size }) => size),
        roll_rate: errors.map(({ roll_rate }) => roll_rate),
        doubt: errors.map(({ doubt }) => doubt),
        matters: errors.map(({ matters }) => matters),
        remedy: errors.map(({ remedy }) => remedy),
      },
      roll_rate: errors.reduce((sum, { roll_rate }) => sum + roll_rate, 0),
      equivalent_dihedral: eda,
      planned_dihedral: dihedral(wing),
      dihedral_doubt: dihedralDoubt(given, eda, dihedral, refuse),
      worst: worst?.error ?? "none",
      remedy: firstRemedy(worst, errors),
      wing: built,
    };
  },
});

interface Sides {
  readonly right: readonly BuiltPanel[];
  readonly left: readonly BuiltPanel[];
}

const measure = (wing: Wing, measured: Measured, start: number, refuse: Refuse): Sides => ({
  right: builtPanels(wing.right, "right", measured, start, refuse),
  left: builtPanels(wing.left, "left", measured, start, refuse),
});

const wingOf = (wing: Wing, { right, left }: Sides, refuse: Refuse): Wing =>
  buildWing(asPanels(wing.right, right), asPanels(wing.left, left), refuse);

function jointRows(
  wing: Wing,
  { right, left }: Sides,
  given: { tolerance: number; height_error: number; length_error: number },
): WingAsBuilt["joints"] {
  const doubtOf = (panel: BuiltPanel) => cantDoubt(panel, given.height_error, given.length_error);
  // The thinner of two panels is the one whose edge the other has to meet.
  const row = (joint: string, planned: number, built: number, outer: BuiltPanel, inner: BuiltPanel) => ({
    ...{ joint, planned, built },
    doubt: Math.hypot(doubtOf(outer), doubtOf(inner)),
    thickness: Math.min(outer.thickness, inner.thickness),
  });
  const [r0, l0] = [right[0] as BuiltPanel, left[0] as BuiltPanel];
  const rootPlan = (wing.right.cant[0] ?? 0) + (wing.left.cant[0] ?? 0);
  const root = row(jointName("right", 0), rootPlan, r0.cant + l0.cant, r0, l0);
  const further = (["right", "left"] as const).flatMap((side) => {
    const panels = side === "right" ? right : left;
    return panels.slice(1).map((outer, k) => {
      const plan = (wing[side].cant[k + 1] ?? 0) - (wing[side].cant[k] ?? 0);
      const inner = panels[k] as BuiltPanel;
      return row(jointName(side, k + 1), plan, outer.cant - inner.cant, outer, inner);
    });
  });
  const rows = [root, ...further];
  return {
    joint: rows.map(({ joint }) => joint),
    planned: rows.map(({ planned }) => planned),
    built: rows.map(({ built }) => built),
    off: rows.map(({ built, planned }) => built - planned),
    doubt: rows.map(({ doubt }) => doubt),
    remedy: rows.map((each) => jointRemedy(each.built - each.planned, each.doubt, each.thickness, given.tolerance)),
  };
}

function jointRemedy(off: number, doubt: number, thickness: number, tolerance: number): string {
  const size = Math.abs(off);
  if (size <= tolerance) return "leave it";
  if (size <= doubt) return "measure again: it may be the measuring";
  const [half, wood] = [numberText(size / 2, "deg"), numberText(thickness * Math.tan(size / 2), "mm")];
  return off < 0
    ? `folds too little: open it and sand ${half} more off each edge, ${wood} at the upper edge`
    : `folds too far: open it and sand each edge ${half} less bevelled, or fill ${numberText(thickness * Math.tan(size), "mm")} at the upper edge`;
}

/** Of the equivalent dihedral: each height and length moved by its doubt, the squares added up (GUM, first order). */
function dihedralDoubt(
  given: { wing: Wing; measured: Measured; root_height: number; height_error: number; length_error: number },
  eda: number,
  dihedral: (of: Wing) => number,
  refuse: Refuse,
): number {
  const { wing, measured, root_height } = given;
  let squares = 0;
  const lengths = { right_length: wing.right.length, left_length: wing.left.length };
  const full: Measured = {
    ...measured,
    right_length: measured.right_length ?? lengths.right_length,
    left_length: measured.left_length ?? lengths.left_length,
  };
  const moved = [
    ["right_height", given.height_error],
    ["left_height", given.height_error],
    ["right_length", given.length_error],
    ["left_length", given.length_error],
  ] as const;
  for (const [column, error] of moved) {
    const values = full[column] ?? [];
    values.forEach((_, k) => {
      // A hundredth of the doubt, so that a steep panel is not pushed past upright.
      const step = error / 100;
      const rear = column === "right_height" ? "right_rear" : column === "left_height" ? "left_rear" : null;
      const nudge = (list: readonly number[]) => list.map((value, i) => (i === k ? value + step : value));
      const changed: Measured = {
        ...full,
        [column]: nudge(values),
        ...(rear && full[rear] && { [rear]: nudge(full[rear]) }),
      };
      const other = dihedral(wingOf(wing, measure(wing, changed, root_height, refuse), refuse));
      squares += ((other - eda) * 100) ** 2;
    });
  }
  return Math.sqrt(squares);
}

/** What to do first; where nothing stands out, how much the measuring itself leaves open. */
function firstRemedy(worst: BuildError | undefined, errors: readonly BuildError[]): string {
  if (worst) return worst.remedy;
  const open = Math.max(0, ...errors.map(({ doubt }) => doubt));
  const coarse = open > degrees(3);
  return (
    "Leave it as it is: no difference is more than the measuring may pretend. " +
    (coarse
      ? `That is ${numberText(open, "deg/s")} of roll: read the heights of both edges finer, or toss it and look.`
      : "Toss it.")
  );
}
