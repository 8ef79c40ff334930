import type { Measure } from "./text-size.ts";

/** How a drawing of a wing or glider is drawn. */
export interface DrawingOptions {
  /** Name of what is drawn, for the title. */
  readonly name: string;
  /** Width of the sheet in px, 660 unless said, at least 240. */
  readonly width?: number;
  /** Unit of the lengths, mm unless said, and shop fractions for inches. */
  readonly unit?: string;
  readonly fraction?: number | undefined;
  /** How wide texts are; an estimate for the font of the page unless said. */
  readonly measure?: Measure;
}

/** The names of the options, for checkOptions. */
export const drawingOptions = { name: true, width: true, unit: true, fraction: true, measure: true } as const;
