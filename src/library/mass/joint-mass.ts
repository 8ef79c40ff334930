import { from, type Vector } from "../numerics/vector3.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import type { Wing } from "../shape/wing-record.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { define, number } from "../spec.ts";
import { type Body, gather } from "./gather.ts";
import { clothParameters, laidWeight, resinSource } from "./laid-cloth.ts";
import { partRecord } from "./part-record.ts";
import { directions, type Seat, seated, seatParameters } from "./seat.ts";
import { bodyOf } from "./solid.ts";

/** `joint_mass(wing, cloth, …)`: glue and strips of all joints of a wing as one part. */
export const jointMass = define({
  name: "joint_mass",
  summary: "Glue and cloth strips of all joints of a wing as one part, each joint in its place.",
  topic: "mass",
  parameters: {
    wing: wingRecord,
    cloth: number("g/m^2", "weight of the dry cloth; 0 for joints without strips", { min: 0 }),
    width: number("mm", "width of the strips over a joint, both sides of it together", { min: 0, default: 0.02 }),
    root_width: number("mm", "width of the strips over the root joint; left out, as over the others", {
      min: 0,
      optional: true,
    }),
    faces: number("1", "faces of the wing that carry a strip", { min: 0, max: 2, default: 2 }),
    resin: clothParameters.resin,
    glue: number("g", "glue in each joint and soaked into the wood around it", { min: 0, default: 0.0002 }),
    ...seatParameters,
  },
  result: partRecord,
  formula: "mass = Σ (faces · width · chord · cloth / (1 − resin) + glue) over all joints",
  errors: [
    "The wing has no joint: one panel a side and a first break of 0.",
    "The number of faces is no whole number.",
    "Neither cloth nor glue is given: the joints weigh nothing.",
  ],
  assumptions: [
    "x aft from the root's leading edge, y to the right tip, z up.",
    "A strip is as long as the chord at its joint and lies along it; it bends half into each panel.",
    "Glue and strips balance at the middle of the chord and of the thickness.",
    "A first break of 0 deg on both sides is a continuous centre panel without a root joint.",
  ],
  sources: [
    { text: "Area times weight per area; moments of a flat rectangle; parallel-axis theorem", mark: "derived" },
    resinSource,
    { text: "Strips 20 to 25 mm wide, 25 to 40 mm at the root; 0.1 to 0.3 g of glue a joint", mark: "common practice" },
  ],
  examples: [
    {
      summary: "five joints of chords 120, 120, 100 mm: 20 mm strips, 30 mm at the root, 25 g/m², 0.2 g of glue each",
      arguments: { wing: threePanelWing, cloth: 0.025, root_width: 0.03, z: 0.01 },
      result: {
        mass: 2 * 0.05 * (0.03 * 0.12 + 2 * 0.02 * (0.12 + 0.1)) + 5 * 0.0002,
        y: 0,
        ixy: 0,
        iyz: 0,
      },
    },
  ],
  compute: ({ wing, cloth, width, root_width = width, faces, resin, glue, z, incidence }, refuse) => {
    if (!Number.isInteger(faces)) refuse("faces", `${faces} is no whole number. Faces are counted: 0, 1 or 2.`);
    const weight = faces * laidWeight(cloth, resin);
    const joints = jointsOf(wing);
    if (joints.length === 0) refuse("wing", "The wing is one flat panel: it has no joint to weigh.");
    const bodies = joints.map((joint) =>
      jointBody(joint, joint.atRoot ? root_width : width, weight, glue, { x: 0, z, incidence }),
    );
    if (!bodies.some((body) => body.mass > 0)) {
      refuse("glue", "The joints weigh nothing. Give the weight of the cloth, the mass of the glue, or both.");
    }
    return gather(bodies);
  },
});

/** A joint as it is weighed: its leading edge on the lower face, and the means of what meets there. */
interface Joint {
  readonly atRoot: boolean;
  readonly side: 1 | -1;
  readonly corner: Vector;
  readonly chord: number;
  readonly thickness: number;
  readonly cant: number;
  readonly twist: number;
}

function jointsOf(wing: Wing): readonly Joint[] {
  const first = (field: "cant" | "twist" | "thickness", side: "right" | "left") => wing[side][field][0] ?? Number.NaN;
  const root: Joint = {
    atRoot: true,
    side: 1,
    corner: [0, 0, 0],
    chord: wing.right.root_chord[0] ?? Number.NaN,
    thickness: (first("thickness", "right") + first("thickness", "left")) / 2,
    cant: (first("cant", "right") - first("cant", "left")) / 2,
    twist: (first("twist", "right") + first("twist", "left")) / 2,
  };
  const further = (["right", "left"] as const).flatMap((side) => {
    const { length, stations, cant, twist, thickness } = wing[side];
    return length.slice(1).map((_, i): Joint => {
      const of = (list: readonly number[]) => list[i + 1] ?? Number.NaN;
      const mean = (list: readonly number[]) => ((list[i] ?? Number.NaN) + of(list)) / 2;
      return {
        atRoot: false,
        side: side === "right" ? 1 : -1,
        corner: [of(stations.x), of(stations.y), of(stations.z)],
        chord: of(stations.chord),
        thickness: mean(thickness),
        cant: mean(cant),
        twist: mean(twist),
      };
    });
  });
  const continuous = wing.right.break[0] === 0 && wing.left.break[0] === 0;
  return continuous ? further : [root, ...further];
}

function jointBody(joint: Joint, width: number, weight: number, glue: number, seat: Seat): Body {
  const { aft, out, up } = directions(joint.side, joint.cant, joint.twist, seat);
  const { chord, thickness } = joint;
  return bodyOf(
    weight * width * chord + glue,
    from(seated(joint.corner, seat), [chord / 2, aft], [thickness / 2, up]),
    [
      { mean: chord ** 2 / 12, a: aft, b: aft },
      { mean: width ** 2 / 12, a: out, b: out },
    ],
  );
}
