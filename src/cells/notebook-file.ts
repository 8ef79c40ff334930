/**
 * The notebook as a file: plain JSON, laid out the same each time, so that what Spanwise wrote reads and writes back
 * unchanged. Everything in it is data; nothing of it runs.
 */
import type { Notebook } from "./cell.ts";
import { type FileObject, type Migration, migrate, migrations, versionAfter } from "./migrations/index.ts";
import { excerpt, messages, NotebookError } from "./notebook-errors.ts";
import { assertNotebook } from "./notebook-faults.ts";
import { mostValues, readJson } from "./notebook-json.ts";
import { layOut } from "./notebook-layout.ts";
import { bodySchema, cellSchemas, fileFormat, type Schema } from "./notebook-schema.ts";

export { NotebookError };

/** The most characters (UTF-16 code units) a file may have: 10 MB of plain text. */
export const largestFile = 10_000_000;

/**
 * Reads the text of a notebook file, of this version or an older one. A byte order mark at its start is passed over, any
 * line ends are taken, and `trials` may be left out.
 * @throws NotebookError with the place and the remedy; no other error
 */
export function readNotebook(text: string, steps: readonly Migration[] = migrations): Notebook {
  const { format, version, ...body } = upToDate(fileObject(text), steps);
  assertNotebook(body);
  return { ...body, trials: body.trials ?? [] };
}

/**
 * The text of a notebook file, laid out as `layOut` says, with a line feed at its end. Keys stand in the order of the
 * schema; those of a trial's set and of `expect` keep their own. The list of trials is written even where it is empty.
 * @throws NotebookError where the notebook could not be read back: its content breaks the schema, or it is too large
 */
export function writeNotebook(notebook: Notebook): string {
  assertNotebook(notebook);
  const { title, cells, board, trials, expect } = notebook;
  const text = `${layOut({
    format: fileFormat,
    version: versionAfter(migrations),
    title,
    cells: cells.map((cell) => inOrder(cell, cellSchemas[cell.kind])),
    ...(board && { board }),
    trials: inOrder(trials, bodySchema.properties.trials),
    ...(expect && { expect }),
  })}\n`;
  if (text.length > largestFile) throw new NotebookError("", messages.tooLargeToWrite(text.length, largestFile));
  if (text.length > mostValues && valuesIn(JSON.parse(text)) > mostValues) {
    throw new NotebookError("", messages.tooMuchToWrite(mostValues));
  }
  return text;
}

/**
 * A notebook as a text that `readNotebook` reads, made as quickly as can be: on one line, and without a look at whether
 * it can be read back. For what is kept at every edit; a person's file is written by `writeNotebook`.
 */
export function packNotebook(notebook: Notebook): string {
  return JSON.stringify({ format: fileFormat, version: versionAfter(migrations), ...notebook });
}

function fileObject(text: string): FileObject {
  if (text.length > largestFile) throw new NotebookError("", messages.tooLarge(text.length, largestFile));
  const content = text.replace(/^\uFEFF/, "");
  const start = content.trimStart();
  if (start === "") throw new NotebookError("", messages.empty);
  if (start[0] !== "{") throw new NotebookError("", messages.noNotebook(excerpt(start, 20)));
  return readJson(content) as FileObject;
}

function upToDate(file: FileObject, steps: readonly Migration[]): FileObject {
  const { format, version } = file;
  const current = versionAfter(steps);
  if (format !== fileFormat) throw new NotebookError(format === undefined ? "" : "format", messages.noFormat(format));
  if (version === undefined) throw new NotebookError("", messages.noVersion(current));
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    throw new NotebookError("version", messages.wrongVersion(version, current));
  }
  if (version > current) throw new NotebookError("version", messages.later(version, current));
  try {
    return migrate(file, version, steps);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new NotebookError("", messages.notMigrated(version, current, why));
  }
}

/** A value and all that is within it, counted. */
function valuesIn(value: unknown): number {
  if (typeof value !== "object" || value === null) return 1;
  return Object.values(value).reduce((sum: number, each) => sum + valuesIn(each), 1);
}

/** A copy with the keys of each object in the order of its schema. */
function inOrder(value: unknown, schema: Schema): unknown {
  const { items, properties } = schema;
  if (Array.isArray(value)) return items === undefined ? value : value.map((each) => inOrder(each, items));
  if (typeof value !== "object" || value === null || properties === undefined) return value;
  const object = value as FileObject;
  const keys = Object.entries(properties).filter(([key]) => object[key] !== undefined);
  return Object.fromEntries(keys.map(([key, each]) => [key, inOrder(object[key], each)]));
}
