/** Who needs whom among the cells of a notebook: all that follows from their names alone. */
import { orderOf } from "./order.ts";
import type { Reading } from "./reading.ts";

export interface Structure {
  /** The id of the first cell of each name. */
  readonly ids: ReadonlyMap<string, string>;
  /** The name of each cell that has one, by id. */
  readonly names: ReadonlyMap<string, string>;
  /** Names that stand more than once. */
  readonly twice: ReadonlySet<string>;
  /** Ids of the cells that a cell names, in order of appearance. */
  readonly needs: ReadonlyMap<string, readonly string[]>;
  /** The same the other way round. */
  readonly neededBy: ReadonlyMap<string, readonly string[]>;
  /** Every id, each after all that it needs. */
  readonly order: readonly string[];
  /** Members of loops, each with the way around from itself. */
  readonly loops: ReadonlyMap<string, readonly string[]>;
}

export function structureOf(readings: ReadonlyMap<string, Reading>): Structure {
  const ids = new Map<string, string>();
  const names = new Map<string, string>();
  const twice = new Set<string>();
  for (const [id, { signature }] of readings) {
    if (!signature?.name) continue;
    names.set(id, signature.name);
    if (ids.has(signature.name)) twice.add(signature.name);
    else ids.set(signature.name, id);
  }
  const needs = new Map<string, string[]>();
  const neededBy = new Map<string, string[]>();
  for (const [id, reading] of readings) {
    const own = reading.names.flatMap((name) => ids.get(name) ?? []);
    needs.set(id, own);
    for (const need of own) {
      const list = neededBy.get(need);
      if (list) list.push(id);
      else neededBy.set(need, [id]);
    }
  }
  return { ids, names, twice, needs, neededBy, ...orderOf([...readings.keys()], (id) => needs.get(id) ?? []) };
}

/** True where a cell read anew leaves the structure as it is: the same name, using the same names. */
export function keepsStructure(before: Reading, now: Reading): boolean {
  const [then, name] = [before.signature, now.signature];
  return (
    then?.name === name?.name &&
    (then?.parameters === null) === (name?.parameters === null) &&
    before.names.length === now.names.length &&
    before.names.every((each, index) => each === now.names[index])
  );
}
