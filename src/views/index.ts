/** The door to the views: what main.ts starts. */
import { Crew } from "../cells/index.ts";
import type { FunctionTable } from "../library/index.ts";
import { App } from "./app.ts";
import { defineElements } from "./elements.ts";
import type { Shipped } from "./keeping/keeping.ts";
import { tellMissingPieces } from "./missing-pieces.ts";
import { applyTheme, keptTheme } from "./theme-choice.ts";
import { workerPort } from "./worker-port.ts";

export interface StartOptions {
  /** The functions that are there at once. */
  readonly functions: FunctionTable;
  /** Loads all functions, those too. */
  readonly loadFunctions: () => Promise<FunctionTable>;
  /** The notebooks that come with the app, to begin with. */
  readonly shipped: Shipped;
  /** Starts a worker that computes; it may throw where none is allowed. */
  readonly startWorker: () => Worker;
}

/** Puts the app on the page. */
export function startApp(place: HTMLElement, { functions, loadFunctions, shipped, startWorker }: StartOptions): void {
  applyTheme(keptTheme());
  defineElements();
  tellMissingPieces();
  place.append(new App(functions, loadFunctions, shipped, new Crew(workerPort(startWorker), functions)));
}
