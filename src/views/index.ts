/** The door to the views: what main.ts starts. */
import type { FunctionTable } from "../library/index.ts";
import { App } from "./app.ts";
import { defineElements } from "./elements.ts";
import type { Shipped } from "./keeping/keeping.ts";
import { applyTheme, keptTheme } from "./theme-choice.ts";

export interface StartOptions {
  readonly functions: FunctionTable;
  /** The notebooks that come with the app, to begin with. */
  readonly shipped: Shipped;
}

/** Puts the app on the page. */
export function startApp(place: HTMLElement, { functions, shipped }: StartOptions): void {
  applyTheme(keptTheme());
  defineElements();
  place.append(new App(functions, shipped));
}
