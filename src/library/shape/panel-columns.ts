import { degrees } from "../numerics/degrees.ts";
import { type FieldValues, number, table } from "../spec.ts";

const right = degrees(90);

/** The columns of a table of panels, root panel first. */
const panelColumns = {
  length: number("mm", "true length along the panel, on its lower face", { above: 0 }),
  root_chord: number("mm", "chord at its inboard edge", { above: 0 }),
  tip_chord: number("mm", "chord at its outboard edge", { above: 0 }),
  sweep: number("mm", "how far its tip's leading edge lies behind its root's"),
  break: number("deg", "angle added at its inboard joint, seen from the front", { above: -right, below: right }),
  washout: number("deg", "nose-down angle gained at its inboard joint", { above: -right, below: right }),
  thickness: number("mm", "thickness of the blank", { above: 0 }),
  skew: number(
    "deg",
    "angle of its inboard joint line to the flow, positive where the trailing-edge end lies farther out",
    { above: -right, below: right, optional: true },
  ),
  camber: number("1", "height of the mean line over the chord, as a share of the chord", {
    min: 0,
    max: 0.2,
    optional: true,
  }),
  density: number("kg/m^3", "density of its wood", { above: 0, optional: true }),
};

/** The panels of one half, as parameter of `wing`. */
export const panelTable = table("the panels of one side, root panel first", panelColumns);

/** The panels of the left half where it differs. */
export const leftPanelTable = {
  ...table("the panels of the left side where they differ", panelColumns),
  optional: true,
} as const;

/** The panels of one half as lists in SI, one element a panel. */
export type Panels = FieldValues<(typeof panelTable)["fields"]>;
