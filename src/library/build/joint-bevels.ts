import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { type Wing, wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";
import { edgesOf, type PanelEdge, refuseSteep, refuseThick } from "./edges.ts";
import { type JointPlace, jointPlaces, type WashoutBy } from "./joint-place.ts";
import { panelPlaces } from "./panel-place.ts";
import { halfNotAll, propHeight, propRate } from "./sanding-prop.ts";

const washoutWays: Readonly<Record<string, WashoutBy>> = { cut: "cut", step: "step" };

/** What functions that cut joints take, besides the wing. */
export const cutParameters = {
  washout: choice(
    "how washout gained at a joint is come by: cut, the joint line is cut askew so that the edges close; step, it is cut along the flow and the trailing edges step",
    Object.keys(washoutWays),
    { default: "cut" },
  ),
  steepest: number("deg", "steepest bevel that the wood's edge holds", {
    above: 0,
    max: degrees(60),
    default: degrees(30),
  }),
};

/** The joints and their glued edges, refused where they cannot be made. */
export function cutJoints(
  { wing, washout, steepest }: { wing: Wing; washout: string; steepest: number },
  refuse: Refuse,
): { joints: readonly JointPlace[]; edges: readonly PanelEdge[] } {
  refuseThick(panelPlaces(wing), refuse);
  const joints = jointPlaces(wing, chosen(washout, washoutWays, "washout", refuse));
  const edges = edgesOf(joints);
  refuseSteep(edges, steepest, "wing", refuse);
  return { joints, edges };
}

const jointTable = table("each joint: root, then right and left from the root out", {
  joint: text("its name: root, or the panels that it joins"),
  distance: number("mm", "along the panels from the root"),
  fold: number("deg", "between the two lower faces; below 0 where the outer panel goes down"),
  bevel: number("deg", "off square on each of the two edges: half the fold"),
  chord: number("mm", "length of the cut, along the joint line"),
  skew: number("deg", "of the cut to the inner panel's chord, above 0 where the trailing-edge end lies farther out"),
  outer_skew: number("deg", "of the cut to the outer panel's chord"),
  step: number("mm", "how far apart the trailing edges stand; 0 where the joint closes"),
});
const edgeTable = table("each edge to be sanded", {
  panel: text("panel"),
  edge: text("inboard or outboard"),
  joint: text("the joint it belongs to"),
  bevel: number("deg", "off square"),
  takes_from: text("the face whose edge the wood comes off: upper or lower"),
  thickness: number("mm", "thickness of the panel there, as measured"),
  off: number("mm", "how far that face ends short of the other, square to the joint line"),
  face: number("mm", "height of the glued face along its slope"),
  prop_at: number("mm", "along the panel from the edge to the prop"),
  prop_height: number("mm", "height of the prop under the panel there, edge on the table's edge, block held upright"),
  per_mm: number("deg/mm", "by how much the bevel changes for each millimetre of prop height"),
});

/** What `joint_bevels` gives. */
export const jointBevelsRecord = record(
  "joint_bevels",
  "folds, bevels and props of all joints",
  { joints: jointTable, edges: edgeTable, warning: text("what to mind at the table's edge") },
  ({ joints }) => {
    const steepest = Math.max(0, ...joints.bevel.map(Math.abs));
    const count = joints.joint.length;
    return `${count} ${count === 1 ? "joint" : "joints"}, bevels up to ${numberText(steepest, "deg")}`;
  },
);
export type JointBevels = ValueOf<typeof jointBevelsRecord>;

/** `joint_bevels(wing, …)`: what to sand on each edge. */
export const jointBevels = define({
  name: "joint_bevels",
  summary: "Fold of each joint, bevel of each edge, and how high to prop a panel at the table's edge to sand it.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    prop_at: number(
      "mm",
      "where the prop stands, along the panel from the edge; left out, or beyond it, at the far end",
      {
        above: 0,
        optional: true,
      },
    ),
    ...cutParameters,
  },
  result: jointBevelsRecord,
  formula:
    "fold = angle between the lower faces' normals (at the root of a V of G a side: 2·G); bevel = fold/2; off = thickness · tan(bevel); prop_height = prop_at · sin(bevel)",
  errors: ["A bevel is steeper than the steepest allowed.", "The bevels of a panel leave nothing of its face."],
  assumptions: [
    "The lower face keeps its full length; each edge loses wood at its upper edge, by its own thickness. Where the outer panel goes down, it is the lower edge.",
    "Washout that is cut: the joint line is where the planes of both lower faces meet. A fold too small for that steps instead, and step says by how much.",
    "Thickness as measured, not as sold: 1/8 in is 3.2 mm and not 3.",
    "Sand bevels before the section, while the edge still has its full height along the chord.",
  ],
  sources: [
    { text: "Two planes folded about their common line: each edge is cut at half the fold (mitre)", mark: "derived" },
    { text: "Panel propped up, edge flush with the square edge of the bench, block held upright", mark: "verified" },
  ],
  examples: [
    {
      summary: "panels at 3, 8 and 20 deg: folds of 6, 5 and 12 deg",
      arguments: { wing: threePanelWing, prop_at: 0.08 },
      result: {
        joints: {
          joint: ["root", "right 1–2", "right 2–3", "left 1–2", "left 2–3"],
          distance: [
            0,
            0.2 / Math.cos(degrees(3)),
            0.2 / Math.cos(degrees(3)) + 0.2 / Math.cos(degrees(8)),
            0.2 / Math.cos(degrees(3)),
            0.2 / Math.cos(degrees(3)) + 0.2 / Math.cos(degrees(8)),
          ],
          fold: [degrees(6), degrees(5), degrees(12), degrees(5), degrees(12)],
          bevel: [degrees(3), degrees(2.5), degrees(6), degrees(2.5), degrees(6)],
          chord: [0.12, 0.12, 0.1, 0.12, 0.1],
          skew: [0, 0, 0, 0, 0],
          outer_skew: [0, 0, 0, 0, 0],
          step: [0, 0, 0, 0, 0],
        },
      },
    },
  ],
  compute: ({ prop_at, ...given }, refuse) => {
    const { joints, edges } = cutJoints(given, refuse);
    const each = <T, V>(list: readonly T[], value: (of: T) => V): V[] => list.map(value);
    const propOf = ({ panel }: PanelEdge) => Math.min(prop_at ?? panel.length, panel.length);
    return {
      joints: {
        joint: each(joints, ({ name }) => name),
        distance: each(joints, ({ distance }) => distance),
        fold: each(joints, ({ fold }) => fold),
        bevel: each(joints, ({ fold }) => fold / 2),
        chord: each(joints, cutLength),
        skew: each(joints, ({ innerSkew }) => settled(innerSkew)),
        outer_skew: each(joints, ({ outerSkew }) => settled(outerSkew)),
        step: each(joints, ({ step }) => step),
      },
      edges: {
        panel: each(edges, ({ panel }) => panel.name),
        edge: each(edges, ({ end }) => end),
        joint: each(edges, ({ joint }) => joint.name),
        bevel: each(edges, ({ bevel }) => Math.abs(bevel)),
        takes_from: each(edges, ({ bevel }) => (bevel < 0 ? "lower" : "upper")),
        thickness: each(edges, ({ panel }) => panel.thickness),
        off: each(edges, ({ off }) => off),
        face: each(edges, ({ panel, bevel }) => panel.thickness / Math.cos(bevel)),
        prop_at: each(edges, propOf),
        prop_height: each(edges, (edge) => propHeight(Math.abs(edge.bevel), propOf(edge))),
        per_mm: each(edges, (edge) => propRate(Math.abs(edge.bevel), propOf(edge))),
      },
      warning: halfNotAll,
    };
  },
});

/** Length of a joint: where two chords meet along one line, the shorter one is glued all along. */
export const cutLength = ({ inner, outer, innerSkew, outerSkew, side }: JointPlace): number =>
  Math.min(
    (side === "root" ? inner.root_chord : inner.tip_chord) / Math.cos(innerSkew),
    outer.root_chord / Math.cos(outerSkew),
  );

/** A cut along the flow has no skew but rounding. */
const settled = (angle: number): number => (Math.abs(angle) < 1e-12 ? 0 : angle);
