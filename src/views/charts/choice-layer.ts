import { layer, type Mark, mark, round } from "../drawings/sketch.ts";
import { type Choice, isSame } from "./choices.ts";

/** A point that can be chosen. */
export interface Target {
  readonly x: number;
  readonly y: number;
  /** What it says of itself. */
  readonly name: string;
  /** The present design, or what is chosen already. */
  readonly isCurrent?: boolean;
}

/** A target for each point as large as a finger needs, with its name; the Tab key reaches one of them. */
export function choiceLayer(targets: readonly (readonly Target[])[], stop: Choice): Mark {
  const choices = targets.flatMap((panelTargets, panel) =>
    panelTargets.map(({ x, y, name, isCurrent }, index) =>
      mark("rect", {
        class: "choice",
        x: round(x - reach),
        y: round(y - reach),
        width: 2 * reach,
        height: 2 * reach,
        rx: 5,
        role: "button",
        tabindex: isSame(stop, { panel, index }) ? 0 : -1,
        "aria-label": name,
        "aria-current": isCurrent ? "true" : undefined,
      }),
    ),
  );
  return layer("choice-layer", choices);
}

const reach = 12;
