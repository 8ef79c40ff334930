import { define, number } from "../spec.ts";

/** `fin_volume(fin_area, fin_arm, wing_area, span)`. */
export const finVolume = define({
  name: "fin_volume",
  summary: "The fin volume: how large and far back the fin is for the wing it has to keep straight.",
  topic: "stability",
  parameters: {
    fin_area: number("m^2", "area of the fin seen from the side", { above: 0 }),
    fin_arm: number("mm", "from the balance point back to a quarter of the fin's mean chord"),
    wing_area: number("m^2", "area of the wing in the plan view", { above: 0 }),
    span: number("mm", "span of the wing", { above: 0 }),
  },
  result: number("1", "fin volume; 0.02 to 0.05 is usual"),
  formula: "fin_area · fin_arm / (wing_area · span)",
  errors: [],
  assumptions: ["A rule for sizing. Small free-flight gliders have 0.02 to 0.04."],
  sources: [
    {
      text: "M. Drela, Basic Aircraft Design Rules, MIT Unified Engineering, 2006: S_v·l_v/(S·b)",
      mark: "from memory",
    },
    { text: "Range 0.02 to 0.04 for small free-flight gliders", mark: "common practice" },
  ],
  examples: [
    {
      summary: "20 cm² at 230 mm behind a wing of 300 cm² and 480 mm span",
      arguments: { fin_area: 0.002, fin_arm: 0.23, wing_area: 0.03, span: 0.48 },
      result: 0.031944444444444,
    },
  ],
  compute: ({ fin_area, fin_arm, wing_area, span }) => (fin_area * fin_arm) / (wing_area * span),
});
