/**
 * Compiles a notebook's cells into steps, each after all that it needs. Given what was compiled before, it keeps every
 * step whose cell and whose inputs' shapes are unchanged, so that a dragged number recompiles one cell.
 */
import type { FunctionTable } from "../library/spec.ts";
import type { Cell } from "./cell.ts";
import { compileStep, failedStep } from "./compile-step.ts";
import { FormulaError } from "./errors.ts";
import { messages } from "./messages.ts";
import { type Reading, readCell } from "./reading.ts";
import { sameShape } from "./shapes.ts";
import type { Face, Program, Step } from "./step.ts";
import { keepsStructure, type Structure, structureOf } from "./structure.ts";

export function compile(cells: readonly Cell[], functions: FunctionTable, previous?: Program): Program {
  const kept = previous?.functions === functions ? previous : undefined;
  return (kept && recompile(cells, kept)) ?? compileAll(cells, functions, kept);
}

/**
 * The program with only some cells changed and everything where it was; null where a cell came, went or moved, or where
 * a name did.
 */
function recompile(cells: readonly Cell[], before: Program): Program | null {
  if (cells.length !== before.cells.length) return null;
  const changed = new Map<string, Reading>();
  for (let index = 0; index < cells.length; index++) {
    const [cell, old] = [cells[index] as Cell, before.cells[index] as Cell];
    if (cell === old) continue;
    if (cell.id !== old.id || cell.kind !== old.kind) return null;
    if (cell.kind === "decision") continue;
    const reading = readCell(cell, before.functions);
    const known = before.byId.get(cell.id);
    if (!known || !keepsStructure(known.reading, reading)) return null;
    changed.set(cell.id, reading);
  }
  const { structure } = before;
  const steps = new Map(before.byId);
  const dirty = new Set(changed.keys());
  for (const id of dirty.size > 0 ? structure.order : []) {
    const old = before.byId.get(id);
    if (!old || !dirty.has(id)) continue;
    const step = stepOf(changed.get(id) ?? old.reading, structure, steps, before.functions, old);
    steps.set(id, step);
    if (!sameFace(old, step)) for (const dependant of structure.neededBy.get(id) ?? []) dirty.add(dependant);
  }
  return programOf(cells, before.functions, structure, steps);
}

function compileAll(cells: readonly Cell[], functions: FunctionTable, before: Program | undefined): Program {
  const readings = new Map<string, Reading>();
  for (const cell of cells) {
    if (cell.kind === "decision") continue;
    const known = before?.byId.get(cell.id)?.reading;
    readings.set(cell.id, known?.cell === cell ? known : readCell(cell, functions));
  }
  const structure = structureOf(readings);
  const steps = new Map<string, Step>();
  for (const id of structure.order) {
    const reading = readings.get(id);
    if (reading) steps.set(id, stepOf(reading, structure, steps, functions, before?.byId.get(id)));
  }
  return programOf(cells, functions, structure, steps);
}

function programOf(
  cells: readonly Cell[],
  functions: FunctionTable,
  structure: Structure,
  byId: ReadonlyMap<string, Step>,
): Program {
  const byName = { get: (name: string) => byId.get(structure.ids.get(name) ?? "") };
  return { cells, functions, structure, byId, byName, steps: [...byId.values()] };
}

/** The step of one cell over the steps before it; the one it had where that still stands. */
function stepOf(
  reading: Reading,
  { ids, names, twice, needs, loops }: Structure,
  steps: ReadonlyMap<string, Step>,
  functions: FunctionTable,
  before: Step | undefined,
): Step {
  const { id } = reading.cell;
  const loop = loops.get(id);
  const fault = loop
    ? new FormulaError("loop", messages.loop(loop.map((member) => names.get(member) ?? member)), wholeOf(reading))
    : (reading.fault ?? duplicateFault(reading, twice));
  const needed = fault ? [] : (needs.get(id) ?? []).flatMap((need) => steps.get(need) ?? []);
  if (!fault && before && isCurrent(before, reading, needed)) return before;
  const around = { functions, byName: (name: string) => steps.get(ids.get(name) ?? ""), names: () => ids.keys() };
  const step = fault ? failedStep(reading, fault) : compileStep(reading, around, needed);
  return before && sameFailure(before, step) ? before : step;
}

function duplicateFault({ signature }: Reading, twice: ReadonlySet<string>): FormulaError | null {
  if (!signature || !twice.has(signature.name)) return null;
  return new FormulaError("duplicate_name", messages.duplicateName(signature.name), [0, 0]);
}

/** True where a step compiled before still stands: same cell, same needs, each of the shape it had. */
function isCurrent(before: Step, reading: Reading, needed: readonly Step[]): boolean {
  if (before.error || before.cell !== reading.cell || before.needs.length !== needed.length) return false;
  return needed.every((now, index) => {
    const then = before.needs[index];
    return then !== undefined && sameFace(then, now);
  });
}

/** True where those that need a cell can be left as they were compiled; never for a cell with an error. */
function sameFace(then: Face, now: Face): boolean {
  if (then.id !== now.id || then.definition !== now.definition) return false;
  if ((then.range === null) !== (now.range === null)) return false;
  return now.definition !== null || (now.shape !== null && then.shape !== null && sameShape(now.shape, then.shape));
}

/** A failed step that fails as before is the step it was, so that nothing downstream stirs. */
function sameFailure(before: Step, step: Step): boolean {
  return (
    before.cell === step.cell &&
    before.error !== null &&
    step.error !== null &&
    JSON.stringify(before.error) === JSON.stringify(step.error)
  );
}

const wholeOf = ({ parts }: Reading): readonly [number, number] => [0, parts[0]?.text.length ?? 0];
