import type { Rectangle } from "./paper.ts";
import type { Point } from "./parts.ts";

/** What a line or a text is for. Each has its look, and on a cutter each is a layer of its own. */
export type Layer = "cut" | "score" | "text" | "frame" | "fine" | "seam";

/** A thing drawn on paper: mm, x to the right, y down. */
export type Mark =
  | { readonly kind: "line"; readonly layer: Layer; readonly points: readonly Point[] }
  | {
      readonly kind: "text";
      readonly layer: Layer;
      readonly text: string;
      readonly at: Point;
      /** Height of the letters, mm. */
      readonly size: number;
      /** Degrees, turned to the left. */
      readonly angle?: number;
      readonly anchor?: "start" | "middle" | "end";
      readonly isBold?: true;
    };

/** A page as it is printed: its frame, and within `area` what is drawn at true size, cut off at the area's edge. */
export interface PageDrawing {
  /** What it is, in words. */
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly area: Rectangle;
  readonly frame: readonly Mark[];
  readonly content: readonly Mark[];
}

/** Widths of lines and lengths of dashes, mm. */
export const looks: Readonly<Record<Layer, { readonly width: number; readonly dash?: readonly number[] }>> = {
  cut: { width: 0.25 },
  score: { width: 0.18, dash: [2, 1] },
  text: { width: 0.1 },
  frame: { width: 0.2 },
  fine: { width: 0.1 },
  seam: { width: 0.1, dash: [4, 1, 0.5, 1] },
};

/** The dashes of a line; one that turns, such as the arrow of the grain, is drawn through: dashes would lose its corners. */
export const dashOf = (layer: Layer, points: readonly Point[]): readonly number[] | undefined =>
  points.length > 2 ? undefined : looks[layer].dash;

export const line = (layer: Layer, ...points: Point[]): Mark => ({ kind: "line", layer, points });

type TextMark = Extract<Mark, { readonly kind: "text" }>;
export const text = (
  words: string,
  at: Point,
  size: number,
  more: Partial<Pick<TextMark, "angle" | "anchor" | "isBold" | "layer">> = {},
): Mark => ({ kind: "text", layer: "frame", text: words, at, size, ...more });
