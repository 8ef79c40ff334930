import { equivalentDihedral } from "../dihedral/equivalent-dihedral.ts";
import { gather } from "../mass/gather.ts";
import { type Part, partRecord } from "../mass/part-record.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { plainVWing } from "../shape/sample-wings.ts";
import { buildWing } from "../shape/wing.ts";
import { type Wing, wingRecord } from "../shape/wing-record.ts";
import { define, type FieldValues, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";
import { nearest } from "../units.ts";
import { asPanels, type BuiltPanel } from "./built-panels.ts";
import { clayArm } from "./clay-arm.ts";
import { jointName } from "./joint-name.ts";

const repairsTable = table("each repair, in the order in which they were made", {
  repair: text("what was done"),
  added: number("g", "what it added on the scales; below 0 what was taken off"),
  x: number("mm", "where, aft of the origin"),
  y: number("mm", "where, to the right; left out, on the centre line", { optional: true }),
  joint: {
    ...text('the joint that was opened, as "root" or "right 1-2"; "none", or left out, where none was'),
    optional: true,
  } as const,
  fold: number("deg", "fold of that joint as measured afterwards; not read where none was opened", { optional: true }),
});

const repairedRecord = record(
  "repaired",
  "a glider after its repairs",
  {
    repairs: table("each repair", {
      repair: text("what was done"),
      mass: number("g", "the glider after it"),
      x: number("mm", "its balance point after it"),
      moved: number("mm", "how far this repair moved it, above 0 aft"),
      turned: number("deg", "fold of the joint after it, less before"),
      equivalent_dihedral: number("deg", "of the wing after it"),
    }),
    added: number("g", "all of them together"),
    balance: { ...partRecord, summary: "the glider after them, without new clay: for glider(…)" },
    clay: number("g", "clay that brings the balance point back; below 0 it is to be taken off", { optional: true }),
    all_up: number("g", "with that clay", { optional: true }),
    tip_weight: number("g", "weight on the lighter tip that evens out what the repairs added to one side"),
    light_tip: text("left, right, or none where the repairs even out"),
    turned_apart: number("deg", "cant gained by the right half less that gained by the left, where they differ most"),
    equivalent_dihedral: number("deg", "of the wing after them"),
    check: text("what is to be done before it flies again"),
    wing: { ...wingRecord, summary: "the wing after them: for glider(…)" },
  },
  ({ repairs, added, equivalent_dihedral }) =>
    `${repairs.repair.length} ${repairs.repair.length === 1 ? "repair" : "repairs"}, ${numberText(added, "g")} added, ` +
    `${numberText(equivalent_dihedral, "deg")} of equivalent dihedral`,
);
export type Repaired = ValueOf<typeof repairedRecord>;

/** `repaired(wing, balance, repairs, …)`: new angles, added mass, balance again. */
export const repaired = define({
  name: "repaired",
  summary:
    "A glider after repairs: its new angles and mass, where it balances now, the clay that brings it back, and what to check before it flies.",
  topic: "build",
  parameters: {
    wing: { ...wingRecord, summary: "the wing before the repairs, as built" },
    balance: { ...partRecord, summary: "the whole glider before the repairs, with its clay" },
    repairs: repairsTable,
    wanted_x: number("mm", "where it is to balance; left out, where it did before", { optional: true }),
    clay_x: number("mm", "where the clay goes; left out, no clay is reckoned", { optional: true }),
    tolerance: number("deg", "how far the halves may have turned apart", { above: 0, default: degrees(1) }),
  },
  result: repairedRecord,
  formula:
    "x = Σ m·x / Σ m; clay = m·(x − wanted_x)/(wanted_x − clay_x); every panel outboard of an opened joint turns by fold after − fold before, both halves by half of it at the root",
  errors: [
    "A joint is named that the wing has not, or one is named without its fold.",
    "More is taken off than there is, or the clay sits at the wanted balance point.",
  ],
  assumptions: [
    "What is added counts as a point, at the height of the balance point.",
    "Panels keep their length, twist and thickness. Twist may have come in with the repair: measure incidence, right and left.",
    "Weigh and balance on the real thing too; the numbers tell what to expect.",
  ],
  sources: [
    { text: "Moments about the balance point; parallel-axis theorem", mark: "derived" },
    { text: "After a repair: angles, mass, balance, incidence, then three tosses", mark: "common practice" },
  ],
  examples: [
    {
      summary: "a V of 12 deg of 20 g, its root joint glued anew to 22 deg with 0.5 g of cloth and glue at 35 mm",
      arguments: {
        wing: plainVWing,
        balance: { mass: 0.02, x: 0.03, y: 0, z: 0, ixx: 0, iyy: 0, izz: 0, ixy: 0, ixz: 0, iyz: 0 },
        repairs: { repair: ["root joint"], added: [0.0005], x: [0.035], joint: ["root"], fold: [degrees(22)] },
        clay_x: -0.08,
      },
      result: {
        added: 0.0005,
        repairs: { mass: [0.0205], moved: [(0.0005 * 0.005) / 0.0205], turned: [degrees(-2)] } as never,
        equivalent_dihedral: degrees(11),
        clay: (0.0005 * 0.005) / 0.11,
      },
    },
  ],
  compute: ({ wing, balance, repairs, wanted_x = balance.x, clay_x, tolerance }, refuse) => {
    const state = { wing, body: balance };
    const rows = repairs.repair.map((repair, row) => {
      const before = { ...state };
      state.body = loaded(before.body, repairs, row, refuse);
      const opened = openedJoint(wing, repairs, row, refuse);
      if (opened) state.wing = refolded(before.wing, opened, refuse);
      return {
        repair,
        mass: state.body.mass,
        x: state.body.x,
        moved: state.body.x - before.body.x,
        turned: opened ? opened.fold - foldOf(before.wing, opened) : 0,
        equivalent_dihedral: equivalentDihedral.compute({ wing: state.wing }, refuse),
      };
    });
    const column = <K extends keyof (typeof rows)[number]>(key: K) => rows.map((row) => row[key]);
    const clay = clay_x === undefined ? undefined : clayBack(state.body, wanted_x, clay_x, refuse);
    const side = state.body.mass * state.body.y - balance.mass * balance.y;
    const tip = wing.right.stations.y.at(-1) ?? Number.NaN;
    const evened = Math.abs(side) < 1e-9;
    const turned_apart = apart(wing, state.wing);
    const light_tip = evened ? "none" : side > 0 ? "left" : "right";
    const tip_weight = evened ? 0 : Math.abs(side) / tip;
    return {
      repairs: {
        repair: column("repair"),
        mass: column("mass"),
        x: column("x"),
        moved: column("moved"),
        turned: column("turned"),
        equivalent_dihedral: column("equivalent_dihedral"),
      },
      added: state.body.mass - balance.mass,
      balance: state.body,
      ...(clay !== undefined && { clay, all_up: state.body.mass + clay }),
      ...{ tip_weight, light_tip, turned_apart },
      equivalent_dihedral: equivalentDihedral.compute({ wing: state.wing }, refuse),
      check: checks({ clay, clay_x, tip_weight, light_tip, turned_apart, tolerance }),
      wing: state.wing,
    };
  },
});

type Repairs = FieldValues<(typeof repairsTable)["fields"]>;

interface OpenedJoint {
  /** Of a joint of both halves, the root, "both". */
  readonly side: "right" | "left" | "both";
  /** Number of the panel inboard of it, 0 at the root. */
  readonly inner: number;
  readonly fold: number;
}

function loaded(body: Part, { repair, added, x, y }: Repairs, row: number, refuse: Refuse): Part {
  const mass = added[row] ?? 0;
  if (!(body.mass + mass > 0)) {
    refuse(
      "repairs",
      `Repair ${row + 1}, "${repair[row]}", takes ${numberText(-mass, "g")} off a glider of ${numberText(body.mass, "g")}. Check its sign and unit.`,
    );
  }
  return gather([body, { mass, x: x[row] ?? 0, y: y?.[row] ?? 0, z: body.z }]);
}

/** The joint that a repair opened; null where it opened none. */
function openedJoint(wing: Wing, { repair, joint, fold }: Repairs, row: number, refuse: Refuse): OpenedJoint | null {
  const asked = (joint?.[row] ?? "none")
    .trim()
    .toLowerCase()
    .replace(/\s*[-–]\s*/, "–");
  if (asked === "none" || asked === "") return null;
  const further = (["right", "left"] as const).flatMap((side) =>
    wing[side].cant.slice(1).map((_, k) => ({ side, inner: k + 1, name: jointName(side, k + 1) })),
  );
  const joints = [{ side: "both", inner: 0, name: jointName("right", 0) } as const, ...further];
  const found = joints.find(({ name }) => name === asked);
  if (!found) {
    const names = joints.map(({ name }) => name);
    const near = nearest(asked, names);
    return refuse(
      "repairs",
      `Repair ${row + 1}, "${repair[row]}": the wing has no joint "${joint?.[row]}".${near ? ` Did you mean "${near}"?` : ""} ` +
        `It has ${names.map((name) => `"${name}"`).join(", ")}; write "none" where no joint was opened.`,
    );
  }
  const after = fold?.[row];
  if (after === undefined) {
    return refuse(
      "repairs",
      `Repair ${row + 1}, "${repair[row]}", opened the joint ${found.name}. Measure its fold and give the table a column fold.`,
    );
  }
  return { side: found.side, inner: found.inner, fold: after };
}

const foldOf = (wing: Wing, { side, inner }: OpenedJoint): number =>
  side === "both"
    ? (wing.right.cant[0] ?? 0) + (wing.left.cant[0] ?? 0)
    : (wing[side].cant[inner] ?? 0) - (wing[side].cant[inner - 1] ?? 0);

/** Every panel outboard of the joint turns with it; at the root both halves, each by half. */
function refolded(wing: Wing, joint: OpenedJoint, refuse: Refuse): Wing {
  const turn = joint.fold - foldOf(wing, joint);
  const panels = (side: "right" | "left") => {
    const half = wing[side];
    const by = joint.side === "both" ? turn / 2 : joint.side === side ? turn : 0;
    const built = half.length.map(
      (length, k): BuiltPanel => ({
        length,
        cant: (half.cant[k] ?? 0) + (k >= joint.inner ? by : 0),
        twist: half.twist[k] ?? 0,
        thickness: half.thickness[k] ?? Number.NaN,
      }),
    );
    return asPanels(half, built);
  };
  return buildWing(panels("right"), panels("left"), refuse);
}

/** Clay that brings the balance point back; below 0 where it is to be taken off. +0 keeps a minus from a zero. */
const clayBack = (body: Part, wanted: number, at: number, refuse: Refuse): number =>
  (body.mass * (body.x - wanted)) / clayArm(wanted, at, refuse) + 0;

/** Where the halves have turned apart most. */
function apart(before: Wing, after: Wing): number {
  const gained = (side: "right" | "left", k: number) => (after[side].cant[k] ?? 0) - (before[side].cant[k] ?? 0);
  const count = Math.min(before.right.cant.length, before.left.cant.length);
  return Array.from({ length: count }, (_, k) => gained("right", k) - gained("left", k)).reduce(
    (most, each) => (Math.abs(each) > Math.abs(most) ? each : most),
    0,
  );
}

/** Below a hundredth of a gram no shop's scales tell. */
const leastOnTheScales = 1e-5;

function checks({
  clay,
  clay_x,
  tip_weight,
  light_tip,
  turned_apart,
  tolerance,
}: Pick<Repaired, "clay" | "tip_weight" | "light_tip" | "turned_apart"> & {
  clay_x: number | undefined;
  tolerance: number;
}): string {
  const told: string[] = [];
  if (clay !== undefined && clay_x !== undefined && Math.abs(clay) >= leastOnTheScales) {
    const size = `${numberText(Math.abs(clay), "g")} of clay`;
    told.push(
      clay > 0 ? `put ${size} at x ${numberText(clay_x, "mm")}` : `take ${size} off at x ${numberText(clay_x, "mm")}`,
    );
  }
  if (tip_weight >= leastOnTheScales) told.push(`put ${numberText(tip_weight, "g")} on the ${light_tip} tip`);
  if (Math.abs(turned_apart) > tolerance) {
    told.push(
      `the ${turned_apart > 0 ? "right" : "left"} half now stands ${numberText(Math.abs(turned_apart), "deg")} steeper against the other: open the joint again, or fly it knowing that`,
    );
  }
  const before =
    "measure incidence right and left, balance it on two fingertips, then three tosses with nothing else changed";
  return [...told, before].join("; ");
}
