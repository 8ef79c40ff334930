import type { SheetCell } from "../../cells/index.ts";
import type { Part } from "./parts.ts";

/** What a sheet was when it was printed. */
export type Printed = NonNullable<SheetCell["printed"]>;

/** What is kept of a sheet when it is printed: of each part its size, and a mark of where its lines run. */
export const printedNow = (parts: readonly Part[], date: string): Printed => ({
  on: date,
  parts: Object.fromEntries(parts.map((part) => [part.name, keptOf(part)])),
});

/** How a part differs from what was printed. */
export interface Moved {
  readonly part: string;
  /** Sizes then and now, as text; null where it was not there, or is no more. */
  readonly before: string | null;
  readonly now: string | null;
}

/** The parts that are no longer as they were printed. */
export function movedSince(printed: Printed, parts: readonly Part[]): Moved[] {
  const moved: Moved[] = [];
  const now = new Map(parts.map((part) => [part.name, keptOf(part)]));
  for (const [part, kept] of now) {
    const before = printed.parts[part] ?? null;
    if (before !== kept) moved.push({ part, before: before && sizeOf(before), now: sizeOf(kept) });
  }
  for (const [part, before] of Object.entries(printed.parts)) {
    if (!now.has(part)) moved.push({ part, before: sizeOf(before), now: null });
  }
  return moved;
}

const sizeOf = (kept: string): string => kept.split(" / ", 1)[0] ?? kept;

/** Nothing on paper shows less than a twentieth of a millimetre. */
const grid = 0.05;

function keptOf({ width, height, strokes }: Part): string {
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
  return `${width.toFixed(1)} × ${height.toFixed(1)} mm / ${(mark >>> 0).toString(16).padStart(8, "0")}`;
}
