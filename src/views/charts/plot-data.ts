/** What a plot shows, of whatever it is made: one panel or more above each other, with curves, points and limits. */

/** What runs along an axis, and the unit it is told in. */
export interface Along {
  readonly label: string;
  readonly unit: string;
  /** Of x: it runs just over its values, without rounding its ends. */
  readonly isExact?: true;
}

/** A place in a plot, in SI. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A line through places; where it has a name, this stands beside it. */
export interface Curve {
  /** "curve" is what counts, "aside" stands for comparison, "ghost" is what was before. */
  readonly look: "curve" | "aside" | "ghost";
  readonly name?: string | undefined;
  readonly places: readonly Place[];
}

/** A point that is told by a text beside it. */
export interface Spot extends Place {
  /** "point" lies on a curve, "root" stands for itself, "before" is where it was. */
  readonly look: "point" | "root" | "before";
  readonly text: string;
  /** What stands in its place on a narrow sheet. */
  readonly brief?: string;
}

/** A dashed line across a panel at a value, with a text. */
export interface PlotLimit {
  readonly axis: "x" | "y";
  readonly at: number;
  readonly text: string;
  /** "holds" for what should be, "moved" for what should not be passed. */
  readonly look: "holds" | "moved";
}

/** A band between two curves over the same x, such as what is not known better. */
export interface Band {
  readonly low: readonly Place[];
  readonly high: readonly Place[];
}

export interface PlotPanel {
  readonly y: Along;
  /** The panel's own x axis; where left out, that of the plot. */
  readonly x?: Along;
  /** Left out where there is little height. */
  readonly isMinor?: boolean;
  /** True where greater values stand lower, as sink does. */
  readonly isDown?: boolean;
  readonly curves: readonly Curve[];
  readonly spots?: readonly Spot[];
  readonly limits?: readonly PlotLimit[];
  readonly bands?: readonly Band[];
  /** The part of x, in SI, that is marked as good. */
  readonly good?: { readonly from: number; readonly to: number };
  /** Values that the axes must show, besides those drawn. */
  readonly reach?: { readonly x?: readonly number[]; readonly y?: readonly number[] };
}

export interface PlotData {
  /** Class of the drawing. */
  readonly view: string;
  readonly title: string;
  readonly x: Along;
  readonly panels: readonly PlotPanel[];
  /** Name of what ghosts and points "before" stand for, where there are any. */
  readonly before?: string | undefined;
  /** What is said below. */
  readonly note?: string;
  /** The same on a narrow sheet, where points are told briefly. */
  readonly narrowNote?: string;
  /** The plot in words. */
  readonly description: () => string;
}
