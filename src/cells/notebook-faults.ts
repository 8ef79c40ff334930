/**
 * Holds what was read against the JSON Schema, and what a schema cannot say: ids that stand once, rows as wide as their
 * table. Gives the first fault as our own sentence. Typebox walks the schemas without turning them into program text.
 */
import { Check, Errors } from "typebox/schema";
import { nearest } from "../library/units.ts";
import type { Cell, Notebook } from "./cell.ts";
import { messages, NotebookError, type Path, placeOf } from "./notebook-errors.ts";
import { bodySchema, cellSchemas, type Kind, kinds, type Schema } from "./notebook-schema.ts";

/** @throws NotebookError at the first fault of a notebook's content, its format and version aside. */
export function assertNotebook(body: unknown): asserts body is NotebookBody {
  throwFirst(schemaFault(bodySchema, body), [], null);
  const { cells } = body as { readonly cells: readonly unknown[] };
  const places = new Map<string, string>();
  cells.forEach((cell, index) => {
    throwFirst(cellFault(cell), ["cells", index], labelOf(cell));
    const { id } = cell as Cell;
    const first = places.get(id);
    if (first !== undefined) throwFirst({ path: ["id"], message: messages.idTwice(id, first) }, ["cells", index], null);
    places.set(id, placeOf(["cells", index]));
  });
  const { board = [] } = body as NotebookBody;
  const kindOf = new Map((cells as readonly Cell[]).map(({ id, kind }) => [id, kind]));
  board.forEach((id, index) => {
    const kind = kindOf.get(id);
    const message =
      kind !== "drawing" && kind !== "chart" && kind !== "study"
        ? messages.notOnBoard(id)
        : board.indexOf(id) < index
          ? messages.boardTwice(id)
          : null;
    if (message !== null) throwFirst({ path: [], message }, ["board", index], null);
  });
}

/** A notebook as a file has it: without its format and version, and it may leave out its trials. */
export type NotebookBody = Omit<Notebook, "trials"> & Partial<Pick<Notebook, "trials">>;

/** What is wrong and where, seen from the value that was looked at. */
export interface Fault {
  readonly path: Path;
  readonly message: string;
}

/** The first fault of one cell, or null where it is as its kind has it. */
export function cellFault(cell: unknown): Fault | null {
  if (!isObject(cell)) return { path: [], message: messages.wrongType(cell, ["object"]) };
  const { kind } = cell;
  if (kind === undefined) return { path: [], message: messages.noKind(kinds) };
  if (!isKind(kind)) {
    const near = typeof kind === "string" ? nearest(kind, kinds) : null;
    return { path: ["kind"], message: messages.unknownKind(kind, near, kinds) };
  }
  return schemaFault(cellSchemas[kind], cell) ?? (kind === "table" ? rowFault(cell as unknown as Cell) : null);
}

function rowFault(cell: Cell): Fault | null {
  if (cell.kind !== "table") return null;
  const row = cell.rows.findIndex((entries) => entries.length !== cell.columns.length);
  if (row < 0) return null;
  const columns = cell.columns.map((column) => column.name);
  return { path: ["rows", row], message: messages.rowLength(cell.rows[row]?.length ?? 0, columns) };
}

/** What typebox tells of a fault. */
interface Told {
  readonly keyword: string;
  readonly instancePath: string;
  readonly schemaPath: string;
  readonly params: object;
}

function schemaFault(schema: object, value: unknown): Fault | null {
  // Looking for what is wrong takes several times as long as finding that nothing is.
  if (Check(schema, value)) return null;
  const [, all] = Errors(schema, value);
  // A misspelt key is told as such, before the key that is missing because of it. For a key that is not allowed typebox
  // says that the schema of its value is `false`.
  const told: readonly Told[] = all;
  const first = told.find(({ keyword }) => keyword === "boolean") ?? told[0];
  return first === undefined ? { path: [], message: messages.unfit("") } : translate(schema, value, first);
}

function translate(schema: Schema, value: unknown, { keyword, instancePath, schemaPath, params }: Told): Fault {
  const { path, found, within, rule } = follow(schema, value, instancePath);
  const { limit, requiredProperties, allowedValues } = params as Params;
  const key = path.at(-1);
  if (keyword === "boolean") {
    const known = Object.keys(within?.properties ?? {});
    return { path: path.slice(0, -1), message: messages.unknownKey(String(key), nearest(String(key), known), known) };
  }
  if (schemaPath.includes("/propertyNames"))
    return { path: path.slice(0, -1), message: messages.forbiddenKey(String(key)) };
  const tell = (message: string): Fault => ({ path, message });
  switch (keyword) {
    case "type":
      return tell(messages.wrongType(found, [rule?.type ?? []].flat()));
    case "required": {
      const missing = requiredProperties?.[0] ?? "";
      return tell(messages.missingKey(missing, [rule?.properties?.[missing]?.type ?? []].flat()));
    }
    case "enum":
      return tell(messages.notAmong(found, allowedValues ?? []));
    case "minItems":
      return tell(messages.tooFew(limit ?? 0));
    case "maxItems":
      return tell(messages.tooMany(limit ?? 0));
    case "minimum":
    case "maximum":
      return tell(messages.outOfLimits(rule?.minimum ?? 0, rule?.maximum ?? 0));
    case "minLength":
      return tell(messages.tooShort);
    case "maxLength":
      return tell(messages.tooLong(limit ?? 0));
    default:
      return tell(messages.unfit(keyword));
  }
}
interface Params {
  readonly limit?: number;
  readonly requiredProperties?: readonly string[];
  readonly allowedValues?: readonly unknown[];
}

/** Goes a pointer's way (RFC 6901) through a value and its schema; `within` is the schema one step before the end. */
function follow(schema: Schema, value: unknown, pointer: string) {
  const path: (string | number)[] = [];
  let found = value;
  let rule: Schema | undefined = schema;
  let within: Schema | undefined;
  for (const step of pointer.split("/").slice(1)) {
    const key = step.replaceAll("~1", "/").replaceAll("~0", "~");
    path.push(Array.isArray(found) ? Number(key) : key);
    found = (found as Readonly<Record<string, unknown>> | undefined)?.[key];
    within = rule;
    rule = rule?.properties?.[key] ?? rule?.items ?? (rule?.additionalProperties || undefined);
  }
  return { path, found, within, rule };
}

function throwFirst(fault: Fault | null, from: Path, of: string | null): void {
  if (fault === null) return;
  const place = placeOf([...from, ...fault.path]);
  throw new NotebookError(place, messages.at(place, of, fault.message));
}

/** The cell in words, so that it is found without counting: table “panels”, note “a1”. */
function labelOf(cell: unknown): string | null {
  if (!isObject(cell) || !isKind(cell.kind)) return null;
  const title = cell.name ?? cell.id;
  return typeof title === "string" ? messages.inCell(cell.kind, title) : null;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isKind = (kind: unknown): kind is Kind => typeof kind === "string" && Object.hasOwn(cellSchemas, kind);
