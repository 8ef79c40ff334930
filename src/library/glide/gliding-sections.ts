import { type MeasuredTable, measuredPolar } from "../air/measured-polar.ts";
import type { Polar } from "../air/polar.ts";
import { camberOf, type SectionShape, sectionShapes, thinPolar } from "../air/section.ts";
import type { Strip } from "../flow/lattice.ts";
import type { Glider } from "../shape/glider-record.ts";
import type { Half } from "../shape/half-record.ts";
import type { Refuse } from "../spec.ts";

/** The glider with a camber for each panel: its own, that of its kind of section, or that of a measured polar. */
export function withCamber(
  glider: Glider,
  shape: SectionShape,
  measured: MeasuredTable | undefined,
  refuse: Refuse,
): Glider {
  const camber = (half: Half, i: number) => {
    const chord = ((half.root_chord[i] ?? Number.NaN) + (half.tip_chord[i] ?? Number.NaN)) / 2;
    const thickness = (half.thickness[i] ?? Number.NaN) / chord;
    const own = measured && half.camber[i] === undefined ? 0 : camberOf(shape, thickness, half.camber[i], refuse);
    const thin = thinPolar({ thickness, camber: own, suction: shape.suction });
    // A mean line of camber f has its zero-lift angle at −2f: that camber stands for a measured angle.
    return measured ? -measuredPolar(measured, thin, refuse).zeroLiftAngle / 2 : own;
  };
  const cambered = (half: Half): Half => ({ ...half, camber: half.length.map((_, i) => camber(half, i)) });
  const { wing } = glider;
  return { ...glider, wing: { ...wing, right: cambered(wing.right), left: cambered(wing.left) } };
}

/** The section of a strip: on the wing as its panel is, on tail and fin a flat plate. */
export function sectionOf(
  { surface, panel, edge }: Strip,
  { wing, tailplane, fin }: Glider,
  shape: SectionShape,
  measured: MeasuredTable | undefined,
  refuse: Refuse,
): { readonly polar: Polar; readonly camber: number } {
  if (surface !== "wing") {
    const thickness = (surface === "fin" ? fin : tailplane)?.thickness ?? Number.NaN;
    return { polar: thinPolar({ thickness: thickness / edge.chord, camber: 0, suction: plateSuction }), camber: 0 };
  }
  const half = edge.y < 0 ? wing.left : wing.right;
  const camber = half.camber[panel - 1] ?? Number.NaN;
  const thickness = (half.thickness[panel - 1] ?? Number.NaN) / edge.chord;
  const thin = thinPolar({ thickness, camber, suction: shape.suction });
  return { polar: measured ? measuredPolar(measured, thin, refuse) : thin, camber };
}

const plateSuction = sectionShapes["flat plate"]?.suction ?? 0;
