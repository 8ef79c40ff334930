import type { FunctionTable, Shape } from "../library/spec.ts";
import type { Cell } from "./cell.ts";
import type { CellError } from "./errors.ts";
import type { Reading } from "./reading.ts";
import type { Structure } from "./structure.ts";
import type { FunctionCell, TypedTree } from "./typed-tree.ts";
import type { Result } from "./value.ts";

/** One compiled cell. The graph schedules steps and the plan runs them in order, so that the two cannot drift. */
export interface Step {
  readonly id: string;
  /** Its bare name; null for cells without one. */
  readonly name: string | null;
  readonly cell: Cell;
  /** What the cell says, read once. */
  readonly reading: Reading;
  /** Ids of the steps whose results `run` takes, in order. */
  readonly inputs: readonly string[];
  /** Shape of its value; null where it has none (a function cell) or could not be found for an error. */
  readonly shape: Shape | null;
  /** The error found before computing, or null. */
  readonly error: CellError | null;
  /** It, or one of its parts, was at fault before computing: what that says can depend on every name there is. */
  readonly hasFault: boolean;
  /** The checked tree of its formula: given, derived, check and drawing. */
  readonly tree: TypedTree | null;
  /** What the names it uses stood for when it was compiled. */
  readonly needs: readonly Face[];
  /** For a function cell: what its callers check against. */
  readonly definition: FunctionCell | null;
  /** A given's range in SI; step null where none is said. */
  readonly range: { readonly from: number; readonly to: number; readonly step: number | null } | null;
  /** Of a given: by how much it may be off, where it says so. */
  readonly plusMinus: PlusMinus | null;
  /** It calls a function that is slow, itself or by way of a function cell. */
  readonly isSlow: boolean;
  run(inputs: readonly Result[]): Result;
}

/** How far a value may be off either way, in SI or as a share of the value. */
export interface PlusMinus {
  readonly size: number;
  readonly isShare: boolean;
}

/** As much of a step as those that need it are compiled against. */
export type Face = Pick<Step, "id" | "shape" | "definition" | "range">;

/** A notebook's cells, compiled: every cell that has something to compute, each after all that it needs. */
export interface Program {
  readonly cells: readonly Cell[];
  readonly functions: FunctionTable;
  readonly steps: readonly Step[];
  readonly byId: { get(id: string): Step | undefined };
  /** By bare name; where two cells have one name, the first. */
  readonly byName: { get(name: string): Step | undefined };
  /** Who needs whom; kept while edits leave the names alone. */
  readonly structure: Structure;
}
