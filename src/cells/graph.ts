/** The one door to the reactive engine: schedules a program's steps so that each runs when its inputs have changed. */
import { type Module, Runtime, type Variable } from "@observablehq/runtime";
import type { Program, Step } from "./step.ts";
import type { Result } from "./value.ts";

/** Computes on a microtask, so that it runs without a browser, in hidden tabs, and in the frame of the edit. */
class PromptRuntime extends Runtime {
  override _computeSoon(): Promise<void> {
    return Promise.resolve().then(() => (this._disposed ? undefined : this._computeNow()));
  }
}

export interface GraphListener {
  /** A cell has a new result. */
  onResult(id: string, result: Result): void;
  /** All cells that were waiting to run have run. */
  onSettled(): void;
}

/** A cell in the engine. */
class Node {
  step: Step | null = null;
  result: Result | undefined = undefined;
  /** The result that the listener knows of. */
  told: Result | undefined = undefined;
  running = false;
  gone = false;

  constructor(
    readonly id: string,
    readonly variable: Variable,
  ) {}
}

export class Graph {
  private readonly runtime = new PromptRuntime({}, (name) => {
    throw new Error(`got the name ${name}, expected that of a cell`);
  });
  private readonly module: Module = this.runtime.module();
  private readonly nodes = new Map<string, Node>();
  private running = 0;
  private waiting: (() => void)[] = [];
  private updating = false;

  constructor(private readonly listener: GraphListener) {}

  /** The latest result of a cell; undefined until it has run for the first time. */
  result(id: string): Result | undefined {
    return this.nodes.get(id)?.result;
  }

  /** Resolves once every cell has the result of the latest program. */
  settled(): Promise<void> {
    if (!this.updating && this.running === 0) return Promise.resolve();
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  /** Takes a program in place of the one before: only steps that are new, gone or changed are touched. */
  update(program: Program): void {
    for (const node of this.nodes.values()) if (!program.byId.has(node.id)) this.remove(node);
    const changed: Node[] = [];
    for (const step of program.steps) {
      const node = this.nodes.get(step.id) ?? this.add(step.id);
      if (node.step === step) continue;
      node.step = step;
      changed.push(node);
    }
    for (const node of changed) {
      const step = node.step as Step;
      const inputs = step.inputs.map((input) => this.nodes.get(input) as Node);
      node.variable.define(keyOf(step.id), step.inputs.map(keyOf), memoised(step, node, inputs));
    }
    this.updating = true;
    this.runtime._compute().then(() => {
      this.updating = this.runtime._computing !== null;
      this.settleIfDone();
    });
  }

  dispose(): void {
    for (const node of this.nodes.values()) node.gone = true;
    this.nodes.clear();
    this.runtime.dispose();
  }

  private add(id: string): Node {
    // Observers may be called late, after their cell is gone, and must not throw.
    const node: Node = new Node(
      id,
      this.module.variable({
        pending: () => {
          if (!node.running && !node.gone) this.running++;
          node.running = true;
        },
        fulfilled: () => this.tell(node),
        rejected: (error) => {
          this.stop(node);
          throw error;
        },
      }),
    );
    this.nodes.set(id, node);
    return node;
  }

  private remove(node: Node): void {
    this.nodes.delete(node.id);
    if (node.running) this.running--;
    node.gone = true;
    node.variable.delete();
    node.variable.dispose();
  }

  private tell(node: Node): void {
    if (node.gone) return;
    if (node.result !== undefined && node.told !== node.result) {
      node.told = node.result;
      this.listener.onResult(node.id, node.result);
    }
    this.stop(node);
  }

  private stop(node: Node): void {
    if (node.running && !node.gone) this.running--;
    node.running = false;
    if (this.running === 0) this.settleIfDone();
  }

  private settleIfDone(): void {
    if (this.updating || this.running > 0) return;
    const { waiting } = this;
    this.waiting = [];
    this.listener.onSettled();
    for (const resolve of waiting) resolve();
  }
}

/** Cells are known to the engine by id, out of the way of its own words. */
const keyOf = (id: string): string => `cell ${id}`;

/**
 * What the engine runs for a step: it reads the results of the input nodes and leaves its own in the step's node. To the
 * engine itself goes a count only, since its promises look into every object they carry. Where the inputs are the same,
 * or the new value is, the last result stays: the engine has no such cut-off, and would go on to every cell downstream.
 */
function memoised(step: Step, node: Node, inputs: readonly Node[]): () => number {
  const seen: Result[] = [];
  let count = 0;
  return () => {
    let fresh = count === 0;
    for (let index = 0; index < inputs.length; index++) {
      const { result } = inputs[index] as Node;
      if (seen[index] === result) continue;
      seen[index] = result as Result;
      fresh = true;
    }
    if (!fresh) return count;
    const result = step.run(seen);
    if (!isRepeated(node.result, result)) node.result = result;
    return ++count;
  };
}

/** True where the new result says just what the one before did: a plain value of the same shape. */
function isRepeated(before: Result | undefined, result: Result): boolean {
  if (before === undefined || !before.ok || !result.ok || before.value !== result.value) return false;
  return typeof result.value !== "object" && before.shape === result.shape && result.margin === undefined;
}
