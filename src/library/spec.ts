/**
 * The spec of a library function: typed data from which completion, reference, argument checks, the manual and the
 * example tests follow, and from which the types of its own arguments and result are derived.
 */
import type { Dimension } from "./quantity.ts";
import { unitOf } from "./units.ts";

/** What may be said of any shape where it stands as a parameter, column or field. All limits are in SI. */
export interface Notes {
  /** What it is, one short phrase. */
  readonly summary?: string;
  /** Smallest and largest value allowed, of a number or of each number in a list. */
  readonly min?: number;
  readonly max?: number;
  /** Values must be above (below) this one, which itself is not allowed. */
  readonly above?: number;
  readonly below?: number;
  /** Taken where the argument is left out. */
  readonly default?: number | string | boolean;
  /** May be left out, and is then undefined. */
  readonly optional?: true;
  /** Where a result lacks it: "where it does not settle". Its summary and the error of who asks for it say so. */
  readonly absent?: string;
}

export interface NumberShape extends Notes {
  readonly kind: "number";
  readonly dimension: Dimension;
  /** The unit it is told in: in the reference and in the text of a record. */
  readonly unit: string;
}

/**
 * A number of any dimension, the same for every parameter of the call that has this shape: `min(a, b)`. As a result its
 * dimension is that one raised to `power`: 1 for `abs`, 0.5 for `sqrt`.
 */
export interface AnyNumberShape extends Notes {
  readonly kind: "any";
  readonly power: number;
}
export interface TextShape extends Notes {
  readonly kind: "text";
  /** All texts that are understood, where they are a closed set. */
  readonly choices?: readonly string[];
}
export interface BooleanShape extends Notes {
  readonly kind: "boolean";
}
export interface ListShape<S extends Shape = Shape> extends Notes {
  readonly kind: "list";
  readonly of: S;
}

/** Named fields. `type` names a kind of record of the library (`wing`), or is null for a table: a record of lists. */
export interface RecordShape<F extends Fields = Fields> extends Notes {
  readonly kind: "record";
  readonly type: string | null;
  readonly fields: F;
  /** The one line by which a value of this record stands on the page: "472 mm span, 3 panels a side". */
  readonly text?: (value: never) => string;
}
export type Shape = NumberShape | AnyNumberShape | TextShape | BooleanShape | ListShape | RecordShape;
export type Fields = { readonly [name: string]: Shape };

/** The type of the value that a shape stands for: numbers in SI, lists as arrays, records as objects. */
export type ValueOf<S> = S extends NumberShape | AnyNumberShape
  ? number
  : S extends TextShape
    ? string
    : S extends BooleanShape
      ? boolean
      : S extends ListShape<infer E>
        ? readonly ValueOf<E>[]
        : S extends RecordShape<infer F>
          ? FieldValues<F>
          : never;
export type FieldValues<F> = {
  readonly [K in keyof F as F[K] extends { readonly optional: true } ? never : K]: ValueOf<F[K]>;
} & { readonly [K in keyof F as F[K] extends { readonly optional: true } ? K : never]?: ValueOf<F[K]> | undefined };

/** What a caller may leave out: optional parameters and those with a default. */
export type ArgumentValues<P> = Partial<FieldValues<P>> & FieldValues<{ [K in keyof P as Required<P, K>]: P[K] }>;
type Required<P, K extends keyof P> = P[K] extends { readonly optional: true } | { readonly default: unknown }
  ? never
  : K;

/** How well a statement is grounded, as in `shared`: carried over wherever a value is used. */
export type Mark = "verified" | "derived" | "own computation" | "common practice" | "from memory";
export interface Source {
  /** Author, year, title, equation or table; or what the practice is. */
  readonly text: string;
  readonly mark: Mark;
}

/** Ends a computation that its arguments do not allow: names the parameter (or null) and says what to change. */
export type Refuse = (parameter: string | null, message: string) => never;

/** A worked example in SI; runs as a test. Numbers of the result hold to `tolerance`, relative, 1e-9 unless said. */
export interface Example<A, R> {
  readonly summary: string;
  readonly arguments: A;
  readonly result: Some<R> | R;
  readonly tolerance?: number;
}
/** Some of the fields of a record, and of the records within it. */
type Some<R> = R extends readonly unknown[] ? R : R extends object ? { readonly [K in keyof R]?: Some<R[K]> } : R;

export interface FunctionSpec<P extends Fields = Fields, R extends Shape = Shape> {
  readonly name: string;
  /** One sentence. */
  readonly summary: string;
  /** The heading it stands under in the reference: "shape", "dihedral", "mass" … */
  readonly topic: string;
  /** In the order in which arguments without a name are taken. */
  readonly parameters: P;
  readonly result: R;
  /** The formula in words or symbols, for "why this number". */
  readonly formula: string;
  /** What makes it refuse, beyond the limits that the parameters state. */
  readonly errors: readonly string[];
  readonly assumptions: readonly string[];
  readonly sources: readonly Source[];
  readonly examples: readonly Example<ArgumentValues<P>, ValueOf<R>>[];
  /** Takes a list in place of each number and works element by element. Only where all parameters are numbers. */
  readonly elementwise?: true;
  /** The one parameter, a list, may also be given as several arguments: `min(a, b)`. */
  readonly spread?: true;
  /** Takes more than a frame can give it, together with its like: whoever draws frames has it computed elsewhere. */
  readonly isSlow?: true;
  compute(values: FieldValues<P>, refuse: Refuse): ValueOf<R>;
}

/** Every function a formula can call, by name. Its specs are seen without their own argument types. */
export interface AnyFunctionSpec extends Omit<FunctionSpec, "compute" | "examples"> {
  readonly examples: readonly Example<Readonly<Record<string, unknown>>, unknown>[];
  compute(values: Readonly<Record<string, unknown>>, refuse: Refuse): unknown;
}
export type FunctionTable = ReadonlyMap<string, AnyFunctionSpec>;

/** States a function; exists for the types it derives. */
export const define = <const P extends Fields, const R extends Shape>(spec: FunctionSpec<P, R>): FunctionSpec<P, R> =>
  spec;

/** The table of functions by name; throws where a name stands twice. */
export function functionTable(specs: readonly unknown[]): FunctionTable {
  const table = new Map<string, AnyFunctionSpec>();
  for (const spec of specs as readonly AnyFunctionSpec[]) {
    if (table.has(spec.name)) throw new Error(`got the function ${spec.name} twice, expected each name once`);
    table.set(spec.name, spec);
  }
  return table;
}

/** A number told in `unit`; its dimension is the unit's. */
export const number = <const N extends Notes = Record<never, never>>(unit: string, summary: string, notes?: N) =>
  ({
    kind: "number",
    dimension: unitOf(unit).dimension,
    unit,
    summary: withAbsence(summary, notes),
    ...notes,
  }) as NumberShape & N;

const withAbsence = (summary: string, notes?: Notes): string =>
  notes?.absent ? `${summary}; left out ${notes.absent}` : summary;

/** A number of any dimension; see AnyNumberShape. */
export const anyNumber = <const N extends Notes = Record<never, never>>(summary: string, notes?: N, power = 1) =>
  ({ kind: "any", power, summary, ...notes }) as AnyNumberShape & N;
export const text = (summary: string): TextShape => ({ kind: "text", summary });

/** A text out of a closed set; `chosen` reads it. */
export const choice = <const N extends Notes = Record<never, never>>(
  summary: string,
  choices: readonly string[],
  notes?: N,
) => ({ kind: "text", summary, choices, ...notes }) as TextShape & N;
export const boolean = (summary: string): BooleanShape => ({ kind: "boolean", summary });

/** A list of one shape. */
export const list = <const S extends Shape>(of: S, summary: string): ListShape<S> => ({ kind: "list", of, summary });

/** A kind of record of the library, with the line that stands for a value of it on the page. */
export const record = <const F extends Fields>(
  type: string,
  summary: string,
  fields: F,
  text: (value: FieldValues<F>) => string,
): RecordShape<F> => ({ kind: "record", type, summary, fields, text: text as (value: never) => string });

/** A table as parameter: columns are numbers (or texts) here and become lists of them. */
export function table<const C extends Fields>(summary: string, columns: C): RecordShape<Columns<C>> {
  const fields: Record<string, Shape> = {};
  for (const [name, column] of Object.entries(columns)) {
    fields[name] = { kind: "list", of: column, ...(column.optional && { optional: true }) } as Shape;
  }
  return { kind: "record", type: null, summary, fields: fields as Columns<C> };
}
type Columns<C extends Fields> = {
  readonly [K in keyof C]: ListShape<C[K]> &
    (C[K] extends { readonly optional: true } ? { readonly optional: true } : unknown);
};
