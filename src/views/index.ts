/** The door to the views: what main.ts starts. */
import type { FunctionTable } from "../library/index.ts";
import { App } from "./app.ts";
import { defineElements } from "./elements.ts";
import { applyTheme, keptTheme } from "./theme-choice.ts";

export interface StartOptions {
  readonly functions: FunctionTable;
  /** The text of the notebook that is open at first. */
  readonly first: () => Promise<string>;
}

/** Puts the app on the page. */
export function startApp(place: HTMLElement, { functions, first }: StartOptions): void {
  applyTheme(keptTheme());
  defineElements();
  place.append(new App(functions, first));
}
