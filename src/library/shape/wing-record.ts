import { numberText } from "../number-text.ts";
import { boolean, list, number, record, type ValueOf } from "../spec.ts";
import { halfRecord, stationTable } from "./half-record.ts";

/**
 * A wing of flat panels. x runs aft from the root's leading edge, y to the right tip, z up from the root's lower face.
 * `stations`, `cants`, `joint_angles`, `tip_height` and `panels` tell of the right half; `left` tells of the other.
 */
export const wingRecord = record(
  "wing",
  "a wing of flat panels",
  {
    span: number("mm", "tip to tip in the plan view"),
    area: number("m^2", "area of the plan view"),
    mean_chord: number("mm", "area over span"),
    mac: number("mm", "mean aerodynamic chord of the plan view"),
    mac_x: number("mm", "leading edge of the mean aerodynamic chord, aft of the root's leading edge"),
    mac_y: number("mm", "distance of the mean aerodynamic chord from the centre line"),
    developed_span: number("mm", "tip to tip along the panels, as cut"),
    developed_area: number("m^2", "area of the panels as cut, laid flat"),
    aspect_ratio: number("1", "span squared over area"),
    tip_height: number("mm", "right tip's lower face above the root's"),
    cants: list(number("deg", "angle to the horizontal"), "angle of each right panel to the horizontal"),
    joint_angles: list(
      number("deg", "fold"),
      "fold at the inboard joint of each right panel; at the root joint, that between the two halves",
    ),
    stations: stationTable,
    panels: number("1", "number of panels on the right side"),
    mirrored: boolean("true where both halves are the same"),
    right: halfRecord,
    left: halfRecord,
  },
  (wing) => {
    const right = wing.panels;
    const left = wing.left.length.length;
    const panels = (count: number) => `${count} ${count === 1 ? "panel" : "panels"}`;
    const sides = left === right ? `${panels(right)} a side` : `${panels(right)} right and ${left} left`;
    return `${numberText(wing.span, "mm")} span, ${sides}`;
  },
);

/** The value of a wing: SI numbers, lists by panel. */
export type Wing = ValueOf<typeof wingRecord>;
