import { numberText } from "../number-text.ts";
import type { Refuse } from "../spec.ts";
import type { JointPlace } from "./joint-place.ts";
import type { PanelPlace } from "./panel-place.ts";

/** One edge of a panel that is glued to another. */
export interface PanelEdge {
  readonly panel: PanelPlace;
  readonly joint: JointPlace;
  readonly end: "inboard" | "outboard";
  /** Off square, half of the fold; above 0 where the wood comes off the upper edge. */
  readonly bevel: number;
  /** How far the upper face (the lower one for a bevel below 0) ends short of the other: t · tan(bevel). */
  readonly off: number;
  /** Angle of the cut to the panel's chord, above 0 where its trailing-edge end lies farther out. */
  readonly skew: number;
}

/** Both edges of each joint, the inner panel's first. */
export const edgesOf = (joints: readonly JointPlace[]): readonly PanelEdge[] =>
  joints.flatMap((joint) => [edge(joint, joint.inner), edge(joint, joint.outer)]);

function edge(joint: JointPlace, panel: PanelPlace): PanelEdge {
  const isInner = panel === joint.inner;
  const bevel = joint.fold / 2;
  return {
    ...{ panel, joint, bevel },
    end: isInner && joint.side !== "root" ? "outboard" : "inboard",
    off: panel.thickness * Math.tan(Math.abs(bevel)),
    skew: isInner ? joint.innerSkew : joint.outerSkew,
  };
}

/** Refuses a panel thicker than it is deep: no sheet, but a slip of the pen or of the unit. */
export function refuseThick(panels: readonly PanelPlace[], refuse: Refuse): void {
  for (const { name, thickness, root_chord, tip_chord } of panels) {
    const chord = Math.max(root_chord, tip_chord);
    if (thickness <= chord) continue;
    refuse(
      "wing",
      `Panel ${name} is ${numberText(thickness, "mm")} thick on a chord of ${numberText(chord, "mm")}. Its thickness is that of the sheet: ` +
        "correct it in the table of panels.",
    );
  }
}

/**
 * Refuses a joint whose bevel is steeper than wood holds at its edge, and a panel that its bevels leave no face of.
 */
export function refuseSteep(edges: readonly PanelEdge[], steepest: number, parameter: string, refuse: Refuse): void {
  const degrees = (angle: number) => numberText(angle, "deg");
  for (const { joint, bevel } of edges) {
    if (Math.abs(bevel) > steepest + 1e-12) {
      refuse(
        parameter,
        `The ${joint.name} joint folds by ${degrees(Math.abs(joint.fold))}, a bevel of ${degrees(Math.abs(bevel))} on each edge; ` +
          `the limit is ${degrees(steepest)}. Make that break smaller, or share it between two joints.`,
      );
    }
  }
  for (const panel of new Set(edges.map((each) => each.panel))) {
    const lost = edges.filter((each) => each.panel === panel).reduce((sum, each) => sum + each.off, 0);
    if (lost >= panel.length) {
      refuse(
        parameter,
        `Panel ${panel.name} is ${numberText(panel.length, "mm")} long and its bevels take ${numberText(lost, "mm")}: ` +
          "nothing of that face is left. Make it longer, thinner, or its breaks smaller.",
      );
    }
  }
}
