/**
 * Compiles a notebook's cells into steps, each after all that it needs. Given what was compiled before, it keeps every
 * step whose cell and whose inputs' shapes are unchanged, so that a dragged number recompiles one cell.
 */
import type { FunctionTable } from "../library/spec.ts";
import type { Cell } from "./cell.ts";
import { compileStep, failedStep } from "./compile-step.ts";
import { FormulaError } from "./errors.ts";
import { messages } from "./messages.ts";
import { orderOf } from "./order.ts";
import { type Reading, readCell } from "./reading.ts";
import { sameShape } from "./shapes.ts";
import type { Program, Step } from "./step.ts";

export function compile(cells: readonly Cell[], functions: FunctionTable, previous?: Program): Program {
  const kept = previous?.functions === functions ? previous : undefined;
  const readings = new Map<Cell, Reading>();
  const byId = new Map<string, Reading>();
  for (const cell of cells) {
    if (cell.kind === "decision") continue;
    const reading = kept?.readings.get(cell) ?? readCell(cell, functions);
    readings.set(cell, reading);
    byId.set(cell.id, reading);
  }
  const { ids, twice } = idsByName(byId.values());
  const needs = new Map<string, string[]>();
  for (const [id, reading] of byId) needs.set(id, idsOf(reading.names, ids));
  const { order, loops } = orderOf([...byId.keys()], (id) => needs.get(id) ?? []);

  const steps = new Map<string, Step>();
  const byName = (name: string): Step | undefined => steps.get(ids.get(name) ?? "");
  const nameOf = (id: string): string => byId.get(id)?.signature?.name ?? id;
  for (const id of order) {
    const reading = byId.get(id);
    if (!reading) continue;
    const before = kept?.byId.get(id);
    const loop = loops.get(id);
    const fault = loop
      ? new FormulaError("loop", messages.loop(loop.map(nameOf)), wholeOf(reading))
      : (reading.fault ?? duplicateFault(reading, twice));
    const needed = loop ? [] : (needs.get(id) ?? []).flatMap((need) => steps.get(need) ?? []);
    if (!fault && before && isCurrent(before, reading, needed)) {
      steps.set(id, before);
      continue;
    }
    const step = fault
      ? failedStep(reading, fault)
      : compileStep(reading, { functions, byName, names: () => ids.keys() }, needed);
    steps.set(id, before && sameFailure(before, step) ? before : step);
  }
  return {
    functions,
    readings,
    steps: [...steps.values()],
    byId: steps,
    byName: new Map([...ids].flatMap(([name, id]) => (steps.has(id) ? [[name, steps.get(id) as Step]] : []))),
  };
}

/** The first cell of each name, and the names that stand more than once. */
function idsByName(readings: Iterable<Reading>): { ids: Map<string, string>; twice: Set<string> } {
  const ids = new Map<string, string>();
  const twice = new Set<string>();
  for (const { signature, cell } of readings) {
    if (!signature?.name) continue;
    if (ids.has(signature.name)) twice.add(signature.name);
    else ids.set(signature.name, cell.id);
  }
  return { ids, twice };
}

const idsOf = (names: readonly string[], ids: ReadonlyMap<string, string>): string[] =>
  names.flatMap((name) => ids.get(name) ?? []);

function duplicateFault({ signature }: Reading, twice: ReadonlySet<string>): FormulaError | null {
  if (!signature || !twice.has(signature.name)) return null;
  return new FormulaError("duplicate_name", messages.duplicateName(signature.name), [0, 0]);
}

/** True where a step compiled before still stands: same cell, same needs, each of the shape it had. */
function isCurrent(before: Step, reading: Reading, needed: readonly Step[]): boolean {
  if (before.error || before.cell !== reading.cell || before.needs.length !== needed.length) return false;
  return needed.every((now, index) => {
    const then = before.needs[index];
    if (then?.id !== now.id || now.definition !== then.definition || then.ranged !== (now.range !== null)) return false;
    return now.definition !== null || (now.shape !== null && then.shape !== null && sameShape(now.shape, then.shape));
  });
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
