import { numberText } from "../number-text.ts";
import { list, number, record, table, type ValueOf } from "../spec.ts";

/**
 * Places along a half: root, each joint, tip. x runs aft from the root's leading edge, y to the right tip (negative on
 * the left half), z up from the root's lower face; x belongs to the leading edge, z to the lower face.
 */
export const stationTable = table("places along the half: root, each joint, tip", {
  distance: number("mm", "true distance from the root along the panels"),
  x: number("mm", "leading edge, aft of the root's leading edge"),
  y: number("mm", "towards the right tip, in the plan view"),
  z: number("mm", "lower face, up from the root's"),
  chord: number("mm", "chord there; at a joint where the chords step, that of the panel outboard of it"),
});

/** One half of a wing, a list element for each panel, root panel first. */
export const halfRecord = record(
  "half",
  "one half of a wing, panel by panel from the root",
  {
    length: list(number("mm", "true length"), "true length of each panel"),
    root_chord: list(number("mm", "chord at the inboard edge"), "chord at each panel's inboard edge"),
    tip_chord: list(number("mm", "chord at the outboard edge"), "chord at each panel's outboard edge"),
    sweep: list(number("mm", "tip's leading edge behind the root's"), "leading edge's way aft along each panel"),
    break: list(number("deg", "angle added"), "angle added at each panel's inboard joint"),
    cant: list(number("deg", "angle to the horizontal"), "angle of each panel to the horizontal, from the front"),
    twist: list(
      number("deg", "nose-down angle"),
      "nose-down angle of each panel: washouts added up from the root, with what oblique joints add",
    ),
    thickness: list(number("mm", "thickness"), "thickness of each panel's blank"),
    skew: list(number("deg", "angle to the flow"), "angle of each panel's inboard joint line to the flow"),
    camber: list(number("1", "share of the chord"), "camber of each panel; empty where the table has none"),
    density: list(number("kg/m^3", "density"), "density of each panel's wood; empty where the table has none"),
    stations: stationTable,
  },
  (half) => {
    const count = half.length.length;
    const length = half.length.reduce((sum, each) => sum + each, 0);
    return `${count} ${count === 1 ? "panel" : "panels"}, ${numberText(length, "mm")} along them`;
  },
);

export type Stations = ValueOf<typeof stationTable>;
export type Half = ValueOf<typeof halfRecord>;
