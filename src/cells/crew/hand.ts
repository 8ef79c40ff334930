/** One who computes for another thread: takes orders, gives answers, and knows nothing of how they come and go. */
import type { FunctionTable } from "../../library/spec.ts";
import { compile } from "../compile.ts";
import { OnDemand } from "../on-demand.ts";
import type { Program } from "../step.ts";
import type { Result } from "../value.ts";
import { type Answer, type CellOrder, changed, type Order, type PlainResult } from "./orders.ts";

/** What a hand needs around it. */
export interface Surroundings {
  readonly functions: FunctionTable;
  answer(answer: Answer): void;
  /** Calls back once orders that have come meanwhile are taken. */
  later(act: () => void): void;
}

export class Hand {
  private program: Program;
  private readonly results = new OnDemand();
  /** Counts the orders, so that warming ends when one comes. */
  private orders = 0;

  constructor(private readonly around: Surroundings) {
    this.program = compile([], around.functions);
  }

  take(order: Order): void {
    this.orders++;
    if (order.kind === "warm") this.warm();
    else this.compute(order);
  }

  private compute({ key, change, id }: CellOrder): void {
    try {
      this.program = compile(changed(this.program.cells, change), this.around.functions, this.program);
      const result = this.results.result(this.program, id);
      if (!result) throw new Error(`got the cell ${id}, expected one that computes`);
      this.around.answer({ kind: "cell", key, result: plain(result) });
    } catch (error) {
      this.around.answer({ kind: "fault", key, message: error instanceof Error ? error.message : String(error) });
    }
  }

  /**
   * The first call of a slow function takes several times as long as those after. The first example of the first such
   * function, on which the others rest, is one; warming all of them would cost more than a second of somebody's battery.
   */
  private warm(): void {
    const { functions, later } = this.around;
    const spec = [...functions.values()].find(({ isSlow }) => isSlow);
    const [example] = spec?.examples ?? [];
    if (!spec || !example) return;
    const { orders } = this;
    const defaults = Object.entries(spec.parameters).map(([name, parameter]) => [name, parameter.default]);
    later(() => {
      if (orders !== this.orders) return;
      spec.compute({ ...Object.fromEntries(defaults), ...example.arguments }, refuseExample);
    });
  }
}

const refuseExample = (_: string | null, message: string): never => {
  throw new Error(`got a refused example (${message}), expected one that computes`);
};

/** Only cells with one formula, and tables, are computed elsewhere: they have no parts. */
const plain = (result: Result): PlainResult =>
  result.ok
    ? { ok: true, value: result.value, ...(result.margin !== undefined && { margin: result.margin }) }
    : { ok: false, error: result.error };
