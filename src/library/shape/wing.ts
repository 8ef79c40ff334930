import { degrees } from "../numerics/degrees.ts";
import { integrateProduct } from "../numerics/integrate-product.ts";
import { define, type Refuse } from "../spec.ts";
import { buildHalf, fold } from "./half.ts";
import type { Half } from "./half-record.ts";
import { leftPanelTable, type Panels, panelTable } from "./panel-columns.ts";
import { type Strip, wingStrips } from "./strips.ts";
import { type Wing, wingRecord } from "./wing-record.ts";

/** `wing(panels)`: the geometry of a wing of flat panels. */
export const wing = define({
  name: "wing",
  summary: "A wing of flat panels, each tilted against the one inboard of it.",
  topic: "shape",
  parameters: { panels: panelTable, left: leftPanelTable },
  result: wingRecord,
  formula:
    "cant = sum of the breaks up to the panel; y grows by length · cos cant, z by length · sin cant, x by sweep; " +
    "area = ∫ c dy, mac = ∫ c² dy / area, mac_x = ∫ c·x dy / area, mac_y = ∫ c·y dy / area, over both halves",
  errors: [
    "There is no panel, or a column has more or fewer entries than the others.",
    "A panel would stand at 90 deg or more.",
    "The first panel has a skew: the root joint lies along the flow.",
  ],
  assumptions: [
    "x runs aft from the root's leading edge, y to the right tip, z up from the root's lower face.",
    "The line of the panels is the lower face, the one that rests on the jig; lengths lie along it.",
    "Span, area, mean chord and mean aerodynamic chord are of the plan view: chords unchanged, y shortened by the cosine of the cant.",
    "Leading edges meet at each joint; where the chords of two panels differ there, the step is in the trailing edge.",
    "Washout and skew change no length, area or position. Skew bends the fold and adds twist, measured square to the panel inboard of the joint.",
    "A first break of 0 deg is a continuous centre panel without a root joint.",
    "Where the halves differ, sizes and means are of both together, and mac_y is the mean distance from the centre line.",
  ],
  sources: [
    {
      text: "Plane geometry of a polyline; area and mean aerodynamic chord integrals of a straight-tapered panel",
      mark: "derived",
    },
    { text: "Oblique joint: fold tan θ = tan G / cos λ, incidence tan δ = tan G · tan λ", mark: "derived" },
  ],
  examples: [
    {
      summary: "three panels a side at 5, 15 and 30 deg",
      arguments: {
        panels: {
          length: [0.12, 0.08, 0.05],
          root_chord: [0.08, 0.07, 0.06],
          tip_chord: [0.07, 0.06, 0.03],
          sweep: [0.002, 0.005, 0.015],
          break: [degrees(5), degrees(10), degrees(15)],
          washout: [0, degrees(0.5), degrees(1)],
          thickness: [0.0032, 0.0024, 0.002],
        },
      },
      result: {
        span: 0.480238,
        developed_span: 0.5,
        developed_area: 0.0329,
        tip_height: 0.056164,
        cants: [degrees(5), degrees(15), degrees(30)],
        joint_angles: [degrees(10), degrees(10), degrees(15)],
        panels: 3,
        mirrored: true,
      },
      tolerance: 1e-5,
    },
    {
      summary: "a straight taper, flat, whose tip lies back",
      arguments: {
        panels: {
          length: [0.5],
          root_chord: [0.12],
          tip_chord: [0.06],
          sweep: [0.03],
          break: [0],
          washout: [0],
          thickness: [0.003],
        },
      },
      result: {
        span: 1,
        area: 0.09,
        mean_chord: 0.09,
        mac: 0.0933333333333,
        mac_x: 0.0133333333333,
        mac_y: 0.222222222222,
        aspect_ratio: 11.1111111111,
      },
    },
    {
      summary: "a left half with one panel, shorter and flatter than the right",
      arguments: {
        panels: {
          length: [0.2],
          root_chord: [0.1],
          tip_chord: [0.08],
          sweep: [0],
          break: [degrees(60)],
          washout: [0],
          thickness: [0.003],
        },
        left: {
          length: [0.1],
          root_chord: [0.1],
          tip_chord: [0.09],
          sweep: [0.01],
          break: [0],
          washout: [0],
          thickness: [0.003],
        },
      },
      result: {
        span: 0.2,
        area: 0.0185,
        mean_chord: 0.0925,
        developed_span: 0.3,
        developed_area: 0.0275,
        tip_height: 0.173205080757,
        joint_angles: [degrees(60)],
        mirrored: false,
      },
    },
  ],
  compute: ({ panels, left }, refuse) => buildWing(panels, left, refuse),
});

/** The wing of a table of panels for the right half and, where it differs, one for the left. */
export function buildWing(panels: Panels, left: Panels | undefined, refuse: Refuse): Wing {
  const right = buildHalf(panels, "right", "panels", refuse);
  const other = left ? buildHalf(left, "left", "left", refuse) : mirror(right);
  const strips = wingStrips({ right, left: other });
  const total = (amount: (strip: Strip) => number) => strips.reduce((sum, strip) => sum + amount(strip), 0);
  // Panel by panel, chord and position are linear in y: S Δy (c1 + c2)/2 and its like, exact.
  const planView = (value: "chord" | "x" | "y") =>
    total(({ width, root, tip }) => integrateProduct(width, root.chord, tip.chord, root[value], tip[value]));
  const span = total(({ width }) => width);
  const area = total(({ width, root, tip }) => integrateProduct(width, root.chord, tip.chord, 1, 1));
  return {
    span,
    area,
    mean_chord: area / span,
    mac: planView("chord") / area,
    mac_x: planView("x") / area,
    mac_y: planView("y") / area,
    developed_span: total(({ length }) => length),
    developed_area: total(({ length, root, tip }) => integrateProduct(length, root.chord, tip.chord, 1, 1)),
    aspect_ratio: span ** 2 / area,
    tip_height: right.stations.z.at(-1) ?? 0,
    cants: right.cant,
    joint_angles: right.break.map((angle, index) =>
      index === 0 ? angle + (other.break[0] ?? 0) : fold(angle, right.skew[index] ?? 0),
    ),
    stations: right.stations,
    panels: right.length.length,
    mirrored: !left || sameHalves(right, other),
    right,
    left: other,
  };
}

/** The left half that mirrors a right one. */
const mirror = (right: Half): Half => ({
  ...right,
  stations: { ...right.stations, y: right.stations.y.map((y) => 0 - y) },
});

/** True where two halves are mirror images: all their panels are the same. */
function sameHalves(right: Half, left: Half): boolean {
  const { stations: _right, ...panelsRight } = right;
  const { stations: _left, ...panelsLeft } = left;
  return JSON.stringify(panelsRight) === JSON.stringify(panelsLeft);
}
