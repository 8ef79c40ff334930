/** Drawings of what is built: blanks and jig as parts, and joints in section. */
import type { DrawingCell } from "../cells/index.ts";
import {
  type JointInSection,
  type JointViewData,
  type JointViewOptions,
  liveJointView,
} from "./drawings/joint-view.ts";
import { livePartsView, type PartsViewData, type PartsViewOptions } from "./drawings/parts-view.ts";
import type { Figure, FigureContext, Ok } from "./figure.ts";
import { liveFigure } from "./live-figure.ts";
import { sameValue } from "./same-value.ts";
import { partsOf } from "./sheets/parts.ts";
import { patternOf } from "./sheets/pattern-of.ts";
import { words } from "./words.ts";

/** Blanks, a jig, or any other parts to cut. */
export const partsFigure = (first: FigureContext<DrawingCell>): Figure | string =>
  liveFigure(first, livePartsView, ({ desk, cell, result, width, height, measure }) => {
    const pattern = patternOf(result);
    const parts = pattern ? partsOf(pattern) : [];
    if (parts.length === 0) return words.noParts(cell.of);
    const before = desk.baseline.result(cell.id);
    const patternBefore = before?.ok && !sameValue(before.value, result.value) ? patternOf(before) : null;
    const baseline = patternBefore ? { parts: partsOf(patternBefore), name: words.baseline } : undefined;
    const data: PartsViewData = { parts, baseline };
    const options: PartsViewOptions = { name: cell.of, width, height: height ?? undefined, measure };
    return [data, options] as const;
  });

/** The joints that `joint_bevels` tells of. */
export const jointFigure = (first: FigureContext<DrawingCell>): Figure | string =>
  liveFigure(first, liveJointView, ({ cell, result, width, measure }) => {
    const joints = jointsOf(result);
    if (joints.length === 0) return words.noJoints(cell.of);
    const data: JointViewData = { joints };
    const options: JointViewOptions = { name: cell.of, width, measure };
    return [data, options] as const;
  });

/** As much of a record of joint_bevels as is drawn. */
interface BevelsValue {
  readonly joints: { readonly joint: readonly string[]; readonly fold: readonly number[] };
  readonly edges: {
    readonly panel: readonly string[];
    readonly joint: readonly string[];
    readonly thickness: readonly number[];
    readonly bevel: readonly number[];
    readonly off: readonly number[];
  };
}

/** Each joint with its edges as they lie seen from behind; joints, and edges from the inner one, in the record's order. */
export function jointsOf({ shape, value }: Ok): JointInSection[] {
  if (shape.kind !== "record" || shape.type !== "joint_bevels") return [];
  const { joints, edges } = value as unknown as BevelsValue;
  return joints.joint.flatMap((name, index) => {
    const own = edges.joint.flatMap((joint, at) => (joint === name ? [at] : []));
    const [inner, outer] = own.map((at) => ({
      panel: edges.panel[at] as string,
      thickness: edges.thickness[at] as number,
      bevel: edges.bevel[at] as number,
      off: edges.off[at] as number,
    }));
    if (!inner || !outer) return [];
    const pair = outer.panel.startsWith("left") ? ([outer, inner] as const) : ([inner, outer] as const);
    return [{ name, fold: joints.fold[index] as number, edges: pair }];
  });
}
