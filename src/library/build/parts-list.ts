import { sampleGlider } from "../glide/sample-gliders.ts";
import { numberText } from "../number-text.ts";
import { type Glider, gliderRecord } from "../shape/glider-record.ts";
import { define, number, record, table, text, type ValueOf } from "../spec.ts";
import { jointPlaces } from "./joint-place.ts";

const partsListRecord = record(
  "parts_list",
  "what the design is made of",
  {
    parts: table("each kind of part", {
      part: text("the part"),
      count: number("1", "how many"),
      material: text("what it is made of"),
      size: text("its sizes"),
    }),
    count: number("1", "pieces in all"),
    supplies: table("what is used up, worn or measured with besides", {
      supply: text("what to lay ready"),
      use: text("what for"),
    }),
  },
  ({ parts, count }) => `${count} pieces of ${parts.part.length} kinds`,
);
export type PartsList = ValueOf<typeof partsListRecord>;

/** `parts_list(glider, …)`: everything to lay ready. */
export const partsList = define({
  name: "parts_list",
  summary: "Everything the design is made of: parts, number, material and size.",
  topic: "build",
  parameters: {
    glider: gliderRecord,
    wing_wood: { ...text("wood of the wing"), default: "light balsa, quarter grain" } as const,
    tail_wood: { ...text("wood of the tail"), default: "lightest balsa, quarter grain" } as const,
    stick_wood: { ...text("wood of the stick"), default: "hard balsa or spruce" } as const,
    cloth: number("g/m^2", "weight of the cloth over the joints; 0 for none", { min: 0, default: 0.025 }),
    strip_width: number("mm", "width of the strips", { above: 0, default: 0.02 }),
    root_width: number("mm", "width of those over the root joint; left out, as the others", {
      above: 0,
      optional: true,
    }),
    clay: number("g", "ballast that is reckoned with", { min: 0, default: 0 }),
  },
  result: partsListRecord,
  formula: "counted from the glider's panels, joints, tail and stick",
  errors: [],
  assumptions: ["Sizes of panels: length by chord inboard to outboard by thickness, as measured on the lower face."],
  sources: [
    { text: "The glider's own parts", mark: "derived" },
    { text: "Supplies", mark: "common practice" },
  ],
  examples: [
    {
      summary: "a level centre panel in one piece and two tips, with tail, fin and stick",
      arguments: { glider: sampleGlider, clay: 0.002 },
      result: {
        parts: {
          part: [
            "wing panel centre",
            "wing panel 2",
            "strips, joint 1–2",
            "tailplane",
            "fin",
            "stick",
            "seat of the wing",
            "ballast",
          ],
          count: [1, 2, 4, 1, 1, 1, 1, 1],
          material: [
            "light balsa, quarter grain",
            "light balsa, quarter grain",
            "glass cloth, 25 g/m^2",
            "lightest balsa, quarter grain",
            "lightest balsa, quarter grain",
            "hard balsa or spruce",
            "balsa, grain along the stick",
            "clay",
          ],
        } as never,
        count: 12,
      },
    },
  ],
  isSlow: true,
  compute: ({ glider, wing_wood, tail_wood, stick_wood, cloth, strip_width, root_width = strip_width, clay }) => {
    const rows = [
      ...panelRows(glider, wing_wood),
      ...(cloth > 0 ? stripRows(glider, cloth, { strip_width, root_width }) : []),
      ...tailRows(glider, tail_wood, stick_wood),
      ...(clay > 0 ? [{ part: "ballast", count: 1, material: "clay", size: numberText(clay, "g") }] : []),
    ];
    return {
      parts: {
        part: rows.map(({ part }) => part),
        count: rows.map(({ count }) => count),
        material: rows.map(({ material }) => material),
        size: rows.map(({ size }) => size),
      },
      count: rows.reduce((sum, { count }) => sum + count, 0),
      supplies: {
        supply: supplies.map(([supply]) => supply),
        use: supplies.map(([, use]) => use),
      },
    };
  },
});

/** Common practice; the masks as HSE has them for hardwood dust. */
const supplies: readonly (readonly [supply: string, use: string])[] = [
  ["cardboard, sheet wood or foam board, and wood glue", "the jig"],
  ["thin and medium cyanoacrylate, or epoxy", "joints, seat and tail; thin or resin for the strips"],
  ["film and masking tape", "film keeps the wing off the jig, tape hinges the panels for the dry fit"],
  ["sanding blocks, medium and fine", "bevels, section, edges"],
  ["lacquer or sanding sealer", "both faces alike, against damp"],
  ["knife with new blades, steel rule, tin with a lid", "cutting; used blades go into the tin"],
  ["scales to 0.01 g, calipers, square, rule", "weighing and measuring as it is built"],
  ["mask FFP3 or half-mask P3, and goggles, one each", "dust of wood and glass"],
  ["nitrile gloves, and moving air", "adhesive and resin"],
];

interface Row {
  readonly part: string;
  readonly count: number;
  readonly material: string;
  readonly size: string;
}
const mm = (length: number): string => numberText(length, "mm");

function panelRows({ wing }: Glider, material: string): Row[] {
  const whole = !jointPlaces(wing, "cut").some(({ side }) => side === "root");
  const of = (side: "right" | "left"): Row[] => {
    const { length, root_chord, tip_chord, thickness } = wing[side];
    return length.map((along, k) => {
      const isCentre = k === 0 && whole;
      const name = isCentre ? "centre" : wing.mirrored ? `${k + 1}` : `${side} ${k + 1}`;
      const size = `${mm(isCentre ? 2 * along : along)} × ${mm(root_chord[k] ?? 0)} to ${mm(tip_chord[k] ?? 0)} × ${mm(thickness[k] ?? 0)}`;
      return { part: `wing panel ${name}`, count: wing.mirrored && !isCentre ? 2 : 1, material, size };
    });
  };
  if (wing.mirrored) return of("right");
  const left = of("left");
  return [...of("right"), ...(whole ? left.slice(1) : left)];
}

/** Strips of both faces; joints of both sides that are alike stand together. */
function stripRows(
  { wing }: Glider,
  cloth: number,
  { strip_width, root_width }: { strip_width: number; root_width: number },
): Row[] {
  const joints = jointPlaces(wing, "cut").filter(({ side }) => !(wing.mirrored && side === "left"));
  return joints.map(({ name, side, outer }) => ({
    part: `strips, ${side === "root" ? "root" : wing.mirrored ? name.replace("right", "joint") : name}`,
    count: 2 * (wing.mirrored && side !== "root" ? 2 : 1),
    material: `glass cloth, ${numberText(cloth, "g/m^2")}`,
    size: `${mm(side === "root" ? root_width : strip_width)} × ${mm(outer.root_chord)}`,
  }));
}

function tailRows({ tailplane, fin, stick }: Glider, wood: string, stickWood: string): Row[] {
  const surface = (
    part: string,
    size: number,
    { root_chord, tip_chord, thickness }: { root_chord: number; tip_chord: number; thickness: number },
  ) => ({
    ...{ part, count: 1, material: wood },
    size: `${mm(size)} × ${mm(root_chord)} to ${mm(tip_chord)} × ${mm(thickness)}`,
  });
  return [
    ...(tailplane ? [surface("tailplane", tailplane.span, tailplane)] : []),
    ...(fin ? [surface("fin", fin.height, fin)] : []),
    ...(stick
      ? [
          {
            part: "stick",
            count: 1,
            material: stickWood,
            size: `${mm(stick.length)} × ${mm(stick.height)} to ${mm(stick.end_height)} × ${mm(stick.width)} to ${mm(stick.end_width)}`,
          },
          { part: "seat of the wing", count: 1, material: "balsa, grain along the stick", size: "see wing_seat" },
        ]
      : []),
  ];
}
