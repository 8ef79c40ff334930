import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { define, number, record, text } from "../spec.ts";

/** What goes wrong most often at the table's edge. */
export const halfNotAll =
  "Each edge takes half of its joint's fold. Propped by the whole break, the two edges together would fold the joint twice as far.";

/** Height under a panel whose edge lies on the table's edge: h = L · sin β, L along the panel (derived). */
export const propHeight = (bevel: number, length: number): number => length * Math.sin(bevel);

/** Change of the bevel by the prop's height: dβ/dh = 1 / (L · cos β) (derived). */
export const propRate = (bevel: number, length: number): number => 1 / (length * Math.cos(bevel));

const sandingPropRecord = record(
  "sanding_prop",
  "a panel propped up at the table's edge",
  {
    height: number("mm", "height of the prop under the panel's lower face"),
    along_table: number("mm", "from the table's edge to the prop, along the table"),
    per_mm: number("deg/mm", "by how much the bevel changes for each millimetre of height"),
    fold: number("deg", "fold of the joint whose two edges are sanded so"),
    wrong_height: number("mm", "height that would sand the whole fold on one edge: the usual mistake"),
    warning: text("what to mind"),
  },
  ({ height, along_table, fold }) =>
    `${numberText(height, "mm")} high, ${numberText(along_table, "mm")} in from the edge, for a fold of ${numberText(fold, "deg")}`,
);

/** `sanding_prop(bevel, length)`. */
export const sandingProp = define({
  name: "sanding_prop",
  summary: "How high to prop a panel whose edge lies on the table's edge, so that an upright block sands the bevel.",
  topic: "build",
  parameters: {
    bevel: number("deg", "wanted bevel: half of the joint's fold", { min: 0, max: degrees(44) }),
    length: number("mm", "from the edge to the prop, along the panel", { above: 0 }),
  },
  result: sandingPropRecord,
  formula: "height = length · sin(bevel); per_mm = 1 / (length · cos(bevel)); fold = 2·bevel",
  errors: [],
  assumptions: [
    "The panel lies on its lower face with the edge flush with the table's edge; the block runs upright along it, so the wood comes off the upper edge.",
    "Length along the panel, not along the table.",
  ],
  sources: [
    { text: "Right-angled triangle of panel, prop and table", mark: "derived" },
    { text: "Panel propped up, edge flush with the square edge of the bench, block held upright", mark: "verified" },
  ],
  examples: [
    {
      summary: "a bevel of 11 deg on a panel propped 150 mm from its edge",
      arguments: { bevel: degrees(11), length: 0.15 },
      result: {
        height: 0.15 * Math.sin(degrees(11)),
        along_table: 0.15 * Math.cos(degrees(11)),
        per_mm: 1 / (0.15 * Math.cos(degrees(11))),
        fold: degrees(22),
        wrong_height: 0.15 * Math.sin(degrees(22)),
      },
    },
  ],
  compute: ({ bevel, length }) => ({
    height: propHeight(bevel, length),
    along_table: length * Math.cos(bevel),
    per_mm: propRate(bevel, length),
    fold: 2 * bevel,
    wrong_height: propHeight(2 * bevel, length),
    warning: halfNotAll,
  }),
});
