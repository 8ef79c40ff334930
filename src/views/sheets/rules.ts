import { line, type Mark, text } from "./marks.ts";
import type { Paper } from "./paper.ts";
import type { Point } from "./parts.ts";
import { sheetWords } from "./sheet-words.ts";

const metric = { length: 100, step: 10, tick: 2, names: [0, 50, 100], unit: "mm", scale: 1 } as const;
const inches = { length: 4 * 25.4, step: 25.4 / 2, tick: 2, names: [0, 1, 2, 3, 4], unit: "in", scale: 25.4 } as const;

/** Where the rules begin: below and left of the area. */
export const rulesFrom = ({ area }: Paper): Point => [area.x, area.y + area.height + 3];

/**
 * Rules of 100 mm and of 4 in along the lower and the left side, and two crosses at the ends of the first: with them a
 * print is measured both ways and across before anything is cut. The crosses are √2·100 mm apart.
 */
export function rules(paper: Paper): Mark[] {
  const [x, y] = rulesFrom(paper);
  const side = paper.area.x - 3;
  const foot = paper.area.y + paper.area.height;
  const along = (rule: typeof metric | typeof inches, away: number): Mark[] =>
    ruleMarks(
      rule,
      (at, out) => [x + at, y + away + out],
      (at) => [[x + at, y + away + 4.4], 0],
    );
  const up = (rule: typeof metric | typeof inches, away: number): Mark[] =>
    ruleMarks(
      rule,
      (at, out) => [side - away - out, foot - at],
      (at) => [[side - away - 3.7, foot - at], 90],
    );
  const diagonal = (100 * Math.SQRT2).toFixed(1);
  return [
    ...along(metric, 0),
    ...along(inches, 6),
    ...up(metric, 0),
    ...up(inches, 6),
    ...cross([x + 100, foot]),
    ...cross([paper.area.x, foot - 100]),
    ...sheetWords.measure(diagonal).map((words, index) => text(words, [x + 110, y + 2 + 3.1 * index], 2.4)),
  ];
}

function ruleMarks(
  { length, step, tick, names, unit, scale }: typeof metric | typeof inches,
  place: (at: number, out: number) => Point,
  label: (at: number) => readonly [Point, number],
): Mark[] {
  const marks: Mark[] = [line("frame", place(0, 0), place(length, 0))];
  for (let i = 0; i <= Math.round(length / step); i++) {
    marks.push(line("frame", place(i * step, 0), place(i * step, i % 2 === 0 || unit === "mm" ? tick : tick / 2)));
  }
  for (const name of names) {
    const [at, angle] = label(name * scale);
    const last = name === names[names.length - 1];
    marks.push(text(last ? `${name} ${unit}` : `${name}`, at, 2.2, { anchor: "middle", angle }));
  }
  return marks;
}

/** A cross whose arms do not touch the corner that is measured from. */
function cross([x, y]: Point): Mark[] {
  return [line("frame", [x - 2, y], [x + 2, y]), line("frame", [x, y - 2], [x, y + 2])];
}
