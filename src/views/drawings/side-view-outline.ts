/** A glider from its left side, in m: x aft, y up, so that the nose points to the reader's left. */
import { polygonHull } from "d3";
import type { Point } from "./geometry.ts";
import type { FinOnPaper, GliderOnPaper, HalfOnPaper, StickOnPaper, TailplaneOnPaper } from "./glider.ts";
import { type Piece, plainPiece } from "./pieces.ts";

/** The pieces of a glider from the side, and the places that dimensions need. */
export interface SideOutline {
  /** What lies behind the root section, the farthest first. */
  readonly under: readonly Piece[];
  /** The section at the root. */
  readonly over: readonly Piece[];
  /** Lower faces: of the root from its leading to its trailing edge, of the tip at its leading edge. */
  readonly root: readonly [leading: Point, trailing: Point];
  readonly tip: Point;
  readonly tailplane: readonly [leading: Point, trailing: Point] | undefined;
  /** The lower corner of the stick's front end. */
  readonly nose: Point | undefined;
  readonly balance: Point | undefined;
  /** Beside the balance point, or as high as the seat: the neutral point has no height of its own. */
  readonly neutral: Point | undefined;
}

export function sideOutline(glider: GliderOnPaper): SideOutline {
  const { tailplane, fin, stick, balance, neutral_x, seat_height, seat_angle } = glider;
  const { left } = glider.wing;
  const seated = turned({ x: 0, y: seat_height }, seat_angle);
  const ends = panelEnds(left);
  const tail = tailplane && tailplaneFromSide(tailplane);
  const first = ends[0]?.[0];
  const trailing = first && {
    x: first.leading.x + first.aft.x * first.chord,
    y: first.leading.y + first.aft.y * first.chord,
  };
  return {
    under: [
      ...(stick ? [stickFromSide(stick)] : []),
      ...(fin ? [finFromSide(fin)] : []),
      ...(tail ? [plainPiece(tail.outline)] : []),
      ...ends.map((pair) => plainPiece(hull(pair.flatMap(section).map(seated)))),
    ],
    over: first ? [plainPiece(section(first).map(seated))] : [],
    root: [seated({ x: 0, y: 0 }), seated(trailing ?? { x: 0, y: 0 })],
    tip: seated({ x: left.stations.x.at(-1) ?? 0, y: left.stations.z.at(-1) ?? 0 }),
    tailplane: tail?.chord,
    nose: stick && { x: stick.front_x, y: stick.z - stick.height / 2 },
    balance: balance && { x: balance.x, y: balance.z },
    neutral: neutral_x === undefined ? undefined : { x: neutral_x, y: balance?.z ?? seat_height },
  };
}

/** One end of a panel: leading edge of its lower face, and the directions of its chord and its thickness. */
interface PanelEnd {
  readonly leading: Point;
  readonly chord: number;
  readonly thickness: number;
  readonly aft: Point;
  readonly up: Point;
}

/** Both ends of each panel of a half, root panel first, before the seat turns them. */
function panelEnds(half: HalfOnPaper): (readonly [PanelEnd, PanelEnd])[] {
  const { x, z } = half.stations;
  const at = (list: readonly number[], index: number): number => list[index] ?? Number.NaN;
  return half.length.map((_, index) => {
    // A panel turns nose-down by its twist about its leading edge; from the side its thickness leans with its cant.
    const [twist, lean] = [at(half.twist, index), Math.cos(at(half.cant, index))];
    const end = (station: number, chord: number): PanelEnd => ({
      leading: { x: at(x, station), y: at(z, station) },
      chord,
      thickness: at(half.thickness, index),
      aft: { x: Math.cos(twist), y: Math.sin(twist) * lean },
      up: { x: -Math.sin(twist), y: Math.cos(twist) * lean },
    });
    return [end(index, at(half.root_chord, index)), end(index + 1, at(half.tip_chord, index))];
  });
}

/**
 * The outline of a section with a flat lower face, highest at 30 % of its chord, which fills about 0.78 of the strip it
 * is sanded from: common practice for thin wings. Glider records do not tell their section.
 */
function section({ leading, chord, thickness, aft, up }: PanelEnd): Point[] {
  const upper = sectionShares.map((share) => {
    const fall = share < highest ? (highest - share) / highest : (share - highest) / (1 - highest);
    return { along: share * chord, above: thickness * (1 - fall ** 3.5) };
  });
  return upper.map(({ along, above }) => ({
    x: leading.x + along * aft.x + above * up.x,
    y: leading.y + along * aft.y + above * up.y,
  }));
}

const highest = 0.3;
const sectionShares = [0, 0.01, 0.03, 0.06, 0.1, 0.15, 0.22, 0.3, 0.4, 0.5, 0.6, 0.7, 0.78, 0.85, 0.9, 0.95, 1];

/** Turns points, told from a place, nose-up about it. */
const turned =
  (about: Point, angle: number) =>
  ({ x, y }: Point): Point => ({
    x: about.x + x * Math.cos(angle) + y * Math.sin(angle),
    y: about.y + y * Math.cos(angle) - x * Math.sin(angle),
  });

function hull(points: readonly Point[]): Point[] {
  const corners = polygonHull(points.map(({ x, y }): [number, number] => [x, y])) ?? [];
  return corners.map(([x, y]) => ({ x, y }));
}

function tailplaneFromSide({ root_chord, thickness, incidence, x, z, stations }: TailplaneOnPaper) {
  const set = turned({ x, y: z }, incidence);
  const front = Math.min(...stations.x) - x;
  const back = Math.max(...stations.x.map((leading, index) => leading + (stations.chord[index] ?? 0))) - x;
  const corners = [
    { x: front, y: 0 },
    { x: front, y: thickness },
    { x: back, y: thickness },
    { x: back, y: 0 },
  ];
  return { outline: corners.map(set), chord: [set({ x: 0, y: 0 }), set({ x: root_chord, y: 0 })] as const };
}

function finFromSide({ stations: { x, z, chord } }: FinOnPaper): Piece {
  const corner = (station: number, aft: number): Point => ({
    x: (x[station] ?? Number.NaN) + aft,
    y: z[station] ?? Number.NaN,
  });
  return plainPiece([corner(0, 0), corner(1, 0), corner(1, chord[1] ?? 0), corner(0, chord[0] ?? 0)]);
}

const stickFromSide = ({ front_x, rear_x, height, end_height, z }: StickOnPaper): Piece =>
  plainPiece([
    { x: front_x, y: z + height / 2 },
    { x: rear_x, y: z + end_height / 2 },
    { x: rear_x, y: z - end_height / 2 },
    { x: front_x, y: z - height / 2 },
  ]);
