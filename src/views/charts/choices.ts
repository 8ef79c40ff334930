/** Points of a chart that can be chosen: which one a pointer means, and where the arrow keys lead. */

/** One of the points, by its panel and its place in the order of the swept value. */
export interface Choice {
  readonly panel: number;
  readonly index: number;
}

interface Placed {
  readonly x: number;
  readonly y: number;
}

/** The nearest point within reach (px) of a place on the sheet; `spots` has a list for each panel. */
export function choiceNear(spots: readonly (readonly Placed[])[], { x, y }: Placed, reach = usualReach): Choice | null {
  let best: Choice | null = null;
  let nearest = reach;
  spots.forEach((panelSpots, panel) => {
    panelSpots.forEach((spot, index) => {
      const away = Math.hypot(spot.x - x, spot.y - y);
      if (away <= nearest) {
        nearest = away;
        best = { panel, index };
      }
    });
  });
  return best;
}

/**
 * Where a key leads: left and right along the points of a panel, up and down between panels, whose counts of points are
 * told; null for any other key.
 */
export function choiceByKey(key: string, { panel, index }: Choice, counts: readonly number[]): Choice | null {
  const within = (to: number, most: number) => Math.max(0, Math.min(most, to));
  const last = (counts[panel] ?? 1) - 1;
  const inPanel = (to: number): Choice => {
    const other = within(to, counts.length - 1);
    return { panel: other, index: within(index, (counts[other] ?? 1) - 1) };
  };
  switch (key) {
    case "ArrowRight":
      return { panel, index: within(index + 1, last) };
    case "ArrowLeft":
      return { panel, index: within(index - 1, last) };
    case "ArrowDown":
      return inPanel(panel + 1);
    case "ArrowUp":
      return inPanel(panel - 1);
    case "Home":
      return { panel, index: 0 };
    case "End":
      return { panel, index: last };
    default:
      return null;
  }
}

/** True for one and the same point, or none twice. */
export const isSame = (a: Choice | null, b: Choice | null): boolean => a?.panel === b?.panel && a?.index === b?.index;

const usualReach = 20;
