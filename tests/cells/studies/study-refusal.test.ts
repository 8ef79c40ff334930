import { describe, expect, test } from "vitest";
import { inField, refusalAt, type StudyFault, StudyRefusal } from "../../../src/cells/studies/study-refusal.ts";
import { notebookWith, prepared, type StudyFields } from "./study-cases.ts";

const design = `given a from 0 to 2 = 1
given b = 2
y = a * b
check fine = y < 9`;

function faultOf(fields: StudyFields): StudyFault | null {
  try {
    prepared(notebookWith(design, fields));
    return null;
  } catch (error) {
    if (!(error instanceof StudyRefusal)) throw error;
    return error.fault;
  }
}

describe("a study that cannot be run names the field that is at fault", () => {
  const cases: readonly (readonly [string, StudyFields, Partial<StudyFault>])[] = [
    ["a range", { study: "sweep", inputs: [{ input: "b" }], results: ["y"] }, { field: "range", of: "b" }],
    [
      "an input that is not there",
      { study: "sweep", inputs: [{ input: "c" }], results: ["y"] },
      { field: "input", of: "c" },
    ],
    [
      "too many points",
      {
        study: "map",
        inputs: [
          { input: "a", points: 9999 },
          { input: "b", range: ["0", "1"], points: 9999 },
        ],
        results: ["y"],
      },
      { field: "points", of: null },
    ],
    ["too few inputs", { study: "map", inputs: [{ input: "a" }], results: ["y"] }, { field: "inputs", of: null }],
    ["a ±", { study: "tolerance", inputs: [{ input: "a" }], results: ["y"] }, { field: "plus_minus", of: "a" }],
    [
      "the other half",
      { study: "tolerance", inputs: [{ input: "a", plus_minus: "0.1", pair: "c" }], results: ["y"] },
      { field: "input", of: "c" },
    ],
    [
      "a correlation",
      { study: "tolerance", inputs: [{ input: "a", plus_minus: "0.1", correlation: 1 }], results: ["y"] },
      { field: "correlation", of: "a" },
    ],
    ["a result", { study: "sweep", inputs: [{ input: "a" }], results: ["y +"] }, { field: "result", of: "y +" }],
    ["a missing result", { study: "sweep", inputs: [{ input: "a" }], results: [] }, { field: "result", of: null }],
    ["a target", { study: "solve", inputs: [{ input: "a" }], results: ["y"] }, { field: "target", of: null }],
    ["a goal", { study: "best", inputs: [{ input: "a" }], results: ["y"], goals: [] }, { field: "goal", of: null }],
    [
      "a check",
      { study: "sweep", inputs: [{ input: "a" }], results: ["y"], checks: ["y"] },
      { field: "checks", of: "y" },
    ],
    [
      "a trial",
      { study: "sweep", inputs: [{ input: "a" }], results: ["y"], trials: ["none"] },
      { field: "trials", of: "none" },
    ],
  ];
  test.each(cases)("%s", (_, fields, fault) => {
    const found = faultOf(fields);
    expect(found).toMatchObject(fault);
    // What is said at the field does not say once more where that is.
    expect(found?.sentence).not.toMatch(/^(Study|Input|Result|The target)\b/);
  });
});

describe("what is done with a field", () => {
  test("gives what it gives", () => {
    expect(inField("range", "a", () => 3)).toBe(3);
  });

  test("keeps the field that was named first, and tells where", () => {
    const act = () =>
      inField(
        "input",
        "a",
        () =>
          inField("range", "b", () => {
            throw new Error("wrong");
          }),
        (message) => `Input a: ${message}`,
      );
    expect(act).toThrow("Input a: wrong");
    expect(() =>
      inField("input", "a", () => {
        throw refusalAt("range", "b", "wrong");
      }),
    ).toThrow(expect.objectContaining({ fault: { field: "range", of: "b", sentence: "wrong" } }));
  });

  test("lets a fault of our own through as it is", () => {
    const ours = new TypeError("ours");
    expect(() =>
      inField("input", "a", () => {
        throw ours;
      }),
    ).toThrow(ours);
  });
});
