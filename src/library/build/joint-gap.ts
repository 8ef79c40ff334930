import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { boolean, define, number, record, table, text } from "../spec.ts";

/**
 * The widest gap that an adhesive fills. Cyanoacrylates: Handbook of Adhesive Technology, gap-filling limits of thin,
 * medium and high-viscosity grades, 2, 10 and 15 to 20 mil; thickened epoxy 1 to 2 mm (from memory).
 */
const fillers: readonly (readonly [name: string, limit: number])[] = [
  ["thin cyanoacrylate", 0.05e-3],
  ["medium cyanoacrylate", 0.25e-3],
  ["thick cyanoacrylate", 0.4e-3],
  ["thickened epoxy", 1e-3],
];

/** What the folds of a wing may be off: common practice. A joint beyond it is sanded anew, whatever would fill it. */
const mostError = degrees(1);

const gapRecord = record(
  "joint_gap",
  "the gap of a joint sanded at a wrong angle",
  {
    gap: number("mm", "how far the joint stands open at one face while it touches at the other"),
    least: text("the thinnest adhesive that fills it; none where it must be sanded anew"),
    resand: boolean(
      "true where the bevels are to be sanded anew: nothing fills the gap, or they miss the fold by more than 1 deg and a wedge of adhesive would have to hold the angle",
    ),
    widest_error: number("deg", "error of the two edges together up to which thin cyanoacrylate still fills the joint"),
    adhesives: table("each adhesive against the gap", {
      adhesive: text("adhesive"),
      limit: number("mm", "widest gap that it fills"),
      fills: boolean("true where it fills this gap"),
    }),
  },
  ({ gap, least, resand }) =>
    `${numberText(gap, "mm")} open: ${least === "none" ? "sand it anew" : resand ? `${least} fills it, but sand it anew` : `takes ${least}`}`,
);

/** `joint_gap(thickness, angle_error, …)`. */
export const jointGap = define({
  name: "joint_gap",
  summary: "How far a joint gapes when its two bevels do not add up to the fold, and which adhesive still fills it.",
  topic: "build",
  parameters: {
    thickness: number("mm", "thickness of the thinner panel at the joint, as measured", { above: 0 }),
    angle_error: number("deg", "what the two bevels together miss of the fold", {
      above: -degrees(45),
      below: degrees(45),
    }),
    unevenness: number("mm", "hollow or bow of the sanded edges, both together", { min: 0, default: 0 }),
  },
  result: gapRecord,
  formula: "gap = thickness · tan |angle_error| + unevenness",
  errors: [],
  assumptions: [
    "The panels are held at the planned angle, so that an error opens the joint instead of bending the wing.",
    "Where the bevels miss the fold by more than 1 deg the joint touches at one face only. A wedge of adhesive fills it, shrinks as it sets, pulls the angle with it, and holds less: sand the edges anew.",
    "Cyanoacrylate in a wide gap takes an hour where it takes seconds in a close one.",
  ],
  sources: [
    { text: "Wedge between two faces", mark: "derived" },
    {
      text: "Handbook of Adhesive Technology: cyanoacrylates fill about 2 mil thin, 10 mil medium, 15 to 20 mil thick; 10 s at 1 mil, an hour at 15 mil",
      mark: "verified",
    },
    { text: "Thickened epoxy fills 1 to 2 mm", mark: "from memory" },
    { text: "Joints within 1 deg; beyond that sanded anew", mark: "common practice" },
  ],
  examples: [
    {
      summary: "1 deg on 3.175 mm: just more than thin cyanoacrylate fills",
      arguments: { thickness: 0.003175, angle_error: degrees(1) },
      result: {
        gap: 0.003175 * Math.tan(degrees(1)),
        least: "medium cyanoacrylate",
        resand: false,
        widest_error: Math.atan(0.05 / 3.175),
      },
    },
    {
      summary:
        "the whole fold of 7 deg on each edge instead of half: thick adhesive would fill it, and yet it is wrong",
      arguments: { thickness: 0.003, angle_error: degrees(7) },
      result: { gap: 0.003 * Math.tan(degrees(7)), least: "thick cyanoacrylate", resand: true },
    },
    {
      summary: "a coarse edge: 4 deg on 3 mm, bowed by 1 mm",
      arguments: { thickness: 0.003, angle_error: degrees(-4), unevenness: 0.001 },
      result: { gap: 0.001 + 0.003 * Math.tan(degrees(4)), least: "none" },
    },
  ],
  compute: ({ thickness, angle_error, unevenness }) => {
    const gap = thickness * Math.tan(Math.abs(angle_error)) + unevenness;
    const fills = fillers.map(([, limit]) => gap <= limit);
    return {
      gap,
      resand: !fills.includes(true) || Math.abs(angle_error) > mostError * (1 + 1e-9),
      least: fillers.find(([, limit]) => gap <= limit)?.[0] ?? "none",
      widest_error: Math.atan(Math.max(0, (fillers[0]?.[1] ?? 0) - unevenness) / thickness),
      adhesives: {
        adhesive: fillers.map(([name]) => name),
        limit: fillers.map(([, limit]) => limit),
        fills,
      },
    };
  },
});
