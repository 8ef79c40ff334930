/** The command line: evaluates a notebook without a browser. `npm run --silent evaluate -- FILE [--set NAME=FORMULA]… [--json]` */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import {
  type CellReport,
  compile,
  type Notebook,
  override,
  type Report,
  readNotebook,
  reportOf,
  runPlan,
} from "./cells/index.ts";
import { functions } from "./library/index.ts";
import { formatValue } from "./views/format.ts";

const usage = `evaluate FILE [--set NAME=FORMULA]… [--json]

Computes every cell of a notebook and prints the results. FILE is looked for from where you stand.

  --set NAME=FORMULA   sets a given, or a table entry such as panels[2].break; may be repeated
  --json               prints one JSON object, values in SI
  --help               prints this

It ends with 0 where all is well, 1 where a check fails, 2 where a cell has an error, 3 where it cannot begin.
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

process.exitCode = main(process.argv.slice(2));

function main(words: readonly string[]): number {
  try {
    const { file, sets, json, help } = optionsOf(words);
    if (help) {
      process.stdout.write(usage);
      return 0;
    }
    const notebook = sets.reduce(setValue, read(file));
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

function optionsOf(words: readonly string[]): { file: string; sets: readonly string[]; json: boolean; help: boolean } {
  const { values, positionals } = refusing(
    () =>
      parseArgs({
        args: [...words],
        allowPositionals: true,
        options: { set: { type: "string", multiple: true }, json: { type: "boolean" }, help: { type: "boolean" } },
      }),
    ({ message }) => `${message.split(/\.(?:\s|$)/)[0]}.\n\n${usage}`,
  );
  const [file, ...more] = positionals;
  if (values.help) return { file: "", sets: [], json: false, help: true };
  if (file === undefined) throw new Refusal(`Name a notebook file.\n\n${usage}`);
  if (more.length > 0)
    throw new Refusal(`Name one notebook file; these are ${positionals.length}: ${positionals.join(", ")}.`);
  return { file, sets: values.set ?? [], json: values.json ?? false, help: false };
}

/** FILE is relative to where the person stands, which npm tells; it moves to the project's folder itself. */
function read(file: string): Notebook {
  const path = resolve(process.env.INIT_CWD ?? process.cwd(), file);
  return refusing(
    () => readNotebook(new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path))),
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
    throw new Refusal(words(error));
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
