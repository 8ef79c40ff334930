import { chosen } from "../chosen.ts";
import { numberText } from "../number-text.ts";
import { choice, define, number, record, table, text, type ValueOf } from "../spec.ts";
import { deviation, median, studentT } from "./median.ts";

/** What a toss may do. */
const behaviours = {
  straight: "straight",
  stalls: "stalls",
  dives: "dives",
  "turns left": "turns left",
  "turns right": "turns right",
} as const;
type Behaviour = (typeof behaviours)[keyof typeof behaviours];

const tossResultsRecord = record(
  "toss_results",
  "tosses, and what they tell",
  {
    changes: table("each change, in the order in which they were tossed", {
      change: text("what was changed before these tosses"),
      tosses: number("1", "how many"),
      glide_ratio: number("1", "median"),
      ratio_least: number("1", "the worst toss"),
      ratio_most: number("1", "the best toss"),
      ratio_spread: number("1", "standard deviation from toss to toss; 0 of a single toss"),
      ratio_doubt: number("1", "how far off the mean may be, 95 %; 0 of a single toss"),
      sink: number("m/s", "median; 0 where none was timed"),
      sink_spread: number("m/s", "standard deviation; 0 where fewer than two were timed"),
      sink_doubt: number("m/s", "how far off the mean may be, 95 %; 0 where fewer than two were timed"),
      tell_apart: number(
        "1",
        "least difference in glide ratio that as many tosses again could tell, 95 %; 0 of a single toss",
      ),
      did: text("what it did most"),
      verdict: text("against the prediction, and against the change before"),
    }),
    glide_ratio: number("1", "median of the last change"),
    sink: number("m/s", "median of the last change that was timed; 0 where none was"),
    tell_apart: number("1", "least difference in glide ratio that as many tosses again could tell"),
    next: text("what to change next"),
  },
  ({ changes, glide_ratio, next }) =>
    `${counted(changes.tosses.reduce((sum, each) => sum + each, 0))}, ${numberText(glide_ratio, "1")} to 1 at last; ${next}`,
);
export type TossResults = ValueOf<typeof tossResultsRecord>;

const counted = (tosses: number): string => `${tosses} ${tosses === 1 ? "toss" : "tosses"}`;

/** `toss_results(tosses, …)`: glide ratio and sink from hand tosses, and what to change next. */
export const tossResults = define({
  name: "toss_results",
  summary:
    "Glide ratio and sink from hand tosses, with their spread, against the prediction: what they can tell, and what to change next.",
  topic: "build",
  parameters: {
    tosses: table("each toss, in the order in which they were made", {
      change: text("what was changed before it; the same words for tosses of one setting"),
      distance: number("m", "from the hand to where it came down", { above: 0 }),
      height: number("m", "of the hand above where it came down", { above: 0 }),
      time: number("s", "in the air; left out, or 0, where it was not timed", { min: 0, optional: true }),
      did: choice("what it did", Object.keys(behaviours)),
    }),
    expected_ratio: number("1", "glide ratio that was predicted", { above: 0, optional: true }),
    expected_sink: number("m/s", "sink that was predicted", { above: 0, optional: true }),
    wanted_turn: choice("turn that is wanted", ["straight", "turns left", "turns right"], { default: "straight" }),
  },
  result: tossResultsRecord,
  formula:
    "glide ratio = distance/height, sink = height/time of each toss; doubt = t·s/√n; tell_apart = t(2n − 2)·s·√(2/n), with the standard deviation s of n tosses and Student's t at 95 %",
  errors: ["There is no toss.", "A toss did something that is none of the list."],
  assumptions: [
    "Tossed level at gliding speed in still air: thrown harder it goes farther than it glides, and a breeze of half a metre a second changes the ratio by a tenth.",
    "Tosses differ by chance alone, as a normal law has it. The median is not moved by one bad toss, the spread is.",
    "One change at a time: balance first, then decalage, turn last.",
  ],
  sources: [
    { text: "Student (W. S. Gosset), Biometrika 6, 1908; t at 95 %, two-sided", mark: "verified" },
    {
      text: "Order of trimming: balance, straight toss, stall or dive by nose weight or decalage, turn last; one change, three tosses",
      mark: "common practice",
    },
  ],
  examples: [
    {
      summary: "three tosses from 1.8 m, of 12, 11 and 12.6 m",
      arguments: {
        tosses: {
          change: ["as built", "as built", "as built"],
          distance: [12, 11, 12.6],
          height: [1.8, 1.8, 1.8],
          time: [2.5, 2.4, 2.4],
          did: ["straight", "stalls", "straight"],
        },
        expected_ratio: 7,
      },
      result: {
        changes: {
          tosses: [3],
          glide_ratio: [12 / 1.8],
          ratio_least: [11 / 1.8],
          ratio_most: [7],
          did: ["straight"],
        } as never,
        glide_ratio: 12 / 1.8,
        sink: 0.75,
      },
    },
  ],
  compute: ({ tosses, expected_ratio, expected_sink, wanted_turn }, refuse) => {
    const turn = chosen(wanted_turn, behaviours, "wanted_turn", refuse);
    const rows = tosses.change.map((change, i) => ({
      change,
      ratio: (tosses.distance[i] ?? 0) / (tosses.height[i] ?? Number.NaN),
      sink: tosses.time?.[i] ? (tosses.height[i] ?? 0) / tosses.time[i] : null,
      did: chosen(tosses.did[i] ?? "", behaviours, "tosses", (name, message) =>
        refuse(name, `Row ${i + 1}, column did: ${message}`),
      ),
    }));
    if (rows.length === 0) refuse("tosses", "No toss is logged yet. Add a row for each.");
    const names = [...new Set(rows.map(({ change }) => change))];
    const groups = names.map((name) => summed(rows.filter(({ change }) => change === name)));
    const last = groups.at(-1) as Group;
    return {
      changes: {
        change: names,
        tosses: groups.map(({ count }) => count),
        glide_ratio: groups.map(({ ratio }) => ratio),
        ratio_least: groups.map(({ least }) => least),
        ratio_most: groups.map(({ most }) => most),
        ratio_spread: groups.map(({ spread }) => spread),
        ratio_doubt: groups.map(({ doubt }) => doubt),
        sink: groups.map(({ sink }) => sink),
        sink_spread: groups.map(({ sinkSpread }) => sinkSpread),
        sink_doubt: groups.map(({ sinkDoubt }) => sinkDoubt),
        tell_apart: groups.map(({ apart }) => apart),
        did: groups.map(({ did }) => did),
        verdict: groups.map((group, k) => verdict(group, groups[k - 1], expected_ratio, expected_sink)),
      },
      glide_ratio: last.ratio,
      sink: groups.findLast(({ sink }) => sink > 0)?.sink ?? 0,
      tell_apart: last.apart,
      next: nextStep(last, turn),
    };
  },
});

interface Group {
  readonly count: number;
  readonly ratio: number;
  readonly least: number;
  readonly most: number;
  readonly spread: number;
  readonly doubt: number;
  readonly sink: number;
  readonly sinkSpread: number;
  readonly timed: number;
  readonly sinkDoubt: number;
  readonly apart: number;
  readonly did: Behaviour;
}

function summed(rows: readonly { ratio: number; sink: number | null; did: Behaviour }[]): Group {
  const ratios = rows.map(({ ratio }) => ratio);
  const sinks = rows.flatMap(({ sink }) => (sink === null ? [] : [sink]));
  const [count, spread] = [rows.length, deviation(ratios)];
  const times = (what: Behaviour) => rows.filter(({ did }) => did === what).length;
  const kinds = rows.map(({ did }) => did);
  return {
    ...{ count, spread },
    ratio: median(ratios),
    least: Math.min(...ratios),
    most: Math.max(...ratios),
    doubt: doubtOf(count, spread),
    sink: sinks.length === 0 ? 0 : median(sinks),
    sinkSpread: deviation(sinks),
    timed: sinks.length,
    sinkDoubt: doubtOf(sinks.length, deviation(sinks)),
    apart: count < 2 ? 0 : studentT(2 * count - 2) * spread * Math.sqrt(2 / count),
    did: kinds.reduce((most, each) => (times(each) > times(most) ? each : most)),
  };
}

/** How far off a mean may be, 95 %; 0 of a single value, which tells nothing of it. */
const doubtOf = (count: number, spread: number): number =>
  count < 2 ? 0 : (studentT(count - 1) * spread) / Math.sqrt(count);

function verdict(group: Group, before: Group | undefined, ratio: number | undefined, sink: number | undefined): string {
  if (group.count < 3) return `only ${counted(group.count)}: three at least`;
  const told: string[] = [];
  if (ratio !== undefined) {
    const off = group.ratio - ratio;
    told.push(
      Math.abs(off) <= group.doubt
        ? "glides as predicted, as far as these tosses can tell"
        : `glides ${numberText(Math.abs(off / ratio), "%")} ${off > 0 ? "better" : "worse"} than predicted`,
    );
  }
  if (sink !== undefined && group.timed >= 3) {
    const off = group.sink - sink;
    told.push(
      Math.abs(off) <= group.sinkDoubt
        ? "sinks as predicted, as far as they can tell"
        : `sinks ${numberText(Math.abs(off / sink), "%")} ${off > 0 ? "faster" : "slower"} than predicted`,
    );
  }
  if (before && before.count >= 3) {
    const off = group.ratio - before.ratio;
    const least = Math.max(group.apart, before.apart);
    told.push(
      Math.abs(off) <= least
        ? `no difference to the change before that ${group.count} tosses could tell`
        : `${off > 0 ? "better" : "worse"} than before by ${numberText(Math.abs(off), "1")}`,
    );
  }
  return told.join("; ") || `${numberText(group.ratio, "1")} to 1, ± ${numberText(group.doubt, "1")}`;
}

/** Common practice: stall or dive first, by a little nose weight or decalage, then turn; three tosses for each change. */
function nextStep({ count, did, spread, ratio }: Group, wanted: Behaviour): string {
  if (count < 3) return `toss it ${3 - count} more ${count === 2 ? "time" : "times"} before anything is changed`;
  if (did === "stalls")
    return "stalls: add a little nose clay, or half a shim less decalage; one of them, then three tosses";
  if (did === "dives")
    return "dives: take a little nose clay off, or half a shim more decalage; one of them, then three tosses";
  if (spread > 0.15 * ratio)
    return "tosses differ by more than a seventh: steady the throw, or wait for still air, before anything is changed";
  if (did !== wanted) {
    const to = wanted === "straight" ? (did === "turns left" ? "right" : "left") : wanted.replace("turns ", "");
    return `${did === "straight" ? "flies straight" : did}: check incidence right and left, then bend the fin's rear edge a little to the ${to}`;
  }
  return "trimmed: leave it, and note balance and shims";
}
