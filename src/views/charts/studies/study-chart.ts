/** What all charts of studies share: their options, how they name things, and how they stand on a sheet. */

import { checkOptions, later, type Mark, mark, textMark } from "../../drawings/sketch.ts";
import { estimateWidth, type Measure } from "../../drawings/text-size.ts";
import { joinUnit, numberFormat } from "../../format.ts";
import { axisTitle } from "../axis.ts";
import type { Allowed } from "../trade-off-data.ts";

/** How a chart of a study is drawn. */
export interface StudyOptions {
  /** Its name; what is studied unless said. */
  readonly title?: string | undefined;
  /** Width of the sheet in px, 660 unless said, at least 240. */
  readonly width?: number;
  /** Height of each panel's field in px; by the width unless said. */
  readonly panelHeight?: number | undefined;
  /** How wide texts are; an estimate for the font of the page unless said. */
  readonly measure?: Measure;
  /** By result, how large a difference must be to be seen, in SI; null where that is not known. */
  readonly bands?: readonly (number | null)[] | undefined;
  /** What checks allow of the results, each by the text of its result. */
  readonly allowed?: readonly Allowed[] | undefined;
  /** The point that was chosen: what its inputs are, in SI. */
  readonly chosen?: readonly number[] | null | undefined;
  /** Called with what the inputs are, in SI, at a point that was chosen. Without it points only tell their values. */
  readonly onChoose?: ((inputs: readonly number[]) => void) | undefined;
}

const known = {
  title: true,
  width: true,
  panelHeight: true,
  measure: true,
  bands: true,
  allowed: true,
  chosen: true,
  onChoose: true,
} as const;

/** What a chart needs of its options. Throws where one is not known. */
export function readOptions(options: StudyOptions, chart: string) {
  checkOptions(options, known, chart);
  const { width = 660, measure = estimateWidth, bands = [], allowed = [], chosen = null } = options;
  return { width: Math.max(240, width), measure, bands, allowed, chosen };
}

/** The whole of a chart: a figure of this size with a title and a description. */
export const chartMark = (
  name: string,
  size: { readonly width: number; readonly height: number },
  title: string,
  description: () => string,
  layers: readonly Mark[],
): Mark =>
  mark(
    "svg",
    {
      class: `drawing ${name}`,
      role: "figure",
      width: size.width,
      height: size.height,
      viewBox: `0 0 ${size.width} ${size.height}`,
    },
    [textMark("title", {}, title), later("desc", () => textMark("desc", {}, description())), ...layers],
  );

/** The unit as a person reads it: nothing where a number has none. */
export const shownUnit = (unit: string): string => (unit === "1" ? "" : unit);

/** "tip_break, deg". */
export const titled = (text: string, unit: string): string => axisTitle(text, shownUnit(unit));

/** Tells values of a unit, to so many figures: "11.6 deg". */
export function teller(unit: string, figures = 4): (value: number) => string {
  const format = numberFormat(unit, { figures });
  return (value) => joinUnit(format(value));
}

/** Two values of an input are the same but for rounding. */
export const isSameValue = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** The point that was chosen, among points by their inputs; −1 where none is. */
export const chosenAmong = (points: readonly (readonly number[])[], chosen: readonly number[] | null): number =>
  chosen === null
    ? -1
    : points.findIndex((inputs) => inputs.every((value, axis) => isSameValue(value, chosen[axis] ?? Number.NaN)));

/** What a chart says of points that can be chosen. */
export const hint = "choose a point to try it";

/** "no difference you could see", as the band is called wherever results are compared. */
export const bandName = "no difference you could see";
