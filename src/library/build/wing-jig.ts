import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { type Wing, wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";
import { patternOf } from "./flat-part.ts";
import { type JigPlan, jigParts } from "./jig-parts.ts";
import { cutJoints, cutParameters } from "./joint-bevels.ts";
import { patternRecord } from "./pattern-record.ts";
import { type RailNode, railLine } from "./rail.ts";
import { kerfParameter } from "./wing-blanks.ts";

/** How tight a slot is cut in each material, and the least height that must stay above one (common practice). */
const materials: Readonly<Record<string, { fit: number; web: number }>> = {
  cardboard: { fit: -0.0001, web: 0.006 },
  "sheet wood": { fit: 0.0001, web: 0.005 },
  "foam board": { fit: -0.0003, web: 0.008 },
};

const wingJigRecord = record(
  "wing_jig",
  "a jig on which a wing's lower face rests",
  {
    heights: table("each break and tip, from the left tip to the right one", {
      place: text("the joint or tip"),
      y: number("mm", "to the right of the centre line, at the front rail"),
      front: number("mm", "height of the front rail above the table"),
      rear: number("mm", "height of the rear rail above the table"),
      rise: number("mm", "what the rear rail stands higher by: the washout there"),
    }),
    front_x: number("mm", "front rail, aft of the root's leading edge"),
    rear_x: number("mm", "rear rail, aft of the root's leading edge"),
    length: number("mm", "length of the longer rail, tip to tip"),
    highest: number("mm", "highest place of the rails above the table"),
    pattern: patternRecord,
    notes: text("how it goes together"),
  },
  ({ length, highest, pattern }) =>
    `${numberText(length, "mm")} long, ${numberText(highest, "mm")} high, ${pattern.parts.part.length} parts`,
);
export type WingJig = ValueOf<typeof wingJigRecord>;

/** `wing_jig(wing, …)`: two rails under the whole wing, with what holds them upright. */
export const wingJig = define({
  name: "wing_jig",
  summary:
    "A jig of two rails on which the lower face rests over the whole span, with gussets, base and relief under the joints.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    material: choice("what the jig is cut from", Object.keys(materials), { default: "cardboard" }),
    thickness: number("mm", "thickness of that material as measured", { above: 0, max: 0.02, default: 0.003 }),
    base_height: number("mm", "lowest place of the wing above the table", { above: 0, max: 0.2, default: 0.02 }),
    relief: number("mm", "width kept free under each joint, so that no glue reaches the jig", {
      min: 0,
      default: 0.016,
    }),
    relief_depth: number("mm", "depth of that relief", { min: 0, default: 0.004 }),
    foot: number("mm", "least length on which a panel must rest", { above: 0, default: 0.01 }),
    front_x: number("mm", "front rail, aft of the root's leading edge; left out, as far forward as all panels reach", {
      optional: true,
    }),
    rear_x: number("mm", "rear rail; left out, as far aft as all panels reach", { optional: true }),
    kerf: kerfParameter,
    ...cutParameters,
  },
  result: wingJigRecord,
  formula:
    "height at y = z of the lower face there − its lowest z + base_height; the rear rail is higher by what washout raises the rear edge: chord way · sin(twist) · cos(cant)",
  errors: [
    "No straight rail passes under all panels, or a rail that was asked for leaves the wing.",
    "A panel is too short for the jig's foot beside the reliefs.",
    "The base is too low for relief, slot and web.",
    "The sheet is so thick that slots run into each other.",
    "A bevel is steeper than the steepest allowed.",
  ],
  assumptions: [
    "The line of the rails is the lower face of the wing before its section is sanded, so flat-bottomed panels rest on it all along.",
    "The rails stand across the flow, straight and parallel, right and left in one piece.",
    "Gussets stand along the flow; their slots meet the rails' from below, half each.",
    "Slots are cut tight in cardboard and foam board and loose in wood: 0.1 and 0.3 mm less, 0.1 mm more than the thickness.",
  ],
  sources: [
    { text: "The wing's own planes, cut at the rails", mark: "derived" },
    {
      text: "A foot each side of every joint and none under it; front and rear feet shimmed for washout",
      mark: "common practice",
    },
  ],
  examples: [
    {
      summary: "three panels of 3, 8 and 20 deg without washout: both rails are the front view",
      arguments: { wing: threePanelWing, base_height: 0.025 },
      result: {
        heights: {
          place: ["left tip", "left 2–3", "left 1–2", "root", "right 1–2", "right 2–3", "right tip"],
          y: [-0.5, -0.4, -0.2, 0, 0.2, 0.4, 0.5],
          front: [2, 1, 0, -1, 0, 1, 2].map((k) => 0.025 + rise(k)),
          rear: [2, 1, 0, -1, 0, 1, 2].map((k) => 0.025 + rise(k)),
          rise: [0, 0, 0, 0, 0, 0, 0],
        },
        length: 1,
        front_x: 0.006,
        rear_x: 0.054,
      },
    },
  ],
  isSlow: true,
  compute: (given, refuse) => {
    const { wing, material, thickness, base_height, relief, relief_depth, foot, kerf } = given;
    const { joints } = cutJoints(given, refuse);
    const { fit, web } = chosen(material, materials, "material", refuse);
    const [front_x, rear_x] = railPlaces(wing, given.front_x, given.rear_x, refuse);
    const lines = [railLine(wing, joints, front_x), railLine(wing, joints, rear_x)] as const;
    const lowest = Math.min(...lines.flat().map(({ z }) => z));
    const lift = (nodes: readonly RailNode[]) => nodes.map((node) => ({ ...node, z: node.z - lowest + base_height }));
    const [front, rear] = [lift(lines[0]), lift(lines[1])];
    for (const nodes of [front, rear]) refuseShort(nodes, relief, foot, refuse);
    const plan: JigPlan = {
      ...{ front, rear, front_x, rear_x, thickness, relief, relief_depth, web },
      slot: thickness + fit,
    };
    const parts = jigParts(plan, refuse);
    const all = [...front, ...rear];
    const width = (nodes: readonly RailNode[]) => (nodes.at(-1)?.y ?? 0) - (nodes[0]?.y ?? 0);
    return {
      heights: {
        place: front.map(({ name }) => name),
        y: front.map(({ y }) => y),
        front: front.map(({ z }) => z),
        rear: rear.map(({ z }) => z),
        rise: front.map(({ z }, index) => (rear[index]?.z ?? 0) - z),
      },
      ...{ front_x, rear_x },
      length: Math.max(width(front), width(rear)),
      highest: Math.max(...all.map(({ z }) => z)),
      pattern: patternOf(parts, kerf),
      notes:
        "Glue the base to something flat. Set the gussets on its marks, press the rails down into them, and hold a square to every crossing. " +
        "Lay film over the reliefs before any glue comes near.",
    };
  },
});

/** Of the example: height of its stations above the root, by their number. */
function rise(station: number): number {
  const slopes = [0.2 * Math.tan(degrees(3)), 0.2 * Math.tan(degrees(8)), 0.1 * Math.tan(degrees(20))];
  return slopes.slice(0, station + 1).reduce((sum, each) => sum + each, 0);
}

/** How far rails keep from the wing's edges. */
const inside = 0.006;

/** Where the rails stand, so that every panel lies over both. */
function railPlaces(wing: Wing, front: number | undefined, rear: number | undefined, refuse: Refuse) {
  const halves = [wing.right, wing.left];
  const leading = halves.flatMap(({ stations }) => stations.x);
  const trailing = halves.flatMap(({ stations, root_chord, tip_chord }) =>
    root_chord.flatMap((chord, i) => [(stations.x[i] ?? 0) + chord, (stations.x[i + 1] ?? 0) + (tip_chord[i] ?? 0)]),
  );
  const [first, last] = [Math.max(...leading), Math.min(...trailing)];
  const [a, b] = [front ?? first + inside, rear ?? last - inside];
  const mm = (length: number) => numberText(length, "mm");
  if ((front !== undefined || rear !== undefined) && last - first >= 0.01 && !(b - a >= 0.01)) {
    refuse(
      rear === undefined ? "front_x" : "rear_x",
      `The front rail at ${mm(a)} and the rear one at ${mm(b)}: the rear one has to lie 10 mm or more behind the front one, and both between ` +
        `${mm(first)} and ${mm(last)}.`,
    );
  }
  if (!(b - a >= 0.01)) {
    refuse(
      "wing",
      `Rails 10 mm apart or more do not fit under all panels: the leading edge reaches back to ${mm(first)}, the trailing edge comes ` +
        `forward to ${mm(last)}. Sweep less, or build flat, one panel at a time: see prop_heights.`,
    );
  }
  if (a < first || b > last) {
    const name = a < first ? "front_x" : "rear_x";
    refuse(
      name,
      `A rail at ${mm(a < first ? a : b)} leaves a panel: all of them lie between ${mm(first)} and ${mm(last)}.`,
    );
  }
  return [a, b] as const;
}

function refuseShort(nodes: readonly RailNode[], relief: number, foot: number, refuse: Refuse): void {
  nodes.slice(1).forEach((node, index) => {
    const before = nodes[index] as RailNode;
    if (node.kind === "joint" && before.kind === "joint" && node.name === before.name) return;
    const taken = [before, node].filter(({ kind }) => kind === "joint").length * (relief / 2);
    const left = node.y - before.y - taken;
    if (left < foot) {
      refuse(
        "foot",
        `Between ${before.name} and ${node.name} the panel rests on ${numberText(Math.max(0, left), "mm")} of the jig, less than the foot of ` +
          `${numberText(foot, "mm")}. Make the relief narrower, the foot shorter, or the panel longer.`,
      );
    }
  });
}
