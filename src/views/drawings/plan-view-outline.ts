/** A glider from above, in m: x to the right tip, y aft, so that the nose points up the sheet. */
import type { Line, Point } from "./geometry.ts";
import type { FinOnPaper, GliderOnPaper, HalfOnPaper, StickOnPaper, TailplaneOnPaper, WingOnPaper } from "./glider.ts";
import { type Piece, plainPiece } from "./pieces.ts";
import { isContinuous } from "./wing-outline.ts";

/** The pieces of a glider from above, the lowest first. */
export interface PlanOutline {
  /** What lies under the wing. */
  readonly under: readonly Piece[];
  readonly over: readonly Piece[];
}

export function planOutline({ wing, tailplane, fin, stick }: GliderOnPaper): PlanOutline {
  return {
    under: stick ? [stickFromAbove(stick)] : [],
    over: [
      wingFromAbove(wing),
      ...(tailplane ? [tailplaneFromAbove(tailplane)] : []),
      ...(fin ? [finFromAbove(fin)] : []),
    ],
  };
}

/** One panel from above: its leading and its trailing edge, inboard end first. */
export interface PanelFromAbove {
  readonly leading: Line;
  readonly trailing: Line;
}

/** The panels of a half, root panel first. Where the chords step at a joint, the trailing edges do not meet. */
export function panelsFromAbove(half: HalfOnPaper): readonly PanelFromAbove[] {
  const { x, y } = half.stations;
  return half.length.map((_, index) => {
    const edge = (inner: number, outer: number): Line => ({
      from: { x: at(y, index), y: at(x, index) + inner },
      to: { x: at(y, index + 1), y: at(x, index + 1) + outer },
    });
    return { leading: edge(0, 0), trailing: edge(at(half.root_chord, index), at(half.tip_chord, index)) };
  });
}

function wingFromAbove(wing: WingOnPaper): Piece {
  const right = panelsFromAbove(wing.right);
  const left = panelsFromAbove(wing.left);
  const leading = (half: readonly PanelFromAbove[]): Point[] => half.map((panel) => panel.leading.to);
  const trailing = (half: readonly PanelFromAbove[]): Point[] =>
    half.flatMap((panel) => [panel.trailing.from, panel.trailing.to]);
  const root = { x: 0, y: 0 };
  const rootChord = Math.max(right[0]?.trailing.from.y ?? 0, left[0]?.trailing.from.y ?? 0);
  return {
    outline: [...leading(left).reverse(), root, ...leading(right), ...trailing(right).reverse(), ...trailing(left)],
    joints: [
      ...(isContinuous(wing) ? [] : [[root, { x: 0, y: rootChord }] as const]),
      ...jointLines(right, wing.right),
      ...jointLines(left, wing.left),
    ],
  };
}

/** The joints between panels: along the flow, or turned about their middle where they are skew. */
function jointLines(panels: readonly PanelFromAbove[], half: HalfOnPaper): (readonly [Point, Point])[] {
  return panels.slice(1).map((outboard, index) => {
    const inboard = panels[index] ?? outboard;
    const skew = half.skew[index + 1] ?? 0;
    const { from } = outboard.leading;
    const end = { x: from.x, y: Math.max(inboard.trailing.to.y, outboard.trailing.from.y) };
    if (skew === 0) return [from, end];
    // Positive skew: the trailing-edge end lies farther out, so on the outboard panel.
    const [front, back] = skew > 0 ? [inboard, outboard] : [outboard, inboard];
    const middle = { x: from.x, y: (from.y + end.y) / 2 };
    const lean = Math.sign(outboard.leading.to.x - from.x) * Math.tan(skew);
    return [crossing(front.leading, middle, lean), crossing(back.trailing, middle, lean)];
  });
}

/** Where an edge is met by the line through a point that goes `lean` to the side for each step aft. */
function crossing({ from, to }: Line, through: Point, lean: number): Point {
  const slope = (to.y - from.y) / (to.x - from.x);
  const aft = (from.y - through.y + slope * (through.x - from.x)) / (1 - slope * lean);
  return { x: through.x + lean * aft, y: through.y + aft };
}

function tailplaneFromAbove({ stations: { x, y, chord } }: TailplaneOnPaper): Piece {
  const corner = (station: number, side: 1 | -1, aft: number): Point => ({
    x: side * at(y, station),
    y: at(x, station) + aft,
  });
  return plainPiece([
    corner(1, -1, 0),
    corner(0, 1, 0),
    corner(1, 1, 0),
    corner(1, 1, at(chord, 1)),
    corner(0, 1, at(chord, 0)),
    corner(1, -1, at(chord, 1)),
  ]);
}

function finFromAbove({ thickness, stations: { x, chord } }: FinOnPaper): Piece {
  const front = Math.min(...x);
  const back = Math.max(...x.map((leading, index) => leading + at(chord, index)));
  return plainPiece(strip(front, back, thickness, thickness));
}

const stickFromAbove = ({ front_x, rear_x, width, end_width }: StickOnPaper): Piece =>
  plainPiece(strip(front_x, rear_x, width, end_width));

/** A piece along the middle, of a width in front and one behind. */
const strip = (front: number, back: number, width: number, endWidth: number): Point[] => [
  { x: -width / 2, y: front },
  { x: width / 2, y: front },
  { x: endWidth / 2, y: back },
  { x: -endWidth / 2, y: back },
];

const at = (list: readonly number[], index: number): number => list[index] ?? Number.NaN;
