import { degrees } from "../numerics/degrees.ts";
import { cross, dot, from, type Vector } from "../numerics/vector3.ts";
import { fold } from "../shape/half.ts";
import type { Wing } from "../shape/wing-record.ts";
import { jointName } from "./joint-name.ts";
import { type PanelPlace, panelPlaces } from "./panel-place.ts";

/** How the washout gained at a joint is come by: by the line it is cut on, or by a step at the trailing edge. */
export type WashoutBy = "cut" | "step";

/** A joint as it is cut: the line on which the lower faces of two panels meet. */
export interface JointPlace {
  /** "root", "right 1–2". */
  readonly name: string;
  readonly side: "root" | "right" | "left";
  /** The panel inboard of it; at the root, the left one. */
  readonly inner: PanelPlace;
  readonly outer: PanelPlace;
  /** Along the panels from the root. */
  readonly distance: number;
  /** Fold between the lower faces, above 0 where the outer panel rises. */
  readonly fold: number;
  /** From the leading edge aft, where both lower faces lie. */
  readonly line: Vector;
  /** Angle of the cut to each panel's chord, above 0 where its trailing-edge end lies farther out on that panel. */
  readonly innerSkew: number;
  readonly outerSkew: number;
  /** How far the trailing edges of the lower faces stand apart once the leading edges meet; 0 where the joint closes. */
  readonly step: number;
}

/** Beyond this a joint line would run along the panel rather than across it. */
const steepestSkew = degrees(30);

/**
 * The joints of a wing: root (none in a continuous centre panel), then those of the right half, then of the left. The
 * lower faces of two panels meet in the line that their planes have in common, which is at once where to cut; where the
 * fold is too small to carry the washout so, or the washout is asked for as a step, the cut runs as the skew says.
 */
export function jointPlaces(wing: Wing, washoutBy: WashoutBy): readonly JointPlace[] {
  const panels = panelPlaces(wing);
  const of = (side: "right" | "left") => panels.filter((panel) => panel.side === side);
  const [right, left] = [of("right"), of("left")];
  const rootJoint = isContinuous(wing) ? [] : [meet(left[0] as PanelPlace, right[0] as PanelPlace, wing, washoutBy)];
  const further = ([right, left] as const).flatMap((half) =>
    half.slice(1).map((outer, index) => meet(half[index] as PanelPlace, outer, wing, washoutBy)),
  );
  return [...rootJoint, ...further];
}

/** True where the first panels of both halves are one piece: no break and no twist between them. */
export const isContinuous = ({ right, left }: Pick<Wing, "right" | "left">): boolean =>
  right.break[0] === 0 && left.break[0] === 0 && right.twist[0] === left.twist[0];

function meet(inner: PanelPlace, outer: PanelPlace, wing: Wing, washoutBy: WashoutBy): JointPlace {
  const atRoot = inner.side !== outer.side;
  const index = outer.number - 1;
  const place = {
    name: jointName(outer.side, atRoot ? 0 : inner.number),
    side: atRoot ? "root" : outer.side,
    ...{ inner, outer },
    distance: wing[outer.side].stations.distance[index] ?? Number.NaN,
  } as const;
  const skew = atRoot ? 0 : (wing[outer.side].skew[index] ?? 0);
  const across = cross(inner.up, outer.up);
  const size = Math.hypot(...across);
  if (size > 1e-9) {
    const line = from([0, 0, 0], [(across[0] < 0 ? -1 : 1) / size, across]);
    const [innerSkew, outerSkew] = [skewOn(inner, line), skewOn(outer, line)];
    const runsAcross = Math.max(Math.abs(innerSkew), Math.abs(outerSkew)) <= steepestSkew;
    if (runsAcross && (washoutBy === "cut" || Math.abs(outerSkew - skew) < 1e-9)) {
      const rises = dot(outer.out, inner.up) >= 0 ? 1 : -1;
      return { ...place, fold: rises * Math.atan2(size, dot(inner.up, outer.up)), line, innerSkew, outerSkew, step: 0 };
    }
  }
  const bend = atRoot ? inner.cant + outer.cant : outer.cant - inner.cant;
  const byTheCut = Math.atan(Math.sin(bend) * Math.tan(skew));
  const washout = outer.twist - inner.twist + byTheCut;
  const chord = Math.min(atRoot ? inner.root_chord : inner.tip_chord, outer.root_chord);
  const step = 2 * chord * Math.abs(Math.sin(washout / 2));
  return { ...place, fold: fold(bend, skew), line: inner.aft, innerSkew: skew, outerSkew: skew, step };
}

const skewOn = (panel: PanelPlace, line: Vector): number => Math.atan2(dot(line, panel.out), dot(line, panel.aft));
