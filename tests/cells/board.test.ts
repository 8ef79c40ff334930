import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { figuresOnBoard, isFigure, moveFigure, pinFigure, unpinFigure } from "../../src/cells/board.ts";
import type { Cell, Notebook } from "../../src/cells/cell.ts";
import { History } from "../../src/cells/history.ts";
import { insertCell, moveCell, removeCell } from "../../src/cells/notebook.ts";
import { NotebookError, readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";

const drawing = (id: string): Cell => ({ id, kind: "drawing", view: "front", of: "wing" });
const start: Notebook = {
  title: "",
  cells: [drawing("d1"), { id: "n1", kind: "note", text: "" }, drawing("d2"), drawing("d3")],
  trials: [],
};
const ids = (notebook: Notebook): readonly string[] => figuresOnBoard(notebook).map(({ id }) => id);

describe("the board", () => {
  test("has every drawing and chart in the order of the page until someone says otherwise", () => {
    expect(ids(start)).toEqual(["d1", "d2", "d3"]);
    expect(ids(moveCell(start, "d3", 0))).toEqual(["d3", "d1", "d2"]);
  });

  test("keeps an order of its own and what was taken off, and forgets both when they are undone by hand", () => {
    const moved = moveFigure(start, "d3", 0);
    expect(moved.board).toEqual(["d3", "d1", "d2"]);
    expect(ids(moveCell(moved, "d2", 0))).toEqual(["d3", "d1", "d2"]);
    expect(moveFigure(moved, "d3", 2)).toEqual(start);
    const fewer = unpinFigure(start, "d3");
    expect(fewer.board).toEqual(["d1", "d2"]);
    expect(pinFigure(fewer, "d3")).toEqual(start);
    expect(pinFigure(unpinFigure(start, "d1"), "d1").board).toEqual(["d2", "d3", "d1"]);
  });

  test("has a study only where it was put on, and forgets it when it is taken off again", () => {
    const study: Cell = { id: "s1", kind: "study", name: "what_if", study: "sweep", inputs: [], results: [] };
    const notebook = { ...start, cells: [...start.cells, study] };
    expect(ids(notebook)).toEqual(["d1", "d2", "d3"]);
    const pinned = pinFigure(notebook, "s1");
    expect(ids(pinned)).toEqual(["d1", "d2", "d3", "s1"]);
    expect(readNotebook(writeNotebook(pinned))).toEqual(pinned);
    expect(ids(moveFigure(pinned, "s1", 0))).toEqual(["s1", "d1", "d2", "d3"]);
    expect(unpinFigure(pinned, "s1")).toEqual(notebook);
    expect(ids(removeCell(pinned, "s1"))).toEqual(["d1", "d2", "d3"]);
  });

  test("changes nothing where nothing is to be changed, and refuses what is no figure or no place", () => {
    expect(pinFigure(start, "d1")).toBe(start);
    expect(unpinFigure(start, "n1")).toBe(start);
    expect(moveFigure(start, "d2", 1)).toBe(start);
    expect(() => pinFigure(start, "n1")).toThrow('got the id "n1"');
    expect(() => moveFigure(start, "d1", 3)).toThrow("a place from 0 to 2");
  });

  test("takes in a figure that is put in, after all others, and lets go of one that is deleted", () => {
    const fewer = unpinFigure(start, "d1");
    expect(insertCell(fewer, 0, drawing("d4")).board).toEqual(["d2", "d3", "d4"]);
    expect(insertCell(fewer, 0, { id: "n2", kind: "note", text: "" }).board).toEqual(["d2", "d3"]);
    expect(removeCell(fewer, "d2").board).toEqual(["d3"]);
    expect(removeCell(fewer, "d1").board).toBeUndefined();
  });

  test("comes back by undo, and so does the place of a deleted figure", () => {
    const history = new History();
    const moved = moveFigure(start, "d3", 0);
    history.remember(start, moved);
    const removed = removeCell(moved, "d3");
    history.remember(moved, removed);
    expect(history.undo(removed)).toEqual(moved);
    expect(history.undo(moved)).toEqual(start);
  });

  test("can be read back whatever was done to it, and names figures only, each once", () => {
    const step = fc.tuple(fc.constantFrom("pin", "unpin", "move", "remove", "insert", "shift"), fc.nat(9), fc.nat(9));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const end = steps.reduce((notebook, [what, a, b], index) => {
          const cell = notebook.cells[a % notebook.cells.length];
          const shown = ids(notebook);
          if (!cell || what === "insert") return insertCell(notebook, 0, drawing(`x${index}`));
          if (what === "remove") return notebook.cells.length > 1 ? removeCell(notebook, cell.id) : notebook;
          if (what === "shift") return moveCell(notebook, cell.id, b % notebook.cells.length);
          if (!isFigure(cell)) return notebook;
          if (what === "pin") return pinFigure(notebook, cell.id);
          if (what === "unpin") return unpinFigure(notebook, cell.id);
          return shown.includes(cell.id) ? moveFigure(notebook, cell.id, b % shown.length) : notebook;
        }, start);
        expect(readNotebook(writeNotebook(end))).toEqual(end);
        expect(new Set(ids(end)).size).toBe(ids(end).length);
      }),
      { seed: 31, numRuns: 200 },
    );
  });
});

describe("in a file", () => {
  const file = (board: unknown): string => {
    const { title, cells } = start;
    return JSON.stringify({ format: "spanwise-notebook", version: 1, title, cells, board });
  };

  test("the board stands after the cells, and only where it is not as the page has it", () => {
    expect(writeNotebook(start)).not.toContain("board");
    expect(writeNotebook(moveFigure(start, "d3", 0))).toContain('  ],\n  "board": ["d3", "d1", "d2"],\n  "trials"');
  });

  test.each([
    [["d1", "zz"], "board[1]", "“zz” is the id of no drawing, chart or study"],
    [["n1"], "board[0]", "“n1” is the id of no drawing, chart or study"],
    [["d1", "d1"], "board[1]", "“d1” is on the board already"],
    ["d1", "board", ""],
  ])("%j is refused with its place", (board, place, sentence) => {
    try {
      readNotebook(file(board));
    } catch (error) {
      if (!(error instanceof NotebookError)) throw error;
      expect(error.place).toBe(place);
      expect(error.message).toContain(sentence);
      return;
    }
    throw new Error("got a notebook, expected an error");
  });
});
