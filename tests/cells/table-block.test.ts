import fc from "fast-check";
import { expect, test } from "vitest";
import type { Notebook, TableCell } from "../../src/cells/cell.ts";
import { blockText, clearBlock, putBlock, readBlock } from "../../src/cells/table-block.ts";

const tableOf = (rows: readonly (readonly string[])[]): TableCell => ({
  id: "a1",
  kind: "table",
  name: "panels",
  columns: (rows[0] ?? []).map((_, index) => ({ name: `c${index}` })),
  rows,
});
const notebookOf = (rows: readonly (readonly string[])[]): Notebook => ({
  title: "",
  cells: [tableOf(rows)],
  trials: [],
});
const rowsOf = ({ cells }: Notebook) => (cells[0] as TableCell).rows;

test("a block is copied with tabs and line ends", () => {
  const table = tableOf([
    ["1", "2", "3"],
    ["4", "5", "6"],
    ["7", "8", "9"],
  ]);
  expect(blockText(table, { rows: [1, 2], columns: [0, 1] })).toBe("4\t5\n7\t8");
});

test("text from elsewhere is read: line ends of every kind, a last line, quotes, blanks around, ragged rows", () => {
  expect(readBlock("1\t2\r\n3\t4\r\n")).toEqual([
    ["1", "2"],
    ["3", "4"],
  ]);
  expect(readBlock("7")).toEqual([["7"]]);
  expect(readBlock('"a ""b""\nc"\t x \n\n5')).toEqual([['a "b" c', "x"], [""], ["5"]]);
  expect(readBlock('3" wide\ttip')).toEqual([['3" wide', "tip"]]);
  expect(readBlock("")).toEqual([[""]]);
});

test("a block put in grows the table by rows, and leaves off what stands beyond its last column", () => {
  const after = putBlock(
    notebookOf([
      ["1", "2"],
      ["3", "4"],
    ]),
    "a1",
    1,
    1,
    [["a", "b"], ["c"]],
  );
  expect(rowsOf(after)).toEqual([
    ["1", "2"],
    ["3", "a"],
    ["", "c"],
  ]);
});

test("a block is cleared", () => {
  expect(
    rowsOf(
      clearBlock(
        notebookOf([
          ["1", "2"],
          ["3", "4"],
        ]),
        "a1",
        { rows: [0, 1], columns: [1, 1] },
      ),
    ),
  ).toEqual([
    ["1", ""],
    ["3", ""],
  ]);
});

test("what is copied and put in again is what it was, whatever the entries hold", () => {
  const entry = fc.string({ unit: fc.constantFrom("a", '"', " ", "2", ",") }).map((text) => text.trim());
  const rows = fc
    .integer({ min: 1, max: 4 })
    .chain((width) =>
      fc.array(fc.array(entry, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }),
    );
  fc.assert(
    fc.property(rows, (all) => {
      const [last, width] = [all.length - 1, (all[0] ?? []).length];
      // An empty last line is none.
      fc.pre(last === 0 || (all[last] ?? []).some((each) => each !== ""));
      const text = blockText(tableOf(all), { rows: [0, last], columns: [0, width - 1] });
      expect(readBlock(text)).toEqual(all);
    }),
    { seed: 5 },
  );
});
