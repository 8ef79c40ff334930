/**
 * Places labels on a sheet by one rule: four places beside what they tell of, then farther off with a leader. A label
 * never touches a line, another label or the edge of the sheet.
 */
import { type Box, crosses, grow, type Line, meet, overlap, type Point, within } from "./geometry.ts";
import { boxAround, indexLines, type LineIndex } from "./line-index.ts";
import { type Measure, type TextStyle, textReach } from "./text-size.ts";

/** A place beside a point, or a direction in which to stand off it, such as the normal of a sloping line. */
export type Place = "above" | "below" | "right" | "left" | Point;

/** A text that wants to stand beside a point. */
export interface Label extends TextStyle {
  readonly text: string;
  /** How it is drawn. */
  readonly class: string;
  readonly at: Point;
  /** The places to try, best first; all four unless said. */
  readonly places?: readonly Place[];
  /** Further points to try, all without a leader, before the first gets one. */
  readonly elsewhere?: readonly Point[];
  /** False where it is rather left out than put far off with a leader. */
  readonly leader?: false;
  /** True where the point lies amid lines, so that its leader may run over them and no way around is looked for. */
  readonly isAmid?: true;
  /** Distance from the point, 6 px unless said. */
  readonly gap?: number;
  /** Radius about the point within which lines belong to it, such as its own ring: a leader starts outside. */
  readonly own?: number;
}

/** Where a label came to stand. */
export interface PlacedLabel {
  readonly label: Label;
  readonly box: Box;
  /** From the point to the label, where it had to stand off. */
  readonly leader: Line | null;
  /** True where there was no way for the leader but over a line of the drawing. */
  readonly isOverLine: boolean;
}

/** Labels with their places, and those for which there was none. */
export interface Placing {
  readonly placed: readonly PlacedLabel[];
  readonly leftOut: readonly Label[];
}

/** What labels keep clear of. */
export interface Ground {
  readonly sheet: Box;
  readonly lines: readonly Line[];
  readonly boxes?: readonly Box[];
  readonly measure: Measure;
}

/** Labels in the order given, the ones before having the first choice; those without any room come back as left out. */
export function placeLabels(labels: readonly Label[], ground: Ground): Placing {
  const placed: PlacedLabel[] = [];
  const leftOut: Label[] = [];
  const indexed = { ...ground, lines: indexLines(ground.lines, ground.sheet) };
  for (const label of labels) {
    const found = nearby(label, indexed, placed) ?? (label.leader === false ? null : standOff(label, indexed, placed));
    if (found) placed.push(found);
    else leftOut.push(label);
  }
  return { placed, leftOut };
}

/** The box of a text whose baseline starts at a point. */
export function textBox(text: string, style: TextStyle, start: Point, measure: Measure): Box {
  const { above, below } = textReach(text, style.size);
  const right = start.x + measure(text, style);
  return { left: start.x, top: start.y - above, right, bottom: start.y + below };
}

/** The ground with its lines by where they lie. */
type Indexed = Omit<Ground, "lines"> & { readonly lines: LineIndex };

const clearance = 3;
const fourPlaces: readonly Place[] = ["above", "below", "right", "left"];

function nearby(label: Label, ground: Indexed, placed: readonly PlacedLabel[]): PlacedLabel | null {
  const { at, elsewhere = [], gap = 6, places = fourPlaces } = label;
  const size = sizeOf(label, ground.measure);
  for (const point of [at, ...elsewhere]) {
    for (const place of places) {
      const box = beside(point, place, gap, size, ground.sheet);
      if (isFree(box, ground, placed)) return { label, box, leader: null, isOverLine: false };
    }
  }
  return null;
}

function sizeOf(label: Label, measure: Measure) {
  const { above, below } = textReach(label.text, label.size);
  return { width: measure(label.text, label), height: above + below };
}
type Size = ReturnType<typeof sizeOf>;

function beside({ x, y }: Point, place: Place, gap: number, { width, height }: Size, sheet: Box): Box {
  const toward = typeof place === "string" ? directions[place] : place;
  // Just so far that the box clears, by the gap, the line through the point that is square to the direction.
  const away = gap + (Math.abs(toward.x) * width + Math.abs(toward.y) * height) / 2;
  const left = toward.x === 0 ? slide(x, width, sheet) : x + away * toward.x - width / 2;
  const top = y + away * toward.y - height / 2;
  return { left, top, right: left + width, bottom: top + height };
}

/** Where a text begins that stands over x: in the middle, but slid away from the edge of the sheet if it can be. */
const slide = (x: number, width: number, { left, right }: Box): number =>
  clamp(clamp(x - width / 2, left, right - width), x - width, x);

const directions = {
  above: { x: 0, y: -1 },
  below: { x: 0, y: 1 },
  right: { x: 1, y: 0 },
  left: { x: -1, y: 0 },
} as const;

const clamp = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value));

function isFree(box: Box, { sheet, lines, boxes = [] }: Indexed, placed: readonly PlacedLabel[]): boolean {
  if (!within(box, sheet)) return false;
  const room = grow(box, clearance);
  return (
    !placed.some((other) => overlap(room, other.box) || (other.leader !== null && crosses(other.leader, room))) &&
    !boxes.some((other) => overlap(room, other)) &&
    !lines.some(room, (line) => crosses(line, room))
  );
}

/**
 * Nearest rings first; on each, straight towards the best place, then ever more to the sides. Only where that side has
 * no room at all, the other; only where neither has, over lines; and last with the text to one side of its leader.
 */
function standOff(label: Label, ground: Indexed, placed: readonly PlacedLabel[]): PlacedLabel | null {
  const size = sizeOf(label, ground.measure);
  const best = label.places?.[0] ?? "above";
  const { x, y } = typeof best === "string" ? directions[best] : best;
  const straight = Math.atan2(x, -y);
  const search = (turns: readonly number[], isAside: boolean, mayCross: boolean) => {
    let over: StandOff | null = null;
    for (const distance of rings) {
      for (const turn of turns) {
        const found = atDistance(label, size, distance, straight + turn, isAside, ground.sheet);
        if (!isFree(found.box, ground, placed) || !isLeaderFree(found, ground, placed)) continue;
        if (!crossesLine(found, ground)) return { clear: found, over };
        over ??= found;
        if (mayCross) return { clear: null, over };
      }
    }
    return { clear: null, over };
  };
  // A label amid lines takes the first place of all, whether its leader runs over a line or not.
  const isAmid = label.isAmid === true;
  const front = search(ahead, false, isAmid);
  if (front.clear || (isAmid && front.over)) return placedAt(label, front);
  const back = search(behind, false, isAmid);
  if (back.clear) return placedAt(label, back);
  const over = front.over ?? back.over ?? search(around, true, true).over;
  return over && placedAt(label, { clear: null, over });
}

/** Where a label could stand, with its leader. */
type StandOff = ReturnType<typeof atDistance>;

function placedAt(
  label: Label,
  { clear, over }: { readonly clear: StandOff | null; readonly over: StandOff | null },
): PlacedLabel | null {
  const found = clear ?? over;
  return found && { label, box: found.box, leader: found.leader, isOverLine: clear === null };
}

/** Lengths of leaders, px. One longer than the last would no longer tell what it belongs to. */
const rings = [14, 20, 27, 35, 44, 54, 65, 78, 93, 110, 130];

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const ahead = [0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75].map(radians);
const behind = [105, -105, 120, -120, 135, -135, 150, -150, 165, -165, 180].map(radians);
const around = [...ahead, ...behind];

function atDistance(
  label: Label,
  { width, height }: Size,
  distance: number,
  turn: number,
  isAside: boolean,
  sheet: Box,
) {
  const { at, gap = 6, own = 0 } = label;
  const direction = { x: Math.sin(turn), y: -Math.cos(turn) };
  const end = { x: at.x + distance * direction.x, y: at.y + distance * direction.y };
  // The leader ends at the side of the text that faces the point: its edge's middle above and below, its end beside.
  const steep = Math.abs(direction.y) > 0.6;
  const beside = direction.x > 0 ? end.x + 2 : end.x - 2 - width;
  const aside = direction.x > 0 ? end.x - 6 : end.x + 6 - width;
  const left = !steep ? beside : isAside ? aside : slide(end.x, width, sheet);
  const top = steep ? (direction.y < 0 ? end.y - 2 - height : end.y + 2) : end.y - height / 2;
  const start = Math.max(own + 1, Math.min(gap / 2, distance / 3));
  const from = { x: at.x + start * direction.x, y: at.y + start * direction.y };
  return { at, own, box: { left, top, right: left + width, bottom: top + height }, leader: { from, to: end } };
}

/** A leader never runs through a label or another leader. */
function isLeaderFree({ leader }: StandOff, { boxes = [] }: Indexed, placed: readonly PlacedLabel[]): boolean {
  return (
    !placed.some(({ box, leader: other }) => crosses(leader, grow(box, clearance)) || (other && meet(leader, other))) &&
    !boxes.some((box) => crosses(leader, grow(box, clearance)))
  );
}

/** From a hair beside the point on, so that a leader may start at a line but not leap over the next. */
function crossesLine({ at, own, leader: { to } }: StandOff, { lines }: Indexed): boolean {
  const share = (own + 1) / Math.hypot(to.x - at.x, to.y - at.y);
  const whole = { from: { x: at.x + (to.x - at.x) * share, y: at.y + (to.y - at.y) * share }, to };
  return lines.some(boxAround(whole), (line) => meet(whole, line));
}
