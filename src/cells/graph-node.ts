import { sameShape } from "./shapes.ts";
import type { Step } from "./step.ts";
import type { Result } from "./value.ts";

/** A cell in the graph: its step, its latest result, and what it was computed from. */
export class GraphNode {
  inputs: readonly GraphNode[] = [];
  result: Result | undefined = undefined;
  /** The result that listeners know of. */
  told: Result | undefined = undefined;
  /** The results of the inputs at the last run, and the step that ran. */
  private readonly seen: Result[] = [];
  private ran: Step | null = null;

  constructor(public step: Step) {}

  /**
   * Runs the step, unless it is the one that ran last and the results of the inputs are the same. A plain value that
   * comes out as it was keeps its result: the engine has no such cut-off, and would go on to every cell downstream.
   */
  run(): void {
    const { inputs, seen, step } = this;
    let fresh = this.ran !== step;
    if (seen.length > inputs.length) seen.length = inputs.length;
    for (let index = 0; index < inputs.length; index++) {
      const { result } = inputs[index] as GraphNode;
      if (seen[index] === result) continue;
      seen[index] = result as Result;
      fresh = true;
    }
    if (!fresh) return;
    this.ran = step;
    const result = step.run(seen);
    if (!isRepeated(this.result, result)) this.result = result;
  }
}

/** True where the new result says just what the one before did: a plain value of the same shape. */
function isRepeated(before: Result | undefined, result: Result): boolean {
  if (before === undefined || !before.ok || !result.ok || before.value !== result.value) return false;
  return typeof result.value !== "object" && sameShape(before.shape, result.shape) && result.margin === undefined;
}
