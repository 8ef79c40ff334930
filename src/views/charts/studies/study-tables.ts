/** The numbers of a study as tables, whatever its sort. */
import type {
  BestOutcome,
  MapOutcome,
  Outcome,
  SensitivityOutcome,
  SolveOutcome,
  SweepOutcome,
  ToldResult,
  ToleranceOutcome,
} from "../../../cells/index.ts";
import { unitOf } from "../../../library/at-first.ts";
import type { ChartTable } from "../chart-table.ts";
import { shownUnit } from "./study-chart.ts";

/** All tables of a study, the main one first. */
export function studyTables(outcome: Outcome): readonly ChartTable[] {
  switch (outcome.study) {
    case "sweep":
      return sweepTables(outcome);
    case "map":
      return mapTables(outcome);
    case "sensitivity":
      return sensitivityTables(outcome);
    case "tolerance":
      return toleranceTables(outcome);
    case "solve":
      return solveTables(outcome);
    case "best":
      return bestTables(outcome);
  }
}

function sweepTables({ input, results, checks, curves }: SweepOutcome): ChartTable[] {
  return curves.map((curve) => ({
    title: curve.trial ?? "as it is",
    columns: [column(input.target, input.unit), ...results.map(resultColumn), ...checks.map(checkColumn), reason],
    rows: input.values.map((value, point) => [
      shown(value, input.unit),
      ...results.map(({ unit }, index) => shown(curve.results[index]?.[point], unit)),
      ...checks.map((_, index) => sign(curve.checks[index]?.[point])),
      reasonsOf(curve.gaps.filter((gap) => gap.point === point)),
    ]),
  }));
}

function mapTables({ inputs, results, checks, gaps }: MapOutcome): ChartTable[] {
  const [x, y] = inputs;
  if (!x || !y) return [];
  const byPlace = new Map<string, (typeof gaps)[number][]>();
  for (const gap of gaps) byPlace.set(gap.point.join(), [...(byPlace.get(gap.point.join()) ?? []), gap]);
  const rows = y.values.flatMap((up, row) =>
    x.values.map((across, at) => {
      const place = at + row * x.values.length;
      return [
        shown(across, x.unit),
        shown(up, y.unit),
        ...results.map(({ unit, heights }) => shown(heights[place], unit)),
        ...checks.map(({ holds }) => sign(holds[place])),
        reasonsOf(byPlace.get([at, row].join()) ?? []),
      ];
    }),
  );
  const columns = [
    column(x.target, x.unit),
    column(y.target, y.unit),
    ...results.map(resultColumn),
    ...checks.map(({ name }) => checkColumn(name)),
    reason,
  ];
  return [{ title: "places", columns, rows }];
}

function sensitivityTables({ inputs, results, gaps }: SensitivityOutcome): ChartTable[] {
  return results.map(({ text, unit, ranked }) => {
    const change = differenceUnit(unit);
    return {
      title: text,
      columns: [
        column("input", "1"),
        column("is", "1"),
        column("moved by ±", "1"),
        column("unit", "1"),
        column("±", "1"),
        column(`${text} with less`, unit),
        column(`${text} with more`, unit),
        column("moves it by", change),
        column(`slope, ${shownUnit(change) || "number"} per unit of the input`, "1"),
        column("% for 1%", "1"),
        reason,
      ],
      rows: ranked.map(({ target, less, more, move, derivative, elasticity }) => {
        const input = inputs.find((each) => each.target === target);
        const per = differenceUnit(input?.unit ?? "1");
        return [
          target,
          shown(input?.nominal, input?.unit ?? "1"),
          shown(input?.amount, per),
          shownUnit(per),
          input?.isAssumed ? "1% assumed" : "as stated",
          shown(less, unit),
          shown(more, unit),
          shown(move, change),
          derivative === null ? null : (derivative * unitOf(per).factor) / unitOf(change).factor,
          elasticity,
          gaps
            .filter((gap) => gap.target === target)
            .map((gap) => gap.reason)
            .join(" "),
        ];
      }),
    };
  });
}

function toleranceTables({ results, checks, passing, tighten, inputs, gaps, built }: ToleranceOutcome): ChartTable[] {
  const shares = ["1", "2.5", "5", "10", "25", "50", "75", "90", "95", "97.5", "99"];
  const percent = (share: number | undefined): number | null => (share === undefined ? null : 100 * share);
  return [
    {
      title: "spread",
      columns: [
        column("result", "1"),
        column("unit", "1"),
        ...["mean", "deviation", "least", ...shares.map((share) => `${share}% below`), "most"].map((name) =>
          column(name, "1"),
        ),
      ],
      rows: results.map(({ text, unit, sample }) => [
        text,
        shownUnit(unit),
        shown(sample?.mean, unit),
        shown(sample?.deviation, differenceUnit(unit)),
        shown(sample?.least, unit),
        ...shares.map((share) => shown(sample?.percentiles[share], unit)),
        shown(sample?.most, unit),
      ]),
    },
    ...results.flatMap(({ text, unit, sample }): ChartTable[] => {
      if (!sample) return [];
      const { from, width, counts } = sample.histogram;
      return [
        {
          title: `builds by ${text}`,
          columns: [column("from", unit), column("to", unit), column("builds", "1")],
          rows: counts.map((count, index) => [
            shown(from + index * width, unit),
            shown(from + (index + 1) * width, unit),
            count,
          ]),
        },
      ];
    }),
    {
      title: "what it comes from",
      columns: [
        column("input", "1"),
        ...results.map(({ text }) => column(`share of ${text}`, "%")),
        column("would pass with half its ±", "%"),
      ],
      rows: inputs.map(({ target }) => [
        target,
        ...results.map(({ influences }) => percent(influences.find((each) => each.target === target)?.share)),
        percent(tighten.find((each) => each.target === target)?.passing),
      ]),
    },
    ...(passing
      ? [
          {
            title: "checks",
            columns: [
              column("check", "1"),
              column("holds", "1"),
              column("fails", "1"),
              column("not known", "1"),
              column("passes", "%"),
            ],
            rows: [
              ...checks.map(({ name, held, failed, unknown }) => [name, held, failed, unknown, (100 * held) / built]),
              ["all of them", null, null, null, 100 * passing.share],
            ],
          },
        ]
      : []),
    ...(gaps.length > 0
      ? [
          {
            title: "without a value",
            columns: [column("result", "1"), column("builds", "1"), reason],
            rows: gaps.map((gap) => [gap.of, gap.builds, gap.reason]),
          },
        ]
      : []),
  ];
}

function solveTables({ input, result, goal, solutions, jumps, curve, gaps }: SolveOutcome): ChartTable[] {
  return [
    {
      title: "solutions",
      columns: [column(input.target, input.unit), column(result.text, result.unit), column("how", "1")],
      rows: [
        ...solutions.map(({ at, kind }) => [shown(at, input.unit), shown(goal, result.unit), kind]),
        ...jumps.map((at) => [shown(at, input.unit), null, "jumps past"]),
      ],
    },
    {
      title: "over the range",
      columns: [column(input.target, input.unit), column(result.text, result.unit), reason],
      rows: curve.x.map((at, index) => [
        shown(at, input.unit),
        shown(curve.y[index], result.unit),
        gaps.find((gap) => gap.at === at)?.reason ?? "",
      ]),
    },
  ];
}

function bestTables({ inputs, results, designs }: BestOutcome): ChartTable[] {
  return [
    {
      title: "designs",
      columns: [
        ...inputs.map(({ target, unit }) => column(target, unit)),
        ...results.map(resultColumn),
        column("fails", "1"),
      ],
      rows: designs.map((design) => [
        ...inputs.map(({ unit }, index) => shown(design.inputs[index], unit)),
        ...results.map(({ unit }, index) => shown(design.results[index], unit)),
        design.fails.join(", "),
      ]),
    },
  ];
}

/** The unit of a difference: a scale with a zero of its own has none, so it is told in K. */
export const differenceUnit = (unit: string): string => (unitOf(unit).offset === 0 ? unit : "K");

const column = (name: string, unit: string) => ({ name, unit: shownUnit(unit) });
const resultColumn = ({ text, unit }: ToldResult) => column(text, unit);
const checkColumn = (name: string) => column(name, "1");
const reason = column("why not", "1");

/** In its unit; null where there is none, or a text that says why. */
function shown(value: number | string | null | undefined, unit: string): number | null {
  if (typeof value !== "number") return null;
  const { factor, offset } = unitOf(unit);
  return (value - offset) / factor;
}

const sign = (holds: boolean | null | undefined): string => (holds === true ? "holds" : holds === false ? "fails" : "");

const reasonsOf = (gaps: readonly { readonly of: string; readonly reason: string }[]): string =>
  gaps.map((gap) => `${gap.of}: ${gap.reason}`).join(" ");
