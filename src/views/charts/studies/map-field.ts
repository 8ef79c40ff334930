/** One field of a map: its contours, where checks fail, the band about the present design, the designs and all labels. */
import type { MapOutcome } from "../../../cells/index.ts";
import { unitOf } from "../../../library/at-first.ts";
import { type Box, grow, overlap, type Point, within } from "../../drawings/geometry.ts";
import { type Label, placeLabels, textBox } from "../../drawings/labels.ts";
import { type Mark, mark, round } from "../../drawings/sketch.ts";
import { labelMarks, leaderStrokes, pathThrough, ring, type Stroke, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten, textReach } from "../../drawings/text-size.ts";
import { decimalsFor } from "../axis.ts";
import { contourLines, type Grid, regionAbove } from "../contours.ts";
import { hatching, withoutBoxes } from "../hatch.ts";
import { crossPath } from "../points.ts";
import { gridPlace, type MapField } from "./map-sheet.ts";

/** The parts of a field, layer by layer. */
export function mapField(
  field: MapField,
  data: MapOutcome,
  { band, chosen, near }: { band: number | null; chosen: Point | null; near: Point | null },
  measure: Measure,
) {
  const [x, y] = data.inputs;
  const size = { columns: x?.values.length ?? 0, rows: y?.values.length ?? 0 };
  const result = data.results[field.index];
  const grid: Grid = { ...size, heights: result?.heights ?? [] };
  const designs = designsIn(field, data);
  const crosses = crossesIn(field, data);
  const placed = placeLabels(
    designs.map(({ name, at, isPresent }): Label => {
      const text = shorten(name, (field.right - field.left) / 2, isPresent ? strong : plain, measure);
      const style = isPresent ? { ...strong, class: "figure-moved" } : plain;
      return { ...style, text, at, own: designRadius, gap: designRadius + 4 };
    }),
    {
      sheet: { left: field.left + 2, right: field.right - 2, top: field.top + 2, bottom: field.bottom - 2 },
      lines: [
        ...designs.flatMap(({ at }) => ring(at, designRadius)),
        ...(chosen ? ring(chosen, designRadius + 4) : []),
      ],
      boxes: crosses.map((at) => around(at, 4)),
      measure,
    },
  ).placed;
  const taken: Box[] = [
    ...placed.map(({ box }) => grow(box, 2)),
    ...designs.map(({ at }) => around(at, designRadius + 2)),
    ...crosses.map((at) => around(at, 4)),
    ...(chosen ? [around(chosen, designRadius + 4)] : []),
  ];
  const leaders = placed.flatMap(({ leader }) => (leader ? [leader] : []));
  taken.push(...leaders.map(({ from, to }) => boxOf(from, to)));
  const failing = data.checks.map(({ name, holds, margin }) => {
    const failGrid = failureOf({ ...size, heights: margin }, holds);
    const place = (line: readonly Point[]): Point[] => line.map(field.place);
    return {
      name,
      outlines: regionAbove(failGrid.grid, failGrid.level).map(place),
      borders: contourLines(failGrid.grid, failGrid.level).map(place),
    };
  });
  const texts: Mark[] = [];
  const put = (text: string, style: typeof plain & { readonly class: string }, spots: readonly Point[]): void => {
    const box = spots.map((at) => boxAbout(text, style, at, measure)).find((each) => isFree(each, field, taken));
    if (!box) return;
    taken.push(grow(box, 2));
    texts.push(textAt(style.class, text, { x: box.left, y: box.top + textReach(text, style.size).above }, style));
  };
  for (const { name, borders, outlines } of failing) {
    if (outlines.length === 0) continue;
    const text = `✕ ${shorten(name, (field.right - field.left) / 2, plain, measure)}`;
    put(text, { ...plain, class: "figure-moved" }, [...spotsOn(borders), ...insideOf(outlines)]);
  }
  const levels = (result?.levels ?? []).map((level) => ({
    level,
    lines: contourLines(grid, level).map((line) => line.map(field.place)),
  }));
  const tell = levelTeller(result?.levels ?? [], result?.unit ?? "1");
  for (const { level, lines } of levels) put(tell(level), { ...plain, class: "figure" }, spotsOn(lines));
  const cut = (name: string, lines: readonly (readonly Point[])[]): Stroke[] =>
    lines.flatMap((line) => withoutBoxes(line, taken).map((points) => ({ class: name, points })));
  return {
    areas: band === null ? [] : bandOf(field, grid, data, band),
    hatch: failing.flatMap(({ outlines }) => hatching(outlines, taken)),
    lines: [
      ...cut(
        "contour",
        levels.flatMap(({ lines }) => lines),
      ),
      ...cut(
        "fails-edge",
        failing.flatMap(({ borders }) => borders),
      ),
      ...leaderStrokes(placed),
    ],
    designs: [
      ...crosses.map((at) => mark("path", { class: "failed", d: crossPath(at, 2.6) })),
      ...designs.map(({ at, isPresent }) => circle(isPresent ? "present" : "design-ring", at, designRadius)),
      ...(near ? [circle("point near", near, 4)] : []),
      ...(chosen ? [circle("chosen-ring", chosen, designRadius + 3)] : []),
    ],
    texts: [...labelMarks(placed), ...texts],
    hasBand: band !== null && data.marks.some(({ trial }) => trial === null),
    isHatched: failing.some(({ outlines }) => outlines.length > 0),
  };
}

/** The heights whose region above a level is where a check fails: by its margin, else by whether it holds. */
function failureOf({ heights, ...size }: Grid, holds: readonly (boolean | null)[]) {
  const hasMargin = holds.every((each, place) => each === null || heights[place] !== null);
  const failing = hasMargin
    ? heights.map((height, place) => (holds[place] === null || height === null ? null : -height))
    : holds.map((each) => (each === null ? null : each ? 0 : 1));
  // A check that is just met holds, so where it fails begins a hair beyond.
  const largest = failing.reduce((most: number, each) => Math.max(most, Math.abs(each ?? 0)), 0);
  return { grid: { ...size, heights: failing }, level: hasMargin ? 1e-9 * largest : 0.5 };
}

/** Designs that stand within the map; those at one place share a mark. */
function designsIn(field: MapField, { inputs, marks }: MapOutcome) {
  const designs: { name: string; at: Point; isPresent: boolean }[] = [];
  for (const { trial, at } of marks) {
    const [x, y] = at.map((value, axis) => gridPlace(inputs[axis]?.values ?? [], value)) as [
      number | null,
      number | null,
    ];
    if (x === null || y === null) continue;
    const place = field.place({ x, y });
    const same = designs.find((each) => Math.hypot(each.at.x - place.x, each.at.y - place.y) < 1);
    if (same) same.name += `, ${trial ?? "as it is"}`;
    else designs.push({ name: trial ?? "as it is", at: place, isPresent: trial === null });
  }
  return designs;
}

/** Places without a value for the result of the field, those that stand apart. */
function crossesIn(field: MapField, { gaps, results }: MapOutcome): Point[] {
  const own = gaps.filter(({ of }) => of === results[field.index]?.text);
  const kept: Point[] = [];
  for (const { point } of own) {
    const at = field.place({ x: point[0], y: point[1] });
    if (kept.every((each) => Math.abs(each.x - at.x) + Math.abs(each.y - at.y) >= 14)) kept.push(at);
  }
  return kept;
}

/** What lies no further from the present design than could be seen. */
function bandOf(field: MapField, grid: Grid, { inputs, marks }: MapOutcome, band: number): Mark[] {
  const present = marks.find(({ trial }) => trial === null);
  const place = present?.at.map((value, axis) => gridPlace(inputs[axis]?.values ?? [], value));
  const now = place && heightAt(grid, place[0] ?? null, place[1] ?? null);
  if (now === null || now === undefined) return [];
  const outlines = [now - band, now + band].flatMap((level) => regionAbove(grid, level));
  const d = outlines.map((outline) => pathThrough(outline.map(field.place), "Z")).join("");
  return [mark("path", { class: "band", "fill-rule": "evenodd", d })];
}

/** The height between four of the grid; null where one of them is missing. */
function heightAt({ columns, rows, heights }: Grid, x: number | null, y: number | null): number | null {
  if (x === null || y === null) return null;
  const [column, row] = [Math.min(columns - 2, Math.floor(x)), Math.min(rows - 2, Math.floor(y))];
  const at = (right: number, down: number) => heights[column + right + (row + down) * columns] ?? null;
  const [a, b, c, d] = [at(0, 0), at(1, 0), at(0, 1), at(1, 1)];
  if (a === null || b === null || c === null || d === null) return null;
  const [u, v] = [x - column, y - row];
  return (1 - v) * ((1 - u) * a + u * b) + v * ((1 - u) * c + u * d);
}

/** Places on lines to put a label at: the middle of each first, then elsewhere; longer lines before shorter. */
function spotsOn(lines: readonly (readonly Point[])[]): Point[] {
  const longest = lines.toSorted((a, b) => b.length - a.length);
  return [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9].flatMap((share) =>
    longest.flatMap((line) => line[Math.round(share * (line.length - 1))] ?? []),
  );
}

/** Places within outlines: the middle of the box about each, and of its quarters. */
function insideOf(outlines: readonly (readonly Point[])[]): Point[] {
  return outlines.flatMap((outline) => {
    const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
    const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    return [0.5, 0.3, 0.7].flatMap((v) =>
      [0.5, 0.3, 0.7].map((u) => ({ x: left + u * (right - left), y: top + v * (bottom - top) })),
    );
  });
}

/** Tells levels with as many decimals as tell them apart. */
function levelTeller(levels: readonly number[], unit: string): (level: number) => string {
  const { factor, offset } = unitOf(unit);
  const shown = levels.map((level) => (level - offset) / factor);
  const step = Math.abs((shown[1] ?? 1) - (shown[0] ?? 0));
  const decimals = Math.min(12, decimalsFor(step || 1));
  return (level) => {
    const value = (level - offset) / factor;
    const text = Math.abs(value).toFixed(decimals);
    return value < 0 && Number(text) !== 0 ? `−${text}` : text;
  };
}

const isFree = (box: Box, { left, right, top, bottom }: MapField, taken: readonly Box[]): boolean =>
  within(box, { left: left + 3, right: right - 3, top: top + 3, bottom: bottom - 3 }) &&
  !taken.some((other) => overlap(grow(box, 2), other));

function boxAbout(text: string, style: typeof plain, at: Point, measure: Measure): Box {
  const { above, below } = textReach(text, style.size);
  const start = { x: at.x - measure(text, style) / 2, y: at.y + (above - below) / 2 };
  return textBox(text, style, start, measure);
}

const around = ({ x, y }: Point, by: number): Box => ({ left: x - by, right: x + by, top: y - by, bottom: y + by });

const boxOf = (a: Point, b: Point): Box => ({
  left: Math.min(a.x, b.x) - 1,
  right: Math.max(a.x, b.x) + 1,
  top: Math.min(a.y, b.y) - 1,
  bottom: Math.max(a.y, b.y) + 1,
});

const circle = (name: string, { x, y }: Point, r: number): Mark =>
  mark("circle", { class: name, cx: round(x), cy: round(y), r });

const designRadius = 5;
const plain = { size: 12, weight: 400, class: "note" };
const strong = { size: 13, weight: 600 } as const;
