import type { Notebook } from "../cells/index.ts";
import type { FunctionTable } from "../library/index.ts";

/** The functions that load after the page: when a notebook calls one of them, or when nothing else is to do. */
export class LateFunctions {
  private loading: Promise<void> | null = null;

  constructor(
    private readonly load: () => Promise<FunctionTable>,
    private readonly onLoaded: (functions: FunctionTable) => void,
  ) {}

  /** Resolves when every function is known. @throws where they cannot be loaded; asked again, it tries again */
  all(): Promise<void> {
    this.loading ??= this.load().then(this.onLoaded, (error: unknown) => {
      this.loading = null;
      throw error;
    });
    return this.loading;
  }

  /** Resolves when every function that a notebook calls is known: at once where `known` has them. */
  async calledIn(notebook: Notebook, known: FunctionTable): Promise<void> {
    const calls = JSON.stringify(notebook.cells).matchAll(/\b([a-z]\w*) ?\(/gi);
    const names = new Set(Array.from(calls, ([, name = ""]) => name));
    // A word before a bracket in prose, or a function cell, costs a wait at most.
    if (![...names].every((name) => known.has(name))) await this.all();
  }
}
