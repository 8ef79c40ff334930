import { functions, type Panels, type Wing } from "../../library/index.ts";
import type { Example } from "../drawings/example.ts";
import type { SweepPoint, TradeOffData, TradeOffOptions } from "./trade-off.ts";

/** The tip break of Plover swept: what it gives in righting, what it costs in lift, and a sweep with gaps. */
export const tradeOffExamples: readonly Example<TradeOffData, TradeOffOptions>[] = [
  {
    title: "equivalent dihedral and spiral parameter against tilt loss",
    data: {
      sweep: { name: "tip_break", unit: "deg" },
      x: { name: "loss", label: "tilt loss", unit: "%" },
      y: [
        { name: "eda", label: "equivalent dihedral", unit: "deg" },
        { name: "spiral", label: "spiral parameter", unit: "" },
      ],
      points: steps(0, 20, 2).map((tip) => righting(degrees(tip))),
      present: righting(degrees(11)),
      baseline: { ...righting(degrees(7)), name: "as flown" },
      allowed: [
        { quantity: "eda", min: degrees(9), label: "enough_dihedral" },
        { quantity: "loss", max: 0.06, label: "lift_kept" },
      ],
    },
    options: { onChoose: () => {} },
  },
  {
    title: "many steps, one quantity, some without a value",
    data: {
      sweep: { name: "tip_break", unit: "deg" },
      x: { name: "loss", label: "tilt loss", unit: "%" },
      y: [{ name: "tip_height", label: "height of the tip", unit: "mm" }],
      points: steps(0, 20, 0.5).map((tip) => (tip > 12 && tip < 15 ? broken(degrees(tip)) : height(degrees(tip)))),
      present: height(degrees(6)),
    },
    options: {},
  },
  {
    title: "a given that changes nothing",
    data: {
      sweep: { name: "ballast", unit: "g" },
      x: { name: "loss", unit: "%" },
      y: [{ name: "eda", unit: "deg" }],
      points: steps(0, 5, 1).map((grams) => ({ ...dihedral(degrees(11)), value: grams / 1000 })),
      present: { ...dihedral(degrees(11)), value: 0.002 },
    },
    options: {},
  },
  {
    title: "several wings over the same bend, with what nobody could see",
    data: {
      sweep: { name: "bend", unit: "deg" },
      x: { name: "loss", label: "tilt loss", unit: "%" },
      y: [{ name: "tip_height", label: "height of the tip", unit: "mm" }],
      ...familyOf(degrees(12)),
      band: 0.004,
    },
    options: { onChoose: () => {} },
  },
];

/** One, two, three and eight panels a side, the last without a value where it is bent little. */
function familyOf(bend: number): Pick<TradeOffData, "points" | "present" | "curve" | "further"> {
  const over = steps(4, 20, 2).map(degrees);
  const curve = (panels: number, from = 0) => over.map((each) => (each < from ? flat(each) : curved(each, panels)));
  const named = [
    ["two panels", 2, 0],
    ["three panels", 3, 0],
    ["smooth", 8, degrees(7)],
  ] as const;
  return {
    points: curve(1),
    present: curved(bend, 1),
    curve: "plain V",
    further: named.map(([name, panels, from]) => ({
      name,
      points: curve(panels, from),
      present: curved(bend, panels),
    })),
  };
}

function flat(value: number): SweepPoint {
  return { value, x: null, y: [null], reason: "it does not come upright" };
}

function curved(dihedral: number, panels: number): SweepPoint {
  const shape = { span: 0.48, root_chord: 0.074, tip_chord: 0.044, thickness: 0.003, sweep: 0, bend: 1 };
  const wing = call<Wing>("curved_wing", { ...shape, dihedral, panels });
  return { value: dihedral, x: call("tilt_loss", { wing }), y: [wing.tip_height] };
}

function righting(tip: number): SweepPoint {
  const { y, ...point } = dihedral(tip);
  const [eda = null] = y;
  const parameters = { arm: 0.235, span: wingOf(tip).span, dihedral: eda, lift_coefficient: 0.6 };
  return { ...point, y: [eda, call("spiral_parameter", parameters)] };
}

function dihedral(tip: number): SweepPoint {
  return {
    value: tip,
    x: call("tilt_loss", { wing: wingOf(tip) }),
    y: [call("equivalent_dihedral", { wing: wingOf(tip) })],
  };
}

function height(tip: number): SweepPoint {
  return { ...dihedral(tip), y: [wingOf(tip).tip_height] };
}

function broken(tip: number): SweepPoint {
  return { value: tip, x: null, y: [null], reason: "the jig would stand in the way of the tips" };
}

function wingOf(tip: number): Wing {
  const panels: Panels = {
    length: [0.105, 0.08, 0.06],
    root_chord: [0.074, 0.07, 0.06],
    tip_chord: [0.07, 0.06, 0.04],
    sweep: [0, 0.004, 0.012],
    break: [degrees(3), degrees(7), tip],
    washout: [0, 0, 0],
    thickness: [0.0032, 0.0024, 0.002],
  };
  return call("wing", { panels });
}

function call<Result>(name: string, values: Readonly<Record<string, unknown>>): Result {
  return functions.get(name)?.compute(values, (parameter, message) => {
    throw new Error(`got a faulty ${parameter} in the example: ${message}`);
  }) as Result;
}

function degrees(value: number): number {
  return (value * Math.PI) / 180;
}

function steps(from: number, to: number, by: number): number[] {
  return Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => from + index * by);
}
