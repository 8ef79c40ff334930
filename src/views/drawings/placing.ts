import { type Ground, type Label, type Placing, placeLabels } from "./labels.ts";

/** A placing with the count of what is wrong with it. */
export interface RatedPlacing extends Placing {
  readonly faults: number;
}

/** Strong labels have the first choice; where that leaves a fault the others, if that is better. */
export function bestPlacing(labels: readonly Label[], ground: Ground): RatedPlacing {
  let best: Placing | undefined;
  for (const sign of [-1, 1]) {
    const next = placeLabels(
      labels.toSorted((a, b) => sign * (a.weight - b.weight)),
      ground,
    );
    if (!best || faultsOf(next) < faultsOf(best)) best = next;
    if (faultsOf(best) === 0) break;
  }
  const found = best ?? { placed: [], leftOut: labels };
  return { ...found, faults: faultsOf(found) };
}

/** A label left out is worse than any number of leaders that run over a line. */
const faultsOf = ({ placed, leftOut }: Placing): number =>
  100 * leftOut.length + placed.filter(({ isOverLine }) => isOverLine).length;
