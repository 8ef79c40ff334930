/** As much of the engine as graph.ts uses; it ships no types. */
declare module "@observablehq/runtime" {
  export interface Observer {
    pending?(): void;
    fulfilled?(value: unknown, name: string | null): void;
    rejected?(error: unknown, name: string | null): void;
  }
  export interface Variable {
    define(name: string, inputs: readonly string[], definition: (...inputs: never[]) => unknown): this;
    delete(): this;
    dispose(): void;
  }
  export interface Module {
    variable(observer?: Observer): Variable;
  }
  export class Runtime {
    constructor(builtins?: Readonly<Record<string, unknown>>, global?: (name: string) => unknown);
    module(): Module;
    dispose(): void;
    _disposed: boolean;
    _computing: Promise<void> | null;
    _compute(): Promise<void>;
    _computeSoon(): Promise<void>;
    _computeNow(): Promise<void>;
  }
}
