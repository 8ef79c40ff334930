import fc from "fast-check";
import type { Cell, Notebook, TableCell } from "../../src/cells/cell.ts";
import { insertCell, insertRow, moveCell, removeCell, removeRow, setEntry } from "../../src/cells/notebook.ts";
import { shapeKey } from "../../src/cells/shapes.ts";
import type { Result } from "../../src/cells/value.ts";

const names = fc.constantFrom(..."abcdetuvf".split(""));
const formula = fc
  .tuple(names, names)
  .chain(([n, m]) =>
    fc.constantFrom(
      ...["1", "2", "3 mm", "4 mm", "5 deg", "true", '"balsa"', "[1, 2]", "[3 mm, 4 mm]", "1 / 0", "-2", "1.5e3", "0"],
      ...[n, `${n} + 1`, `${n} * ${m}`, `${n} + ${m}`, `2 * ${n}`, `${n} / ${m}`, `${n} < ${m}`, `not ${n}`, `-${n}`],
      ...[`if ${n} < ${m} then ${n} else ${m}`, `[${n}, ${m}]`, `${n}[1]`, `${n}.x`, `sum(${n}.x)`, `sin(${n})`],
      ...[
        `f(${n})`,
        `f(f(${n}))`,
        `u(${n}, ${m})`,
        `u(${n}, y: 2)`,
        `${n}(${m})`,
        `x + ${n}`,
        `x * y`,
        `${n} +`,
        "nope + 1",
      ],
      ...[
        `min(${n}, ${m})`,
        `round(${n}, 1 mm)`,
        `${n} = ${m}`,
        `${n} > 1 and ${m} > 1`,
        `sqrt(${n})`,
        `${n}^2`,
        "a(2)",
        "aa",
      ],
    ),
  );
const name = fc.oneof(
  { weight: 12, arbitrary: names },
  { weight: 4, arbitrary: fc.constantFrom("f(x)", "f(y)", "u(x, y)", "t(x)") },
  { weight: 1, arbitrary: fc.constantFrom("min", "2x", "", "mm", "aa", "f(mm)") },
);
const unit = fc.option(fc.constantFrom("mm", "m", "deg", "1", "spam"), { nil: undefined, freq: 2 });
const entry = fc.oneof(fc.constantFrom("1", "2", "", "3 mm", "-4"), formula);

const content = fc.oneof(
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("given"), name, formula, unit, range: range() }) },
  { weight: 8, arbitrary: fc.record({ kind: fc.constant("derived"), name, formula, unit }) },
  { weight: 3, arbitrary: fc.tuple(name, unit, fc.array(fc.tuple(entry, entry), { maxLength: 3 })).map(asTable) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("check"), name, formula }) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(names, names)
      .map(([n, m]) => ({ kind: "note", text: `{${n}} and {${m}.x} and {${m}[1]} and {ab}` })),
  },
  { weight: 1, arbitrary: names.map((n) => ({ kind: "drawing", view: "front", of: n })) },
  { weight: 1, arbitrary: names.map((n) => ({ kind: "sheet", of: n })) },
  { weight: 1, arbitrary: names.map((n) => ({ kind: "question", about: n, prompt: "", answer: null, because: "" })) },
  {
    weight: 1,
    arbitrary: fc.tuple(names, names).map(([n, m]) => ({ kind: "chart", view: "v", sweep: n, x: n, y: [m] })),
  },
  { weight: 1, arbitrary: fc.constant({ kind: "decision", question: "", chosen: "", why: "" }) },
) as fc.Arbitrary<object>;

function range() {
  const ends = fc.constantFrom(["0", "5"], ["0 mm", "5 mm"], ["0", "5", "1"], ["a", "5"], ["5", "0"]);
  return fc.option(ends, { nil: undefined, freq: 3 });
}

function asTable([tableName, of, rows]: [string, string | undefined, readonly (readonly string[])[]]): object {
  const columns = [{ name: "x", ...(of && { unit: of }) }, { name: "y" }];
  return { kind: "table", name: tableName, columns, rows };
}

const withId = (of: object, id: string): Cell => clean({ id, ...of }) as Cell;
const clean = (of: object): object => Object.fromEntries(Object.entries(of).filter(([, value]) => value !== undefined));

/** A change of a notebook, whatever it holds at that time. */
export type Edit = (notebook: Notebook) => Notebook;

const place = fc.nat(999);
const edit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 8, arbitrary: fc.tuple(place, content).map(([at, of]) => replaceAt(at, of)) },
  { weight: 8, arbitrary: fc.tuple(place, formula).map(([at, text]) => changeAt(at, { formula: text })) },
  { weight: 3, arbitrary: fc.tuple(place, name).map(([at, text]) => changeAt(at, { name: text })) },
  { weight: 2, arbitrary: fc.tuple(place, unit).map(([at, text]) => changeAt(at, { unit: text })) },
  { weight: 4, arbitrary: fc.tuple(place, content, fc.nat(30)).map(([at, of, id]) => insertAt(at, of, `n${id}`)) },
  { weight: 3, arbitrary: place.map((at) => onCell(at, (notebook, cell) => removeCell(notebook, cell.id))) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(place, place)
      .map(([at, to]) => onCell(at, (notebook, { id }) => moveCell(notebook, id, to % notebook.cells.length))),
  },
  {
    weight: 3,
    arbitrary: fc.tuple(place, place, fc.nat(1), entry).map(([at, row, column, text]) =>
      onTable(at, (notebook, { id, rows }) => {
        return rows.length === 0 ? notebook : setEntry(notebook, id, row % rows.length, column, text);
      }),
    ),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(place, entry, entry)
      .map(([at, a, b]) => onTable(at, (notebook, { id }) => insertRow(notebook, id, 0, [a, b]))),
  },
  {
    weight: 1,
    arbitrary: place.map((at) =>
      onTable(at, (notebook, { id, rows }) => (rows.length === 0 ? notebook : removeRow(notebook, id, 0))),
    ),
  },
);

/** A notebook of a few cells that name each other, and edits that make faults and mend them. */
export const editedNotebook: fc.Arbitrary<{ readonly notebook: Notebook; readonly edits: readonly Edit[] }> = fc.record(
  {
    notebook: fc
      .array(content, { minLength: 4, maxLength: 14 })
      .map((all) => ({ title: "", trials: [], cells: all.map((of, index) => withId(of, `c${index}`)) })),
    edits: fc.array(edit, { minLength: 1, maxLength: 12 }),
  },
);

function onCell(at: number, change: (notebook: Notebook, cell: Cell) => Notebook): Edit {
  return (notebook) => {
    const cell = notebook.cells[at % Math.max(1, notebook.cells.length)];
    return cell ? change(notebook, cell) : notebook;
  };
}

const onTable = (at: number, change: (notebook: Notebook, cell: TableCell) => Notebook): Edit =>
  onCell(at, (notebook, cell) => (cell.kind === "table" ? change(notebook, cell) : notebook));

/** Another content under the same id, also of another kind: as undo can bring it about. */
const replaceAt = (at: number, of: object): Edit =>
  onCell(at, (notebook, { id }) => withCells(notebook, (cell) => (cell.id === id ? withId(of, id) : cell)));

const changeAt = (at: number, patch: object): Edit =>
  onCell(at, (notebook, { id }) =>
    withCells(notebook, (cell) => {
      const fits =
        cell.id === id &&
        Object.keys(patch).every(
          (key) => key in cell || (key === "unit" && "formula" in cell && cell.kind !== "check"),
        );
      return fits ? (clean({ ...cell, ...patch }) as Cell) : cell;
    }),
  );

const withCells = (notebook: Notebook, change: (cell: Cell) => Cell): Notebook => ({
  ...notebook,
  cells: notebook.cells.map(change),
});

const insertAt =
  (at: number, of: object, id: string): Edit =>
  (notebook) =>
    notebook.cells.some((cell) => cell.id === id)
      ? notebook
      : insertCell(notebook, at % (notebook.cells.length + 1), withId(of, id));

/** Results as plain text, to be compared: values with their shapes, errors, parts, margins. */
export function told(result: Result | undefined): unknown {
  if (!result) return "none";
  const { parts } = result;
  const rest = parts ? { parts: parts.map(told) } : {};
  if (!result.ok) return { error: result.error, ...rest };
  const { value, shape, margin } = result;
  return { value, shape: shapeKey(shape), ...(margin !== undefined && { margin }), ...rest };
}
