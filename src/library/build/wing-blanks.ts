import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, record, table, text, type ValueOf } from "../spec.ts";
import { type Blank, blankOf, type Grain } from "./blank-part.ts";
import { type FlatPart, patternOf } from "./flat-part.ts";
import { cutJoints, cutParameters } from "./joint-bevels.ts";
import { isContinuous } from "./joint-place.ts";
import { type PanelPlace, panelPlaces } from "./panel-place.ts";
import { patternRecord } from "./pattern-record.ts";
import { bounds, corners, keepsEdges, type Point } from "./polygon.ts";

const grains: Readonly<Record<string, Grain>> = { span: "span", "leading edge": "leading edge" };

/** What functions that cut with a laser or a knife take. */
export const kerfParameter = number("mm", "width of the cut: half of it is added outside each part", {
  min: 0,
  max: 0.002,
  default: 0,
});

const wingBlanksRecord = record(
  "wing_blanks",
  "the panels of a wing as they are cut from sheet",
  {
    panels: table("each blank", {
      panel: text("its name: right 1 is the right root panel"),
      hand: text("right, left, or both for a centre panel in one piece"),
      length: number("mm", "lower face, along the panel: the full length"),
      upper_length: number("mm", "upper face, once the bevels are sanded"),
      thickness: number("mm", "thickness as measured"),
      area: number("cm^2", "lower face"),
      mass: number("g", "blank as cut; left out where no density is known", { optional: true }),
      bevelled_mass: number("g", "with its bevels sanded, before the section", { optional: true }),
    }),
    area: number("cm^2", "all lower faces"),
    mass: number("g", "all blanks as cut; left out where no density is known", { optional: true }),
    pattern: patternRecord,
  },
  ({ panels, area, mass }) =>
    `${panels.panel.length} ${panels.panel.length === 1 ? "blank" : "blanks"}, ${numberText(area, "cm^2")}${mass === undefined ? "" : `, ${numberText(mass, "g")}`}`,
);
export type WingBlanks = ValueOf<typeof wingBlanksRecord>;

/** `wing_blanks(wing, …)`: the panels as they are cut. */
export const wingBlanks = define({
  name: "wing_blanks",
  summary: "The outline of each panel as it is cut from sheet, right and left, with bevel lines, grain and names.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    kerf: kerfParameter,
    margin: number("mm", "wood left along leading and trailing edge and at the tips, to be sanded away", {
      min: 0,
      max: 0.02,
      default: 0,
    }),
    grain: choice("which way the grain runs", Object.keys(grains), { default: "span" }),
    density: number("kg/m^3", "density of the wood; left out, the column density of the table of panels", {
      above: 0,
      optional: true,
    }),
    ...cutParameters,
  },
  result: wingBlanksRecord,
  formula:
    "lower face: the panel's own length, chords and sweep, its ends along the joint lines; upper_length = length − off of each bevel, + off where the outer panel goes down; mass = density · thickness · (area + what the blank is longer by)",
  errors: [
    "A bevel is steeper than the steepest allowed, or takes all of a face.",
    "The joint lines of a short panel lie so far askew that they meet within it.",
  ],
  assumptions: [
    "Seen from above, the leading edge up. Each side has its own hand: the left is the mirror of the right.",
    "A scored line beside a glued edge is where the upper face ends once the bevel is sanded. Where the outer panel goes down, the blank is longer by what the lower edge loses.",
    "A joint that is cut askew to carry washout moves a little area from one panel to the next; along the flow the areas add up to the wing's developed area.",
    "Chords and sweep as the wing has them; joint lines turn about the leading edge.",
  ],
  sources: [
    { text: "Straight-edged panel laid flat; shoelace formula", mark: "derived" },
    {
      text: "Grain along the span in every wing panel; along the leading edge where it is swept",
      mark: "common practice",
    },
  ],
  examples: [
    {
      summary: "three panels a side of 3 mm at 120 kg/m³",
      arguments: { wing: threePanelWing, density: 120 },
      result: {
        area: threePanelWing.developed_area,
        mass: 120 * 0.003 * threePanelWing.developed_area,
      },
    },
    {
      summary: "its root panel: bevels of 3 deg at the root and 2.5 deg outside take from the upper face",
      arguments: { wing: threePanelWing, density: 120 },
      result: {
        panels: {
          panel: ["right 1", "right 2", "right 3", "left 1", "left 2", "left 3"],
          hand: ["right", "right", "right", "left", "left", "left"],
          upper_length: [1, -1].flatMap(() => [
            0.2 / Math.cos(degrees(3)) - 0.003 * (Math.tan(degrees(3)) + Math.tan(degrees(2.5))),
            0.2 / Math.cos(degrees(8)) - 0.003 * (Math.tan(degrees(2.5)) + Math.tan(degrees(6))),
            0.1 / Math.cos(degrees(20)) - 0.003 * Math.tan(degrees(6)),
          ]),
        },
      } as never,
    },
  ],
  isSlow: true,
  compute: ({ kerf, margin, grain, density, ...given }, refuse) => {
    const { edges } = cutJoints(given, refuse);
    const along = chosen(grain, grains, "grain", refuse);
    const { wing } = given;
    const places = panelPlaces(wing);
    const whole = isContinuous(wing);
    const blanks = places.map((panel) => {
      const isHalf = whole && panel.number === 1;
      const blank = blankOf(panel, edges, margin, isHalf ? "span" : along);
      if (
        !keepsEdges(
          blank.part.edges,
          corners(blank.part.edges, () => 0),
        )
      ) {
        refuse(
          "wing",
          `The joint lines of panel ${panel.name} lie so far askew that they meet before its trailing edge. Make it longer, its skew or washout ` +
            'smaller, or ask for washout: "step".',
        );
      }
      const wood = density ?? wing[panel.side].density[panel.number - 1];
      const upper = edges.reduce(
        (left, each) => (each.panel.name === panel.name ? left - Math.sign(each.bevel) * each.off : left),
        panel.length,
      );
      return { panel, ...blank, wood, upper, isHalf };
    });
    const [half, other] = blanks.filter(({ isHalf }) => isHalf);
    const rows: Row[] = half && other ? [joined(half, other), ...blanks.filter(({ isHalf }) => !isHalf)] : blanks;
    const isWeighed = rows.every(({ wood }) => wood !== undefined);
    const masses = rows.map(({ wood = 0, panel, area, extra }) => wood * panel.thickness * (area + extra));
    return {
      panels: {
        panel: rows.map(({ part }) => part.name),
        hand: rows.map(({ part, panel }) => (part.name === "centre" ? "both" : panel.side)),
        length: rows.map(({ panel, whole: all }) => all ?? panel.length),
        upper_length: rows.map(({ upper }) => upper),
        thickness: rows.map(({ panel }) => panel.thickness),
        area: rows.map(({ area }) => area),
        ...(isWeighed && {
          mass: masses,
          bevelled_mass: rows.map(({ wood = 0, bevelled }, index) => (masses[index] ?? 0) - wood * bevelled),
        }),
      },
      area: rows.reduce((sum, { area }) => sum + area, 0),
      ...(isWeighed && { mass: masses.reduce((sum, each) => sum + each, 0) }),
      pattern: patternOf(
        rows.map(({ part }) => part),
        kerf,
      ),
    };
  },
});

interface Row extends Blank {
  readonly panel: PanelPlace;
  readonly wood: number | undefined;
  readonly upper: number;
  /** Length of a blank that is more than one panel. */
  readonly whole?: number;
}

/** The two root panels of a continuous centre as one blank, across the middle. */
function joined(right: Row, left: Row): Row {
  const pick = ({ part }: Row, index: number) => ({
    edge: part.edges[index] as FlatPart["edges"][number],
    allowance: part.allowance?.(index) ?? 0,
  });
  // A right panel runs tip, leading, root, trailing; a left one trailing, root, leading, tip.
  const around = [pick(right, 0), pick(right, 1), pick(left, 2), pick(left, 3), pick(left, 0), pick(right, 3)];
  const named = right.part.labels?.find(({ text }) => text === right.part.name);
  return {
    ...right,
    part: {
      ...right.part,
      name: "centre",
      edges: around.map(({ edge }) => edge),
      allowance: (index) => around[index]?.allowance ?? 0,
      scores: [
        ...(right.part.scores ?? []).map((line, index) => (index === 0 ? centred(line) : line)),
        ...(left.part.scores ?? []).slice(1),
      ],
      labels: [
        { text: "centre", at: [0, named?.at[1] ?? 0], size: 0.004 },
        ...[right, left].flatMap(({ part }) => (part.labels ?? []).filter(({ text }) => text !== part.name)),
      ],
    },
    area: right.area + left.area,
    extra: right.extra + left.extra,
    bevelled: right.bevelled + left.bevelled,
    upper: right.upper + left.upper,
    whole: right.panel.length + left.panel.length,
  };
}

/** A line moved so that its middle lies on the centre line. */
function centred(line: readonly Point[]): Point[] {
  const { x, width } = bounds(line);
  return line.map(([px, py]) => [px - x - width / 2, py]);
}
