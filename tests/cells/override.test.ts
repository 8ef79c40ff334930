import { describe, expect, test } from "vitest";
import type { TableCell } from "../../src/cells/cell.ts";
import { override } from "../../src/cells/override.ts";
import { cellsOf } from "./notebook-text.ts";

const notebook = {
  title: "",
  trials: [],
  cells: cellsOf(`given tip_break [deg] = 11 deg
span = 400 mm
lift(v) = v
check ok = true
table panels | length mm | part text | break deg
| 110 | root | 5
| 90 | tip | tip_break`),
};

describe("a value set from outside", () => {
  test("replaces the formula of a given", () => {
    expect(override(notebook, "tip_break", "7 deg").cells[0]).toMatchObject({ formula: "7 deg", unit: "deg" });
    expect(override(notebook, " tip_break ", "7 deg").cells[0]).toMatchObject({ formula: "7 deg" });
  });

  test("replaces an entry of a table, its row counted from 1", () => {
    const set = (target: string) => (override(notebook, target, "x").cells[4] as TableCell).rows;
    expect(set("panels[2].break")[1]).toEqual(["90", "tip", "x"]);
    expect(set("panels[1].part")[0]).toEqual(["110", "x", "5"]);
    expect(set(" panels [ 1 ] . length ")[0]).toEqual(["x", "root", "5"]);
  });

  test("leaves the notebook as it was, and all other cells shared", () => {
    const set = override(notebook, "panels[1].length", "1");
    expect(set.cells[0]).toBe(notebook.cells[0]);
    expect(notebook.cells[4]).toMatchObject({
      rows: [
        ["110", "root", "5"],
        ["90", "tip", "tip_break"],
      ],
    });
  });

  test.each([
    ["tip_brake", "There is no cell named tip_brake. Did you mean tip_break?"],
    ["zzz", "There is no cell named zzz."],
    ["zzz[1].length", "There is no cell named zzz."],
    ["span", "span is computed. Only givens and table entries can be set."],
    ["lift", "lift is computed. Only givens and table entries can be set."],
    ["ok", "ok is computed. Only givens and table entries can be set."],
    ["panels", "panels is a table. Name one entry of it, such as panels[1].length."],
    ["tip_break[1].x", "tip_break is not a table and has no entries."],
    ["panels[0].break", "panels has no row 0: it has 2, counted from 1."],
    ["panels[3].break", "panels has no row 3: it has 2, counted from 1."],
    ["panels[1].brake", "panels has no column brake. Did you mean break?"],
    ["panels[1].zzz", "panels has no column zzz. It has length, part and break."],
    ["panels[1.5].break", "There is no cell named panels[1.5].break."],
    ["panels.break", "There is no cell named panels.break."],
  ])("of %s says what is wrong", (target, message) => {
    expect(() => override(notebook, target, "1")).toThrow(message);
  });
});
