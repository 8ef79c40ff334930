import { expect, test } from "vitest";
import { blockBetween, isWithin, placeByKey, sizeOf } from "../../src/views/table-places.ts";

const last = { row: 2, column: 3 };
const go = (key: string, row: number, column: number) => placeByKey(key, { row, column }, last);

test("arrow keys stop at the last row and column, and lead up to the head and out to the numbers", () => {
  expect(go("ArrowUp", 0, 1)).toEqual({ row: -1, column: 1 });
  expect(go("ArrowUp", -1, 1)).toEqual({ row: -1, column: 1 });
  expect(go("ArrowLeft", 1, 0)).toEqual({ row: 1, column: -1 });
  expect(go("ArrowDown", 2, 1)).toEqual({ row: 2, column: 1 });
  expect(go("ArrowRight", 1, 3)).toEqual({ row: 1, column: 3 });
  expect(go("Home", 1, 3)).toEqual({ row: 1, column: 0 });
  expect(go("End", 1, 0)).toEqual({ row: 1, column: 3 });
  expect(go("x", 1, 0)).toBeNull();
});

test("where head and numbers would meet there is no place", () => {
  expect(go("ArrowLeft", -1, 0)).toEqual({ row: -1, column: 0 });
  expect(go("ArrowUp", 0, -1)).toEqual({ row: 0, column: -1 });
});

test("a block is the same from either corner, and leaves out head and numbers", () => {
  const block = blockBetween({ row: 2, column: 1 }, { row: 1, column: 3 });
  expect(block).toEqual({ rows: [1, 2], columns: [1, 3] });
  expect(sizeOf(block)).toEqual([2, 3]);
  expect(isWithin(block, { row: 1, column: 2 })).toBe(true);
  expect(isWithin(block, { row: 0, column: 2 })).toBe(false);
  expect(blockBetween({ row: -1, column: 1 }, { row: 1, column: -1 })).toEqual({ rows: [0, 1], columns: [0, 1] });
});
