/** The one door to the reactive engine: schedules a program's steps so that each runs when its inputs have changed. */
import { type Module, Runtime, type Variable } from "@observablehq/runtime";
import { type Elsewhere, GraphNode } from "./graph-node.ts";
import type { Program, Step } from "./step.ts";
import type { Result } from "./value.ts";

/** Computes on a microtask, so that it runs without a browser, in hidden tabs, and in the frame of the edit. */
class PromptRuntime extends Runtime {
  override _computeSoon(): Promise<void> {
    return Promise.resolve().then(() => (this._disposed ? undefined : this._computeNow()));
  }
}

export interface GraphListener {
  /** A cell has a new result, or has begun or ceased to wait for one that is computed elsewhere. */
  onResult(id: string, result: Result | undefined): void;
  /** All cells that were waiting to run here have run. */
  onSettled(): void;
}

/** Computes a slow step of a program elsewhere: calls back, never at once. Gives what calls it off. */
export type Delegate = (program: Program, step: Step, done: (result: Result) => void) => () => void;

/** Cells of which each is the only input of the next and needed by nothing else: one variable of the engine. */
interface Run {
  readonly nodes: readonly GraphNode[];
  readonly variable: Variable;
  /** Ids of what it takes, as the engine knows it. */
  inputs: readonly string[];
  running: boolean;
  gone: boolean;
}

export class Graph {
  private readonly runtime = new PromptRuntime({}, (name) => {
    throw new Error(`got the name ${name}, expected that of a cell`);
  });
  private readonly module: Module = this.runtime.module();
  private readonly nodes = new Map<string, GraphNode>();
  /** By the id of the last cell, which is what others need of it. */
  private readonly runs = new Map<string, Run>();
  private readonly runOf = new Map<GraphNode, Run>();
  private current: Program | null = null;
  private running = 0;
  private waiting: (() => void)[] = [];
  private updating = false;
  /** Those that are told to wait for what is computed elsewhere. */
  private readonly pending = new Set<GraphNode>();
  private readonly elsewhere: Elsewhere | null;

  /** Slow steps are handed to `delegate`, where there is one, and never run here. */
  constructor(
    private readonly listener: GraphListener,
    delegate: Delegate | null = null,
  ) {
    this.elsewhere =
      delegate &&
      ((node, done) =>
        delegate(this.current as Program, node.step, (result) => {
          done(result);
          this.follow(node);
        }));
  }

  /** The latest result of a cell; undefined until it has run for the first time. */
  result(id: string): Result | undefined {
    return this.nodes.get(id)?.told;
  }

  /** True while the result of a cell is that of before, or not there, because it follows from one computed elsewhere. */
  isPending(id: string): boolean {
    return this.nodes.get(id)?.isToldPending === true;
  }

  /** How many cells are pending. */
  get pendingCount(): number {
    return this.pending.size;
  }

  /** Resolves once every cell has the result of the latest program, or is pending. */
  settled(): Promise<void> {
    if (this.isDone()) return Promise.resolve();
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  /** Lets go of all results, so that those of the next program are never taken for those of before. */
  forget(): void {
    for (const node of this.nodes.values()) node.forget();
  }

  /** Takes a program in place of the one before: only steps that are new, gone or changed are touched. */
  update(program: Program): void {
    const before = this.current;
    this.current = program;
    let relinked = program.structure !== before?.structure;
    const changed: GraphNode[] = [];
    program.steps.forEach((step, place) => {
      if (!relinked && step === before?.steps[place]) return;
      const node = this.nodes.get(step.id);
      if (node?.step === step) return;
      relinked ||= !node || !sameItems(node.step.inputs, step.inputs);
      if (node) node.step = step;
      else this.nodes.set(step.id, new GraphNode(step, this.elsewhere));
      changed.push(this.nodes.get(step.id) as GraphNode);
    });
    const added = relinked ? this.relink(program) : [];
    for (const run of new Set([...added, ...changed.flatMap((node) => this.runOf.get(node) ?? [])])) this.define(run);
    this.compute();
  }

  /** Lets go of everything: nobody hears of anything any more, and who waits waits no longer. */
  dispose(): void {
    for (const run of this.runs.values()) run.gone = true;
    for (const node of this.nodes.values()) node.leave();
    this.nodes.clear();
    this.pending.clear();
    this.runtime.dispose();
    this.release();
  }

  private compute(): void {
    this.updating = true;
    this.runtime._compute().then(() => {
      this.updating = this.runtime._computing !== null;
      this.settleIfDone();
    });
  }

  /** Takes a result that came from elsewhere on to all that need it. */
  private follow(node: GraphNode): void {
    const run = this.runOf.get(node);
    if (!run) return;
    this.define(run);
    this.compute();
  }

  /**
   * Lets nodes go whose cells are gone, links the others anew, and cuts them into runs. Runs that stay are kept; gives
   * those that are new, still to be defined.
   */
  private relink(program: Program): readonly Run[] {
    for (const [id, node] of this.nodes) {
      if (program.byId.get(id)) continue;
      node.leave();
      this.nodes.delete(id);
      this.pending.delete(node);
    }
    const uses = new Map<string, number>();
    for (const { inputs } of program.steps) for (const id of inputs) uses.set(id, (uses.get(id) ?? 0) + 1);
    const cut = new Map<GraphNode, GraphNode[]>();
    for (const { id, inputs } of program.steps) {
      const node = this.nodes.get(id) as GraphNode;
      node.inputs = inputs.map((input) => this.nodes.get(input) as GraphNode);
      const [before, ...others] = node.inputs;
      const joins = before !== undefined && others.length === 0 && uses.get(before.step.id) === 1;
      const run = (joins && cut.get(before)) || [];
      run.push(node);
      cut.set(node, run);
    }
    const wanted = new Set(cut.values());
    const kept = new Set<readonly GraphNode[]>();
    const gone = new Map<string, Run>();
    for (const [last, run] of this.runs) {
      const now = cut.get(run.nodes.at(-1) as GraphNode);
      if (now && this.nodes.get(last) === run.nodes.at(-1) && sameItems(now, run.nodes)) kept.add(now);
      else gone.set(last, run);
    }
    // Variables that go leave their names first, so that no name stands twice.
    const detached = this.removeAll(gone);
    return [...detached, ...[...wanted].filter((nodes) => !kept.has(nodes)).map((nodes) => this.add(nodes))];
  }

  /**
   * Whoever takes what goes lets go of it first, since the engine would keep a name for ever that was still needed when
   * its variable went. Gives the runs that stay and are to be defined again for that.
   */
  private removeAll(gone: ReadonlyMap<string, Run>): Run[] {
    const detached: Run[] = [];
    for (const [last, run] of gone.size > 0 ? this.runs : []) {
      if (!run.inputs.some((id) => gone.has(id))) continue;
      run.variable.define(keyOf(last), [], () => undefined);
      run.inputs = [];
      if (!gone.has(last)) detached.push(run);
    }
    for (const [last, run] of gone) this.remove(last, run);
    return detached;
  }

  private add(nodes: readonly GraphNode[]): Run {
    // Observers may be called late, after their cells are gone, and must not throw.
    const observer = {
      pending: () => {
        if (!run.running && !run.gone) this.running++;
        run.running = true;
      },
      fulfilled: () => {
        // A listener that throws is a fault of ours, which the engine reports; the other cells go on.
        try {
          for (const node of run.gone ? [] : run.nodes) this.tell(node);
        } finally {
          this.stop(run);
        }
      },
      rejected: (error: unknown) => {
        this.stop(run);
        throw error;
      },
    };
    const run: Run = { nodes, variable: this.module.variable(observer), inputs: [], running: false, gone: false };
    for (const node of nodes) this.runOf.set(node, run);
    this.runs.set((nodes.at(-1) as GraphNode).step.id, run);
    return run;
  }

  private remove(last: string, run: Run): void {
    this.runs.delete(last);
    for (const node of run.nodes) this.runOf.delete(node);
    if (run.running) this.running--;
    run.gone = true;
    run.variable.delete();
    run.variable.dispose();
  }

  /** To the engine goes a count only, since its promises look into every object that they carry. */
  private define(run: Run): void {
    const { nodes, variable } = run;
    let count = 0;
    const [first, last] = [nodes[0] as GraphNode, nodes.at(-1) as GraphNode];
    run.inputs = first.step.inputs;
    variable.define(keyOf(last.step.id), run.inputs.map(keyOf), () => {
      for (const node of nodes) node.run();
      return ++count;
    });
  }

  private tell(node: GraphNode): void {
    const { result, isPending } = node;
    if (node.told === result && node.isToldPending === isPending) return;
    node.told = result;
    node.isToldPending = isPending;
    if (isPending) this.pending.add(node);
    else this.pending.delete(node);
    this.listener.onResult(node.step.id, result);
  }

  private stop(run: Run): void {
    if (run.running && !run.gone) this.running--;
    run.running = false;
    this.settleIfDone();
  }

  private settleIfDone(): void {
    if (!this.isDone() || this.runtime._disposed) return;
    this.listener.onSettled();
    // Unless the listener has edited in its turn.
    if (this.isDone()) this.release();
  }

  private isDone(): boolean {
    return this.runtime._disposed || (!this.updating && this.running === 0);
  }

  private release(): void {
    const { waiting } = this;
    this.waiting = [];
    for (const resolve of waiting) resolve();
  }
}

/** Cells are known to the engine by id, out of the way of its own words. */
const keyOf = (id: string): string => `cell ${id}`;

const sameItems = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((item, index) => item === b[index]);
