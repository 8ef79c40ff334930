import { define, number, table } from "../spec.ts";
import { furtherParts, partsIn } from "./further-parts.ts";
import { gather } from "./gather.ts";
import { partRecord } from "./part-record.ts";

const own = (of: string) => number("kg m^2", `its own ${of}, about its own balance point`, { optional: true });
const ownInertia = (axis: string) =>
  number("kg m^2", `its own moment of inertia about the ${axis} axis through its own balance point`, {
    min: 0,
    optional: true,
  });

/** `balance(items, part_1, …)`: mass, balance point and inertia of a table of parts, and of parts made from geometry. */
export const balance = define({
  name: "balance",
  summary: "Mass, balance point and inertia of a table of parts, together with parts made from geometry.",
  topic: "mass",
  parameters: {
    items: table("the parts", {
      mass: number("g", "mass", { min: 0 }),
      x: number("mm", "its balance point, aft of the origin"),
      y: number("mm", "its balance point, to the right"),
      z: number("mm", "its balance point, up"),
      ixx: ownInertia("fore-and-aft"),
      iyy: ownInertia("spanwise"),
      izz: ownInertia("upright"),
      ixy: own("product ∫ x·y dm"),
      ixz: own("product ∫ x·z dm"),
      iyz: own("product ∫ y·z dm"),
    }),
    ...furtherParts,
  },
  result: partRecord,
  formula:
    "x = Σ m·x / Σ m, likewise y and z; ixx = Σ (own + m·(Δy² + Δz²)), ixy = Σ (own + m·Δx·Δy) and their like, about the balance point",
  errors: ["The parts have no mass together, or there is none.", "A column has more or fewer entries than the others."],
  assumptions: [
    "x aft, y to the right tip, z up.",
    "Products of inertia are ∫ x·y dm and their like; the inertia matrix has them with a minus. ixz is the same in axes with x forward and z down; ixy and iyz change sign there.",
    "A part without inertia of its own counts as a point: a wing told as one point in the middle has no roll inertia. Parts from wing_mass and its like bring their own.",
    "What is a row of the table must not come again as a part.",
  ],
  sources: [{ text: "Moments of first and second order of mass; parallel-axis theorem", mark: "derived" }],
  examples: [
    {
      summary: "three points: nose clay, wing and tail",
      arguments: {
        items: { mass: [0.003, 0.008, 0.001], x: [-0.08, 0.03, 0.24], y: [0, 0.0015, 0], z: [0, 0.018, 0.006] },
      },
      result: {
        mass: 0.012,
        x: 0.02,
        y: 0.001,
        z: 0.0125,
        ixx: 7.59e-7,
        iyy: 0.003 * (0.1 ** 2 + 0.0125 ** 2) + 0.008 * (0.01 ** 2 + 0.0055 ** 2) + 0.001 * (0.22 ** 2 + 0.0065 ** 2),
        izz: 0.003 * (0.1 ** 2 + 1e-6) + 0.008 * (0.01 ** 2 + 0.25e-6) + 0.001 * (0.22 ** 2 + 1e-6),
        ixy: 1.2e-7,
        ixz: 0.003 * 0.1 * 0.0125 + 0.008 * 0.01 * 0.0055 - 0.001 * 0.22 * 0.0065,
        iyz: 0.003 * 0.001 * 0.0125 + 0.008 * 0.0005 * 0.0055 + 0.001 * 0.001 * 0.0065,
      },
    },
    {
      summary: "a stick of 6 g and 300 mm, with its own inertia m·L²/12, and 2 g at one end",
      arguments: {
        items: { mass: [0.006, 0.002], x: [0.15, 0.3], y: [0, 0], z: [0, 0], iyy: [4.5e-5, 0], izz: [4.5e-5, 0] },
      },
      result: { mass: 0.008, x: 0.1875, ixx: 0, iyy: 7.875e-5, izz: 7.875e-5, ixz: 0 },
    },
    {
      summary: "nose clay in the table, and a wing that brings its own inertia",
      arguments: {
        items: { mass: [0.004], x: [-0.08], y: [0], z: [0.002] },
        part_1: {
          mass: 0.008,
          x: 0.034,
          y: 0,
          z: 0.02,
          ixx: 1.2e-4,
          iyy: 3e-6,
          izz: 1.22e-4,
          ixy: 0,
          ixz: 1e-8,
          iyz: 0,
        },
      },
      result: {
        mass: 0.012,
        x: -0.004,
        z: 0.014,
        ixx: 1.2e-4 + (0.032 / 12) * 0.018 ** 2,
        iyy: 3e-6 + (0.032 / 12) * (0.114 ** 2 + 0.018 ** 2),
        ixz: 1e-8 + (0.032 / 12) * 0.114 * 0.018,
      },
    },
  ],
  compute: ({ items, ...others }, refuse) => {
    const parts = partsIn(others);
    const count = items.mass.length;
    for (const [name, column] of Object.entries(items)) {
      if (column !== undefined && column.length !== count) {
        refuse("items", `The column ${name} has ${column.length} entries, mass has ${count}. Give each part one.`);
      }
    }
    if (![...items.mass, ...parts.map((part) => part.mass)].some((mass) => mass > 0)) {
      refuse("items", "The parts have no mass together. Give at least one of them a mass.");
    }
    const at = (list: readonly number[] | undefined, index: number) => list?.[index] ?? 0;
    return gather([
      ...items.mass.map((mass, index) => ({
        mass,
        x: at(items.x, index),
        y: at(items.y, index),
        z: at(items.z, index),
        ixx: at(items.ixx, index),
        iyy: at(items.iyy, index),
        izz: at(items.izz, index),
        ixy: at(items.ixy, index),
        ixz: at(items.ixz, index),
        iyz: at(items.iyz, index),
      })),
      ...parts,
    ]);
  },
});
