import type { SheetCell } from "../../cells/index.ts";

/** Sizes of paper upright, mm: ISO 216 (A4, A3), ANSI/ASME Y14.1 (Letter is its size A, 8.5 in by 11 in). */
const sizes = { A4: [210, 297], A3: [297, 420], Letter: [215.9, 279.4] } as const;

export type PaperName = keyof typeof sizes;
export const paperNames = Object.keys(sizes) as readonly PaperName[];

/** A rectangle, mm; x to the right, y down from the upper left corner of the paper. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A paper as it lies, and the area on it that parts are drawn in, mm. */
export interface Paper {
  readonly name: PaperName;
  readonly width: number;
  readonly height: number;
  readonly area: Rectangle;
}

/** No printer for the desk needs more than this as a rim; common practice. */
const rim = 7;
/** Bands for the title above, and for the rules to measure below and on the left. */
const bands = { title: 16, below: 15, left: 15 } as const;

/** The paper of a sheet; A4 upright where it says nothing. */
export function paperOf({ paper = "A4", lies = "upright" }: Pick<SheetCell, "paper" | "lies">): Paper {
  const [short, long] = sizes[paper];
  const [width, height] = lies === "upright" ? [short, long] : [long, short];
  const area = {
    x: rim + bands.left,
    y: rim + bands.title,
    width: width - 2 * rim - bands.left,
    height: height - 2 * rim - bands.title - bands.below,
  };
  return { name: paper, width, height, area };
}
