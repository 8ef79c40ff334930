import { sampleGlider } from "../glide/sample-gliders.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import type { Fin } from "../shape/fin-record.ts";
import type { FuselageStick } from "../shape/fuselage-stick-record.ts";
import { type Glider, gliderRecord } from "../shape/glider-record.ts";
import type { Tailplane } from "../shape/tailplane-record.ts";
import { define, number, record, table, text, type ValueOf } from "../spec.ts";
import { type FlatPart, grainArrow, patternOf } from "./flat-part.ts";
import { patternRecord } from "./pattern-record.ts";
import { edgesAround, type Point } from "./polygon.ts";
import { kerfParameter } from "./wing-blanks.ts";

const tailPartsRecord = record(
  "tail_parts",
  "tailplane, fin and stick to cut",
  {
    marks: table("marks on the stick, from its nose", {
      mark: text("what stands there"),
      at: number("mm", "from the nose of the stick"),
    }),
    pattern: patternRecord,
    notes: text("how they are cut"),
  },
  ({ pattern }) => pattern.parts.part.join(", "),
);
export type TailParts = ValueOf<typeof tailPartsRecord>;

/** `tail_parts(glider, …)`: what is cut besides the wing. */
export const tailParts = define({
  name: "tail_parts",
  summary: "Tailplane, fin and stick at true size, with grain, and the marks on the stick where everything stands.",
  topic: "build",
  parameters: { glider: gliderRecord, kerf: kerfParameter },
  result: tailPartsRecord,
  formula: "outlines from span, chords and sweep; each mark = its x − the stick's front_x",
  errors: ["The glider has neither tailplane, fin nor stick."],
  assumptions: [
    "The tailplane is cut in one piece across, its grain along the span; the grain of the fin runs up it; that of the stick along it.",
    "The stick is drawn from the side, its upper edge up; it is cut from sheet as thick as it is wide in front, and tapered in width afterwards.",
  ],
  sources: [
    { text: "Outlines of straight tapers", mark: "derived" },
    { text: "Quarter grain for flat tails, grain along the span", mark: "common practice" },
  ],
  examples: [
    {
      summary: "tailplane of 150 mm, fin of 50 mm, stick of 390 mm whose nose is 90 mm ahead of the wing",
      arguments: { glider: sampleGlider },
      result: {
        marks: {
          mark: [
            "balance",
            "wing, leading edge",
            "wing, trailing edge",
            "tailplane, leading edge",
            "fin, leading edge",
          ],
          at: [0.117, 0.09, 0.09 + 0.08 * Math.cos(degrees(2.4)), 0.335, 0.338],
        },
      },
    },
  ],
  isSlow: true,
  compute: ({ glider, kerf }, refuse) => {
    const { tailplane, fin, stick } = glider;
    const marks = stick ? marksOf(glider, stick) : [];
    const parts = [
      ...(tailplane ? [tailPart(tailplane)] : []),
      ...(fin ? [finPart(fin)] : []),
      ...(stick ? [stickPart(stick, marks)] : []),
    ];
    if (parts.length === 0)
      refuse("glider", "It has neither tailplane, fin nor stick. Give glider(…) what is to be cut.");
    const tapers = stick && stick.end_width !== stick.width;
    return {
      marks: { mark: marks.map(({ mark }) => mark), at: marks.map(({ at }) => at) },
      pattern: patternOf(parts, kerf),
      notes: tapers
        ? `Taper the stick's width from ${numberText(stick.width, "mm")} in front to ${numberText(stick.end_width, "mm")} behind.`
        : "All parts keep their thickness.",
    };
  },
});

/** Where everything stands along the stick, from its nose; what lies off it is left out. */
function marksOf({ wing, tailplane, fin, balance, seat_angle }: Glider, stick: FuselageStick) {
  const chord = (wing.right.root_chord[0] ?? 0) * Math.cos(seat_angle - (wing.right.twist[0] ?? 0));
  const all = [
    ...(balance ? [{ mark: "balance", x: balance.x }] : []),
    { mark: "wing, leading edge", x: 0 },
    { mark: "wing, trailing edge", x: chord },
    ...(tailplane ? [{ mark: "tailplane, leading edge", x: tailplane.x }] : []),
    ...(fin ? [{ mark: "fin, leading edge", x: fin.x }] : []),
  ];
  return all
    .filter(({ x }) => x >= stick.front_x && x <= stick.rear_x)
    .map(({ mark, x }) => ({ mark, at: x - stick.front_x }));
}

function tailPart({ span, root_chord, tip_chord, sweep, thickness }: Tailplane): FlatPart {
  const half = span / 2;
  const points: Point[] = [
    [0, -root_chord],
    [half, -sweep - tip_chord],
    [half, -sweep],
    [0, 0],
    [-half, -sweep],
    [-half, -sweep - tip_chord],
  ];
  return {
    name: "tailplane",
    thickness,
    edges: edgesAround(points),
    scores: [
      grainArrow([half * 0.4, -root_chord * 0.6], half * 0.4),
      [
        [0, -root_chord],
        [0, 0],
      ],
    ],
    labels: [
      { text: "tailplane", at: [-half * 0.4, -root_chord * 0.6], size: 0.004 },
      { text: "leading edge", at: [-half * 0.4, -sweep * 0.4 - 0.006], angle: Math.atan2(sweep, half) },
    ],
  };
}

/** A fin laid down: its grain, which runs up it, along x; its foot to the left. */
function finPart({ height, root_chord, tip_chord, sweep, thickness }: Fin): FlatPart {
  return {
    name: "fin",
    thickness,
    edges: edgesAround([
      [0, -root_chord],
      [height, -sweep - tip_chord],
      [height, -sweep],
      [0, 0],
    ]),
    scores: [grainArrow([height * 0.55, -root_chord * 0.72], height * 0.4)],
    labels: [
      { text: "fin", at: [height * 0.5, -root_chord * 0.5], size: 0.004 },
      { text: "foot", at: [0.004, -root_chord / 2], angle: Math.PI / 2 },
      { text: "leading edge", at: [height / 2, -sweep / 2 - 0.005], angle: -Math.atan2(sweep, height) },
    ],
  };
}

/** A stick from the side, nose to the left. */
function stickPart(stick: FuselageStick, marks: readonly { mark: string; at: number }[]): FlatPart {
  const { length, height, end_height, width } = stick;
  const halfAt = (along: number) => (height + ((end_height - height) * along) / length) / 2;
  return {
    name: "stick",
    thickness: width,
    edges: edgesAround([
      [0, -height / 2],
      [length, -end_height / 2],
      [length, end_height / 2],
      [0, height / 2],
    ]),
    scores: marks.map(({ at }): Point[] => [
      [at, -halfAt(at)],
      [at, halfAt(at)],
    ]),
    labels: [{ text: "nose", at: [0.008, 0], size: 0.0025 }, ...spread(marks, length)],
  };
}

/**
 * Words beside their marks: each behind its mark where there is room before the next, else ahead of it with an arrow to it;
 * left out where there is room on neither side.
 */
function spread(marks: readonly { mark: string; at: number }[], length: number) {
  const size = 0.0025;
  const wide = (words: string) => words.length * size * 0.55 + 0.001;
  const ordered = [...marks].sort((a, b) => a.at - b.at);
  // What stands farthest back already, "nose" to begin with.
  let end = 0.008 + wide("nose");
  return ordered.flatMap(({ mark, at }, index) => {
    const room = (ordered[index + 1]?.at ?? length) - at;
    const ahead = `${mark} →`;
    const isBehind = room > wide(mark) + 0.001;
    if (!isBehind && at - Math.max(end, ordered[index - 1]?.at ?? 0) < wide(ahead) + 0.001) return [];
    const [text, from] = isBehind ? [mark, at + 0.001] : [ahead, at - wide(ahead)];
    end = from + wide(text);
    return [{ text, at: [from + wide(text) / 2 - 0.0005, 0] as Point, size }];
  });
}
