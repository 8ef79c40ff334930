import { type Ground, type Label, type Placing, placeLabels } from "./labels.ts";

/** A placing with the count of what is wrong with it. */
export interface RatedPlacing extends Placing {
  readonly faults: number;
}

/**
 * Strong labels have the first choice, and among equals those that come first. Where that leaves a fault, the others
 * choose first, and then those that fared ill, if one of these is better.
 */
export function bestPlacing(labels: readonly Label[], ground: Ground): RatedPlacing {
  const strongFirst = labels.toSorted((a, b) => b.weight - a.weight);
  const first = rated(placeLabels(strongFirst, ground));
  const tries = [
    () => labels.toSorted((a, b) => a.weight - b.weight),
    () => [...first.ill, ...strongFirst.filter((label) => !first.ill.includes(label))],
  ];
  let best = first;
  for (const inOrder of tries) {
    if (best.faults === 0) break;
    const next = rated(placeLabels(inOrder(), ground));
    if (next.faults < best.faults) best = next;
  }
  return best;
}

/** A label left out is worse than any number of leaders that run over a line. */
function rated(placing: Placing) {
  const overLines = placing.placed.flatMap(({ label, isOverLine }) => (isOverLine && !label.isAmid ? [label] : []));
  const faults = 100 * placing.leftOut.length + overLines.length;
  return { ...placing, faults, ill: [...placing.leftOut, ...overLines] };
}

/** What a drawing looks like with so many steps of room added: with some, if labels find no good place without. */
export function withRoom<Drawing extends { readonly faults: number }>(laidOut: (growth: number) => Drawing): Drawing {
  let best = laidOut(0);
  for (const growth of [3, 6]) {
    if (best.faults === 0) break;
    const next = laidOut(growth);
    if (next.faults < best.faults) best = next;
  }
  return best;
}
