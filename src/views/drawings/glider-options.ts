import { type DrawingOptions, drawingOptions } from "./options.ts";

/** How a plan or side view is drawn. */
export interface GliderDrawingOptions extends DrawingOptions {
  /** How high the sheet is to be at most, in px, so that it stands on the screen as a whole; 600 unless said. */
  readonly height?: number | undefined;
}

/** The names of the options, for checkOptions. */
export const gliderDrawingOptions = { ...drawingOptions, height: true } as const;
