import type { Point } from "./geometry.ts";

/** One half of a wing as far as its front view needs it; see the wing record of the library. */
export interface HalfInFront {
  readonly cant: readonly number[];
  readonly thickness: readonly number[];
  readonly stations: { readonly y: readonly number[]; readonly z: readonly number[] };
}

/** A wing as far as its front view needs it: SI numbers. */
export interface WingInFront {
  readonly span: number;
  readonly right: HalfInFront;
  readonly left: HalfInFront;
}

/** One panel seen from the front, in m: x is y of the wing, y is its z. Inboard end first. */
export interface PanelOutline {
  readonly lower: readonly [inboard: Point, outboard: Point];
  readonly upper: readonly [inboard: Point, outboard: Point];
  /** Unit normal of the faces, upwards. */
  readonly normal: Point;
  readonly cant: number;
}

/** Both halves, root panel first. */
export interface Outline {
  readonly right: readonly PanelOutline[];
  readonly left: readonly PanelOutline[];
}

/**
 * The panels of both halves, root panel first, with their true thickness on the lower face. At a joint the wood is cut
 * along the plane that halves the angle, where a thicker panel ends in a step; a tip is cut square.
 */
export function wingOutline(wing: WingInFront): Outline {
  const right = normals(wing.right);
  const left = normals(wing.left);
  return { right: halfOutline(wing.right, right, left[0]), left: halfOutline(wing.left, left, right[0]) };
}

/** True where the wood goes through the middle in one piece: neither root panel is tilted, both are equally thick. */
export const isContinuous = ({ right, left }: WingInFront): boolean =>
  Math.abs(right.cant[0] ?? 0) + Math.abs(left.cant[0] ?? 0) < 1e-9 && right.thickness[0] === left.thickness[0];

function halfOutline(half: HalfInFront, normals: readonly Point[], across: Point | undefined): PanelOutline[] {
  return normals.map((normal, index) => {
    const inboard = stationPoint(half, index);
    const outboard = stationPoint(half, index + 1);
    const thickness = half.thickness[index] ?? 0;
    const inner = corner(inboard, normal, index === 0 ? across : normals[index - 1], thickness);
    const outer = corner(outboard, normal, normals[index + 1], thickness);
    return { lower: [inboard, outboard], upper: [inner, outer], normal, cant: half.cant[index] ?? 0 };
  });
}

function stationPoint(half: HalfInFront, index: number): Point {
  return { x: half.stations.y[index] ?? Number.NaN, y: half.stations.z[index] ?? Number.NaN };
}

function normals(half: HalfInFront): Point[] {
  return half.cant.map((_, index) => {
    const from = stationPoint(half, index);
    const to = stationPoint(half, index + 1);
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const upwards = Math.sign(to.x - from.x) / length;
    return { x: -(to.y - from.y) * upwards, y: (to.x - from.x) * upwards };
  });
}

/** Where the upper face meets the cut at a station: along the bisector of both normals, as far as the thickness asks. */
function corner(at: Point, normal: Point, neighbour: Point | undefined, thickness: number): Point {
  const cut = { x: normal.x + (neighbour ?? normal).x, y: normal.y + (neighbour ?? normal).y };
  const reach = thickness / (cut.x * normal.x + cut.y * normal.y);
  return { x: at.x + cut.x * reach, y: at.y + cut.y * reach };
}
