import { sampleGlider } from "../glide/sample-gliders.ts";
import { numberText } from "../number-text.ts";
import { degrees } from "../numerics/degrees.ts";
import { gliderRecord } from "../shape/glider-record.ts";
import { define, number, record, table, text, type ValueOf } from "../spec.ts";
import { type FlatPart, patternOf } from "./flat-part.ts";
import { patternRecord } from "./pattern-record.ts";
import { edgesAround, type Point } from "./polygon.ts";
import { kerfParameter } from "./wing-blanks.ts";

const wingSeatRecord = record(
  "wing_seat",
  "the seat that carries a wing on its stick",
  {
    angle: number("deg", "nose-up angle of the root's lower face on the stick"),
    right_slope: number("deg", "how steeply the seat rises to the right, to take the root joint"),
    left_slope: number("deg", "the same to the left"),
    groove: number("mm", "how much lower the seat is in its middle than at its right rim"),
    length: number("mm", "length of the seat: the root chord"),
    front_height: number("mm", "from the stick's top to the root's lower face at the leading edge"),
    rear_height: number("mm", "the same at the trailing edge"),
    shim_per_degree: number("mm", "packing under the trailing edge that takes one degree of incidence off"),
    balance: table("where to hold the wing between two fingers: the balance mark under it", {
      place: text("root, and each joint of the right half"),
      behind: number("mm", "behind the leading edge there"),
    }),
    pattern: patternRecord,
  },
  ({ angle, front_height, rear_height }) =>
    `${numberText(front_height, "mm")} in front, ${numberText(rear_height, "mm")} behind, at ${numberText(angle, "deg")}`,
);
export type WingSeat = ValueOf<typeof wingSeatRecord>;

/** `wing_seat(glider, …)`: the seat, its templates, and the balance mark. */
export const wingSeat = define({
  name: "wing_seat",
  summary:
    "The seat between stick and wing: its heights, the groove that takes the root joint's angle, and the balance mark.",
  topic: "build",
  parameters: {
    glider: gliderRecord,
    width: number("mm", "width of the seat", { above: 0, default: 0.012 }),
    kerf: kerfParameter,
  },
  result: wingSeatRecord,
  formula:
    "slopes = cants of the two root panels; groove = width/2 · tan(slope); heights from the seat's height and angle, less the stick's upper edge there; shim = chord · tan(1 deg)",
  errors: [
    "The glider has no stick.",
    "The seat is wider than the two root panels.",
    "The wing would lie below the stick's upper edge.",
  ],
  assumptions: [
    "The seat is a block as long as the root chord; the end template shows its upper edge from the front, the side template its height.",
    "Without a balance point there is no balance mark.",
  ],
  sources: [{ text: "Plane geometry of stick, seat and wing", mark: "derived" }],
  examples: [
    {
      summary: "a level centre panel at 2.4 deg, 12 mm up, on a stick of 9 mm",
      arguments: { glider: sampleGlider, width: 0.01 },
      result: {
        angle: degrees(2.4),
        groove: 0,
        length: 0.08,
        front_height: 0.0075,
        rear_height: 0.0075 - 0.08 * Math.sin(degrees(2.4)),
        shim_per_degree: 0.08 * Math.tan(degrees(1)),
      },
    },
  ],
  isSlow: true,
  compute: ({ glider, width, kerf }, refuse) => {
    const { wing, stick, seat_height, seat_angle, balance } = glider;
    if (!stick) return refuse("glider", "It has no stick for the wing to sit on. Give glider(…) one.");
    const first = (list: readonly number[]) => list[0] ?? 0;
    const [right_slope, left_slope] = [first(wing.right.cant), first(wing.left.cant)];
    const reach = Math.min(first(wing.right.stations.y.slice(1)), Math.abs(first(wing.left.stations.y.slice(1))));
    if (width / 2 > reach) {
      refuse(
        "width",
        `A seat ${numberText(width, "mm")} wide reaches past the root panels, which end ${numberText(reach, "mm")} from the middle. Make it narrower.`,
      );
    }
    const length = first(wing.right.root_chord);
    const angle = seat_angle - first(wing.right.twist);
    const top = (x: number) => {
      const share = (x - stick.front_x) / stick.length;
      return stick.z + (stick.height + (stick.end_height - stick.height) * share) / 2;
    };
    const front_height = seat_height - top(0);
    const rear_height = seat_height - length * Math.sin(angle) - top(length * Math.cos(angle));
    if (!(Math.min(front_height, rear_height) > 0)) {
      const isFront = front_height <= rear_height;
      refuse(
        "glider",
        `At the wing's ${isFront ? "leading" : "trailing"} edge its lower face would lie ${numberText(-Math.min(front_height, rear_height), "mm")} ` +
          "below the stick's upper edge. Raise seat_height, or make the stick lower.",
      );
    }
    const groove = (width / 2) * Math.tan(right_slope);
    const { x, chord } = wing.right.stations;
    const places = balance ? x.slice(0, -1).map((leading, index) => ({ leading, index })) : [];
    return {
      ...{ angle, right_slope, left_slope, groove, length, front_height, rear_height },
      shim_per_degree: length * Math.tan(degrees(1)),
      balance: {
        place: places.map(({ index }) => (index === 0 ? "root" : `joint ${index}–${index + 1}`)),
        behind: places.map(({ leading, index }) => Math.min(chord[index] ?? 0, (balance?.x ?? 0) - leading)),
      },
      pattern: patternOf(
        [
          side(length * Math.cos(angle), front_height, rear_height, width, balance?.x),
          end(width, front_height, [left_slope, right_slope]),
        ],
        kerf,
      ),
    };
  },
});

/** The seat from its left side, the nose to the left; the balance point is scored where it lies within. */
function side(length: number, front: number, rear: number, width: number, balance: number | undefined): FlatPart {
  const isWithin = balance !== undefined && balance > 0 && balance < length;
  const marked = isWithin ? balance : 0;
  return {
    name: "seat, side",
    thickness: width,
    edges: edgesAround([
      [0, 0],
      [length, 0],
      [length, rear],
      [0, front],
    ]),
    scores: isWithin
      ? [
          [
            [marked, 0],
            [marked, front + ((rear - front) * marked) / length],
          ],
        ]
      : [],
    labels: [
      {
        text: "seat, nose this way ←",
        at: [marked < length / 2 ? (marked + length) / 2 : marked / 2, Math.min(front, rear) / 2],
        size: Math.min(0.003, Math.min(front, rear) / 2),
      },
    ],
  };
}

/** A card that stands across the seat, seen from behind: its lower edge is the seat's groove upside down. */
function end(width: number, height: number, [left, right]: readonly [number, number]): FlatPart {
  const half = width / 2;
  const rim = 0.008;
  const points: Point[] = [
    [-half - rim, (half + rim) * Math.tan(left)],
    [0, 0],
    [half + rim, (half + rim) * Math.tan(right)],
    [half + rim, (half + rim) * Math.tan(right) + 0.012 + height],
    [-half - rim, (half + rim) * Math.tan(right) + 0.012 + height],
  ];
  return {
    name: "seat, groove",
    thickness: 0.001,
    edges: edgesAround(points),
    labels: [{ text: "groove", at: [0, 0.012] }],
  };
}
