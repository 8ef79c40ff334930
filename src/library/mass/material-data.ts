import type { Mark } from "../spec.ts";
import { balsaOf } from "./balsa.ts";

/** A value with what it may be as low and as high as. SI. */
export type Spread = readonly [typical: number, low: number, high: number];

export interface MaterialData {
  readonly density: Spread;
  readonly modulus: Spread;
  readonly strength: Spread;
  readonly source: string;
  readonly mark: Mark;
}

const [GPa, MPa] = [1e9, 1e6];

/** What a class, a shop and a handbook call the same wood differs: a grade is a label for a range of densities. */
const grades =
  "Grades by density as the trade uses them, whose schemes disagree; modulus and strength by balsa(density), a quarter more or less";

const around = (value: number, share: number): Spread => [value, value * (1 - share), value * (1 + share)];

/** Coefficients of variation of clear wood in bending: Wood Handbook, table 5-6: density 10 %, modulus 22 %, strength 16 %. */
const clearWood = (density: number, modulus: number, strength: number) => ({
  density: around(density, 0.1),
  modulus: around(modulus, 0.22),
  strength: around(strength, 0.16),
});

/** Materials by name. */
export const materials: Readonly<Record<string, MaterialData>> = {
  "contest balsa": balsaGrade(80, 64, 96),
  "light balsa": balsaGrade(96, 80, 128),
  "medium balsa": balsaGrade(160, 128, 192),
  "hard balsa": balsaGrade(224, 192, 256),
  basswood: {
    ...clearWood(415, 10.1 * GPa, 60 * MPa),
    source:
      "Wood Handbook, American basswood at 12 % moisture: density and modulus seen, bending strength and spread from memory",
    mark: "from memory",
  },
  spruce: {
    ...clearWood(450, 10.8 * GPa, 70 * MPa),
    density: [450, 435, 470],
    source: "Wood Handbook, Sitka spruce at 12 % moisture: modulus seen, the rest from memory",
    mark: "from memory",
  },
  "birch plywood": {
    density: [715, 680, 750],
    modulus: [10.5 * GPa, 9 * GPa, 12 * GPa],
    strength: [85 * MPa, 60 * MPa, 110 * MPa],
    source: "Three-ply aircraft plywood along the face grain; across it less than half",
    mark: "from memory",
  },
  "light plywood": {
    density: [430, 400, 460],
    modulus: [5 * GPa, 4 * GPa, 6 * GPa],
    strength: [35 * MPa, 30 * MPa, 40 * MPa],
    source: "Poplar plywood",
    mark: "from memory",
  },
  "carbon rod": {
    density: [1550, 1500, 1600],
    modulus: [127 * GPa, 120 * GPa, 135 * GPa],
    strength: [1500 * MPa, 1300 * MPa, 1700 * MPa],
    source: "Pultruded carbon in epoxy, bending along the fibre",
    mark: "from memory",
  },
  "extruded foam": {
    density: [35, 30, 40],
    modulus: [0.015 * GPa, 0.01 * GPa, 0.02 * GPa],
    strength: [0.45 * MPa, 0.3 * MPa, 0.6 * MPa],
    source: "Extruded polystyrene sheet",
    mark: "from memory",
  },
};

function balsaGrade(typical: number, low: number, high: number): MaterialData {
  const [usual, soft, stiff] = [balsaOf(typical), balsaOf(low), balsaOf(high)];
  return {
    density: [typical, low, high],
    modulus: [usual.modulus, soft.modulus_low, stiff.modulus_high],
    strength: [usual.strength, soft.strength_low, stiff.strength_high],
    source: grades,
    mark: "common practice",
  };
}
