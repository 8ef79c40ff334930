import { chosen } from "../chosen.ts";
import { balsaOf } from "../mass/balsa.ts";
import { sandedSection } from "../mass/section-fill.ts";
import { numberText } from "../number-text.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, record, table, text, type ValueOf } from "../spec.ts";
import { freeFall } from "../units.ts";
import { bendingMoment, type Loading } from "./bending.ts";
import { cutJoints, cutLength, cutParameters } from "./joint-bevels.ts";
import type { JointPlace } from "./joint-place.ts";
import { weaves } from "./joint-strips.ts";

/** Share of the wood's strength that an end-grain butt joint keeps at best (Wood Handbook, chapter 10). */
export const buttShare = 0.25;

/** Strength of E-glass in a cloth strip laid by hand, Pa: typical, low, high (from memory). */
const glassStrength = [750e6, 500e6, 1000e6] as const;
const glassDensity = 2540;
/** Share of a balanced weave's fibres that pull across the joint: half; at 45 deg a quarter of that is left (from memory). */
const acrossJoint: Readonly<Record<string, number>> = { straight: 0.5, bias: 0.125 };

const loadings: Readonly<Record<string, Loading>> = { elliptic: "elliptic", uniform: "uniform" };

const strengthRecord = record(
  "joint_strength",
  "what the joints of a wing bear",
  {
    joints: table("each joint under each load", {
      load: text("toss, gust, or pull-up"),
      joint: text("the joint"),
      moment: number("N m", "bending moment"),
      stress: number("MPa", "pull in the lower face"),
      butt: number("1", "how many times that load a plain butt joint bears"),
      butt_low: number("1", "the same for weak wood"),
      butt_high: number("1", "the same for strong wood"),
      reinforced: number("1", "how many times with the strips, the glue line counted as broken"),
      reinforced_low: number("1", "the same for weak wood and weak cloth"),
      reinforced_high: number("1", "the same for strong wood and strong cloth"),
      wood: number("1", "how many times the plain wood beside the joint bears it"),
      verdict: text("what it takes"),
    }),
    weakest: text("the joint that has least in hand, strips and all"),
    least_butt: number("1", "least that any plain butt joint has in hand, for weak wood"),
    least_reinforced: number("1", "least that any joint has in hand with strips, for weak wood and cloth"),
  },
  ({ weakest, least_butt, least_reinforced }) =>
    `${weakest}: ${numberText(least_butt, "1")} times the load plain, ${numberText(least_reinforced, "1")} times with strips, at worst`,
);
export type JointStrength = ValueOf<typeof strengthRecord>;

/** `joint_strength(wing, mass, density, …)`: what each joint bears, plain and reinforced. */
export const jointStrength = define({
  name: "joint_strength",
  summary:
    "Bending moment at each joint in a hand toss and in a gust, and how many times that it bears, plain and with strips.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    mass: number("g", "mass of the whole glider as it is then", { above: 0 }),
    density: number("kg/m^3", "density of the wing's balsa", { min: 60, max: 380 }),
    toss: number("1", "load factor of the hand toss: see toss_load_factor", { above: 0, default: 5 }),
    gust: number("1", "load factor in a gust: see gust_load_factor", { above: 0, default: 12 }),
    pull_up: number("1", "load factor of a pull-up under boost, if it is to be looked at", {
      above: 0,
      optional: true,
    }),
    cloth: number("g/m^2", "weight of the dry cloth of one layer", { above: 0, default: 0.025 }),
    layers: number("1", "layers of cloth on the lower face", { min: 1, max: 6, default: 1 }),
    weave: choice("how the threads run", Object.keys(weaves), { default: "straight" }),
    width: number("mm", "width of the strip over the joint", { above: 0, default: 0.02 }),
    sanded: number("%", "share of the blank's volume that sanding leaves", { above: 0, max: 1, default: 1 }),
    loading: choice("how lift lies over the span", Object.keys(loadings), { default: "elliptic" }),
    ...cutParameters,
  },
  result: strengthRecord,
  formula:
    "M = (n·W/2)·s·(4/π)·[(1 − η²)^1.5/3 − (η/2)(acos η − η√(1 − η²))]; plain: ¼·strength·I/z; with strips: the least of cloth and of its bond, times the thickness, and of the wood itself",
  errors: ["The wing has no joint.", "Layers are no whole number."],
  assumptions: [
    "A joint across the grain is an end-grain butt: at best a quarter of the wood's pull along the grain.",
    "Lift bends the tips up, so the lower face pulls; with strips the butt counts for nothing and the lower strip pulls alone, against the wood pressing above it.",
    "The thinner panel and the shorter chord count. The wing's own mass, which takes some off, is left out.",
    "Low and high take wood a quarter weaker and stronger, cloth a third. A peeling load, a landing on one tip and a bad glue line are not in it.",
  ],
  sources: [
    {
      text: "Wood Handbook, FPL-GTR-190, chapter 10: end-grain butt joints, about 25 % of the tensile strength",
      mark: "verified",
    },
    { text: "Elliptic lift, bending moment in closed form", mark: "derived" },
    { text: "Balsa by density: see balsa", mark: "verified" },
    {
      text: "E-glass cloth laid by hand, 500 to 1000 MPa along its fibres; at 45 deg about a quarter",
      mark: "from memory",
    },
  ],
  examples: [
    {
      summary: "40 g, 100 kg/m³, ten times its weight at the root: n·W·b/(3π) over 3 mm by 120 mm",
      arguments: { wing: threePanelWing, mass: 0.04, density: 100, toss: 10, gust: 1 },
      result: {
        joints: {
          load: [...Array(5).fill("toss"), ...Array(5).fill("gust")],
          joint: [
            "root",
            "right 1–2",
            "right 2–3",
            "left 1–2",
            "left 2–3",
            "root",
            "right 1–2",
            "right 2–3",
            "left 1–2",
            "left 2–3",
          ],
        },
        least_butt: (0.75 * 0.25 * 13.5e6 * (0.12 * 0.003 ** 2)) / 6 / ((10 * 0.04 * freeFall) / (3 * Math.PI)),
        weakest: "root",
      } as never,
    },
  ],
  compute: (given, refuse) => {
    const { wing, mass, density, cloth, layers, width, sanded } = given;
    if (!Number.isInteger(layers)) refuse("layers", `${layers} is no whole number. Count layers.`);
    const across = chosen(given.weave, acrossJoint, "weave", refuse);
    const loading = chosen(given.loading, loadings, "loading", refuse);
    const { joints } = cutJoints(given, refuse);
    if (joints.length === 0) refuse("wing", "The wing is one flat panel: it has no joint that could break.");
    const fill = sandedSection(sanded, 0.3);
    const wood = balsaOf(density);
    const halfSpan = (side: JointPlace["side"]) =>
      Math.abs(wing[side === "left" ? "left" : "right"].stations.y.at(-1) ?? 0);
    const cases = [
      ["toss", given.toss],
      ["gust", given.gust],
      ...(given.pull_up === undefined ? [] : [["pull-up", given.pull_up] as const]),
    ] as const;
    const rows = cases.flatMap(([load, factor]) =>
      joints.map((joint) => {
        const chord = cutLength(joint);
        const thickness = Math.min(joint.inner.thickness, joint.outer.thickness);
        const share = Math.abs(joint.outer.corner[1]) / halfSpan(joint.side);
        const moment = bendingMoment(factor * mass * freeFall, halfSpan(joint.side), share, loading);
        // Section modulus of the lower face: I / z with I = area · mean of (z − z̄)², from the sanded section.
        const modulus = (fill.share * chord * thickness * fill.zz * thickness ** 2) / (fill.z * thickness);
        const lever = sanded * thickness;
        const bearing = (strength: number, shear: number, glass: number) => {
          const pull = (cloth / glassDensity) * layers * across * glass * chord;
          const bond = shear * (width / 2) * chord;
          const plain = buttShare * strength * modulus;
          return { plain, strips: Math.max(plain, Math.min(Math.min(pull, bond) * lever, strength * modulus)) };
        };
        const usual = bearing(wood.strength, wood.shear, glassStrength[0]);
        const low = bearing(wood.strength_low, wood.shear * (wood.strength_low / wood.strength), glassStrength[1]);
        const high = bearing(wood.strength_high, wood.shear * (wood.strength_high / wood.strength), glassStrength[2]);
        const reserves = {
          butt: usual.plain / moment,
          butt_low: low.plain / moment,
          butt_high: high.plain / moment,
          reinforced: usual.strips / moment,
          reinforced_low: low.strips / moment,
          reinforced_high: high.strips / moment,
        };
        return {
          ...{ load, joint: joint.name, moment, stress: moment / modulus, wood: (wood.strength * modulus) / moment },
          ...reserves,
          verdict: verdict(reserves.butt_low, reserves.reinforced_low),
        };
      }),
    );
    const column = <K extends keyof (typeof rows)[number]>(name: K) => rows.map((row) => row[name]);
    const weakest = rows.reduce((worst, row) => (row.reinforced_low < worst.reinforced_low ? row : worst));
    return {
      joints: {
        load: column("load"),
        joint: column("joint"),
        moment: column("moment"),
        stress: column("stress"),
        butt: column("butt"),
        butt_low: column("butt_low"),
        butt_high: column("butt_high"),
        reinforced: column("reinforced"),
        reinforced_low: column("reinforced_low"),
        reinforced_high: column("reinforced_high"),
        wood: column("wood"),
        verdict: column("verdict"),
      },
      weakest: weakest.joint,
      least_butt: Math.min(...column("butt_low")),
      least_reinforced: weakest.reinforced_low,
    };
  },
});

/** What is in hand at worst, twice the load as the usual reserve (common practice). */
function verdict(butt: number, reinforced: number): string {
  if (butt >= 2) return "a plain butt joint bears it";
  if (reinforced >= 2) return "needs the strips";
  return reinforced >= 1
    ? "bears it with little in hand: add a layer or thickness"
    : "breaks even with strips: add layers, or thicker wood";
}
