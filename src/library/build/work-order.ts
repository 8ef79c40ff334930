import { chosen } from "../chosen.ts";
import { sampleGlider } from "../glide/sample-gliders.ts";
import { numberText } from "../number-text.ts";
import type { Glider } from "../shape/glider-record.ts";
import { gliderRecord } from "../shape/glider-record.ts";
import { boolean, choice, define, number, record, table, text, type ValueOf } from "../spec.ts";
import { cautions, localCodes } from "./cautions.ts";
import { cutJoints, cutParameters } from "./joint-bevels.ts";
import type { JointPlace } from "./joint-place.ts";

const glues: Readonly<Record<string, "cyanoacrylate" | "epoxy">> = { cyanoacrylate: "cyanoacrylate", epoxy: "epoxy" };

const workOrderRecord = record(
  "work_order",
  "the order of work",
  {
    steps: table("each step", {
      step: number("1", "its number"),
      part: text("the part of the work it belongs to"),
      work: text("what is done"),
      caution: text("what to mind; empty where nothing is special"),
      wait: number("min", "how long to leave it before going on"),
      check: text("what must be so before going on"),
    }),
    wait: number("h", "all waits together"),
    codes: text("whose rules come first"),
  },
  ({ steps, wait }) => `${steps.step.length} steps, ${numberText(wait, "h")} of waiting`,
);
export type WorkOrder = ValueOf<typeof workOrderRecord>;

/** `work_order(glider, …)`: how this design is built, step by step. */
export const workOrder = define({
  name: "work_order",
  summary:
    "The order of work for this design: each step with its caution, its wait, and what to check before going on.",
  topic: "build",
  parameters: {
    glider: gliderRecord,
    glue: choice("what the joints are glued with", Object.keys(glues), { default: "cyanoacrylate" }),
    strips: { ...boolean("true where cloth strips go over the joints"), default: true } as const,
    jig: {
      ...boolean("true where the wing is glued on a jig, false where it is propped panel by panel"),
      default: true,
    } as const,
    tolerance: number("deg", "how far a joint's angle may be off", { above: 0, default: Math.PI / 180 }),
    ...cutParameters,
  },
  result: workOrderRecord,
  formula: "the steps that the design's own panels, joints, washout and tail need, in order",
  errors: ["A bevel is steeper than the steepest allowed."],
  assumptions: [
    "Waits are for a warm, dry room: cyanoacrylate in a close joint hardens in minutes, epoxy and cloth over night.",
    "The cautions are reminders at the step, not a substitute for the data sheet of what is used.",
  ],
  sources: [
    { text: "Order of work and waits", mark: "common practice" },
    {
      text: "HSE: wood dust, hardwood 3 mg/m³, FFP3 or half-mask P3; HSE RR646: cyanoacrylate 0.3 ppm over 15 min",
      mark: "verified",
    },
    { text: "NIOSH and OSHA on fibrous glass dust; first aid for cyanoacrylate on skin and cotton", mark: "verified" },
  ],
  examples: [
    {
      summary: "a level centre and tips at 20 deg, glued on a jig and reinforced",
      arguments: { glider: sampleGlider },
      result: { codes: localCodes },
    },
  ],
  isSlow: true,
  compute: ({ glider, glue, strips, jig, tolerance, ...cut }, refuse) => {
    const { wing } = glider;
    const { joints } = cutJoints({ wing, ...cut }, refuse);
    const isFast = chosen(glue, glues, "glue", refuse) === "cyanoacrylate";
    const steps = [
      ...prepare(glider),
      ...(joints.length > 0 ? bevel(joints, jig) : []),
      ...(joints.length > 0 ? join(joints, { isFast, strips, jig, tolerance }) : []),
      ...shape(glider),
      ...body(glider, isFast),
      ...fly(glider),
    ];
    return {
      steps: {
        step: steps.map((_, index) => index + 1),
        part: steps.map(({ part }) => part),
        work: steps.map(({ work }) => work),
        caution: steps.map(({ caution }) => caution.map((each) => cautions[each]).join(" ")),
        wait: steps.map(({ wait }) => wait * 60),
        check: steps.map(({ check }) => check),
      },
      wait: steps.reduce((sum, { wait }) => sum + wait * 60, 0),
      codes: localCodes,
    };
  },
});

interface Step {
  readonly part: string;
  readonly work: string;
  readonly caution: readonly (keyof typeof cautions)[];
  /** Minutes. */
  readonly wait: number;
  readonly check: string;
}

const deg = (angle: number): string => numberText(Math.abs(angle), "deg");
const mm = (length: number): string => numberText(length, "mm");

function prepare({ wing }: Glider): Step[] {
  const thicknesses = [...new Set(wing.right.thickness)].sort((a, b) => b - a).map(mm);
  return [
    {
      part: "wood",
      work: `Pick quarter-grain sheet of ${thicknesses.join(", ")}. Weigh and measure each sheet and write both on it.`,
      caution: [],
      wait: 0,
      check: "Thickness as measured stands in the notebook, not as sold.",
    },
    {
      part: "wood",
      work: `Print the sheets, check their rules, and cut ${wing.panels} panels a side with the grain along the arrows.`,
      caution: ["blade"],
      wait: 0,
      check: "The printed 100 mm measures 100 mm; right and left lie on each other as mirror images.",
    },
    {
      part: "wood",
      work: "Weigh the blanks and pair them, right with left.",
      caution: [],
      wait: 0,
      check: "Each pair within 0.1 g, or its odd half marked for the tip that needs it.",
    },
  ];
}

function bevel(joints: readonly JointPlace[], jig: boolean): Step[] {
  const folds = [
    ...new Map(joints.map((joint) => [joint.name.replace(/^left|^right/, "joint"), joint.fold / 2])).entries(),
  ];
  const stepped = joints.some(({ step }) => step > 0);
  return [
    ...(jig
      ? [
          {
            part: "jig",
            work: "Cut the jig's rails and gussets, put them together on the base, and glue with wood glue.",
            caution: ["blade"],
            wait: 30,
            check: "Both rails upright by a square; every panel lies on both without rocking.",
          } as const,
        ]
      : []),
    ...folds.map(
      ([name, angle]): Step => ({
        part: "joints",
        work: `Sand the bevels of the ${name.trim()}: ${deg(angle)} on each of its edges, panel propped at the table's edge. Half of the fold, not all of it.`,
        caution: ["woodDust"],
        wait: 0,
        check:
          "Held together dry, the two edges touch along their whole length, above and below, without light between them.",
      }),
    ),
    ...(stepped
      ? [
          {
            part: "joints",
            work: "Where the washout steps, fair the edges with a strip of scrap wood, so that they touch all along.",
            caution: ["woodDust"],
            wait: 0,
            check: "No gap wider than a sheet of paper.",
          } as const,
        ]
      : []),
  ];
}

function join(
  joints: readonly JointPlace[],
  { isFast, strips, jig, tolerance }: { isFast: boolean; strips: boolean; jig: boolean; tolerance: number },
): Step[] {
  const glued = isFast
    ? "Tack each joint with two or three drops of medium cyanoacrylate; check its angle; then let thin run in from the middle outward."
    : "Coat both edges with epoxy and press them together; wipe off what comes out.";
  const where = jig
    ? "in the jig, film over its reliefs"
    : "one panel weighted flat, the next one propped by the whole fold";
  return [
    {
      part: "joints",
      work: `Dry-fit all panels ${where}; tape the joints on their lower faces as hinges.`,
      caution: [],
      wait: 0,
      check: "Every panel lies down; centre line and joint lines stand over their marks.",
    },
    {
      part: "joints",
      work: `Glue ${joints.length === 1 ? "the joint" : `the ${joints.length} joints`} from the root out. ${glued}`,
      caution: [isFast ? "glue" : "epoxy"],
      wait: isFast ? 10 : 12 * 60,
      check: `Angles within ${deg(tolerance)} of the plan by height and length, right and left within ${deg(tolerance)} of each other. Incidence right and left within half a degree: that counts most.`,
    },
    ...(strips
      ? ([
          {
            part: "joints",
            work: `Lay the strips dry on the upper face, narrowest first, smooth them down under film, and let ${isFast ? "thin cyanoacrylate" : "resin"} soak in from the joint outward.`,
            caution: [isFast ? "clothGlue" : "epoxy"],
            wait: isFast ? 30 : 12 * 60,
            check: "The cloth is clear all over, without white, dry patches.",
          },
          {
            part: "joints",
            work: "Take the wing off, turn it over and do the same below.",
            caution: [isFast ? "clothGlue" : "epoxy"],
            wait: isFast ? 30 : 12 * 60,
            check: "Laid back on its rest, the wing still lies down everywhere.",
          },
          {
            part: "joints",
            work: "Feather the edges of the strips and trim what stands out.",
            caution: ["glassDust"],
            wait: 0,
            check: "A finger feels no edge; weigh the wing.",
          },
        ] as const)
      : []),
  ];
}

function shape({ wing }: Glider): Step[] {
  const washedOut = Math.max(...wing.right.twist.map(Math.abs));
  return [
    {
      part: "wing",
      work: "Sand the section by its templates, flat on the bench, right and left by turns; keep off the joints.",
      caution: ["woodDust"],
      wait: 0,
      check: "Each template sits down all along; right and left halves weigh alike.",
    },
    {
      part: "wing",
      work: `Seal with thin coats on both faces alike, and look along the wing from behind${washedOut > 0.001 ? `: the tips show ${deg(washedOut)} of washout, alike` : ": no tip is turned"}.`,
      caution: ["glue"],
      wait: 60,
      check: "Measured again at every tip: incidence right and left within half a degree.",
    },
  ];
}

function body({ tailplane, fin, stick, seat_angle, decalage }: Glider, isFast: boolean): Step[] {
  const parts = [tailplane && "tailplane", fin && "fin", stick && "stick"].filter(Boolean);
  if (parts.length === 0) return [];
  return [
    {
      part: "body",
      work: `Cut ${parts.join(", ")}; sand the leading edges round and the trailing edges thin; mark where all of it stands.`,
      caution: ["blade", "woodDust"],
      wait: 0,
      check: "Each part within its budget on the scales.",
    },
    {
      part: "body",
      work: `Fit the wing's seat: ${deg(seat_angle)} on the stick, its groove to the root joint. Glue seat${tailplane ? ", tailplane" : ""}${fin ? " and fin" : ""} square to each other.`,
      caution: [isFast ? "glue" : "epoxy"],
      wait: isFast ? 15 : 12 * 60,
      check: `From the front the tail lies level with the wing's root, the fin stands upright${decalage === undefined ? "" : `; decalage ${deg(decalage)} within a quarter of a degree`}.`,
    },
  ];
}

function fly({ balance, wing }: Glider): Step[] {
  const where = balance ? `${mm(balance.x)} behind the root's leading edge` : "where the notebook says";
  return [
    {
      part: "trim",
      work: `Weigh all of it. Add clay until it balances ${where}, and level across.`,
      caution: [],
      wait: 0,
      check: "All-up mass and clay stand in the notebook.",
    },
    {
      part: "trim",
      work: "Toss it level over long grass, three to five times for each change, and log every toss. One change at a time.",
      caution: ["toss"],
      wait: 0,
      check: `It glides straight or in a wide turn without stalling${wing.mirrored ? "" : ", as its unlike halves are meant to"}; only then is it boosted.`,
    },
  ];
}
