import { chosen } from "../chosen.ts";
import { clothParameters, laidWeight, resinSource } from "../mass/laid-cloth.ts";
import { numberText } from "../number-text.ts";
import { threePanelWing } from "../shape/sample-wings.ts";
import { wingRecord } from "../shape/wing-record.ts";
import { choice, define, number, record, table, text } from "../spec.ts";
import { cutJoints, cutLength, cutParameters } from "./joint-bevels.ts";

/** Ways to lay a weave, with what to say of each. */
export const weaves: Readonly<Record<string, string>> = {
  straight: "threads along and across the span: strongest over the joint",
  bias: "threads at 45 deg: drapes around the leading edge, weaker over the joint",
};

const jointStripsRecord = record(
  "joint_strips",
  "cloth strips over the joints of a wing",
  {
    strips: table("each layer over each joint, the first one lying on the wood", {
      joint: text("the joint"),
      layer: number("1", "1 lies on the wood and is the narrowest, so that the edges step"),
      count: number("1", "strips of it: one for each face"),
      length: number("mm", "along the joint"),
      width: number("mm", "across it, half on each panel"),
      mass: number("g", "cloth and resin of these strips"),
    }),
    count: number("1", "strips to cut"),
    cloth_area: number("cm^2", "cloth, without waste"),
    cloth_mass: number("g", "dry cloth"),
    resin_mass: number("g", "resin"),
    glue_mass: number("g", "glue in the joints and in the wood beside them"),
    mass: number("g", "all that the joints add"),
    weave: text("how the threads run, and why"),
  },
  ({ count, mass }) => `${count} strips, ${numberText(mass, "g")} added`,
);

/** `joint_strips(wing, …)`: what to cut, and what it weighs. */
export const jointStrips = define({
  name: "joint_strips",
  summary:
    "Size, number and layers of the cloth strips over all joints, with resin and glue: what reinforcing them adds.",
  topic: "build",
  parameters: {
    wing: wingRecord,
    cloth: { ...clothParameters.cloth, default: 0.025 },
    width: number("mm", "width of the widest layer over a joint, both sides of it together", {
      above: 0,
      default: 0.02,
    }),
    root_width: number("mm", "the same over the root joint; left out, as over the others", {
      above: 0,
      optional: true,
    }),
    layers: number("1", "layers on each face", { min: 1, max: 6, default: 1 }),
    step: number("mm", "by how much each layer is narrower, on each side, than the one above it", {
      min: 0,
      default: 0.003,
    }),
    faces: number("1", "faces of the wing that carry strips", { min: 1, max: 2, default: 2 }),
    weave: choice("how the threads run", Object.keys(weaves), { default: "straight" }),
    resin: clothParameters.resin,
    glue: number("g", "glue in each joint and soaked into the wood around it", { min: 0, default: 0.0002 }),
    ...cutParameters,
  },
  result: jointStripsRecord,
  formula:
    "mass = Σ faces · width · length · cloth / (1 − resin) + glue; width of layer k of n = width − 2·step·(n − k)",
  errors: [
    "Layers or faces are no whole number.",
    "The steps leave nothing of the narrowest layer.",
    "Half a strip is wider than a panel is long.",
    "The wing has no joint.",
  ],
  assumptions: [
    "A strip is as long as its joint. Trim it to the section's edges once it is hard.",
    "A width of 10 mm each side is for handling and peel: in shear the bond needs less than 1 mm.",
  ],
  sources: [
    { text: "Area times weight per area", mark: "derived" },
    resinSource,
    {
      text: "Strips 20 to 25 mm wide on sheet of 1.6 to 3.2 mm, 25 to 40 mm at the root; a second layer narrower, under the first",
      mark: "common practice",
    },
  ],
  examples: [
    {
      summary: "five joints of chords 120, 120 and 100 mm, two layers on both faces",
      arguments: { wing: threePanelWing, layers: 2, root_width: 0.03 },
      result: {
        count: 20,
        cloth_area: 2 * ((0.03 + 0.024) * 0.12 + 2 * (0.02 + 0.014) * (0.12 + 0.1)),
        glue_mass: 0.001,
        mass: 0.001 + 0.05 * 2 * ((0.03 + 0.024) * 0.12 + 2 * (0.02 + 0.014) * (0.12 + 0.1)),
      },
    },
  ],
  isSlow: true,
  compute: (given, refuse) => {
    const { cloth, width, root_width = width, layers, step, faces, weave, resin, glue } = given;
    for (const [name, count] of Object.entries({ layers, faces })) {
      if (!Number.isInteger(count)) refuse(name, `${count} is no whole number. Count ${name}.`);
    }
    const how = chosen(weave, weaves, "weave", refuse);
    const { joints } = cutJoints(given, refuse);
    if (joints.length === 0) refuse("wing", "The wing is one flat panel: it has no joint to reinforce.");
    const rows = joints.flatMap((joint) => {
      const widest = joint.side === "root" ? root_width : width;
      const shorter = joint.inner.length < joint.outer.length ? joint.inner : joint.outer;
      if (widest / 2 > shorter.length) {
        refuse(
          joint.side === "root" && given.root_width !== undefined ? "root_width" : "width",
          `Over the ${joint.name} joint half of the strip is ${numberText(widest / 2, "mm")} wide, and panel ${shorter.name} ${numberText(shorter.length, "mm")} long. Make the strip narrower.`,
        );
      }
      return Array.from({ length: layers }, (_, index) => {
        const wide = widest - 2 * step * (layers - 1 - index);
        if (!(wide > 0)) {
          refuse(
            "step",
            `Of the ${joint.name} joint's ${numberText(widest, "mm")} the steps leave layer ${index + 1} no width. Make the step smaller, or the strip wider.`,
          );
        }
        const length = cutLength(joint);
        return { joint: joint.name, layer: index + 1, length, width: wide, area: faces * length * wide };
      });
    });
    const area = rows.reduce((sum, row) => sum + row.area, 0);
    const weight = laidWeight(cloth, resin);
    const glued = joints.length * glue;
    return {
      strips: {
        joint: rows.map(({ joint }) => joint),
        layer: rows.map(({ layer }) => layer),
        count: rows.map(() => faces),
        length: rows.map(({ length }) => length),
        width: rows.map((row) => row.width),
        mass: rows.map((row) => row.area * weight),
      },
      count: rows.length * faces,
      cloth_area: area,
      cloth_mass: area * cloth,
      resin_mass: area * (weight - cloth),
      glue_mass: glued,
      mass: area * weight + glued,
      weave: `${weave}: ${how}`,
    };
  },
});
