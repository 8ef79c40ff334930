/** The labels within the panels of a trade-off chart, still to be placed. */
import type { Line, Point } from "../drawings/geometry.ts";
import type { Label } from "../drawings/labels.ts";
import { type Measure, shorten } from "../drawings/text-size.ts";
import type { AllowedArea, Limit } from "./allowed-area.ts";
import { besideCurve } from "./beside-curve.ts";
import type { Panel } from "./panels.ts";
import type { TradeOffData } from "./trade-off-data.ts";
import type { Spot, TradeOffSheet } from "./trade-off-sheet.ts";
import { sweptText } from "./trade-off-words.ts";

/** What stands in a panel, in px. */
export interface PanelContent {
  readonly spots: readonly Spot[];
  /** Radius of the points. */
  readonly radius: number;
  /** The pieces of the curve. */
  readonly curve: readonly Line[];
  readonly area: AllowedArea;
  readonly present: Point | null;
  readonly baseline: Point | null;
  readonly marked: readonly { readonly name: string; readonly at: Point }[];
  readonly further: readonly { readonly name: string; readonly curve: readonly Line[] }[];
}

/** Radius of the disc of the present design, px. */
export const presentRadius = 5.5;
/** Radius of the ring of another design that is marked, px. */
export const markedRadius = 5;
/** Radius of the ring of the baseline, px. */
export const baselineRadius = 6.5;

/** In the order of their choice: the present design, the curve, the baseline, the ends of the sweep, the checks. */
export function panelLabels(
  panel: Panel,
  data: TradeOffData,
  sheet: TradeOffSheet,
  content: PanelContent,
  measure: Measure,
): Label[] {
  const third = (sheet.right - sheet.left) / 3;
  return [
    ...presentLabel(panel, data, sheet, content, measure),
    ...curveLabel(shorten(data.curve ?? data.y[panel.index]?.name ?? "", third, strong, measure), content.curve),
    ...content.further.flatMap(({ name, curve }) =>
      curveLabel(shorten(name, third, plain, measure), curve).map(
        (label): Label => ({ ...label, ...plain, leader: false }),
      ),
    ),
    ...baselineLabel(shorten(data.baseline?.name ?? "", third, plain, measure), content),
    ...content.marked.flatMap(({ name, at }) => markedLabel(shorten(name, third, plain, measure), at, content)),
    ...endLabels(panel, data, content),
    ...content.area.limits.flatMap((limit) => limitLabel(panel, sheet, content.area, limit, measure)),
  ];
}

const plain = { size: 12, weight: 400, class: "note" } as const;
const strong = { size: 13, weight: 600 } as const;

/** With its name in the first panel only; the colour tells it in the others. */
function presentLabel(
  { index }: Panel,
  data: TradeOffData,
  { left, right }: TradeOffSheet,
  { present, curve }: PanelContent,
  measure: Measure,
): Label[] {
  if (!present || !data.present) return [];
  const value = sweptText(data.present, data);
  const named = `${data.sweep.name} ${value}`;
  const text = index === 0 && measure(named, strong) < (right - left) / 2 ? named : value;
  const places = besideCurve(present, curve);
  return [{ ...strong, class: "figure-moved", text, at: present, own: presentRadius, gap: presentRadius + 5, places }];
}

/** Beside the middle of one of its pieces, those three quarters along first. */
function curveLabel(name: string, curve: readonly Line[]): Label[] {
  const tries = [0.75, 0.6, 0.85, 0.45, 0.3, 0.15].flatMap((share) => curve[Math.floor(share * curve.length)] ?? []);
  const [first, ...others] = tries.map(({ from, to }) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }));
  if (!first) return [];
  const places = besideCurve(first, curve);
  return [{ ...strong, class: "figure", text: name, at: first, elsewhere: others, places, gap: 8 }];
}

/** Left out where it marks the same place as the present design. */
function baselineLabel(text: string, { baseline, present, curve }: PanelContent): Label[] {
  const moved = baseline && (!present || Math.hypot(baseline.x - present.x, baseline.y - present.y) > 3);
  if (!moved) return [];
  const places = besideCurve(baseline, curve);
  return [{ ...plain, text, at: baseline, own: baselineRadius, gap: baselineRadius + 4, places }];
}

/** Beside its ring, unless it marks the same place as the present design. */
function markedLabel(text: string, at: Point, { present, curve }: PanelContent): Label[] {
  if (present && Math.hypot(at.x - present.x, at.y - present.y) < 3) return [];
  return [{ ...plain, text, at, own: markedRadius, gap: markedRadius + 4, places: besideCurve(at, curve) }];
}

/** The swept value at either end, unless the present design stands there. */
function endLabels({ index }: Panel, data: TradeOffData, { spots, radius, curve, present }: PanelContent): Label[] {
  const drawn = spots.filter(({ failed }) => !failed);
  const ends = [...drawn.slice(0, 1), ...drawn.slice(1).slice(-1)];
  return ends.flatMap((spot, end) => {
    const value = sweptText(spot.point, data);
    if (present && Math.hypot(present.x - spot.x, present.y - spot.y) < 4) return [];
    const text = index === 0 && end === 0 && !present ? `${data.sweep.name} ${value}` : value;
    const places = besideCurve(spot, curve);
    return [{ ...plain, text, at: { x: spot.x, y: spot.y }, own: radius, gap: radius + 5, places }];
  });
}

/** At its limit, within what is allowed if there is room; of checks on x in the first panel only. */
function limitLabel(
  { index, top, bottom }: Panel,
  { left, right }: TradeOffSheet,
  { box }: AllowedArea,
  { allowed, edge, at }: Limit,
  measure: Measure,
): Label[] {
  const isUpright = edge === "left" || edge === "right";
  if (isUpright && index > 0) return [];
  const text = `✓ ${shorten(allowed.label, (right - left) / 2, plain, measure)}`;
  const half = measure(text, plain) / 2 + 8;
  const inside = box ?? { left, right, top, bottom };
  const along = isUpright
    ? [inside.bottom - 14, inside.top + 14, (inside.top + inside.bottom) / 2, bottom - 14, top + 14]
    : [inside.right - half, inside.left + half, right - half, left + half];
  const [first, ...elsewhere] = along.map((way) => (isUpright ? { x: at, y: way } : { x: way, y: at }));
  if (!first) return [];
  const places = [({ left: "right", right: "left", top: "below", bottom: "above" } as const)[edge]];
  return [{ ...plain, class: "figure-holds", text, at: first, elsewhere, places, gap: 6, leader: false }];
}
