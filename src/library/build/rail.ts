import type { Wing } from "../shape/wing-record.ts";
import type { JointPlace } from "./joint-place.ts";
import { type PanelPlace, panelPlaces } from "./panel-place.ts";

/** A place on the line in which a wing's lower face crosses a plane x = constant, seen from the front. */
export interface RailNode {
  readonly y: number;
  readonly z: number;
  /** "left tip", "left 2–3", "root", "right tip". */
  readonly name: string;
  readonly kind: "tip" | "joint" | "middle";
}

/**
 * The line of the lower face at x, from the left tip to the right one: straight over each panel, bent where its joint line
 * crosses x. A joint that steps has two nodes at one y; a continuous centre panel has a node in the middle.
 */
export function railLine(wing: Wing, joints: readonly JointPlace[], x: number): readonly RailNode[] {
  const panels = panelPlaces(wing);
  const side = (name: "right" | "left"): RailNode[] => {
    const own = panels.filter((panel) => panel.side === name);
    const further = joints.filter((joint) => joint.side === name).flatMap((joint) => jointNodes(joint, x));
    const last = own.at(-1) as PanelPlace;
    return [...further, { ...along(last, x, last.length), name: `${name} tip`, kind: "tip" }];
  };
  const root = joints.find((joint) => joint.side === "root");
  const first = panels[0] as PanelPlace;
  const centre: RailNode[] = root
    ? jointNodes(root, x)
    : [{ ...along(first, x, 0), y: 0, name: "middle", kind: "middle" }];
  return [...side("left").reverse(), ...centre, ...side("right")];
}

function jointNodes({ name, inner, outer, line, step }: JointPlace, x: number): RailNode[] {
  const [cx, cy, cz] = outer.corner;
  const node = (at: { y: number; z: number }): RailNode => ({ ...at, name, kind: "joint" });
  if (step === 0 && line[0] > 1e-6) {
    const far = (x - cx) / line[0];
    return [node({ y: cy + far * line[1], z: cz + far * line[2] })];
  }
  return [node(atY(inner, x, cy)), node(atY(outer, x, cy))];
}

/** The place on a panel's lower face at x, so far out along its span. */
function along({ corner: [cx, cy, cz], cant, twist, sign }: PanelPlace, x: number, far: number) {
  const aft = (x - cx) / Math.cos(twist);
  const rise = aft * Math.sin(twist);
  return {
    y: cy + sign * (far * Math.cos(cant) - rise * Math.sin(cant)),
    z: cz + far * Math.sin(cant) + rise * Math.cos(cant),
  };
}

/** The place on a panel's plane at x and y. */
function atY(panel: PanelPlace, x: number, y: number) {
  const start = along(panel, x, 0);
  return { y, z: start.z + panel.sign * (y - start.y) * Math.tan(panel.cant) };
}

/** Height of the line at y. */
export function heightAt(nodes: readonly RailNode[], y: number): number {
  const next = nodes.findIndex((node, index) => index > 0 && node.y >= y && node.y > (nodes[index - 1]?.y ?? 0));
  const [a, b] = next < 0 ? nodes.slice(-2) : [nodes[next - 1], nodes[next]];
  if (!a || !b) throw new Error("got a rail of fewer than two nodes, expected both tips");
  return a.z + ((y - a.y) / (b.y - a.y)) * (b.z - a.z);
}
