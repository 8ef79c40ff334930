import type { PinnedCell, Result } from "../cells/index.ts";
import type { Desk } from "./desk.ts";
import type { Measure } from "./drawings/text-size.ts";
import type { FigureNumbers } from "./shown-figure.ts";

export type Ok = Extract<Result, { readonly ok: true }>;

/** What a figure is drawn from. */
export interface FigureContext<C extends PinnedCell = PinnedCell> {
  readonly desk: Desk;
  readonly cell: C;
  /** The cell's result, which is there. */
  readonly result: Ok;
  /** Of the sheet, in px. */
  readonly width: number;
  /** How high a figure may be to stand on the screen as a whole, in px; null where there is room. */
  readonly height: number | null;
  readonly measure: Measure;
}

/** A figure on its sheet. It is drawn again in place. */
export interface Figure {
  readonly element: Element;
  /** The picture in it; null while there is none. */
  readonly picture: SVGSVGElement | null;
  /** What a chart is drawn from; null for a drawing. */
  readonly numbers: FigureNumbers | null;
  /** Gives a sentence where this cannot be drawn; what was drawn before stays. */
  draw(context: FigureContext): string | null;
}

/** A figure, or a sentence that says why it cannot be drawn. */
export type Made = Figure | string;

/** Makes a figure; later, where what draws it has to load first. */
export type FigureMaker<C extends PinnedCell> = (context: FigureContext<C>) => Made | Promise<Made>;
