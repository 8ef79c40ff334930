import { numberText } from "../number-text.ts";
import type { PanelEdge } from "./edges.ts";
import { type FlatPart, grainArrow } from "./flat-part.ts";
import type { PanelPlace } from "./panel-place.ts";
import { areaWithin, bounds, corners, type Edge, middle, type Point } from "./polygon.ts";

/** The blank of a panel with what is told of it. */
export interface Blank {
  readonly part: FlatPart;
  /** Area of its lower face. */
  readonly area: number;
  /** Area of what the blank is longer by, beside edges that are sanded from below. */
  readonly extra: number;
  /** What its bevels take away. */
  readonly bevelled: number;
}

/** How a panel's wood lies: grain along its span, or along its leading edge. */
export type Grain = "span" | "leading edge";

/**
 * The blank of one panel, seen from above with its leading edge up, the right hand reaching right. The lower face keeps
 * its full length; where a bevel takes wood from the lower edge the blank is longer by that.
 */
export function blankOf(panel: PanelPlace, edges: readonly PanelEdge[], margin: number, grain: Grain): Blank {
  const [inboard, outboard] = (["inboard", "outboard"] as const).map((end) =>
    edges.find((each) => each.panel.name === panel.name && each.end === end),
  );
  const to = frame(panel, grain);
  const lines: Edge[] = around(panel, inboard?.skew ?? 0, outboard?.skew ?? 0).map(([from, end]) => [
    to(from),
    to(end),
  ]);
  // Around to the left for a right panel is tip, leading edge, root, trailing edge; a left one is turned over.
  const ordered = panel.sign === 1 ? lines : lines.map(([from, end]): Edge => [end, from]).reverse();
  const kinds = panel.sign === 1 ? kindsAround : [...kindsAround].reverse();
  const glued = { root: inboard, tip: outboard } as const;
  const longer = (edge: PanelEdge | undefined) => (edge && edge.bevel < 0 ? edge.off : 0);
  const allowance = (index: number) => {
    const kind = kinds[index];
    if (kind === "root" || kind === "tip") return glued[kind] ? longer(glued[kind]) : kind === "tip" ? margin : 0;
    return margin;
  };
  const face = corners(ordered, () => 0);
  const centre = middle(face);
  const box = bounds(face);
  return {
    part: {
      name: panel.name,
      thickness: panel.thickness,
      edges: ordered,
      allowance,
      scores: [
        grainArrow([centre[0], centre[1] - box.height * 0.2], box.width * 0.4),
        ...[inboard, outboard].flatMap((edge) => (edge && edge.off > 0 ? [upperEnd(face, ordered, kinds, edge)] : [])),
      ],
      labels: [
        { text: panel.name, at: centre, size: 0.004 },
        leadingLabel(panel, to),
        ...[inboard, outboard].flatMap((edge) => (edge ? [bevelLabel(edge, to, panel)] : [])),
      ],
    },
    area: areaWithin(face),
    extra: [inboard, outboard].reduce((sum, edge) => sum + (edge ? edgeLength(edge, panel) * longer(edge) : 0), 0),
    bevelled: [inboard, outboard].reduce((sum, edge) => sum + (edge ? wedge(edge, panel) : 0), 0),
  };
}

/** The edges of a panel in order. */
const kindsAround = ["tip", "leading", "root", "trailing"] as const;

/** The lines a panel is cut on in its own plane, out along its span and aft, around from the tip. */
function around(panel: PanelPlace, rootSkew: number, tipSkew: number): Edge[] {
  const { length, sweep, root_chord, tip_chord } = panel;
  const [rootAft, tipAft] = [root_chord, sweep + tip_chord];
  return [
    [
      [length + Math.tan(tipSkew) * tip_chord, tipAft],
      [length, sweep],
    ],
    [
      [length, sweep],
      [0, 0],
    ],
    [
      [0, 0],
      [Math.tan(rootSkew) * root_chord, rootAft],
    ],
    [
      [0, rootAft],
      [length, tipAft],
    ],
  ];
}

/** From a panel's own plane to its sheet: the right hand reaches right, the leading edge lies up, the grain along x. */
function frame({ sign, length, sweep }: PanelPlace, grain: Grain): (place: Point) => Point {
  const turn = grain === "span" ? 0 : Math.atan2(sweep, length);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return ([out, aft]) => [sign * (out * cos + aft * sin), out * sin - aft * cos];
}

/** Where the upper face ends (or the lower one, where the bevel takes from it): beside the edge, within the part. */
function upperEnd(face: readonly Point[], edges: readonly Edge[], kinds: readonly string[], edge: PanelEdge): Point[] {
  const kind = edge.end === "inboard" ? "root" : "tip";
  const index = kinds.indexOf(kind);
  const within = edge.bevel < 0 ? 0 : -edge.off;
  const moved = corners(edges, (each) => (each === index ? within : 0));
  const before = (index + face.length - 1) % face.length;
  return [moved[before] as Point, moved[index] as Point];
}

/** How an edge is sanded: its bevel, and what that takes off the face that ends short. */
function bevelWords({ bevel, off }: PanelEdge): string {
  const hundredths = Math.round(off * 1e5);
  if (hundredths === 0) return "square";
  return `bevel ${numberText(Math.abs(bevel), "deg")}: ${numberText(hundredths / 1e5, "mm")} off ${bevel < 0 ? "below" : "above"}`;
}

function bevelLabel(edge: PanelEdge, to: (place: Point) => Point, panel: PanelPlace) {
  const { end, skew } = edge;
  const { length, sweep, root_chord, tip_chord } = panel;
  const isRoot = end === "inboard";
  const [chord, start, front] = isRoot ? [root_chord, 0, 0] : [tip_chord, length, sweep];
  const inward = Math.min(0.005, length / 6) * (isRoot ? 1 : -1);
  const at: Point = [start + Math.tan(skew) * (chord / 2) + inward / Math.cos(skew), front + chord / 2];
  return {
    text: bevelWords(edge),
    at: to(at),
    angle: readingAngle(to(at), to([at[0] + Math.sin(skew), at[1] + Math.cos(skew)])),
  };
}

/** Just behind the leading edge's middle, along it. */
function leadingLabel({ length, sweep }: PanelPlace, to: (place: Point) => Point) {
  const behind = 0.005 * Math.hypot(1, sweep / length);
  return {
    text: "leading edge",
    at: to([length / 2, sweep / 2 + behind]),
    angle: readingAngle(to([0, 0]), to([length, sweep])),
  };
}

/** Angle of words along a line, never upside down; words along an upright line are read from the right. */
function readingAngle([ax, ay]: Point, [bx, by]: Point): number {
  const angle = Math.atan2(by - ay, bx - ax);
  if (angle > Math.PI / 2 + 0.3) return angle - Math.PI;
  return angle <= -Math.PI / 2 + 0.3 ? angle + Math.PI : angle;
}

/** Volume that a bevel takes: a wedge of t by off along the edge. */
const wedge = (edge: PanelEdge, panel: PanelPlace): number =>
  edgeLength(edge, panel) * panel.thickness * edge.off * 0.5;

const edgeLength = ({ end, skew }: PanelEdge, { root_chord, tip_chord }: PanelPlace): number =>
  (end === "inboard" ? root_chord : tip_chord) / Math.cos(skew);
