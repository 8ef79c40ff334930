import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Notebook } from "../../src/cells/cell.ts";
import { largestFile, NotebookError, readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";
import { randomNotebook } from "./random-notebook.ts";

const fixture = (name: string): string => readFileSync(new URL(`fixtures/${name}`, import.meta.url), "utf8");
const example = fixture("example.txt");
const empty: Notebook = { title: "", cells: [], trials: [] };
const fileWith = (cell: object): string =>
  JSON.stringify({ format: "spanwise-notebook", version: 1, title: "", cells: [cell] });

function faultOf(text: string): NotebookError {
  try {
    readNotebook(text);
  } catch (error) {
    if (error instanceof NotebookError) return error;
    throw error;
  }
  throw new Error(`got a notebook, expected a fault in ${text.slice(0, 200)}`);
}

describe("reading and writing back", () => {
  test("a file that Spanwise wrote is written back byte for byte", () => {
    expect(writeNotebook(readNotebook(example))).toBe(example);
  });

  test("a file laid out by hand gives the same notebook, and is written in our layout", () => {
    const byHand = fixture("example-by-hand.txt");
    expect(readNotebook(byHand)).toEqual(readNotebook(example));
    expect(writeNotebook(readNotebook(byHand))).toBe(example);
  });

  test("an empty notebook is written with its empty list of trials", () => {
    const text = '{"format": "spanwise-notebook", "version": 1, "title": "", "cells": [], "trials": []}\n';
    expect(writeNotebook(empty)).toBe(text);
    expect(readNotebook(text)).toEqual(empty);
  });

  test("a file may leave out its trials", () => {
    expect(readNotebook(fileWith({ id: "a1", kind: "note", text: "" })).trials).toEqual([]);
  });

  test("keys are written in the order of the schema, and keys that are undefined not at all", () => {
    const cell = { reason: "", unit: undefined, formula: "1", name: "a", kind: "given", id: "a1" } as const;
    const text = writeNotebook({ expect: { a: "1" }, trials: [], cells: [cell as never], title: "T" });
    expect(Object.keys(JSON.parse(text))).toEqual(["format", "version", "title", "cells", "trials", "expect"]);
    expect(text).toContain('{"id": "a1", "kind": "given", "name": "a", "formula": "1", "reason": ""}');
  });

  test("names in a trial's set and in what is expected keep their own order", () => {
    const set = { zeta: "1", alpha: "2", "panels[2].break": "3" };
    const read = readNotebook(writeNotebook({ ...empty, trials: [{ name: "t", set }], expect: set }));
    expect(Object.keys(read.trials[0]?.set ?? {})).toEqual(Object.keys(set));
    expect(Object.keys(read.expect ?? {})).toEqual(Object.keys(set));
  });

  test("any notebook is read as it was written, and written again as the same text", () => {
    fc.assert(
      fc.property(randomNotebook, (notebook) => {
        const text = writeNotebook(notebook);
        const read = readNotebook(text);
        expect(read).toEqual(notebook);
        expect(writeNotebook(read)).toBe(text);
      }),
      { seed: 20, numRuns: 400 },
    );
  });

  test("what could not be read back is not written", () => {
    const note = { id: "a1", kind: "note", text: "" } as const;
    expect(() => writeNotebook({ ...empty, cells: [note, note] })).toThrow(/cells\[1\]\.id: The id “a1” is already/);
    expect(() => writeNotebook({ ...empty, cells: [{ ...note, text: 7 } as never] })).toThrow(NotebookError);
    expect(() => writeNotebook({ ...empty, cells: [{ ...note, colour: "red" } as never] })).toThrow(/“colour”/);
    expect(() => writeNotebook({ ...empty, title: "x".repeat(largestFile) })).toThrow(/too large to save/);
    const rows = Array.from({ length: 260_000 }, () => [""]);
    const long = { id: "a2", kind: "table", name: "", columns: [{ name: "x" }], rows } as const;
    expect(() => writeNotebook({ ...empty, cells: [long] })).toThrow(/at most 500 000 entries/);
  });
});

describe("texts that need care", () => {
  test("a byte order mark at the start is passed over, and not counted as a column", () => {
    expect(readNotebook(`\ufeff${example}`)).toEqual(readNotebook(example));
    expect(faultOf('\ufeff{"title" 1}').place).toBe("line 1, column 10");
  });

  test("line ends of either kind are taken, and each counts as one line", () => {
    expect(readNotebook(example.replaceAll("\n", "\r\n"))).toEqual(readNotebook(example));
    for (const end of ["\n", "\r\n", "\r"]) expect(faultOf(`{${end}${end}"title" 1}`).place).toBe("line 3, column 9");
  });

  test("half a letter is kept as it is", () => {
    const text = fileWith({ id: "a1", kind: "note", text: "\ud83d and \udc00" });
    expect(readNotebook(text).cells[0]).toMatchObject({ text: "\ud83d and \udc00" });
    expect(writeNotebook(readNotebook(text))).toContain("\\ud83d and \\udc00");
  });

  test("an empty file, and one of blanks, is told as such", () => {
    for (const text of ["", "\ufeff", " \r\n\t"]) expect(faultOf(text).message).toMatch(/^This file is empty\./);
  });

  test("what is no text at all is told as no notebook, on one readable line", () => {
    for (const text of ["PK\u0003\u0004\u0000\u0000", "\u0000{\u0000}", "%PDF-1.7\n%âãÏÓ", "\u202e{}", '"{}"', "12"]) {
      expect(faultOf(text).message).toMatch(/^This file is no notebook: [^\p{Cc}\p{Cf}]+$/u);
    }
  });

  test("a file above the limit is refused before anything in it is looked at", () => {
    expect(faultOf(" ".repeat(largestFile + 1)).message).toBe(
      "This file is too large: it has 10 000 001 characters, and a notebook at most 10 000 000.",
    );
  });

  test("a hundred thousand brackets within each other are a fault, not a crash", () => {
    for (const bracket of ["[", '{"a":']) {
      expect(faultOf(`{"cells": ${bracket.repeat(100_000)}`).message).toContain("more than 32 brackets");
    }
  });

  test("a text of a million characters, escapes or digits is read or refused without a crash", () => {
    const long = "ab\\n".repeat(250_000);
    expect(readNotebook(fileWith({ id: "a1", kind: "note", text: long })).cells[0]).toMatchObject({ text: long });
    expect(faultOf(`{"version": ${"9".repeat(1_000_000)}}`).message).toMatch(/^This file is no notebook/);
    expect(faultOf(`{"title": "${"a".repeat(1_000_000)}`).message.length).toBeLessThan(300);
  });
});

describe("broken files", () => {
  const cases = fixture("broken-notebooks.txt")
    .split(/^# /m)
    .slice(1)
    .map((section) => {
      const [head = "", told = ""] = section.split("\n==>\n");
      const [title = "", ...text] = head.split("\n");
      const [place = "", ...message] = told.trimEnd().split("\n");
      return { title, text: text.join("\n"), place, message: message.join("\n") };
    });

  test.each(cases)("$title is told with its place and the remedy", ({ text, place, message }) => {
    const fault = faultOf(text);
    expect({ place: fault.place, message: fault.message }).toEqual({ place, message });
  });

  test("a place in a notebook stands at the start of the message", () => {
    const placed = cases.filter(({ place }) => /^(cells|trials)/.test(place));
    expect(placed.length).toBeGreaterThan(20);
    for (const { place, message } of placed) expect(message.startsWith(place)).toBe(true);
  });
});

describe("older versions", () => {
  const old = JSON.stringify({ format: "spanwise-notebook", version: 1, name: "Plover", cells: [] });

  test("a file of an older version is read after it was brought up to date", () => {
    const read = readNotebook(old, [({ name, ...rest }) => ({ ...rest, title: name })]);
    expect(read).toEqual({ title: "Plover", cells: [], trials: [] });
  });

  test("an old file that a step cannot bring up to date is told as such", () => {
    const refuse = () => {
      throw new Error("its name is missing");
    };
    expect(() => readNotebook(old, [refuse])).toThrow(NotebookError);
    expect(() => readNotebook(old, [refuse])).toThrow(
      /version 1 cannot be brought up to version 2: its name is missing\./,
    );
  });

  test("what a step gives is checked like any other file", () => {
    expect(() => readNotebook(old, [(file) => file])).toThrow(/The key “name” is not known here/);
  });
});

describe("mutated files", () => {
  const tokens = [
    ...'{}[],:"\\/0-.eE+tfn \n\u0000\ufeff',
    "true",
    "null",
    "1e999",
    '""',
    "[[",
    '"kind"',
    '"__proto__":',
    "\\u",
    "\ud800",
  ];
  const mutation = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
    length: fc.oneof(fc.constant(0), fc.nat(2), fc.nat(12)),
    put: fc.oneof(fc.constantFrom(...tokens), fc.string({ maxLength: 3 }), fc.constantFrom("", "a", "é")),
  });

  test("a file with random pieces changed is a notebook or a NotebookError, and such a notebook is stable", () => {
    let read = 0;
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 3 }), (mutations) => {
        const text = mutations.reduce((now, { at, length, put }) => {
          const from = Math.floor(at * now.length);
          return now.slice(0, from) + put + now.slice(from + length);
        }, example);
        if (holds(text)) read++;
      }),
      { seed: 21, numRuns: 2000 },
    );
    // Both outcomes occur, so that the test says something of each.
    expect(read).toBeGreaterThan(100);
    expect(read).toBeLessThan(1900);
  });

  test("a file whose tokens change places is a notebook or a NotebookError", () => {
    const parts = example.match(/"(?:[^"\\]|\\.)*"|[\w.+-]+|\s+|./g) ?? [];
    const place = fc.nat(parts.length - 1);
    fc.assert(
      fc.property(place, place, fc.constantFrom("swap", "copy", "drop"), (one, other, how) => {
        const now = [...parts];
        if (how !== "drop") now[one] = parts[other] ?? "";
        if (how === "swap") now[other] = parts[one] ?? "";
        if (how === "drop") now.splice(one, 1);
        holds(now.join(""));
      }),
      { seed: 22, numRuns: 1500 },
    );
  });

  test("a value of the wrong kind anywhere in a file is told at its place", () => {
    const strange = [null, 7, true, "x", [], {}, [[]], { a: 1 }];
    let told = 0;
    for (const path of pathsOf(JSON.parse(example))) {
      for (const value of strange) {
        const file = JSON.parse(example);
        const parent = path.slice(0, -1).reduce((within, key) => within[key], file);
        parent[path.at(-1) ?? ""] = value;
        if (!holds(JSON.stringify(file))) told++;
      }
    }
    expect(told).toBeGreaterThan(500);
  });

  /** Whether a text is a notebook; throws unless it is a stable one, or a well-told fault. */
  function holds(text: string): boolean {
    let notebook: Notebook;
    try {
      notebook = readNotebook(text);
    } catch (error) {
      expect(error).toBeInstanceOf(NotebookError);
      const { message, place } = error as NotebookError;
      expect(message).toMatch(/^\S.{9,600}\.$/);
      expect(message + place).not.toMatch(/undefined|NaN|\[object/);
      return false;
    }
    const written = writeNotebook(notebook);
    expect(writeNotebook(readNotebook(written))).toBe(written);
    return true;
  }

  function pathsOf(value: unknown): readonly string[][] {
    if (typeof value !== "object" || value === null) return [];
    return Object.entries(value).flatMap(([key, each]) => [[key], ...pathsOf(each).map((path) => [key, ...path])]);
  }
});
