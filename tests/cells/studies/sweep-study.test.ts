import { describe, expect, test } from "vitest";
import { compile } from "../../../src/cells/compile.ts";
import { override } from "../../../src/cells/override.ts";
import { runPlan } from "../../../src/cells/plan.ts";
import { applyTrial } from "../../../src/cells/trials.ts";
import { functions } from "../../../src/library/index.ts";
import { notebookWith, outcome, refusal, type StudyFields } from "./study-cases.ts";

const design = `given tip [deg] from 0 deg to 20 deg by 0.5 deg = 11 deg
given chord [mm] = 66 mm
table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm | wood text
| 110 | 70 | chord | 0 | 5 | 0 | 3 | soft
| 90 | chord | 44 | 8 | tip | 1 | 2.5 | hard
main = wing(panels)
eda [deg] = equivalent_dihedral(main)
inverse = 1 / (round(tip / 1 deg, 0.01) - 5)
check enough = eda > 9 deg`;
const trials = [
  { name: "long tips", set: { "panels[2].length": "120" } },
  { name: "broken", set: { tipp: "1" } },
];
const sweep = { study: "sweep", results: ["eda", "main.span"] } as const;
const degrees = (value: number): number => value * (Math.PI / 180);

describe("a sweep", () => {
  test("tells at each value, for the design and for a trial, what the notebook gives with that value written in", () => {
    const fields = { ...sweep, inputs: [{ input: "tip", range: ["0 deg", "20 deg", "4 deg"] }], trials: ["long tips"] };
    const notebook = notebookWith(design, fields, trials);
    const found = outcome(design, fields, trials);
    expect(found.input.values).toHaveLength(6);
    const written = (trial: number, value: number, name: string): unknown => {
      const base = trial === 0 ? notebook : applyTrial(notebook, trials[0] as (typeof trials)[number]);
      const program = compile(override(base, "tip", `${value} deg`).cells, functions);
      const result = runPlan(program).get(program.byName.get(name)?.id ?? "");
      return result?.ok ? result.value : result?.error;
    };
    expect(found.curves.map(({ trial }) => trial)).toEqual([null, "long tips"]);
    found.curves.forEach((curve, trial) => {
      [0, 4, 8, 12, 16, 20].forEach((value, point) => {
        expect(curve.results[0]?.[point]).toBeCloseTo(written(trial, value, "eda") as number, 12);
        expect(curve.results[1]?.[point]).toBeCloseTo((written(trial, value, "main") as { span: number }).span, 12);
        expect(curve.checks[0]?.[point]).toBe(written(trial, value, "enough"));
      });
      expect(curve.gaps).toEqual([]);
      expect(curve.at).toBeCloseTo(degrees(11), 12);
    });
    expect(found.results).toEqual([
      { text: "eda", dimension: "rad", unit: "deg" },
      { text: "main.span", dimension: "m", unit: "mm" },
    ]);
  });

  test("takes the given's own range, evenly, where the study states none", () => {
    const { values } = outcome(design, { ...sweep, inputs: [{ input: "tip" }] }).input;
    expect([values.length, values[0], values.at(-1)]).toEqual([41, 0, degrees(20)]);
    const few = outcome(design, { ...sweep, inputs: [{ input: "tip", points: 3 }] }).input.values;
    expect(few).toEqual([0, degrees(10), degrees(20)].map((value) => expect.closeTo(value, 12)));
  });

  test("keeps the end of a range that its step does not meet", () => {
    const range = ["0 deg", "10 deg", "4 deg"];
    const { values } = outcome(design, { ...sweep, inputs: [{ input: "tip", range }] }).input;
    expect(values).toEqual([0, 4, 8, 10].map((value) => expect.closeTo(degrees(value), 12)));
  });

  test("takes an entry of a table, its bare numbers in the column's unit", () => {
    const found = outcome(design, {
      ...sweep,
      inputs: [{ input: "panels[1].length", range: ["100", "12 cm"], points: 2 }],
    });
    expect(found.input).toEqual({ target: "panels[1].length", unit: "mm", values: [0.1, 0.12] });
    expect(found.curves[0]?.at).toBeCloseTo(0.11, 12);
    const [short = 0, long = 0] = found.curves[0]?.results[1] ?? [];
    expect((long ?? 0) - (short ?? 0)).toBeCloseTo(2 * 0.02 * Math.cos(degrees(5)), 12);
  });

  test("keeps what fails as a gap with the reason of the cell at which it began, and goes on", () => {
    const found = outcome(design, {
      study: "sweep",
      inputs: [{ input: "tip", range: ["4 deg", "6 deg", "1 deg"] }],
      results: ["2 * inverse", "eda"],
    });
    expect(found.curves[0]?.results[0]).toEqual([expect.closeTo(-2, 9), null, expect.closeTo(2, 9)]);
    expect(found.curves[0]?.results[1]?.every((each) => typeof each === "number")).toBe(true);
    expect(found.curves[0]?.gaps).toEqual([
      {
        point: 1,
        of: "2 * inverse",
        reason: expect.stringMatching(/^inverse: The result of this is not a finite number/),
      },
    ]);
  });

  const tip = [{ input: "tip" }];
  test.each<[Partial<StudyFields>, string]>([
    [{ inputs: [] }, "A sweep takes one input; here is none."],
    [{ inputs: [{ input: "tip" }, { input: "chord" }] }, "A sweep takes one input; here are 2."],
    [{ inputs: [{ input: "tipp" }] }, "Input tipp: There is no cell named tipp. Did you mean tip?"],
    [{ inputs: [{ input: "eda" }] }, "Input eda: eda is computed. Only givens and table entries can be set."],
    [
      { inputs: [{ input: "chord" }] },
      "Input chord: chord has no range. Say from where to where it is to go: its lowest and its highest value.",
    ],
    [
      { inputs: [{ input: "tip", range: ["5 deg", "5 deg"] }] },
      "Input tip: The range runs from 5 deg to 5 deg, so it is empty.",
    ],
    [
      { inputs: [{ input: "tip", range: ["5", "6 deg"] }] },
      "Input tip: The range's first value: The unit deg is for an angle, but this is a number.",
    ],
    [
      { inputs: [{ input: "tip", range: ["0 deg", "chord"] }] },
      "Input tip: The range's second value: A given stands on its own",
    ],
    [
      { inputs: [{ input: "tip", range: ["0 deg", "20 deg", "0.0001 deg"] }] },
      "That would be 200 001 variants; 100 000 is the most.",
    ],
    [{ inputs: [{ input: "panels[1].wood" }] }, "panels[1].wood is text. A study sets single numbers."],
    [{ inputs: tip, results: [] }, "Name at least one result, such as main_wing.span."],
    [{ inputs: tip, results: ["edda"] }, "Result edda: There is no cell named edda. Did you mean eda?"],
    [{ inputs: tip, results: ["main"] }, "Result main: A study tells numbers; main is a wing."],
    [{ inputs: tip, results: ['"balsa"'] }, 'Result "balsa": A study tells numbers; "balsa" is a text.'],
    [{ inputs: tip, trials: ["long tip"] }, "There is no trial “long tip”. Did you mean “long tips”?"],
    [{ inputs: tip, trials: ["broken"] }, "Trial “broken” sets tipp: There is no cell named tipp. Did you mean tip?"],
    [{ inputs: tip, checks: ["eda"] }, "eda is not a check. Here stand names of checks."],
  ])("with %j says what keeps it from being run", (patch, message) => {
    const said = refusal(design, { ...sweep, ...patch, inputs: patch.inputs ?? [] }, trials);
    expect(said).toContain("Study what_if: ");
    expect(said).toContain(message);
  });
});
