import { numberText } from "../number-text.ts";
import { define, number, type Refuse, record, table, text, type ValueOf } from "../spec.ts";
import { clayArm } from "./clay-arm.ts";

const weighInRecord = record(
  "weigh_in",
  "parts weighed against their budgets",
  {
    parts: table("each part", {
      part: text("the part"),
      budget: number("g", "what it may weigh"),
      weighed: number("g", "what the scales say; 0 where it is not weighed yet"),
      over: number("g", "weighed less budget; 0 where it is not weighed yet"),
      expected: number("g", "weighed, or what it is likely to come to"),
      state: text("within its budget, over it, or to be weighed"),
    }),
    budget: number("g", "all budgets"),
    weighed: number("g", "all that is weighed"),
    trend: number("%", "what is weighed against its budgets: over 100 % is heavier"),
    expected: number("g", "all parts, as they are likely to come out"),
    expected_low: number("g", "the same, on the light side"),
    expected_high: number("g", "the same, on the heavy side"),
    clay: number("g", "ballast it then takes; left out where no places are given", { optional: true }),
    all_up: number("g", "parts and ballast", { optional: true }),
    balance_x: number("mm", "balance point without ballast, aft of the origin", { optional: true }),
    side_moment: number("g mm", "how much heavier the right side hangs; left out where no y is given", {
      optional: true,
    }),
    left: number("1", "parts still to be weighed"),
    heaviest: text("the part that is most over its budget; none where none is"),
  },
  ({ expected, weighed, clay, left }) =>
    `${numberText(expected, "g")} expected${clay === undefined ? "" : ` and ${numberText(clay, "g")} of clay`}, ` +
    (left > 0 ? `${numberText(weighed, "g")} weighed, ${left} to weigh` : "all weighed"),
);
export type WeighIn = ValueOf<typeof weighInRecord>;

/** Spread of parts about their budgets before two are weighed: a quarter of sheets of one grade differ by so much. */
const usualSpread = 0.1;

/** `weigh_in(parts, …)`: weigh as you build. */
export const weighIn = define({
  name: "weigh_in",
  summary:
    "Holds each part on the scales against its budget, and tells what the glider and its clay are likely to come to.",
  topic: "build",
  parameters: {
    parts: table("all parts but the ballast", {
      part: text("the part"),
      budget: number("g", "what it may weigh", { above: 0 }),
      weighed: number("g", "what the scales say; 0 where it is not weighed yet", { min: 0 }),
      x: number("mm", "its balance point, aft of the origin", { optional: true }),
      y: number("mm", "its balance point, to the right", { optional: true }),
    }),
    wanted_x: number("mm", "where the glider is to balance", { optional: true }),
    clay_x: number("mm", "where the ballast goes", { optional: true }),
  },
  result: weighInRecord,
  formula:
    "trend = Σ weighed / Σ their budgets; expected = weighed, or budget · trend; clay = Σ expected·(x − wanted_x) / (wanted_x − clay_x), 0 where it needs none",
  errors: ["There is no part.", "Clay is asked for and the parts have no x, or the clay is no use where it goes."],
  assumptions: [
    "Parts not weighed yet are likely to come out as those that are, against their budgets.",
    "Light and heavy side: one standard deviation of what has been weighed; a tenth before three parts are.",
    "The clay counts as a point.",
  ],
  sources: [
    { text: "Moments about the wanted balance point", mark: "derived" },
    { text: "Weigh the blank, not the sheet: one end of a plank can weigh twice the other", mark: "verified" },
  ],
  examples: [
    {
      summary: "two of three parts weighed, 5 % heavy together; the clay at −80 mm",
      arguments: {
        parts: {
          part: ["wing", "stick", "tail"],
          budget: [0.006, 0.004, 0.002],
          weighed: [0.0066, 0.0039, 0],
          x: [0.035, 0.08, 0.26],
        },
        wanted_x: 0.03,
        clay_x: -0.08,
      },
      result: {
        budget: 0.012,
        weighed: 0.0105,
        trend: 1.05,
        expected: 0.0126,
        clay: (0.0066 * 0.005 + 0.0039 * 0.05 + 0.0021 * 0.23) / 0.11,
        left: 1,
        heaviest: "wing",
      },
    },
  ],
  compute: ({ parts, wanted_x, clay_x }, refuse) => {
    const rows = parts.part.map((part, index) => {
      const at = (list: readonly number[] | undefined) => list?.[index] ?? 0;
      const [budget, weighed] = [at(parts.budget), at(parts.weighed)];
      return { part, budget, weighed, isWeighed: weighed > 0, x: at(parts.x), y: at(parts.y) };
    });
    if (rows.length === 0) refuse("parts", "No part is listed yet. Add a row for each, with its budget.");
    const done = rows.filter(({ isWeighed }) => isWeighed);
    const total = <T>(list: readonly T[], of: (each: T) => number) => list.reduce((sum, each) => sum + of(each), 0);
    const trend = done.length === 0 ? 1 : total(done, ({ weighed }) => weighed) / total(done, ({ budget }) => budget);
    const spread =
      done.length < 3 ? usualSpread : deviation(done.map(({ weighed, budget }) => weighed / budget / trend));
    const expected = rows.map(({ isWeighed, weighed, budget }) => (isWeighed ? weighed : budget * trend));
    const all = expected.reduce((sum, each) => sum + each, 0);
    const open = all - total(done, ({ weighed }) => weighed);
    const overs = rows.map(({ isWeighed, weighed, budget }) => (isWeighed ? weighed - budget : 0));
    const worst = overs.indexOf(Math.max(...overs));
    const moment = rows.reduce((sum, { x }, index) => sum + (expected[index] ?? 0) * x, 0);
    const clay = clayFor({ all, moment, wanted_x, clay_x, hasPlaces: parts.x !== undefined }, refuse);
    return {
      parts: {
        part: rows.map(({ part }) => part),
        budget: rows.map(({ budget }) => budget),
        weighed: rows.map(({ weighed }) => weighed),
        over: overs,
        expected,
        state: rows.map(({ isWeighed, weighed, budget }) =>
          isWeighed ? (weighed > budget ? "over its budget" : "within its budget") : "to be weighed",
        ),
      },
      budget: total(rows, ({ budget }) => budget),
      weighed: total(done, ({ weighed }) => weighed),
      trend,
      expected: all,
      expected_low: all - open * spread,
      expected_high: all + open * spread,
      ...(clay !== undefined && { clay, all_up: all + clay }),
      ...(parts.x && { balance_x: moment / all }),
      ...(parts.y && { side_moment: rows.reduce((sum, { y }, index) => sum + (expected[index] ?? 0) * y, 0) }),
      left: rows.length - done.length,
      heaviest: (overs[worst] ?? 0) > 0 ? (rows[worst]?.part ?? "none") : "none",
    };
  },
});

function clayFor(
  {
    all,
    moment,
    wanted_x,
    clay_x,
    hasPlaces,
  }: { all: number; moment: number; wanted_x: number | undefined; clay_x: number | undefined; hasPlaces: boolean },
  refuse: Refuse,
): number | undefined {
  if (wanted_x === undefined && clay_x === undefined) return undefined;
  if (wanted_x === undefined) return refuse("wanted_x", "Say where the glider is to balance: wanted_x.");
  if (clay_x === undefined) return refuse("clay_x", "Say where the clay goes: clay_x.");
  if (!hasPlaces) return refuse("parts", "The parts have no places. Give the table a column x.");
  const off = moment - all * wanted_x;
  if (Math.abs(off) < 1e-12) return 0;
  const arm = clayArm(wanted_x, clay_x, refuse);
  if (!(off / arm > 0)) {
    refuse(
      "clay_x",
      `The parts balance at ${numberText(moment / all, "mm")}: clay at ${numberText(clay_x, "mm")} moves that away from ${numberText(wanted_x, "mm")}. ` +
        "Put it on the other side of the wanted balance point.",
    );
  }
  return off / arm;
}

/** Standard deviation about 1 of some ratios. */
const deviation = (ratios: readonly number[]): number =>
  Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio - 1) ** 2, 0) / (ratios.length - 1));
