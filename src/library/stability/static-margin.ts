import { define, number } from "../spec.ts";

/** `static_margin(neutral_x, balance_x, mac)`. */
export const staticMargin = define({
  name: "static_margin",
  summary: "How far the balance point lies ahead of the neutral point, in mean aerodynamic chords.",
  topic: "stability",
  parameters: {
    neutral_x: number("mm", "x of the neutral point, as neutral_point gives it"),
    balance_x: number("mm", "x of the balance point, as balance gives it"),
    mac: number("mm", "mean aerodynamic chord of the wing", { above: 0 }),
  },
  result: number("%", "static margin: above 0 the nose comes back by itself; 5 % to 15 % is usual"),
  formula: "(neutral_x − balance_x) / mac",
  errors: [],
  assumptions: [
    "Both places are told from the same origin. Free-flight gliders take more than 5 % to come out of a stall.",
  ],
  sources: [
    {
      text: "M. Drela, Basic Aircraft Design Rules, MIT Unified Engineering, 2006: static margin 0.05 to 0.15",
      mark: "from memory",
    },
  ],
  examples: [
    {
      summary: "neutral point at 38 mm, balance point at 31 mm, chord 66 mm",
      arguments: { neutral_x: 0.038, balance_x: 0.031, mac: 0.066 },
      result: 0.106060606060606,
    },
  ],
  elementwise: true,
  compute: ({ neutral_x, balance_x, mac }) => (neutral_x - balance_x) / mac,
});
