import { sameShape } from "./shapes.ts";
import type { Step } from "./step.ts";
import type { Result } from "./value.ts";

/** Has a node's step computed elsewhere, and hands over what came out, never at once. Gives what calls it off. */
export type Elsewhere = (node: GraphNode, done: (result: Result) => void) => () => void;

/** A cell in the graph: its step, its latest result, and what it was computed from. */
export class GraphNode {
  inputs: readonly GraphNode[] = [];
  result: Result | undefined = undefined;
  /** The result is computed elsewhere, or that of an input is: until it is there the one before stands. */
  isPending = false;
  /** The result that listeners know of, and whether they know it as pending. */
  told: Result | undefined = undefined;
  isToldPending = false;
  /** The results of the inputs at the last run, and the step that ran. */
  private readonly seen: Result[] = [];
  private ran: Step | null = null;
  private callOff: (() => void) | null = null;

  /** A slow step is computed `elsewhere`, where that is told; all others run where they stand. */
  constructor(
    public step: Step,
    private readonly elsewhere: Elsewhere | null = null,
  ) {}

  /**
   * Runs the step, unless it is the one that ran last and the results of the inputs are the same. A plain value that
   * comes out as it was keeps its result: the engine has no such cut-off, and would go on to every cell downstream.
   */
  run(): void {
    const { inputs, seen, step } = this;
    let fresh = this.ran !== step;
    if (seen.length > inputs.length) seen.length = inputs.length;
    for (let index = 0; index < inputs.length; index++) {
      const { result, isPending } = inputs[index] as GraphNode;
      if (isPending) {
        this.wait();
        return;
      }
      if (seen[index] === result) continue;
      seen[index] = result as Result;
      fresh = true;
    }
    if (!fresh) return;
    this.leave();
    this.ran = step;
    if (step.isSlow && this.elsewhere && seen.every(({ ok }) => ok)) {
      this.isPending = true;
      this.callOff = this.elsewhere(this, (result) => this.take(result));
    } else this.take(step.run(seen));
  }

  /** Calls off what is computed elsewhere. */
  leave(): void {
    this.callOff?.();
    this.callOff = null;
  }

  /** As if it had never run. */
  forget(): void {
    this.leave();
    this.result = undefined;
    this.ran = null;
  }

  /** Waits for an input. It runs once that is there, whatever comes. */
  private wait(): void {
    this.leave();
    this.ran = null;
    this.isPending = true;
  }

  private take(result: Result): void {
    this.callOff = null;
    this.isPending = false;
    if (!isRepeated(this.result, result)) this.result = result;
  }
}

/** True where the new result says just what the one before did: a plain value of the same shape. */
function isRepeated(before: Result | undefined, result: Result): boolean {
  if (before === undefined || !before.ok || !result.ok || before.value !== result.value) return false;
  return typeof result.value !== "object" && sameShape(before.shape, result.shape) && result.margin === undefined;
}
