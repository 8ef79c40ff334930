import { describe, expect, test } from "vitest";
import { piecesOf, rowsOf, workOn } from "../../../src/cells/studies/work.ts";
import type { StudyFields } from "./study-cases.ts";
import { notebookWith, prepared } from "./study-cases.ts";

const design = `given a [mm] from 1 mm to 9 mm = 4 mm
given b from 0 to 3 = 2
area [mm^2] = a^2 * (b - 1)^2
bent [mm] = a * sin(2 * b * 1 rad) + 1 mm / (b - 1.5)
check thin = a < 6 mm`;
const two = [
  { input: "a", plus_minus: "0.5 mm", law: "normal" as const },
  { input: "b", plus_minus: "0.1" },
];
const studies: Readonly<Record<string, StudyFields>> = {
  sweep: { study: "sweep", inputs: [{ input: "b", points: 31 }], results: ["area", "bent"], trials: ["wide"] },
  map: {
    study: "map",
    inputs: [
      { input: "a", points: 7 },
      { input: "b", points: 5 },
    ],
    results: ["area"],
  },
  sensitivity: { study: "sensitivity", inputs: two, results: ["area", "bent"] },
  tolerance: { study: "tolerance", inputs: two, results: ["area"], builds: 101, seed: 5 },
  solve: { study: "solve", inputs: [{ input: "b" }], results: ["bent"], target: "1 mm" },
  best: {
    study: "best",
    inputs: [{ input: "a" }, { input: "b" }],
    results: ["bent"],
    goals: ["least"],
    checks: ["thin"],
  },
};
const trials = [{ name: "wide", set: { a: "8 mm" } }];

describe.each(Object.entries(studies))("a study of the sort %s", (_, fields) => {
  const notebook = notebookWith(design, fields, trials);
  const rows = rowsOf(prepared(notebook));

  test("comes to the same rows in any number of parts, computed apart", () => {
    for (const of of [2, 3, 7, 40]) {
      const parts = Array.from({ length: of }, (__, part) => rowsOf(prepared(notebook), { index: part + 1, of }));
      expect(parts.flat()).toEqual(rows);
    }
  });

  test("comes to the same rows bit by bit, its progress rising from 0 to 1", () => {
    const work = workOn(prepared(notebook));
    let before = work.progress;
    expect(before).toBe(0);
    while (!work.next(3)) {
      expect(work.progress).toBeGreaterThanOrEqual(before);
      expect(work.progress).toBeLessThan(1);
      before = work.progress;
    }
    expect(work.progress).toBe(1);
    expect(work.rows).toEqual(rows);
  });

  test("tells of what is there while rows are missing", () => {
    const study = prepared(notebook);
    expect(() => study.conclude([])).not.toThrow();
    expect(() => study.conclude(rows.map((row, index) => (index % 2 === 0 ? row : undefined)))).not.toThrow();
  });

  test("has rows and an outcome that go through JSON unchanged", () => {
    const study = prepared(notebook);
    const sent = JSON.parse(JSON.stringify(rows));
    expect(sent).toEqual(rows);
    const all = study.conclude(rows);
    expect(study.conclude(sent)).toEqual(all);
    expect(JSON.parse(JSON.stringify(all))).toEqual(all);
  });
});

test("shares are as even as can be and leave no piece out", () => {
  for (const of of [1, 2, 3, 8]) {
    const shares = Array.from({ length: of }, (_, index) => piecesOf(13, { index: index + 1, of }));
    expect(shares[0]?.from).toBe(0);
    expect(shares.at(-1)?.to).toBe(13);
    for (let next = 1; next < of; next++) expect(shares[next]?.from).toBe(shares[next - 1]?.to);
    const sizes = shares.map(({ from, to }) => to - from);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
  }
});
