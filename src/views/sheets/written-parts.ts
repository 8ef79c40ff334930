import { type Box, boxOf, crossings, linesOf, type Stretch, touches } from "./box.ts";
import type { Label, Part, Point } from "./parts.ts";
import { sheetWords } from "./sheet-words.ts";

/**
 * Parts with words that can be read once they are cut out: each has its name and the thickness of its sheet on it, and a
 * label that would lie across a line, another label or the part's edge is moved a little, or made smaller where there is no
 * room beside. What finds no room at all stays where it was.
 */
export const writtenParts = (parts: readonly Part[]): Part[] => parts.map(written);

/** Letters smaller than this are not read any more, mm. */
const least = 1.6;
/** A label belongs where it was put; it moves no farther from there than this, mm. */
const farthest = 15;

function written(part: Part): Part {
  const cut = stretchesOf(part, "cut");
  const all = [...cut, ...stretchesOf(part, "score")];
  const taken: Box[] = [];
  // What stands well keeps its place; the others go round it.
  const own = part.labels.map((each) => (isNameOf(part, each.text) ? { ...each, text: sheetWords.named(part) } : each));
  const stands = own.map((label) => {
    const box = boxOf(label);
    const isFree = isWithin(label.at, cut) && free(box, all, taken);
    if (isFree) taken.push(box);
    return isFree;
  });
  const labels = own.map((label, index) => {
    if (stands[index]) return label;
    const isIn = isWithin(label.at, cut);
    // Never into another part or over a slot: no cut lies between where it was and where it is.
    const isOwn = (at: Point) => (isIn ? crossings([label.at, at], cut) === 0 : isWithin(at, cut));
    const moved = placed(label, around(label.at), (box) => isOwn(box.at) && free(box, all, taken)) ?? label;
    taken.push(boxOf(moved));
    return moved;
  });
  if (labels.some(({ text }) => `, ${text}, `.includes(`, ${part.name}, `))) return { ...part, labels };
  // A stock sheet has no outline of its own: its name stands in the waste, beside what lies on it.
  const isStock = !part.strokes.some((stroke) => stroke.layer === "cut" && spans(stroke.points, part));
  const name: Label = { text: sheetWords.named(part), at: [part.width / 2, part.height / 2], angle: 0, size: 3 };
  const added = placed(name, everywhere(part), (box) => isWithin(box.at, cut) !== isStock && free(box, all, taken));
  return { ...part, labels: added ? [...labels, added] : labels };
}

/** The name as a whole, or the last piece of it: "groove" for "seat, groove". */
const isNameOf = ({ name }: Part, text: string): boolean => text === name || text === name.split(", ").at(-1);

/** The label at the first of these places where it may stand, as large as it can be; null where there is none. */
function placed(label: Label, places: readonly Point[], mayStand: (box: Box) => boolean): Label | null {
  for (let size = label.size; size >= Math.min(least, label.size); size *= 0.85) {
    for (const at of places) {
      const moved = { ...label, at, size };
      if (mayStand(boxOf(moved))) return moved;
    }
  }
  return null;
}

const free = (box: Box, lines: readonly Stretch[], others: readonly Box[]): boolean =>
  !lines.some((line) => touches(box, line)) && !others.some((other) => overlap(box, other));

const overlap = (one: Box, other: Box): boolean =>
  linesOf(one).some((line) => touches(other, line)) || linesOf(other).some((line) => touches(one, line));

/** True within an outline and not in a hole of it: a way out crosses an odd number of cuts. */
const isWithin = (at: Point, cut: readonly Stretch[]): boolean =>
  crossings([at, [at[0] + 1e5, at[1] + 7]], cut) % 2 === 1;

/** Places about a label, the nearest first. */
const around = ([x, y]: Point): Point[] => steps.map(([dx, dy]) => [x + dx, y + dy]);

const nearest = (places: readonly Point[], [x, y]: Point): Point[] =>
  [...places].sort((a, b) => Math.hypot(a[0] - x, a[1] - y) - Math.hypot(b[0] - x, b[1] - y));

/** Places about a middle, so far both ways. */
const grid = ([x, y]: Point, across: number, up: number, step: number): Point[] => {
  const places: Point[] = [];
  const [columns, rows] = [Math.floor(across / step), Math.floor(up / step)];
  for (let c = -columns; c <= columns; c++) {
    for (let r = -rows; r <= rows; r++) places.push([x + c * step, y + r * step]);
  }
  return places;
};

const steps = nearest(grid([0, 0], farthest, farthest, 0.75), [0, 0]).filter(([x, y]) => Math.hypot(x, y) <= farthest);

/** Places all over a part, the nearest to its middle first; some two thousand at most. */
function everywhere({ width, height }: Part): Point[] {
  const middle: Point = [width / 2, height / 2];
  return nearest(grid(middle, width / 2, height / 2, Math.max(0.5, Math.sqrt((width * height) / 2000))), middle);
}

const stretchesOf = (part: Part, layer: "cut" | "score"): Stretch[] =>
  part.strokes.flatMap((stroke) =>
    stroke.layer === layer
      ? stroke.points.slice(1).map((point, index): Stretch => [stroke.points[index] as Point, point])
      : [],
  );

/** True where these points reach from one end of the part to the other, both ways. */
function spans(points: readonly Point[], { width, height }: Part): boolean {
  const reach = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return reach(points.map(([x]) => x)) > width - 0.01 && reach(points.map(([, y]) => y)) > height - 0.01;
}
