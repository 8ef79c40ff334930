import type { Box } from "../drawings/geometry.ts";
import type { Panel } from "./panels.ts";
import type { Allowed, TradeOffData } from "./trade-off-data.ts";
import type { TradeOffSheet } from "./trade-off-sheet.ts";

/** A limit that a check sets, where it is seen in a panel. */
export interface Limit {
  readonly allowed: Allowed;
  /** Which edge of what is allowed it is. */
  readonly edge: "left" | "right" | "top" | "bottom";
  /** x of an upright limit, y of one along the panel. */
  readonly at: number;
}

/** What the checks allow in a panel. */
export interface AllowedArea {
  /** What all of them allow together; null where that is nothing, or where no check has a limit in sight. */
  readonly box: Box | null;
  readonly limits: readonly Limit[];
}

/** The checks on the quantity of a panel run along it, those on x across. */
export function allowedArea(panel: Panel, data: TradeOffData, sheet: TradeOffSheet): AllowedArea {
  const name = data.y[panel.index]?.name;
  const field = { left: sheet.left, right: sheet.right, top: panel.top, bottom: panel.bottom };
  const limits = (data.allowed ?? []).flatMap((allowed): Limit[] => {
    const { quantity, min, max } = allowed;
    const limit = (edge: Limit["edge"], at: number | undefined): Limit[] =>
      at === undefined ? [] : [{ allowed, edge, at }];
    if (quantity === data.x.name) {
      return [...limit("left", placed(min, sheet.x.place)), ...limit("right", placed(max, sheet.x.place))];
    }
    if (quantity !== name) return [];
    return [...limit("bottom", placed(min, panel.axis.place)), ...limit("top", placed(max, panel.axis.place))];
  });
  const box = { ...field };
  for (const { edge, at } of limits) {
    box[edge] = edge === "left" || edge === "top" ? Math.max(box[edge], at) : Math.min(box[edge], at);
  }
  const seen = limits.filter(({ edge, at }) =>
    edge === "left" || edge === "right" ? at > field.left && at < field.right : at > field.top && at < field.bottom,
  );
  const isEmpty = box.left >= box.right || box.top >= box.bottom;
  return { box: isEmpty || seen.length === 0 ? null : box, limits: seen };
}

const placed = (value: number | undefined, place: (value: number) => number): number | undefined =>
  value === undefined ? undefined : place(value);
