import { numberText } from "../number-text.ts";
import { define, number, record, table, text } from "../spec.ts";

const pairsRecord = record(
  "blank_pairs",
  "blanks paired by weight",
  {
    pairs: table("each panel: which blank goes right, which left", {
      panel: number("1", "panel, 1 at the root"),
      right: text("blank for the right side"),
      left: text("blank for the left side"),
      right_mass: number("g", "its mass"),
      left_mass: number("g", "its mass"),
      difference: number("g", "right less left"),
    }),
    right: number("g", "all blanks of the right side"),
    left: number("g", "all blanks of the left side"),
    moment: number("g mm", "how much heavier the right side hangs about the middle; 0 where no arm is given"),
    spare: number("1", "blanks left over"),
  },
  ({ right, left, pairs }) =>
    `${pairs.panel.length} ${pairs.panel.length === 1 ? "pair" : "pairs"}, right ${numberText(right, "g")}, left ${numberText(left, "g")}`,
);

/** `blank_pairs(blanks)`: which of the blanks that were weighed go together. */
export const blankPairs = define({
  name: "blank_pairs",
  summary:
    "Picks, of the blanks cut and weighed, the two nearest in mass for each panel, and their sides so that the wing balances.",
  topic: "build",
  parameters: {
    blanks: table("the blanks as weighed", {
      blank: text("what is pencilled on it"),
      panel: number("1", "panel it is cut for, 1 at the root", { min: 1, max: 12 }),
      mass: number("g", "its mass", { above: 0 }),
      arm: number("mm", "distance of that panel's middle from the centre line", { min: 0, optional: true }),
    }),
  },
  result: pairsRecord,
  formula:
    "of each panel's blanks, the two neighbours in mass that differ least; sides by the least |Σ ±difference · arm|",
  errors: ["A panel has fewer than two blanks.", "A panel's number is not whole.", "Two blanks have one name."],
  assumptions: [
    "Without arms every panel counts the same.",
    "Cut three or four blanks of a pair's panel from one sheet: then a good pair is among them.",
  ],
  sources: [
    { text: "Weigh the blanks and pair them, left and right within a tenth of a gram", mark: "common practice" },
  ],
  examples: [
    {
      summary: "three blanks for panel 1 and two for panel 2",
      arguments: {
        blanks: {
          blank: ["a", "b", "c", "d", "e"],
          panel: [1, 1, 1, 2, 2],
          mass: [0.0025, 0.0021, 0.0022, 0.0011, 0.0012],
          arm: [0.05, 0.05, 0.05, 0.14, 0.14],
        },
      },
      result: {
        pairs: {
          panel: [1, 2],
          right: ["c", "d"],
          left: ["b", "e"],
          right_mass: [0.0022, 0.0011],
          left_mass: [0.0021, 0.0012],
          difference: [0.0001, -0.0001],
        },
        moment: 0.0001 * 0.05 - 0.0001 * 0.14,
        spare: 1,
      },
      tolerance: 1e-6,
    },
  ],
  compute: ({ blanks }, refuse) => {
    const rows = blanks.blank.map((name, index) => ({
      name,
      panel: blanks.panel[index] ?? 0,
      mass: blanks.mass[index] ?? 0,
      arm: blanks.arm ? (blanks.arm[index] ?? 0) : 1,
    }));
    const panels = [...new Set(rows.map(({ panel }) => panel))].sort((a, b) => a - b);
    if (panels.length === 0) refuse("blanks", "No blank is weighed yet. Add a row for each.");
    const twice = rows.find(({ name }, index) => rows.findIndex((row) => row.name === name) !== index);
    if (twice)
      refuse("blanks", `Two blanks are called "${twice.name}". Pencil a name of its own on each, and write it here.`);
    const pairs = panels.map((panel) => {
      if (!Number.isInteger(panel))
        refuse("blanks", `Panel ${panel} is no whole number. Panels are counted from the root.`);
      const of = rows.filter((row) => row.panel === panel).sort((a, b) => b.mass - a.mass);
      if (of.length < 2) refuse("blanks", `Panel ${panel} has one blank. Cut and weigh one for the other side.`);
      const gaps = of.slice(1).map((light, index) => (of[index]?.mass ?? 0) - light.mass);
      const best = gaps.indexOf(Math.min(...gaps));
      return { panel, heavy: of[best] as Row, light: of[best + 1] as Row };
    });
    const sides = bestSides(pairs.map(({ heavy, light }) => (heavy.mass - light.mass) * heavy.arm));
    const placed = pairs.map(({ panel, heavy, light }, index) =>
      sides[index] === 1 ? { panel, right: heavy, left: light } : { panel, right: light, left: heavy },
    );
    const total = (side: "right" | "left") => placed.reduce((sum, each) => sum + each[side].mass, 0);
    return {
      pairs: {
        panel: placed.map(({ panel }) => panel),
        right: placed.map(({ right }) => right.name),
        left: placed.map(({ left }) => left.name),
        right_mass: placed.map(({ right }) => right.mass),
        left_mass: placed.map(({ left }) => left.mass),
        difference: placed.map(({ right, left }) => right.mass - left.mass),
      },
      right: total("right"),
      left: total("left"),
      moment: blanks.arm ? placed.reduce((sum, { right, left }) => sum + (right.mass - left.mass) * right.arm, 0) : 0,
      spare: rows.length - 2 * pairs.length,
    };
  },
});

interface Row {
  readonly name: string;
  readonly mass: number;
  readonly arm: number;
}

/** Signs that make the least sum of these moments, the first one positive: all are tried, 2¹¹ at most. */
function bestSides(moments: readonly number[]): readonly (1 | -1)[] {
  const count = moments.length;
  let best: readonly (1 | -1)[] = moments.map(() => 1);
  let least = Number.POSITIVE_INFINITY;
  for (let mask = 0; mask < 2 ** Math.max(0, count - 1); mask++) {
    const signs = moments.map((_, index) => (index > 0 && (mask >> (index - 1)) & 1 ? -1 : 1) as 1 | -1);
    const sum = Math.abs(moments.reduce((all, moment, index) => all + moment * (signs[index] ?? 1), 0));
    if (sum < least - 1e-15) [least, best] = [sum, signs];
  }
  return best;
}
