import type { SheetCell } from "../../cells/index.ts";
import type { Part } from "./parts.ts";

/** What a sheet was when it was printed. */
export type Printed = NonNullable<SheetCell["printed"]>;

/**
 * What is kept of a sheet when it is printed: of each part its size, a mark of where its lines run, and its words; and the
 * trial that was on, if one was.
 */
export const printedNow = (parts: readonly Part[], date: string, trial?: string): Printed => ({
  on: date,
  ...(trial !== undefined && { trial }),
  parts: Object.fromEntries(parts.map((part) => [part.name, keptOf(part)])),
});

/** How a part differs from what was printed. */
export interface Moved {
  readonly part: string;
  /** Sizes then and now, as text; null where it was not there, or is no more. */
  readonly before: string | null;
  readonly now: string | null;
  /** Words on it that were not there, and those that are no more. */
  readonly written: readonly string[];
  readonly gone: readonly string[];
}

/** The parts that are no longer as they were printed. */
export function movedSince(printed: Printed, parts: readonly Part[]): Moved[] {
  const moved: Moved[] = [];
  const now = new Map(parts.map((part) => [part.name, keptOf(part)]));
  for (const [part, kept] of now) {
    const before = printed.parts[part];
    if (before === kept) continue;
    if (before === undefined) moved.push({ part, before: null, now: sizeOf(kept), written: [], gone: [] });
    else {
      const [then, today] = [wordsOf(before), wordsOf(kept)];
      const written = today.filter((each) => !then.includes(each));
      const gone = then.filter((each) => !today.includes(each));
      moved.push({ part, before: sizeOf(before), now: sizeOf(kept), written, gone });
    }
  }
  for (const [part, before] of Object.entries(printed.parts)) {
    if (!now.has(part)) moved.push({ part, before: sizeOf(before), now: null, written: [], gone: [] });
  }
  return moved;
}

const between = " / ";
const sizeOf = (kept: string): string => kept.split(between, 1)[0] ?? kept;
const wordsOf = (kept: string): readonly string[] => kept.split(between).slice(2);

/** Nothing on paper shows less than a twentieth of a millimetre. */
const grid = 0.05;

function keptOf({ name, thickness, width, height, strokes, labels }: Part): string {
  let mark = 0x811c9dc5;
  const take = (value: number): void => {
    // FNV-1a by G. Fowler, L. C. Noll, K.-P. Vo (RFC 9923), over the rounded places.
    mark = Math.imul(mark ^ (value & 0xffff), 0x01000193);
  };
  for (const { layer, points } of strokes) {
    take(layer === "cut" ? 1 : 2);
    for (const [x, y] of points) {
      take(Math.round(x / grid));
      take(Math.round(y / grid));
    }
  }
  const size = `${width.toFixed(1)} × ${height.toFixed(1)} × ${Math.round(thickness * 100) / 100} mm`;
  // A bevel that is written on a part is sanded by what is written. The name has the thickness with it, which is told as size.
  const words = [...new Set(labels.map(({ text }) => text).filter((text) => !text.startsWith(name)))];
  return [size, (mark >>> 0).toString(16).padStart(8, "0"), ...words].join(between);
}
