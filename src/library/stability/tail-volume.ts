import { define, number } from "../spec.ts";

/** `tail_volume(tail_area, tail_arm, wing_area, mean_chord)`. */
export const tailVolume = define({
  name: "tail_volume",
  summary: "The tail volume: how large and far back the tailplane is for the wing it has to steady.",
  topic: "stability",
  parameters: {
    tail_area: number("m^2", "area of the tailplane", { above: 0 }),
    tail_arm: number("mm", "from the balance point back to a quarter of the tailplane's mean chord"),
    wing_area: number("m^2", "area of the wing in the plan view", { above: 0 }),
    mean_chord: number("mm", "mean chord of the wing", { above: 0 }),
  },
  result: number("1", "tail volume; 0.30 to 0.60 is usual"),
  formula: "tail_area · tail_arm / (wing_area · mean_chord)",
  errors: [],
  assumptions: ["A rule for sizing. A small glider with a 20 % tailplane at 2.5 to 3.5 chords has 0.5 to 0.7."],
  sources: [
    {
      text: "M. Drela, Basic Aircraft Design Rules, MIT Unified Engineering, 2006: S_h·l_h/(S·c)",
      mark: "from memory",
    },
    { text: "Range 0.5 to 0.7 for small free-flight gliders", mark: "common practice" },
  ],
  examples: [
    {
      summary: "60 cm² at 225 mm behind a wing of 300 cm² and 64 mm mean chord",
      arguments: { tail_area: 0.006, tail_arm: 0.225, wing_area: 0.03, mean_chord: 0.064 },
      result: 0.703125,
    },
  ],
  compute: ({ tail_area, tail_arm, wing_area, mean_chord }) => (tail_area * tail_arm) / (wing_area * mean_chord),
});
