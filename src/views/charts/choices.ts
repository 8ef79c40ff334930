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

/** The nearest point within reach of a place on the sheet; `spots` has a list for each panel. */
export function choiceNear(spots: readonly (readonly Placed[])[], { x, y }: Placed): Choice | null {
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

/** Where a key leads: left and right along the swept value, up and down between panels; null for any other key. */
export function choiceByKey(key: string, { panel, index }: Choice, panels: number, count: number): Choice | null {
  const clamp = (value: number, most: number) => Math.max(0, Math.min(most, value));
  switch (key) {
    case "ArrowRight":
      return { panel, index: clamp(index + 1, count - 1) };
    case "ArrowLeft":
      return { panel, index: clamp(index - 1, count - 1) };
    case "ArrowDown":
      return { panel: clamp(panel + 1, panels - 1), index };
    case "ArrowUp":
      return { panel: clamp(panel - 1, panels - 1), index };
    case "Home":
      return { panel, index: 0 };
    case "End":
      return { panel, index: count - 1 };
    default:
      return null;
  }
}

const reach = 20;
