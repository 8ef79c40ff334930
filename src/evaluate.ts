/** The command line: evaluates a notebook, or runs a study of it, without a browser. `npm run --silent evaluate -- --help` */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import {
  type CellReport,
  compile,
  joinParts,
  type Notebook,
  override,
  partOf,
  prepareStudy,
  type Report,
  readNotebook,
  readShare,
  reportOf,
  rowsOf,
  runPlan,
  studyNamed,
  studyText,
} from "./cells/index.ts";
import { functions } from "./library/index.ts";
import { sheetTitle } from "./views/figure-words.ts";
import { formatNumber, formatValue, joinUnit } from "./views/format.ts";
import { makeSheet, type SheetFileKind, sheetFile, sheetFileTypes } from "./views/sheets/sheet-file.ts";

const usage = `evaluate FILE [--set NAME=FORMULA]… [--json]
evaluate FILE --study NAME [--set NAME=FORMULA]… [--json]
evaluate FILE --study NAME --part I/N > PART
evaluate FILE --study NAME --join PART… [--json]
evaluate FILE --sheet TITLE --as KIND [--set NAME=FORMULA]… > OUT

Computes every cell of a notebook and prints the results, or runs one study of it. Files are looked for from where you
stand.

  --set NAME=FORMULA   sets a given, or a table entry such as panels[2].break; may be repeated
  --json               prints one JSON object, values in SI
  --study NAME         runs a study of the notebook and prints what it comes to
  --part I/N           runs only part I of N, counted from 1, and prints it as JSON, to be joined
  --join               joins the parts in the files that follow FILE instead of computing them
  --sheet TITLE        writes a sheet of the notebook at true size
  --as KIND            pdf: its pages; svg or dxf: all its parts for a cutter, in mm
  --help               prints this

It ends with 0 where all is well, 1 where a check fails, 2 where a cell has an error, 3 where it cannot begin. A study
or a sheet ends with 0 or 3.
`;

/** What the system says of a file that cannot be read, in words. */
const fileFaults: ReadonlyMap<string, string> = new Map([
  ["ENOENT", "There is no such file."],
  ["ENOTDIR", "There is no such file."],
  ["EISDIR", "This is a folder. Name a file in it."],
  ["EACCES", "This file may not be read."],
  ["ERR_ENCODING_INVALID_ENCODED_DATA", "This file is no text in UTF-8."],
]);

/** What kept it from beginning: a sentence for the person, without a trace. */
class Refusal extends Error {}

process.exitCode = await main(process.argv.slice(2));

async function main(words: readonly string[]): Promise<number> {
  try {
    const options = optionsOf(words);
    const { file, sets, json, help } = options;
    if (help) {
      process.stdout.write(usage);
      return 0;
    }
    const notebook = sets.reduce(setValue, read(file));
    if (options.study !== null) {
      process.stdout.write(studyOutput(notebook, options.study, options));
      return 0;
    }
    if (options.sheet !== null) {
      process.stdout.write(await sheetOutput(notebook, options.sheet, options));
      return 0;
    }
    const program = compile(notebook.cells, functions);
    const report = reportOf(notebook, program, runPlan(program), formatValue);
    process.stdout.write(json ? `${JSON.stringify(report, null, 2)}\n` : tableOf(report));
    return exitOf(report);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    process.stderr.write(`${error.message}\n`);
    return 3;
  }
}

interface Options {
  readonly file: string;
  readonly sets: readonly string[];
  readonly json: boolean;
  readonly help: boolean;
  readonly study: string | null;
  readonly part: string | null;
  readonly sheet: string | null;
  readonly as: string | null;
  /** Files to join; null where the study is computed. */
  readonly join: readonly string[] | null;
}

function optionsOf(words: readonly string[]): Options {
  const { values, positionals } = refusing(
    () =>
      parseArgs({
        args: [...words],
        allowPositionals: true,
        options: {
          set: { type: "string", multiple: true },
          json: { type: "boolean" },
          study: { type: "string" },
          part: { type: "string" },
          join: { type: "boolean" },
          sheet: { type: "string" },
          as: { type: "string" },
          help: { type: "boolean" },
        },
      }),
    ({ message }) => `${message.split(/\.(?:\s|$)/)[0]}.\n\n${usage}`,
  );
  const [file, ...more] = positionals;
  const { study = null, part = null, sheet = null, as = null, set: sets = [], json = false, help = false } = values;
  const options = { file: file ?? "", sets, json, help, study, part, sheet, as, join: values.join ? more : null };
  if (help) return options;
  if (file === undefined) throw new Refusal(`Name a notebook file.\n\n${usage}`);
  if (study === null && (part !== null || values.join)) throw new Refusal("Name the study with --study NAME.");
  if ((sheet === null) !== (as === null))
    throw new Refusal("Name the sheet with --sheet TITLE and its kind with --as pdf.");
  if (study !== null && sheet !== null) throw new Refusal("Take either --study or --sheet.");
  if (part !== null && values.join)
    throw new Refusal("Take either --part or --join: parts are joined once all are there.");
  if (more.length > 0 && !values.join)
    throw new Refusal(`Name one notebook file; these are ${positionals.length}: ${positionals.join(", ")}.`);
  return options;
}

/** A study run whole, in part, or joined from its parts. */
function studyOutput(notebook: Notebook, name: string, { json, part, join }: Options): string {
  return refusing(
    () => {
      const cell = studyNamed(notebook, name);
      const share = part === null ? undefined : readShare(part);
      const study = prepareStudy(notebook, cell, functions);
      if (share) return `${JSON.stringify(partOf(notebook, cell, share, rowsOf(study, share)))}\n`;
      const rows = join ? joinParts(notebook, study, join.map(readPart), join) : rowsOf(study);
      const outcome = study.conclude(rows);
      if (json) return `${JSON.stringify({ title: notebook.title, name, ...outcome }, null, 2)}\n`;
      const heading = `${notebook.title}: ${cell.title ?? name}`;
      const tell = (value: number, unit: string): string => joinUnit(formatNumber(value, unit));
      return `${[heading, "", ...studyText(outcome, tell)].join("\n").trimEnd()}\n`;
    },
    ({ message }) => message,
  );
}

/** A sheet as a file of the kind asked for. */
async function sheetOutput(notebook: Notebook, title: string, { as }: Options): Promise<string | Uint8Array> {
  const kinds = Object.keys(sheetFileTypes);
  if (as === null || !kinds.includes(as)) throw new Refusal(`--as ${as}: write ${kinds.join(", ")}.`);
  const sheets = notebook.cells.filter((cell) => cell.kind === "sheet");
  const cell = sheets.find((each) => sheetTitle(each) === title);
  if (!cell) throw new Refusal(`--sheet ${title}: there is ${listOf(sheets.map(sheetTitle))}.`);
  const result = runPlan(compile(notebook.cells, functions)).get(cell.id);
  if (!result?.ok) throw new Refusal(`${title}: ${result?.error.message ?? "it has no result."}`);
  const date = new Date().toLocaleDateString("sv-SE");
  const made = makeSheet(cell, result, { title, notebook: notebook.title, trial: null, date });
  if (typeof made === "string") throw new Refusal(`${title}: ${made}`);
  return sheetFile(made, title, as as SheetFileKind);
}

function listOf(titles: readonly string[]): string {
  return titles.length === 0 ? "no sheet in this notebook" : `only ${titles.map((title) => `"${title}"`).join(", ")}`;
}

function readPart(file: string): unknown {
  return readFile(file, (text) => JSON.parse(text) as unknown);
}

function read(file: string): Notebook {
  return readFile(file, readNotebook);
}

/** FILE is relative to where the person stands, which npm tells; it moves to the project's folder itself. */
function readFile<T>(file: string, readText: (text: string) => T): T {
  const path = resolve(process.env.INIT_CWD ?? process.cwd(), file);
  return refusing(
    () => readText(new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path))),
    (error) => `${file}: ${fileFaults.get("code" in error ? String(error.code) : "") ?? error.message}`,
  );
}

function setValue(notebook: Notebook, set: string): Notebook {
  const equals = set.indexOf("=");
  if (equals < 1) throw new Refusal(`--set ${set}: write NAME=FORMULA, such as --set "tip_break=8 deg".`);
  return refusing(
    () => override(notebook, set.slice(0, equals), set.slice(equals + 1)),
    ({ message }) => `--set ${set}: ${message}`,
  );
}

/** Turns what a step complains of into a refusal to begin, in words. */
function refusing<T>(step: () => T, words: (error: Error) => string): T {
  try {
    return step();
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw error instanceof Refusal ? error : new Refusal(words(error));
  }
}

function exitOf({ cells, others, checks }: Report): number {
  if ([...Object.values(cells), ...Object.values(others)].some(({ error }) => error)) return 2;
  return checks.failed > 0 ? 1 : 0;
}

function tableOf({ title, cells, others, checks }: Report): string {
  const named = Object.entries(cells).map(([name, cell]) => [name, lineOf(cell)] as const);
  const unnamed = Object.entries(others).map(([id, cell]) => [`${cell.kind} ${id}`, lineOf(cell)] as const);
  const rows = [...named, ...unnamed];
  const width = Math.max(0, ...rows.map(([name]) => name.length));
  const lines = rows.map(([name, line]) => `${name.padStart(width)}  ${line}`);
  const all = checks.held + checks.failed + checks.unknown;
  const closing = all > 0 ? ["", `${checks.held} of ${all} checks hold`] : [];
  return `${[title, "", ...lines, ...closing].join("\n")}\n`;
}

function lineOf({ kind, value, text, error, margin }: CellReport): string {
  if (error) return `error  ${text}`;
  if (kind !== "check") return text;
  const share = typeof margin === "number" ? ` by ${Math.abs(margin * 100).toFixed(1)}%` : "";
  return value === true ? `✓ holds${share}` : `✕ fails${share}`;
}
