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
  if (!previous || !hasAll(functions, previous.functions)) return compileAll(cells, functions, undefined);
  return (previous.functions === functions && recompile(cells, previous)) || compileAll(cells, functions, previous);
}

/** True where a table has just the functions of another, and maybe more: steps that call those still stand. */
function hasAll(table: FunctionTable, other: FunctionTable): boolean {
  return table === other || [...other].every(([name, spec]) => table.get(name) === spec);
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
  return programOf(cells, before.functions, before.structure, recompiled(changed, before));
}

/** The steps with those of the changed cells made anew, and of those that need them where a shape has changed. */
function recompiled(changed: ReadonlyMap<string, Reading>, before: Program): readonly Step[] {
  if (changed.size === 0) return before.steps;
  const { structure, functions } = before;
  const steps = before.steps.slice();
  const dirty = new Uint8Array(steps.length);
  for (const id of changed.keys()) dirty[structure.placeOfId.get(id) ?? 0] = 1;
  for (let place = dirty.indexOf(1); place >= 0; place = dirty.indexOf(1, place + 1)) {
    const old = before.steps[place] as Step;
    const step = stepOf(changed.get(old.id) ?? old.reading, place, structure, steps, functions, old);
    steps[place] = step;
    if (!sameFace(old, step)) for (const dependant of structure.neededBy[place] ?? []) dirty[dependant] = 1;
  }
  return steps;
}

function compileAll(cells: readonly Cell[], functions: FunctionTable, before: Program | undefined): Program {
  const readings = new Map<string, Reading>();
  for (const cell of cells) {
    if (cell.kind === "decision") continue;
    // Where there are more functions than before, fewer names are free.
    const known = before?.functions === functions ? before.byId.get(cell.id)?.reading : undefined;
    readings.set(cell.id, known?.cell === cell ? known : readCell(cell, functions));
  }
  const structure = structureOf(readings);
  const steps: Step[] = [];
  structure.order.forEach((id, place) => {
    const reading = readings.get(id);
    if (!reading) throw new Error(`got the id ${id} in the order, expected that of a cell`);
    steps.push(stepOf(reading, place, structure, steps, functions, before?.byId.get(id)));
  });
  return programOf(cells, functions, structure, steps);
}

function programOf(
  cells: readonly Cell[],
  functions: FunctionTable,
  structure: Structure,
  steps: readonly Step[],
): Program {
  const at = (place: number | undefined): Step | undefined => (place === undefined ? undefined : steps[place]);
  const byId = { get: (id: string) => at(structure.placeOfId.get(id)) };
  const byName = { get: (name: string) => at(structure.placeOfName.get(name)) };
  return { cells, functions, structure, steps, byId, byName };
}

/** The step of one cell over the steps before it; the one it had where that still stands. */
function stepOf(
  reading: Reading,
  place: number,
  { placeOfName, twice, needs, loops, near }: Structure,
  steps: readonly Step[],
  functions: FunctionTable,
  before: Step | undefined,
): Step {
  const loop = loops.get(reading.cell.id);
  const fault = loop
    ? new FormulaError("loop", messages.loop(loop), wholeOf(reading))
    : (reading.fault ?? duplicateFault(reading, twice));
  const needed = fault ? [] : (needs[place] ?? []).flatMap((need) => steps[need] ?? []);
  if (!fault && before && isCurrent(before, reading, needed)) return before;
  const around = {
    functions,
    byName: (name: string) => steps[placeOfName.get(name) ?? -1],
    near,
  };
  const step = fault ? failedStep(reading, fault) : compileStep(reading, around, needed);
  return before && sameFailure(before, step) ? before : step;
}

function duplicateFault({ signature }: Reading, twice: ReadonlySet<string>): FormulaError | null {
  if (!signature || !twice.has(signature.name)) return null;
  return new FormulaError("duplicate_name", messages.duplicateName(signature.name), [0, 0]);
}

/** True where a step compiled before still stands: same cell, same needs, each of the shape it had. */
function isCurrent(before: Step, reading: Reading, needed: readonly Step[]): boolean {
  if (before.hasFault || before.cell !== reading.cell || before.needs.length !== needed.length) return false;
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
