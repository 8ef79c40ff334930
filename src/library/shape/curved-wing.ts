import { degrees } from "../numerics/degrees.ts";
import { integrateProduct } from "../numerics/integrate-product.ts";
import { define, number } from "../spec.ts";
import { standsUpright } from "./half.ts";
import { buildWing } from "./wing.ts";
import { wingRecord } from "./wing-record.ts";

/** `curved_wing(…)`: a smooth front view cut into flat panels, of a wanted equivalent dihedral. */
export const curvedWing = define({
  name: "curved_wing",
  summary: "A wing whose front view follows a smooth curve in flat panels, with the equivalent dihedral asked for.",
  topic: "shape",
  parameters: {
    span: number("mm", "tip to tip in the plan view", { above: 0 }),
    root_chord: number("mm", "chord at the root", { above: 0 }),
    tip_chord: number("mm", "chord at the tip", { above: 0 }),
    dihedral: number("deg", "equivalent dihedral by the strip rule", { above: -degrees(90), below: degrees(90) }),
    panels: number("1", "number of panels a side", { min: 1, max: 200 }),
    thickness: number("mm", "thickness of the blanks", { above: 0 }),
    sweep: number("mm", "how far the tip's leading edge lies behind the root's", { default: 0 }),
    bend: number("1", "how the cant grows with the distance y from the centre: with this power of it", {
      min: 0,
      max: 20,
      default: 1,
    }),
  },
  result: wingRecord,
  formula: "cant of panel i = k·((i − ½)/n)^bend, with k such that ∫ Γ·c·y dy / ∫ c·y dy is the dihedral asked for",
  errors: ["The number of panels is no whole number.", "The tip panel would stand at 90 deg or more."],
  assumptions: [
    "The panels are of equal width in the plan view, so the outer ones are a little longer as cut; chord and leading edge run straight from root to tip.",
    "A bend of 1 is a parabola seen from the front: by strip theory it loses least lift slope for its equivalent dihedral. 0 is a plain V.",
    "Each panel takes the slope of the curve at its middle. More panels come nearer to the curve; one panel is a plain V.",
  ],
  sources: [
    {
      text: "Least ∫ c·Γ² dy at a given ∫ c·Γ·y dy has Γ in proportion to y (Cauchy–Schwarz inequality)",
      mark: "derived",
    },
  ],
  examples: [
    {
      summary: "two panels a side on a parabola, 800 mm span, 12 deg: the outer panel at three times the inner's cant",
      arguments: { span: 0.8, root_chord: 0.1, tip_chord: 0.1, dihedral: degrees(12), panels: 2, thickness: 0.003 },
      result: { span: 0.8, area: 0.08, panels: 2, cants: [degrees(4.8), degrees(14.4)] },
    },
    {
      summary: "a bend of 0 is a plain V, here tapered and swept",
      arguments: {
        span: 0.6,
        root_chord: 0.1,
        tip_chord: 0.06,
        dihedral: degrees(10),
        panels: 2,
        thickness: 0.0025,
        sweep: 0.02,
        bend: 0,
      },
      result: {
        cants: [degrees(10), degrees(10)],
        area: 0.048,
        mac: 0.0816666666667,
        mac_x: 0.00916666666667,
        mac_y: 0.1375,
      },
    },
  ],
  compute: ({ span, root_chord, tip_chord, dihedral, panels: count, thickness, sweep, bend }, refuse) => {
    if (!Number.isInteger(count)) refuse("panels", `${count} is no whole number. Panels are counted.`);
    const each = <T>(value: (index: number) => T): T[] => Array.from({ length: count }, (_, index) => value(index));
    const chordAt = (share: number) => root_chord + (tip_chord - root_chord) * share;
    const root = each((i) => chordAt(i / count));
    const tip = each((i) => chordAt((i + 1) / count));
    const shape = each((i) => ((i + 0.5) / count) ** bend);
    // The strip rule is linear in the cants, so their scale follows from it at once.
    let moment = 0;
    let arm = 0;
    shape.forEach((height, i) => {
      const weight = integrateProduct(1, root[i] ?? 0, tip[i] ?? 0, i, i + 1);
      moment += height * weight;
      arm += weight;
    });
    const cant = shape.map((height) => (dihedral * height * arm) / moment);
    const steepest = Math.abs(cant.at(-1) ?? 0);
    if (standsUpright(steepest)) {
      const angle = Math.round((steepest * 180) / Math.PI);
      refuse("dihedral", `The tip panel would stand at ${angle} deg. Ask for less dihedral or a smaller bend.`);
    }
    return buildWing(
      {
        length: cant.map((angle) => span / 2 / count / Math.cos(angle)),
        root_chord: root,
        tip_chord: tip,
        sweep: each(() => sweep / count),
        break: cant.map((angle, i) => angle - (i === 0 ? 0 : (cant[i - 1] ?? 0))),
        washout: each(() => 0),
        thickness: each(() => thickness),
      },
      undefined,
      refuse,
    );
  },
});
