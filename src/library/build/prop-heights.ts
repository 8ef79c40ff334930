import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { dot, from, type Vector } from "../numerics/vector3.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number, record, table, text } from "../spec.ts";
import { cutJoints, cutParameters } from "./joint-bevels.ts";

const propsRecord = record(
  "prop_heights",
  "props for building flat, one panel at a time",
  {
    props: table("each joint: the inner panel flat on the table, the outer one propped", {
      joint: text("the joint"),
      flat: text("the panel that is weighted down flat"),
      propped: text("the panel that is propped"),
      at: number("mm", "where the prop stands, along the propped panel from the joint"),
      front: number("mm", "height under its leading edge there"),
      rear: number("mm", "height under its trailing edge there"),
    }),
    warning: text("what to mind"),
  },
  ({ props }) =>
    `${props.joint.length} joints, props up to ${numberText(Math.max(0, ...props.front, ...props.rear), "mm")}`,
);

/** `prop_heights(wing, …)`: how high to prop each panel, the one inboard of it flat on the table. */
export const propHeights = define({
  name: "prop_heights",
  summary: "How high to prop each panel when the one inboard of it lies flat on the table: building without a jig.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    prop_at: number("mm", "where the prop stands, along the panel from the joint; left out, or beyond it, at the tip", {
      above: 0,
      optional: true,
    }),
    ...cutParameters,
  },
  result: propsRecord,
  formula: "height = length · sin(fold) under the leading edge; under the trailing edge with what its washout adds",
  errors: ["A bevel is steeper than the steepest allowed."],
  assumptions: [
    "Here the whole fold counts, not half of it: the joint is glued, not sanded.",
    "At the root the left half lies flat and the right root panel is propped by twice its cant.",
    "Glue from the root out or from the tips in; what is glued already may hang over the table's edge.",
  ],
  sources: [{ text: "Places of one panel above the plane of another", mark: "derived" }],
  examples: [
    {
      summary: "panels at 3, 8 and 20 deg: folds of 6, 5 and 12 deg, props at 80 mm",
      arguments: { wing: threePanelWing, prop_at: 0.08 },
      result: {
        props: {
          joint: ["root", "right 1–2", "right 2–3", "left 1–2", "left 2–3"],
          flat: ["left 1", "right 1", "right 2", "left 1", "left 2"],
          propped: ["right 1", "right 2", "right 3", "left 2", "left 3"],
          at: [0.08, 0.08, 0.08, 0.08, 0.08],
          front: [6, 5, 12, 5, 12].map((fold) => 0.08 * Math.sin(degrees(fold))),
          rear: [6, 5, 12, 5, 12].map((fold) => 0.08 * Math.sin(degrees(fold))),
        },
      },
    },
  ],
  compute: ({ prop_at, ...given }, refuse) => {
    const { joints } = cutJoints(given, refuse);
    const rows = joints.map(({ name, inner, outer }) => {
      const at = Math.min(prop_at ?? outer.length, outer.length);
      const share = at / outer.length;
      const chord = outer.root_chord + (outer.tip_chord - outer.root_chord) * share;
      const above = (aft: number) => dot(from(zero, [at, outer.out], [share * outer.sweep + aft, outer.aft]), inner.up);
      return { name, flat: inner.name, propped: outer.name, at, front: above(0), rear: above(chord) };
    });
    return {
      props: {
        joint: rows.map(({ name }) => name),
        flat: rows.map(({ flat }) => flat),
        propped: rows.map(({ propped }) => propped),
        at: rows.map(({ at }) => at),
        front: rows.map(({ front }) => front),
        rear: rows.map(({ rear }) => rear),
      },
      warning:
        "Props for gluing take the whole fold; props for sanding take half of it. Mark them, so that they are not mistaken.",
    };
  },
});

const zero: Vector = [0, 0, 0];
