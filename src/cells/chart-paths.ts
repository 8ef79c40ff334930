import type { ChartCell } from "./cell.ts";

/** What a chart draws, as paths: in the order of the parts of its step. */
export interface ChartPaths {
  readonly sweep: string | null;
  /** For each curve what runs along x, then each y; one curve of whole names, or one for each record that is named. */
  readonly curves: readonly { readonly name: string | null; readonly paths: readonly string[] }[];
  readonly band: string | null;
  /** Of a chart that shows one result. */
  readonly of: string | null;
}

/** The paths of a chart; where it names curves, x and y are fields of each of them. */
export function chartPaths({ sweep, x, y = [], curves, band, of }: ChartCell): ChartPaths {
  const along = [...(x ? [x] : []), ...y];
  const drawn = curves?.length
    ? curves.map((name) => ({ name, paths: along.map((field) => `${name}.${field}`) }))
    : [{ name: null, paths: along }];
  return { sweep: sweep || null, curves: drawn, band: band || null, of: of || null };
}

/** All of them in order, as they are read and computed. */
export const listedPaths = ({ sweep, curves, band, of }: ChartPaths): string[] =>
  [sweep, ...curves.flatMap(({ paths }) => paths), band, of].filter((path) => path !== null);
