import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Cell, writeNotebook } from "../src/cells/index.ts";
import { bundle } from "../src/tools/bundle.js";
import { root } from "../src/tools/place.js";
import { cellsOf } from "./cells/notebook-text.ts";
import { blanksNotebook } from "./views/sheets/blanks-notebook.ts";

const folder = mkdtempSync(join(tmpdir(), "spanwise-evaluate-"));
let program = "";

interface Outcome {
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a command as a person would who stands in `folder`. */
function run(command: string, words: readonly string[]): Promise<Outcome> {
  return new Promise((resolve) => {
    const env = { ...process.env, INIT_CWD: folder };
    execFile(command, words, { cwd: folder, env, encoding: "utf8" }, (error, stdout, stderr) => {
      resolve({ status: typeof error?.code === "number" ? error.code : error ? -1 : 0, stdout, stderr });
    });
  });
}
const evaluate = (...words: string[]): Promise<Outcome> => run(process.execPath, [program, ...words]);

/** The object that --json prints, and the exit code. */
async function json(...words: string[]) {
  const { status, stdout, stderr } = await evaluate(...words, "--json");
  expect(stderr).toBe("");
  return { status, ...JSON.parse(stdout) };
}

function write(name: string, text: string, title = "Plover"): string {
  writeFileSync(join(folder, name), writeNotebook({ title, cells: cellsOf(text), trials: [] }));
  return name;
}

const wing = `table panels | length mm | root_chord mm | tip_chord mm | sweep mm | break deg | washout deg | thickness mm | wood text
| 110 | 70 | 66 | 0 | 5 | 0 | 3 | soft
| 90 | 66 | 44 | 8 | tip_break | 1 | 2.5 | hard
main_wing = wing(panels)
eda [deg] = equivalent_dihedral(main_wing)
check enough_dihedral = eda > 10 deg`;
const good = `note Half span {main_wing.span}.
given tip_break [deg] from 0 deg to 20 deg = 11 deg
${wing}
decision V or polyhedral?
drawing main_wing
question eda`;

beforeAll(async () => {
  program = await bundle("src/evaluate.ts", { packages: "inside" });
  write("good.json", good);
  write("plain.json", "given a = 1\nb [mm] = a * 3 mm");
  write("failed.json", "given a = 1\ncheck small = a < 0.5\ncheck large = a > 0.5\ncheck odd = 1 / (a - 1) > 2");
  mkdirSync(join(folder, "inner"));
  write("inner/other.json", "given a = 5", "Other");
  writeFileSync(join(folder, "broken.json"), "{");
  writeFileSync(join(folder, "later.json"), '{"format": "spanwise-notebook", "version": 99, "title": "", "cells": []}');
  writeFileSync(
    join(folder, "kind.json"),
    '{"format": "spanwise-notebook", "version": 1, "title": "", "cells": [{"id": "a", "kind": "spam"}]}',
  );
  writeFileSync(join(folder, "bytes.json"), Buffer.from([0xff, 0xfe, 0x7b]));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("the table", () => {
  test("has a line for each named cell under the title, and how many checks hold", async () => {
    expect(await evaluate("good.json")).toEqual({
      status: 0,
      stderr: "",
      stdout: `Plover

      tip_break  11 deg
         panels  2 rows
      main_wing  392 mm span, 2 panels a side
            eda  12.02 deg
enough_dihedral  ✓ holds by 16.8%

1 of 1 checks hold
`,
    });
  });

  test("tells errors, also of cells without a name, and failed checks", async () => {
    const file = write(
      "faulty.json",
      "note {spam}\na = 1 / 0\nb = a + 1\ncheck c = 3 < 2\ncheck d = b > 1\nf(x) = 2 * x\ndrawing f",
    );
    const { status, stdout } = await evaluate(file);
    expect(status).toBe(2);
    expect(stdout).toBe(`Plover

        a  error  The result of this is not a finite number: something is divided by zero, or is too large.
        b  error  Waits for a.
        c  ✕ fails by 50.0%
        d  error  Waits for a.
        f  f(x)
   note 1  error  There is no cell named spam.
drawing 7  error  f is a function. Call it with its arguments: f(x).

0 of 2 checks hold
`);
  });

  test("of a notebook without checks tells none, and of one without cells just its title", async () => {
    expect((await evaluate("plain.json")).stdout).toBe("Plover\n\na  1\nb  3 mm\n");
    expect(await evaluate(write("empty.json", "note Just words."))).toMatchObject({ status: 0, stdout: "Plover\n\n" });
  });
});

describe("the object of --json", () => {
  test("has these keys, a check a margin besides, and no cell without a name that is sound", async () => {
    const { status, ...object } = await json("good.json");
    expect(status).toBe(0);
    expect(Object.keys(object)).toEqual(["title", "cells", "checks", "others"]);
    expect(object.title).toBe("Plover");
    expect(Object.keys(object.cells)).toEqual(["tip_break", "panels", "main_wing", "eda", "enough_dihedral"]);
    expect(Object.keys(object.cells.eda)).toEqual(["kind", "value", "dimension", "text", "error"]);
    expect(Object.keys(object.cells.enough_dihedral)).toEqual([
      "kind",
      "value",
      "dimension",
      "text",
      "error",
      "margin",
    ]);
    expect(object.checks).toEqual({ held: 1, failed: 0, unknown: 0 });
    expect(object.others).toEqual({});
  });

  test("tells numbers in SI with the SI unit, and the text of the screen", async () => {
    const { cells } = await json("good.json");
    expect(cells.tip_break).toEqual({
      kind: "given",
      value: expect.closeTo((11 * Math.PI) / 180, 12),
      dimension: "rad",
      text: "11 deg",
      error: null,
    });
    expect(cells.eda).toMatchObject({
      kind: "derived",
      value: expect.closeTo(0.2098, 4),
      dimension: "rad",
      text: "12.02 deg",
    });
    expect(cells.enough_dihedral).toMatchObject({ kind: "check", value: true, dimension: "boolean", error: null });
    expect(cells.enough_dihedral.margin).toBeCloseTo((cells.eda.value - Math.PI / 18) / cells.eda.value, 12);
  });

  test("tells records field by field, each with its dimension, fields of fields too", async () => {
    const { panels, main_wing } = (await json("good.json")).cells;
    expect(panels).toMatchObject({ kind: "table", dimension: "record", text: "2 rows" });
    expect(panels.value.length).toEqual({ value: [0.11, 0.09], dimension: "m" });
    expect(panels.value.wood).toEqual({ value: ["soft", "hard"], dimension: "text" });
    expect(Object.keys(panels.value)).toEqual(
      "length root_chord tip_chord sweep break washout thickness wood".split(" "),
    );
    expect(main_wing).toMatchObject({ kind: "derived", dimension: "record" });
    expect(main_wing.value.span).toEqual({ value: expect.closeTo(0.39219, 5), dimension: "m" });
    expect(main_wing.value.stations.dimension).toBe("record");
    expect(main_wing.value.stations.value.chord).toEqual({ value: [0.07, 0.066, 0.044], dimension: "m" });
    expect(main_wing.value.mirrored).toEqual({ value: true, dimension: "boolean" });
  });

  test("tells every kind of value and dimension", async () => {
    const file = write(
      "kinds.json",
      `given warm [°C] = 20 °C
density [kg/m^3] = 160 kg/m^3
force = 2 kg * 3 m/s^2
ratio [%] = 1 / 8
slope [1/deg] = 0.1 / 1 deg
root = sqrt(4 m)
text = "balsa"
flag = true
list [mm] = [1 mm, 2 mm]
words = ["a", "b"]
flags = [true, false]
strip [in 1/32] = 3/32 in
lift(v, cl) = v * cl
none = nothing`,
    );
    const { cells, status } = await json(file);
    const told = Object.entries(cells as Record<string, { value: unknown; dimension: string; text: string }>).map(
      ([name, { value, dimension, text }]) => [name, value, dimension, text],
    );
    expect(told).toEqual([
      ["warm", 293.15, "K", "20 °C"],
      ["density", 160, "kg/m^3", "160 kg/m^3"],
      ["force", 6, "N", "6 N"],
      ["ratio", 0.125, "1", "12.5%"],
      ["slope", expect.closeTo(5.7296, 4), "1/rad", "0.1 1/deg"],
      ["root", 2, "m^0.5", "2 m^0.5"],
      ["text", "balsa", "text", "balsa"],
      ["flag", true, "boolean", "yes"],
      ["list", [0.001, 0.002], "m", "[1, 2] mm"],
      ["words", ["a", "b"], "text", "[a, b]"],
      ["flags", [true, false], "boolean", "[yes, no]"],
      ["strip", expect.closeTo(0.00238125, 12), "m", "3/32 in"],
      ["lift", null, null, "lift(v, cl)"],
      ["none", null, null, "There is no cell named nothing."],
    ]);
    expect(status).toBe(2);
  });

  test("tells an error by its code, its sentence, its range and its root; unnamed cells stand in others by id", async () => {
    const file = write(
      "roots.json",
      "a = 3 mm + 2\nb = 2 * a\nnote {b}\ncheck c = b > 1 mm\ntable t | x mm | y mm\n| 1 | 2 kg",
    );
    const { status, cells, others, checks } = await json(file);
    expect(status).toBe(2);
    expect(cells.a.error).toEqual({
      code: "wrong_dimension",
      message: "Adding needs two values of one dimension; these are a length and a number. Write 2 mm?",
      at: [7, 8],
      root: "a",
    });
    expect(cells.b.error).toEqual({ code: "waits", message: "Waits for a.", at: [4, 5], root: "a" });
    expect(cells.c).toMatchObject({ value: null, margin: null, error: { code: "waits", root: "a" } });
    expect(cells.t.error).toMatchObject({
      code: "wrong_dimension",
      at: [0, 4],
      root: "t",
      place: { row: 0, column: "y" },
    });
    expect(Object.keys(others)).toEqual(["3"]);
    expect(others["3"]).toMatchObject({ kind: "note", value: null, error: { code: "waits", at: [0, 1], root: "a" } });
    expect(checks).toEqual({ held: 0, failed: 0, unknown: 1 });
  });
});

describe("the exit code", () => {
  test("is 1 where a check fails, and 2 where a cell has an error besides; the object is printed all the same", async () => {
    expect(await json("failed.json")).toMatchObject({ status: 2, checks: { held: 1, failed: 1, unknown: 1 } });
    const mended = await json("failed.json", "--set", "a=2");
    expect(mended).toMatchObject({ status: 1, checks: { held: 1, failed: 2, unknown: 0 } });
    expect(mended.cells.small).toMatchObject({ value: false, margin: -3, error: null });
  });
});

describe("--set", () => {
  test("sets givens and entries of tables, the last word for one of them counts", async () => {
    const sets = ["tip_break=3 deg", "panels[1].break=2", "tip_break = 4 deg", "panels[2].wood=soft = light"];
    const { cells, status } = await json("good.json", ...sets.flatMap((set) => ["--set", set]));
    expect(cells.tip_break).toMatchObject({ text: "4 deg" });
    expect(cells.panels.value.break.value).toEqual([2, 4].map((each) => expect.closeTo((each * Math.PI) / 180, 12)));
    expect(cells.panels.value.wood.value).toEqual(["soft", "soft = light"]);
    expect(status).toBe(1);
  });

  test("takes a formula with a fault, which is then the cell's", async () => {
    expect(await json("plain.json", "--set", "a=1 +", "--set=a=2 spam")).toMatchObject({
      status: 2,
      cells: { a: { error: { code: "unknown_unit", at: [2, 6] } } },
    });
  });
});

describe.concurrent("what keeps it from beginning ends with 3, says why, and prints nothing", () => {
  test.each([
    [
      "a name that is none",
      ["good.json", "--set", "tip_brake=3 deg"],
      "--set tip_brake=3 deg: There is no cell named tip_brake. Did you mean tip_break?\n",
    ],
    [
      "a name of a derived cell",
      ["good.json", "--set", "eda=3 deg"],
      "--set eda=3 deg: eda is computed. Only givens and table entries can be set.\n",
    ],
    [
      "a table without an entry",
      ["good.json", "--set", "panels=3"],
      "--set panels=3: panels is a table. Name one entry of it, such as panels[1].length.\n",
    ],
    [
      "a row that is none",
      ["good.json", "--json", "--set", "panels[3].break=3"],
      "--set panels[3].break=3: panels has no row 3: it has 2, counted from 1.\n",
    ],
    [
      "a column that is none",
      ["good.json", "--set", "panels[1].brake=3"],
      "--set panels[1].brake=3: panels has no column brake. Did you mean break?\n",
    ],
    [
      "a set without a formula",
      ["good.json", "--set", "tip_break"],
      '--set tip_break: write NAME=FORMULA, such as --set "tip_break=8 deg".\n',
    ],
    [
      "a set without a name",
      ["good.json", "--set", "=3"],
      '--set =3: write NAME=FORMULA, such as --set "tip_break=8 deg".\n',
    ],
    ["a file that is not there", ["nothing.json"], "nothing.json: There is no such file.\n"],
    ["a folder", ["inner"], "inner: This is a folder. Name a file in it.\n"],
    ["two files", ["good.json", "plain.json"], "Name one notebook file; these are 2: good.json, plain.json.\n"],
  ])("%s", async (_, words, stderr) => {
    expect(await evaluate(...words)).toEqual({ status: 3, stdout: "", stderr });
  });

  test.each([
    ["no file", [], /^Name a notebook file\.\n\nevaluate FILE /],
    ["an unknown option", ["good.json", "--jason"], /^Unknown option '--jason'\.\n\nevaluate FILE /],
    [
      "an option without its word",
      ["good.json", "--set"],
      /^Option '--set <value>' argument missing\.\n\nevaluate FILE /,
    ],
    ["a file that is no notebook", ["broken.json"], /^broken\.json: .*line 1/],
    ["a file of a later version", ["later.json"], /^later\.json: .*version/i],
    ["a file with an unknown kind", ["kind.json"], /^kind\.json: .*cells\[0\]/],
    ["a file that is no text", ["bytes.json"], /^bytes\.json: This file is no text in UTF-8\.\n$/],
  ])("%s", async (_, words, stderr) => {
    const outcome = await evaluate(...words);
    expect(outcome).toMatchObject({ status: 3, stdout: "" });
    expect(outcome.stderr).toMatch(stderr);
  });
});

describe("FILE", () => {
  test("is looked for from where the person stands, whatever folder npm runs in", async () => {
    const words = ["--prefix", root, "run", "--silent", "evaluate", "--", "inner/other.json", "--set", "a=7 mm"];
    expect(await run("npm", words)).toEqual({ status: 0, stdout: "Other\n\na  7 mm\n", stderr: "" });
  });

  test("may be an absolute path", async () => {
    expect((await evaluate(join(folder, "plain.json"))).status).toBe(0);
  });
});

test("--help says how it is used", async () => {
  const { status, stdout, stderr } = await evaluate("--help");
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  for (const word of ["FILE", "--set NAME=FORMULA", "--json", "panels[2].break"]) expect(stdout).toContain(word);
});

describe("a study", () => {
  const sweep = { id: "s1", kind: "study", name: "bend", study: "sweep", title: "Bend", results: ["eda"] } as const;
  const studies: readonly Cell[] = [
    { ...sweep, inputs: [{ input: "tip_break", range: ["10 deg", "12 deg"], points: 3 }] },
    { ...sweep, id: "s2", name: "wide", inputs: [{ input: "tip_break", range: ["5 deg", "5 deg"] }] },
    {
      ...sweep,
      id: "s3",
      name: "builds",
      study: "tolerance",
      builds: 40,
      inputs: [
        { input: "tip_break", plus_minus: "1 deg" },
        { input: "panels[1].length", plus_minus: "1" },
      ],
    },
  ];
  const notebook = { title: "Plover", cells: [...cellsOf(good), ...studies], trials: [] };
  beforeAll(() => writeFileSync(join(folder, "studies.json"), writeNotebook(notebook)));

  test("prints a table, or one object in SI", async () => {
    const angles = ["10 deg", "11 deg", "12 deg"];
    const direct = await Promise.all(angles.map((angle) => json("studies.json", "--set", `tip_break=${angle}`)));
    const rows = direct.map(
      ({ cells }, index) => `${angles[index]}     ${cells.eda.text.padStart(9)}                ✓`,
    );
    expect(await evaluate("studies.json", "--study", "bend")).toEqual({
      status: 0,
      stderr: "",
      stdout: `Plover: Bend

as it is
tip_break        eda  enough_dihedral
${rows.join("\n")}
`,
    });
    const { status, ...told } = await json("studies.json", "--study", "bend", "--set", "panels[1].length=100");
    expect([status, told.title, told.name, told.study]).toEqual([0, "Plover", "bend", "sweep"]);
    expect(told.input.values[1]).toBeCloseTo((11 * Math.PI) / 180, 12);
    expect(told.curves[0].checks).toEqual([[true, true, true]]);
  });

  test("stands in the notebook's own output by its name, without a value", async () => {
    expect((await json("studies.json")).cells.bend).toMatchObject({
      kind: "study",
      value: null,
      text: "sweep",
      error: null,
    });
  });

  test("computed in parts, each by a process of its own, and joined in any order is the whole", async () => {
    const files = await Promise.all(
      [3, 1, 2].map(async (index) => {
        const { status, stdout } = await evaluate("studies.json", "--study", "builds", "--part", `${index}/3`);
        expect(status).toBe(0);
        writeFileSync(join(folder, `part-${index}.json`), stdout);
        return `part-${index}.json`;
      }),
    );
    const whole = await evaluate("studies.json", "--study", "builds", "--json");
    expect(await evaluate("studies.json", "--study", "builds", "--json", "--join", ...files)).toEqual(whole);
    expect((await evaluate("studies.json", "--study", "builds", "--join", ...files)).stdout).toContain(
      "40 of 40 built",
    );
  });

  test.each<[readonly string[], string]>([
    [["--study", "bent"], "There is no study named bent. Did you mean bend?"],
    [["--study", "wide"], "Study wide: Input tip_break: The range runs from 5 deg to 5 deg, so it is empty."],
    [["--study", "builds", "--part", "4/3"], "“4/3” is no part. Write which of how many, such as 2/8."],
    [["--study", "builds", "--join"], "Name the files of all parts."],
    [["--study", "builds", "--join", "good.json"], "good.json: This is no part of a study."],
    [["--study", "builds", "--join", "broken.json"], "broken.json: "],
    [["--study", "builds", "--join", "nowhere.json"], "nowhere.json: There is no such file."],
    [["--part", "1/3"], "Name the study with --study NAME."],
    [["--study", "builds", "--join", "--part", "1/3"], "Take either --part or --join"],
  ])("with %j ends with 3 and says why on standard error", async (words, message) => {
    const { status, stdout, stderr } = await evaluate("studies.json", ...words);
    expect({ status, stdout }).toEqual({ status: 3, stdout: "" });
    expect(stderr).toContain(message);
  });
});

describe("a sheet", () => {
  beforeAll(() => writeFileSync(join(folder, "sheet.json"), blanksNotebook()));

  test("is written as SVG or DXF with each layer, with what is set taken into it", async () => {
    const svg = await evaluate("sheet.json", "--sheet", "Blanks", "--as", "svg", "--set", "tip_length=100 mm");
    expect(svg).toMatchObject({ status: 0, stderr: "" });
    expect(svg.stdout).toContain('<g id="score">');
    const dxf = await evaluate("sheet.json", "--sheet", "Blanks", "--as", "dxf");
    expect(dxf).toMatchObject({ status: 0, stderr: "" });
    expect(dxf.stdout.trimEnd().endsWith("EOF")).toBe(true);
  });

  test("is written as PDF", async () => {
    const { status, stdout } = await evaluate("sheet.json", "--sheet", "Blanks", "--as", "pdf");
    expect(status).toBe(0);
    expect(stdout.startsWith("%PDF-")).toBe(true);
  });

  test.each([
    ["no such sheet", ["--sheet", "Jig", "--as", "svg"], 'there is only "Blanks"'],
    ["no such kind", ["--sheet", "Blanks", "--as", "png"], "write pdf, svg, dxf"],
    ["no kind", ["--sheet", "Blanks"], "its kind with --as"],
    ["a faulty part", ["--sheet", "Blanks", "--as", "svg", "--set", "tip_length=-1 mm"], "Blanks: "],
  ])("with %s: a sentence, and nothing written", async (_, words, reason) => {
    const { status, stdout, stderr } = await evaluate("sheet.json", ...words);
    expect({ status, stdout }).toEqual({ status: 3, stdout: "" });
    expect(stderr).toContain(reason);
  });
});
