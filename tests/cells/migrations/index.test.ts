import { describe, expect, test } from "vitest";
import {
  type FileObject,
  type Migration,
  migrate,
  migrations,
  versionAfter,
} from "../../../src/cells/migrations/index.ts";
import { notebookSchema } from "../../../src/cells/notebook-schema.ts";

/** Two invented steps: cells were called entries once, and their text was called words. */
const toSecond: Migration = ({ entries, ...rest }) => ({ ...rest, cells: entries });
const toThird: Migration = ({ cells, ...rest }) => ({
  ...rest,
  cells: (cells as FileObject[]).map(({ words, ...cell }) => ({ ...cell, text: words })),
});
const steps = [toSecond, toThird];
const first = { format: "spanwise-notebook", version: 1, entries: [{ id: "a1", words: "hello" }] };
const third = { format: "spanwise-notebook", version: 3, cells: [{ id: "a1", text: "hello" }] };

describe("bringing a file up to date", () => {
  test("takes the steps in order from the file's own version on", () => {
    expect(migrate(first, 1, steps)).toEqual(third);
    expect(migrate({ ...toSecond(first), version: 2 }, 2, steps)).toEqual(third);
  });

  test("leaves a file of the current version as it is", () => {
    expect(migrate(third, 3, steps)).toBe(third);
  });

  test("leaves the file it was given untouched", () => {
    const before = structuredClone(first);
    migrate(first, 1, steps);
    expect(first).toEqual(before);
  });

  test.each([0, 4, 1.5, Number.NaN])("refuses version %s", (version) => {
    expect(() => migrate(first, version, steps)).toThrow(/expected a whole number from 1 to 3/);
  });

  test("ends at the version that the schema has", () => {
    expect(versionAfter(migrations)).toBe(notebookSchema.properties.version.const);
    expect(versionAfter(steps)).toBe(3);
  });
});
