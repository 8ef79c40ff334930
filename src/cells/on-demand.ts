import { GraphNode } from "./graph-node.ts";
import type { Program, Step } from "./step.ts";
import type { Result } from "./value.ts";

/**
 * Results of single cells, computed at once when they are asked for, with only what they need; what was computed before
 * serves again as long as it follows from the same steps and inputs.
 */
export class OnDemand {
  private readonly nodes = new Map<string, GraphNode>();
  private structure: Program["structure"] | null = null;

  /** The result of a cell of a program; undefined where it computes nothing. */
  result(program: Program, id: string): Result | undefined {
    const step = program.byId.get(id);
    if (!step) return undefined;
    if (program.structure !== this.structure) this.dropAllBut(program);
    for (const needed of stepsFor(program, step)) this.nodeOf(needed).run();
    return this.nodes.get(id)?.result;
  }

  private nodeOf(step: Step): GraphNode {
    const node = this.nodes.get(step.id) ?? new GraphNode(step);
    this.nodes.set(step.id, node);
    node.step = step;
    // Those before it in the order are there.
    node.inputs = step.inputs.map((id) => this.nodes.get(id) as GraphNode);
    return node;
  }

  private dropAllBut(program: Program): void {
    this.structure = program.structure;
    for (const id of this.nodes.keys()) if (!program.byId.get(id)) this.nodes.delete(id);
  }
}

/** A step and all that it needs, each after what it needs itself. */
function stepsFor({ structure, byId, steps }: Program, step: Step): Step[] {
  const needed = new Set([step.id]);
  // A set that grows while it is walked is walked to its end.
  for (const id of needed) for (const input of byId.get(id)?.inputs ?? []) needed.add(input);
  const places = [...needed].flatMap((id) => structure.placeOfId.get(id) ?? []);
  return places.sort((a, b) => a - b).flatMap((place) => steps[place] ?? []);
}
