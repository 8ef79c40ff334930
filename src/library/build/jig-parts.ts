import { numberText } from "../number-text.ts";
import type { Refuse } from "../spec.ts";
import type { FlatPart } from "./flat-part.ts";
import { edgesAround, type Point } from "./polygon.ts";
import { heightAt, type RailNode } from "./rail.ts";

/** What a jig is made from; heights of the rails' nodes are above the table. */
export interface JigPlan {
  readonly front: readonly RailNode[];
  readonly rear: readonly RailNode[];
  readonly front_x: number;
  readonly rear_x: number;
  readonly thickness: number;
  readonly slot: number;
  readonly relief: number;
  readonly relief_depth: number;
  /** Least height left above a slot. */
  readonly web: number;
}

/** How far gussets stand out before and behind the rails, so that the jig does not tip. */
const overhang = 0.015;
/** Share of a rail's height that its gusset has. */
const gussetShare = 0.7;

/** A place of a gusset: the middle of each panel's rest, and the centre line. */
interface Gusset {
  readonly name: string;
  readonly y: number;
  readonly height: number;
}

/** Both rails, gussets and base. Refuses where relief and slots leave too little of a rail. */
export function jigParts(plan: JigPlan, refuse: Refuse): readonly FlatPart[] {
  const gussets = gussetsOf(plan);
  refuseCrowded(plan, gussets, refuse);
  for (const rail of [plan.front, plan.rear]) {
    for (const { name, y, height } of gussets) {
      const isRelieved = rail.some((node) => node.kind === "joint" && Math.abs(node.y - y) <= plan.relief / 2);
      const left = heightAt(rail, y) - (isRelieved ? plan.relief_depth : 0) - height / 2;
      if (left < plan.web) {
        refuse(
          "base_height",
          `At the ${name} the rail keeps ${numberText(Math.max(0, left), "mm")} above its slot and needs ${numberText(plan.web, "mm")}. ` +
            "Raise base_height, or make the relief shallower.",
        );
      }
    }
  }
  return [
    railPart("front rail", plan.front, plan, gussets),
    railPart("rear rail", plan.rear, plan, gussets),
    ...gussets.map((gusset) => gussetPart(gusset, plan)),
    basePart(plan, gussets),
  ];
}

function gussetsOf({ front, rear }: JigPlan): readonly Gusset[] {
  const places: { name: string; y: number }[] = [];
  front.slice(1).forEach((node, index) => {
    const before = front[index] as RailNode;
    if (node.y - before.y > 1e-9) places.push({ name: "", y: (node.y + before.y) / 2 });
  });
  const right = places.filter(({ y }) => y > 0).map(({ y }, index) => ({ name: `gusset right ${index + 1}`, y }));
  const left = places
    .filter(({ y }) => y < 0)
    .reverse()
    .map(({ y }, index) => ({ name: `gusset left ${index + 1}`, y }));
  return [{ name: "gusset centre", y: 0 }, ...right, ...left].map((place) => ({
    ...place,
    height: gussetShare * Math.min(heightAt(front, place.y), heightAt(rear, place.y)),
  }));
}

/** Least width left between two slots, or beside the last one. */
const between = 0.001;

/** Refuses slots that run into each other or over a rail's end: the sheet is too thick for so short a panel, or for rails so near. */
function refuseCrowded(plan: JigPlan, gussets: readonly Gusset[], refuse: Refuse): void {
  const { front, rear, front_x, rear_x, slot, thickness } = plan;
  const mm = (length: number) => numberText(length, "mm");
  if (rear_x - front_x < slot + between) {
    refuse(
      "thickness",
      `The rails stand ${mm(rear_x - front_x)} apart, too near for slots in sheet of ${mm(thickness)}. Take thinner sheet, or move front_x and rear_x apart.`,
    );
  }
  const ordered = [...gussets].sort((a, b) => a.y - b.y);
  for (const rail of [front, rear]) {
    const ends = [
      { name: "left tip", y: (rail[0]?.y ?? 0) - slot / 2 },
      ...ordered,
      { name: "right tip", y: (rail.at(-1)?.y ?? 0) + slot / 2 },
    ];
    ends.slice(1).forEach(({ name, y }, index) => {
      const before = ends[index] as { name: string; y: number };
      if (y - before.y >= slot + between) return;
      refuse(
        "thickness",
        `Between ${before.name} and ${name} there is no room for slots in sheet of ${mm(thickness)}. Take thinner sheet, or make that panel longer.`,
      );
    });
  }
}

/** A rail seen from behind, so that its right is the wing's: lower edge with slots, upper edge with reliefs. */
function railPart(name: string, nodes: readonly RailNode[], plan: JigPlan, gussets: readonly Gusset[]): FlatPart {
  const { thickness, slot } = plan;
  const ends = [nodes[0] as RailNode, nodes.at(-1) as RailNode] as const;
  const slots = [...gussets]
    .sort((a, b) => a.y - b.y)
    .flatMap(({ y, height }): Point[] => [
      [y - slot / 2, 0],
      [y - slot / 2, height / 2],
      [y + slot / 2, height / 2],
      [y + slot / 2, 0],
    ]);
  const points: Point[] = [[ends[0].y, 0], ...slots, [ends[1].y, 0], ...upperEdge(nodes, plan).reverse()];
  const joints = nodes.filter(({ kind }) => kind === "joint");
  return {
    name,
    thickness,
    edges: edgesAround(points),
    scores: [
      [
        [0, 0],
        [0, Math.max(0.002, heightAt(nodes, 0) - plan.relief_depth - 0.002)],
      ],
    ],
    labels: [
      { text: `${name}, right end this way →`, at: [ends[1].y / 2, 0.005] },
      { text: `← left end this way, ${name}`, at: [ends[0].y / 2, 0.005] },
      ...joints.map((node) => ({
        text: node.name,
        at: [node.y, Math.max(0.008, node.z - plan.relief_depth - 0.006)] as Point,
      })),
    ],
  };
}

/** From the left tip to the right one, with a relief under each joint. */
function upperEdge(nodes: readonly RailNode[], { relief, relief_depth }: JigPlan): Point[] {
  const seen = new Set<string>();
  return nodes.flatMap((node): Point[] => {
    if (node.kind !== "joint" || relief === 0) return [[node.y, node.z]];
    if (seen.has(node.name)) return [];
    seen.add(node.name);
    const [from, to] = [node.y - relief / 2, node.y + relief / 2];
    const [low, high] = [heightAt(nodes, from), heightAt(nodes, to)];
    const floor = Math.min(low, high, node.z) - relief_depth;
    return [
      [from, low],
      [from, floor],
      [to, floor],
      [to, high],
    ];
  });
}

/** A gusset seen from the right, its front to the left: slots for both rails from above. */
function gussetPart({ name, height }: Gusset, { front_x, rear_x, thickness, slot }: JigPlan): FlatPart {
  const width = rear_x - front_x + 2 * overhang;
  const slots = [overhang, width - overhang].flatMap((x): Point[] => [
    [x + slot / 2, height],
    [x + slot / 2, height / 2],
    [x - slot / 2, height / 2],
    [x - slot / 2, height],
  ]);
  const upper = [...slots.slice(4), ...slots.slice(0, 4)];
  return {
    name,
    thickness,
    edges: edgesAround([[0, 0], [width, 0], [width, height], ...upper, [0, height]]),
    labels: [{ text: name, at: [width / 2, height / 4] }],
  };
}

/** The plate below: centre line, rails, and each joint and tip, to set the jig up on and to lay the panels by. */
function basePart({ front, rear, front_x, rear_x, thickness }: JigPlan, gussets: readonly Gusset[]): FlatPart {
  const rim = 0.01;
  const [from, to] = [
    Math.min(front[0]?.y ?? 0, rear[0]?.y ?? 0) - rim,
    Math.max(front.at(-1)?.y ?? 0, rear.at(-1)?.y ?? 0) + rim,
  ];
  const depth = rear_x - front_x + 2 * (overhang + rim);
  const [frontAt, rearAt] = [depth - overhang - rim, overhang + rim];
  return {
    name: "base",
    thickness,
    edges: edgesAround([
      [from, 0],
      [to, 0],
      [to, depth],
      [from, depth],
    ]),
    scores: [
      [
        [0, 0],
        [0, depth],
      ],
      ...[frontAt, rearAt].map((y): Point[] => [
        [from + rim, y],
        [to - rim, y],
      ]),
      ...front.map((node, index): Point[] => [
        [node.y, frontAt],
        [rear[index]?.y ?? node.y, rearAt],
      ]),
      ...gussets.map(({ y }): Point[] => [
        [y, rim],
        [y, depth - rim],
      ]),
    ],
    labels: [
      { text: "front", at: [from + 0.02, depth - 0.005] },
      { text: "right →", at: [to - 0.02, depth / 2] },
    ],
  };
}
