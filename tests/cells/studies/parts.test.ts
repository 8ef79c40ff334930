import { describe, expect, test } from "vitest";
import type { StudyCell } from "../../../src/cells/cell.ts";
import { override } from "../../../src/cells/override.ts";
import { joinParts, type Part, partOf, readShare } from "../../../src/cells/studies/parts.ts";
import { rowsOf } from "../../../src/cells/studies/work.ts";
import { notebookWith, prepared } from "./study-cases.ts";

const notebook = notebookWith("given a = 1\nb = a^2", {
  study: "sweep",
  inputs: [{ input: "a", range: ["0", "10"], points: 11 }],
  results: ["b"],
});
const cell = notebook.cells.at(-1) as StudyCell;
const study = prepared(notebook);
const part = (index: number, of: number): Part =>
  JSON.parse(JSON.stringify(partOf(notebook, cell, { index, of }, rowsOf(study, { index, of }))));
const join = (...parts: readonly unknown[]) =>
  joinParts(
    notebook,
    study,
    parts,
    parts.map((_, index) => `part-${index + 1}.json`),
  );

describe("parts of a study", () => {
  test("joined in any order are the whole", () => {
    expect(join(part(3, 3), part(1, 3), part(2, 3))).toEqual(rowsOf(study));
    expect(join(part(1, 1))).toEqual(rowsOf(study));
    const many = Array.from({ length: 20 }, (_, index) => part(index + 1, 20));
    expect(join(...many)).toEqual(rowsOf(study));
  });

  test("that do not make the whole are refused, with the file", () => {
    const changed = override(notebook, "a", "2");
    const other = { ...part(2, 3), study: "other" };
    expect(() => join()).toThrow("Name the files of all parts.");
    expect(() => join(part(1, 3), part(1, 3))).toThrow("part-2.json: Part 1 is there twice.");
    expect(() => join(part(2, 3))).toThrow("Of 3 parts 1 and 3 are missing.");
    expect(() => join(part(1, 3), part(2, 4))).toThrow("part-2.json: This is one of 4 parts, but others are of 3.");
    expect(() => join(part(1, 3), other)).toThrow("part-2.json: This is a part of the study other, not of what_if.");
    expect(() => joinParts(changed, study, [part(1, 1)], ["x"])).toThrow(
      "x: This part was computed from another state of the notebook.",
    );
  });

  test.each([
    null,
    4,
    "x",
    [],
    {},
    { ...part(1, 3), format: "else" },
    { ...part(1, 3), part: [4, 3] },
    { ...part(1, 3), part: [1, 1e9] },
    { ...part(1, 3), part: [0.5, 3] },
    { ...part(1, 3), rows: [1] },
    { ...part(1, 3), rows: part(1, 3).rows.slice(1) },
  ])("are not made up: %j", (value) => {
    expect(() => join(value)).toThrow("part-1.json: This is no part of a study. Name files that --part has written.");
  });
});

describe("which part", () => {
  test("is written as its number of how many", () => {
    expect(readShare("2/8")).toEqual({ index: 2, of: 8 });
    expect(readShare(" 8 / 8 ")).toEqual({ index: 8, of: 8 });
  });

  test.each(["", "2", "0/8", "9/8", "1/0", "-1/3", "1.5/3", "a/b", "1/2/3", "1/999999"])("is not “%s”", (text) => {
    expect(() => readShare(text)).toThrow("Write which of how many, such as 2/8.");
  });
});
