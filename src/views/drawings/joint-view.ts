/**
 * The joints of a wing in section, looking along the joint line from behind: two edges that meet, each bevelled by half the fold,
 * and in thin lines the square edges that the wood comes off.
 */
import { degreesFigure, type LengthFormat, lengthText, partFigure } from "./dimension-text.ts";
import type { Point } from "./geometry.ts";
import { headMarks } from "./head.ts";
import type { Label } from "./labels.ts";
import { type DrawingOptions, drawingOptions } from "./options.ts";
import { bestPlacing } from "./placing.ts";
import {
  checkOptions,
  type LiveDrawing,
  layer,
  liveDrawing,
  type Mark,
  mark,
  type Surroundings,
  sheetMark,
} from "./sketch.ts";
import { arc, labelMarks, leaderStrokes, pathThrough, type Stroke, strokeLines, strokeMarks } from "./strokes.ts";
import { estimateWidth } from "./text-size.ts";

/** A joint in section; radians and metres. */
export interface JointInSection {
  readonly name: string;
  /** Between the lower faces; below 0 where the outer panel goes down. */
  readonly fold: number;
  /** The left and the right edge, as seen from behind. */
  readonly edges: readonly [JointEdge, JointEdge];
}
export interface JointEdge {
  /** The panel it is on, written on its wood; nothing where it is empty. */
  readonly panel: string;
  readonly thickness: number;
  readonly bevel: number;
  /** How far the face it takes from ends short of the other. */
  readonly off: number;
}

/** What a view of joints is drawn from. */
export interface JointViewData {
  readonly joints: readonly JointInSection[];
}
export type JointViewOptions = DrawingOptions;

/** Draws joints. Throws on an option it does not know and where there are no joints. */
export const jointView = (data: JointViewData, options: JointViewOptions, surroundings: Surroundings): SVGSVGElement =>
  liveJointView(data, options, surroundings).element;

/** Draws joints, following new data in place. */
export const liveJointView = (
  data: JointViewData,
  options: JointViewOptions,
  surroundings: Surroundings,
): LiveDrawing<JointViewData, JointViewOptions> => liveDrawing(sketchJointView, data, options, surroundings);

const cell = { width: 200, height: 160, head: 28 } as const;
/** Thickness of the thickest panel, and length of wood to both sides of the joint, px. */
const thickest = 36;
const reach = 78;
const small = { size: 11, weight: 400 } as const;

function sketchJointView({ joints }: JointViewData, options: JointViewOptions): Mark {
  checkOptions(options, drawingOptions, "view of joints");
  const { name, width: asked = 660, unit = "mm", fraction, measure = estimateWidth } = options;
  const format: LengthFormat = { unit, fraction };
  if (joints.length === 0) throw new Error("got no joints, expected some");
  const width = Math.max(240, asked);
  const columns = Math.max(1, Math.floor(width / cell.width));
  const rows = Math.ceil(joints.length / columns);
  const height = cell.head + rows * cell.height;
  const scale = thickest / Math.max(...joints.flatMap(({ edges }) => edges.map(({ thickness }) => thickness)));
  const step = width / columns;
  const drawn = joints.map((joint, index) => {
    const x = (index % columns) * step + step / 2;
    const y = cell.head + Math.floor(index / columns) * cell.height + cell.height * 0.68;
    return section(joint, { x, y }, scale, format);
  });
  const strokes = drawn.flatMap((each) => each.strokes);
  const room = { left: 4, top: cell.head - 6, right: width - 4, bottom: height - 2 };
  const lines = strokeLines(strokes);
  const { placed, leftOut } = bestPlacing(
    drawn.flatMap((each) => each.labels),
    { sheet: room, lines, measure },
  );
  const head = {
    seen: `along the joint line from behind, ${unit}; enlarged`,
    unit,
    leftOut: leftOut.length,
    baseline: undefined,
  };
  const of = (...classes: readonly string[]) => strokes.filter((each) => classes.includes(each.class));
  return sheetMark("joint-view", { width, height }, `Joints of ${name}`, () => jointWords(joints, format), [
    layer(
      "wood-layer",
      drawn.flatMap(({ wood }) => wood.map((points) => mark("path", { class: "wood", d: pathThrough(points, "Z") }))),
    ),
    layer("lines-layer", strokeMarks([...of("guide", "angle", "datum"), ...leaderStrokes(placed)])),
    layer("edge-layer", strokeMarks(of("edge").map((each) => ({ ...each, width: 1.3 })))),
    layer("figure-layer", labelMarks(placed)),
    layer("head", headMarks(head, 16, room, measure)),
  ]);
}

interface Section {
  readonly wood: readonly (readonly Point[])[];
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

/** One joint: both edges turned up by half the fold, so that what they share stands upright between them. */
function section(joint: JointInSection, at: Point, scale: number, format: LengthFormat): Section {
  const { name, fold, edges } = joint;
  const half = fold / 2;
  const wood: Point[][] = [];
  const strokes: Stroke[] = [];
  const panels: Label[] = [];
  edges.forEach((edge, index) => {
    const way = index === 0 ? -1 : 1;
    // Along the panel away from the joint, and up square to it.
    const along = { x: way * Math.cos(half), y: -Math.sin(half) };
    const up = { x: -way * Math.sin(half), y: -Math.cos(half) };
    const point = (a: number, b: number): Point => ({
      x: at.x + a * along.x + b * up.x,
      y: at.y + a * along.y + b * up.y,
    });
    const thick = edge.thickness * scale;
    const off = edge.off * scale;
    // The upper face is shortened where the panel goes up; where it goes down the lower one is, so the upper runs on.
    const upper = fold >= 0 ? off : -off;
    if (edge.panel !== "" && thick > 16) {
      const at = point(reach * 0.62, thick / 2);
      const places = [{ x: 0, y: 0 }] as const;
      panels.push({ ...small, text: edge.panel, class: "figure", at, places, isAmid: true, leader: false });
    }
    const square = Math.min(0, upper);
    const outline = [point(0, 0), point(reach, 0), point(reach, thick), point(upper, thick)];
    wood.push(outline);
    strokes.push({ class: "edge", points: [...outline, point(0, 0)] });
    // The square edge before it was sanded.
    if (off > 0.5) strokes.push({ class: "guide", points: [point(square, 0), point(square, thick)] });
  });
  const radius = reach * 0.72;
  if (Math.abs(fold) > 0.004) {
    strokes.push({
      class: "datum",
      points: [at, { x: at.x + Math.cos(half) * reach, y: at.y + Math.sin(half) * reach }],
    });
    strokes.push(arc("angle", at, radius, -half, half));
  }
  const label = (text: string, point: Point, places: Label["places"], weight = 400): Label => ({
    ...{ text, class: "figure", size: 12, weight, at: point },
    ...(places && { places }),
    isAmid: true,
  });
  const [left, right] = edges;
  const bevels =
    Math.abs(left.bevel - right.bevel) < 1e-6
      ? `bevel ${degreesFigure(Math.abs(left.bevel))}° each`
      : `bevels ${degreesFigure(Math.abs(left.bevel))}°, ${degreesFigure(Math.abs(right.bevel))}°`;
  const [leftOff, rightOff] = [left, right].map((edge) => partFigure(edge.off, 0.01, format));
  const offs = leftOff === rightOff ? `${leftOff}` : `${leftOff}, ${rightOff}`;
  const over = {
    x: at.x,
    y: at.y - Math.max(left.thickness, right.thickness) * scale - Math.sin(Math.abs(half)) * reach,
  };
  const labels = [
    label(name, { x: at.x, y: over.y - 46 }, [{ x: 0, y: 0 }, "above"], 700),
    label(bevels, { x: at.x, y: over.y - 29 }, [{ x: 0, y: 0 }, "above"]),
    label(`${offs} ${format.unit} off`, { x: at.x, y: over.y - 12 }, [{ x: 0, y: 0 }, "above"]),
    label(`fold ${degreesFigure(fold)}°`, { x: at.x, y: at.y + Math.max(0, Math.sin(half)) * reach + 12 }, [
      { x: 0, y: 0 },
      "below",
    ]),
    ...panels,
  ];
  return { wood, strokes, labels };
}

function jointWords(joints: readonly JointInSection[], format: LengthFormat): string {
  const told = joints.map(({ name, fold, edges: [left, right] }) => {
    const edge = ({ panel, bevel, off }: JointEdge) =>
      `${degreesFigure(Math.abs(bevel))} degrees, ${lengthText(off, format)} off${panel === "" ? "" : ` on ${panel}`}`;
    return `${name}: fold ${degreesFigure(fold)} degrees, bevels ${edge(left)} and ${edge(right)}`;
  });
  return `${told.join(". ")}.`;
}
