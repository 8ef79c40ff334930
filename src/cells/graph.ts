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

interface Node {
  readonly step: Step;
  readonly variable: Variable;
}

export class Graph {
  private readonly runtime = new PromptRuntime({}, (name) => {
    throw new Error(`got the name ${name}, expected that of a cell`);
  });
  private readonly module: Module = this.runtime.module();
  private readonly nodes = new Map<string, Node>();
  private readonly results = new Map<string, Result>();
  private readonly running = new Set<string>();
  private waiting: (() => void)[] = [];
  private updating = false;

  constructor(private readonly listener: GraphListener) {}

  /** The latest result of a cell; undefined until it has run for the first time. */
  result(id: string): Result | undefined {
    return this.results.get(id);
  }

  /** Resolves once every cell has the result of the latest program. */
  settled(): Promise<void> {
    if (!this.updating && this.running.size === 0) return Promise.resolve();
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  /** Takes a program in place of the one before: only steps that are new, gone or changed are touched. */
  update(program: Program): void {
    for (const [id, { variable }] of this.nodes) {
      if (program.byId.has(id)) continue;
      this.nodes.delete(id);
      this.results.delete(id);
      this.running.delete(id);
      variable.delete();
      variable.dispose();
    }
    for (const step of program.steps) {
      const before = this.nodes.get(step.id);
      if (before?.step === step) continue;
      const variable = before?.variable ?? this.module.variable(this.observer(step.id));
      this.nodes.set(step.id, { step, variable });
      variable.define(keyOf(step.id), step.inputs.map(keyOf), memoised(step, this.results));
    }
    this.updating = true;
    this.runtime._compute().then(() => {
      this.updating = this.runtime._computing !== null;
      this.settleIfDone();
    });
  }

  dispose(): void {
    this.nodes.clear();
    this.runtime.dispose();
  }

  /** Observers may be called late, after their cell is gone, and must not throw. */
  private observer(id: string) {
    const isGone = (): boolean => !this.nodes.has(id);
    return {
      pending: () => {
        if (!isGone()) this.running.add(id);
      },
      fulfilled: (value: unknown) => {
        if (isGone()) return;
        this.running.delete(id);
        const result = value as Result;
        if (this.results.get(id) !== result) {
          this.results.set(id, result);
          this.listener.onResult(id, result);
        }
        this.settleIfDone();
      },
      rejected: (error: unknown) => {
        this.running.delete(id);
        this.settleIfDone();
        throw error;
      },
    };
  }

  private settleIfDone(): void {
    if (this.updating || this.running.size > 0) return;
    const { waiting } = this;
    this.waiting = [];
    this.listener.onSettled();
    for (const resolve of waiting) resolve();
  }
}

/** Cells are known to the engine by id, out of the way of its own words. */
const keyOf = (id: string): string => `cell ${id}`;

/**
 * The step's run, which gives back its last result where the inputs are the same, or where the new value is: the engine
 * itself has no such cut-off, and would go on to every cell downstream.
 */
function memoised(step: Step, latest: ReadonlyMap<string, Result>): (...inputs: Result[]) => Result {
  let inputsBefore: readonly Result[] | null = null;
  let before: Result | null = null;
  return (...inputs) => {
    if (before && inputsBefore?.every((input, index) => input === inputs[index])) return before;
    inputsBefore = inputs;
    const result = step.run(inputs);
    before = reuse(before ?? latest.get(step.id), result);
    return before;
  };
}

/** The result before where the new one says just the same: a plain value of the same shape. */
function reuse(before: Result | undefined, result: Result): Result {
  if (!before?.ok || !result.ok || before.parts || result.parts || result.margin !== undefined) return result;
  const same =
    typeof result.value !== "object" && Object.is(before.value, result.value) && before.shape === result.shape;
  return same ? before : result;
}
