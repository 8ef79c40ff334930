import { readFileSync, writeFileSync } from "node:fs";
import fc from "fast-check";
import { Check } from "typebox/schema";
import { describe, expect, test } from "vitest";
import type { Cell } from "../../src/cells/cell.ts";
import { writeNotebook } from "../../src/cells/notebook-file.ts";
import { cellSchemas, kinds, notebookSchema } from "../../src/cells/notebook-schema.ts";
import { randomNotebook } from "./random-notebook.ts";

const shippedFile = new URL("../../src/cells/notebook.schema.json", import.meta.url);
const shipped = JSON.parse(readFileSync(shippedFile, "utf8"));

describe("the JSON Schema that ships", () => {
  test("is that of the program; where it is not, the right one is written beside it", () => {
    const right = JSON.parse(JSON.stringify(notebookSchema));
    const beside = new URL("notebook.schema.actual.json", shippedFile);
    if (JSON.stringify(shipped) !== JSON.stringify(right)) writeFileSync(beside, `${JSON.stringify(right, null, 2)}\n`);
    expect(shipped).toEqual(right);
    // Keys in the same order too: it is the order in which a file has them.
    expect(JSON.stringify(shipped)).toBe(JSON.stringify(right));
  });

  test("takes every file that is written", () => {
    fc.assert(
      fc.property(randomNotebook, (notebook) => {
        expect(Check(shipped, JSON.parse(writeNotebook(notebook)))).toBe(true);
      }),
      { seed: 50, numRuns: 200 },
    );
  });

  test("refuses a cell with a key too many, a key missing or a key of the wrong kind", () => {
    const file = (cell: object) => ({ format: "spanwise-notebook", version: 1, title: "", cells: [cell] });
    const note = { id: "a1", kind: "note", text: "" };
    expect(Check(shipped, file(note))).toBe(true);
    expect(Check(shipped, file({ ...note, colour: "red" }))).toBe(false);
    expect(Check(shipped, file({ id: "a1", kind: "note" }))).toBe(false);
    expect(Check(shipped, file({ ...note, text: null }))).toBe(false);
    expect(Check(shipped, file({ ...note, kind: "given" }))).toBe(false);
    expect(Check(shipped, { ...file(note), version: 2 })).toBe(false);
  });
});

describe("the kinds", () => {
  test("each says its own kind, and begins with id and kind", () => {
    for (const kind of kinds) {
      expect(cellSchemas[kind].properties.kind.const).toBe(kind);
      expect(Object.keys(cellSchemas[kind].properties).slice(0, 2)).toEqual(["id", "kind"]);
    }
  });

  test("each has its own type, told apart by its kind", () => {
    const told = (cell: Cell): string => {
      switch (cell.kind) {
        case "table":
          return cell.columns.map(({ name }) => name).join();
        case "question":
          return cell.answer ?? "open";
        case "drawing":
          // @ts-expect-error a drawing has no formula
          return cell.formula ?? cell.of;
        default:
          return cell.id;
      }
    };
    const question = { id: "a9", kind: "question", about: "eda", prompt: "", answer: null, because: "" } as const;
    expect(told(question)).toBe("open");
    expect(told({ id: "a7", kind: "drawing", view: "front", of: "main_wing" })).toBe("main_wing");
    // @ts-expect-error a fraction is one that a rule shows
    expect(told({ id: "a2", kind: "given", name: "span", formula: "18 in", fraction: 10 })).toBe("a2");
  });
});
