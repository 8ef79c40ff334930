import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, record, table, text, type ValueOf } from "../spec.ts";
import { refuseThick } from "./edges.ts";
import { type FlatPart, patternOf } from "./flat-part.ts";
import { type PanelPlace, panelPlaces } from "./panel-place.ts";
import { patternRecord } from "./pattern-record.ts";
import { edgesAround, type Point } from "./polygon.ts";
import { arc, flatBottomed } from "./section-curve.ts";
import { kerfParameter } from "./wing-blanks.ts";

const shapes: Readonly<Record<string, "flat" | "arc">> = { "flat-bottomed": "flat", arc: "arc" };

const templatesRecord = record(
  "section_templates",
  "templates of a wing's section at each chord",
  {
    templates: table("each template", {
      template: text("its name: the panel, and which end of it"),
      chord: number("mm", "chord there"),
      thickness: number("mm", "thickness of the blank there"),
      high_point: number("mm", "where the section is highest, from the leading edge"),
      height: number("mm", "how high it is there, above the chord's ends"),
    }),
    pattern: patternRecord,
    use: text("how they are used"),
  },
  ({ templates }) =>
    `${templates.template.length} templates, chords ${numberText(Math.max(...templates.chord), "mm")} and less`,
);
export type SectionTemplates = ValueOf<typeof templatesRecord>;

/** `section_templates(wing, …)`: the section at each chord, at true size. */
export const sectionTemplates = define({
  name: "section_templates",
  summary:
    "True-size templates of the section at each end of each panel, to sand a flat-bottomed wing by or bend an arc over.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    shape: choice("the section", Object.keys(shapes), { default: "flat-bottomed" }),
    sanded: number("%", "flat-bottomed: share of the blank's volume that sanding leaves", {
      above: 0.5,
      max: 1,
      default: 0.78,
    }),
    high_point: number("%", "flat-bottomed: where it is thickest, from the leading edge", {
      min: 0.1,
      max: 0.6,
      default: 0.3,
    }),
    camber: number("%", "arc: height of the mean line over the chord; left out, the column camber of the panels", {
      above: 0,
      max: 0.2,
      optional: true,
    }),
    card: number("mm", "thickness of the card they are cut from", { above: 0, max: 0.01, default: 0.001 }),
    kerf: kerfParameter,
  },
  result: templatesRecord,
  formula:
    "flat-bottomed: height = thickness·(1 − uⁿ), u from 0 at the high point to 1 at either edge, n = sanded/(1 − sanded); arc: a circle through both edges, camber·chord high in the middle",
  errors: ["An arc has no camber: neither the parameter nor the panels give one."],
  assumptions: [
    "Flat-bottomed: the card stands on the bench with the panel under it and touches the section all along.",
    "Arc: the sheet is bent over the card's upper edge, which is its lower face.",
    "One template serves both sides where the halves are alike: turn it over.",
  ],
  sources: [
    { text: "The section that the wing's mass is reckoned with: see wing_mass", mark: "own computation" },
    { text: "Circle through three points", mark: "derived" },
  ],
  examples: [
    {
      summary: "three panels of 3 mm, unsanded share 80 %",
      arguments: { wing: threePanelWing, sanded: 0.8, high_point: 0.35 },
      result: {
        templates: {
          template: ["1 inboard", "1 outboard", "2 inboard", "2 outboard", "3 inboard", "3 outboard"],
          chord: [0.12, 0.12, 0.12, 0.1, 0.1, 0.06],
          thickness: [0.003, 0.003, 0.003, 0.003, 0.003, 0.003],
          high_point: [0.042, 0.042, 0.042, 0.035, 0.035, 0.021],
          height: [0.003, 0.003, 0.003, 0.003, 0.003, 0.003],
        },
      },
    },
  ],
  isSlow: true,
  compute: ({ wing, shape, sanded, high_point, camber, card, kerf }, refuse) => {
    const kind = chosen(shape, shapes, "shape", refuse);
    refuseThick(panelPlaces(wing), refuse);
    const panels = panelPlaces(wing).filter(({ side }) => side === "right" || !wing.mirrored);
    const rows = panels.flatMap((panel) => {
      const cambered = camber ?? wing[panel.side].camber[panel.number - 1] ?? 0;
      if (kind === "arc" && !(cambered > 0)) {
        refuse("camber", `Panel ${panel.name} has no camber. Give one, or a column camber in the table of panels.`);
      }
      return (["inboard", "outboard"] as const).map((end) => {
        const chord = end === "inboard" ? panel.root_chord : panel.tip_chord;
        const name = `${wing.mirrored ? panel.number : panel.name} ${end}`;
        const isFlat = kind === "flat";
        return {
          ...{ name, chord, thickness: panel.thickness },
          high: isFlat ? high_point * chord : chord / 2,
          height: isFlat ? panel.thickness : cambered * chord,
          part: isFlat
            ? hollow(name, panel, flatBottomed(chord, panel.thickness, sanded, high_point, 41), high_point, card)
            : former(name, arc(chord, cambered, 41), card),
        };
      });
    });
    return {
      templates: {
        template: rows.map(({ name }) => name),
        chord: rows.map(({ chord }) => chord),
        thickness: rows.map(({ thickness }) => thickness),
        high_point: rows.map(({ high }) => high),
        height: rows.map(({ height }) => height),
      },
      pattern: patternOf(
        rows.map(({ part }) => part),
        kerf,
      ),
      use:
        kind === "flat"
          ? "Panel flat on the bench, card upright across it: sand until it sits down all along. Bevel the joint edges before."
          : "Damp the sheet, bend it over the cards and let it dry there.",
    };
  },
});

/** A card with the section cut out of its lower edge, and the high point scored. */
function hollow(
  name: string,
  { thickness }: PanelPlace,
  curve: readonly Point[],
  high: number,
  card: number,
): FlatPart {
  const chord = curve.at(-1)?.[0] ?? 0;
  const [rim, top] = [0.008, thickness + 0.014];
  return {
    name,
    thickness: card,
    edges: edgesAround([[-rim, 0], ...curve, [chord + rim, 0], [chord + rim, top], [-rim, top]]),
    scores: [
      [
        [high * chord, thickness + 0.001],
        [high * chord, thickness + 0.004],
      ],
    ],
    labels: [nameLabel(name, chord, [chord / 2, thickness + 0.009])],
  };
}

/** A card whose upper edge is the arc. */
function former(name: string, curve: readonly Point[], card: number): FlatPart {
  const chord = curve.at(-1)?.[0] ?? 0;
  const foot = 0.012;
  return {
    name,
    thickness: card,
    edges: edgesAround([[0, 0], [chord, 0], ...curve.map(([x, z]): Point => [x, z + foot]).reverse()]),
    labels: [nameLabel(name, chord, [chord / 2, foot / 2])],
  };
}

/** Name and chord, small enough for a narrow card. */
function nameLabel(name: string, chord: number, at: Point) {
  const text = `← front, ${name}, chord ${numberText(chord, "mm")}`;
  // A letter is about 0.55 of its height wide.
  return { text, at, size: Math.min(0.003, (0.9 * chord) / (0.55 * text.length)) };
}
