/** Who needs whom among the cells of a notebook: all that follows from their names alone. */
import { type Spelling, spelling } from "../library/units.ts";
import { orderOf } from "./order.ts";
import type { Reading } from "./reading.ts";

export interface Structure {
  /** Ids of the cells, each after all that it needs. A cell's place in it stands for the cell in what follows. */
  readonly order: readonly string[];
  readonly placeOfId: ReadonlyMap<string, number>;
  /** The first cell of each name. */
  readonly placeOfName: ReadonlyMap<string, number>;
  /** Names that stand more than once. */
  readonly twice: ReadonlySet<string>;
  /** The cells that a cell names, in order of appearance. */
  readonly needs: readonly (readonly number[])[];
  /** The same the other way round. */
  readonly neededBy: readonly (readonly number[])[];
  /** Members of loops by id, each with the names of the way around from itself. */
  readonly loops: ReadonlyMap<string, readonly string[]>;
  /** The name nearest to a misspelt one. */
  readonly near: Spelling;
}

export function structureOf(readings: ReadonlyMap<string, Reading>): Structure {
  const idOfName = new Map<string, string>();
  const twice = new Set<string>();
  for (const [id, { signature }] of readings) {
    if (!signature?.name) continue;
    if (idOfName.has(signature.name)) twice.add(signature.name);
    else idOfName.set(signature.name, id);
  }
  const needs = new Map<string, string[]>();
  for (const [id, { names }] of readings) {
    needs.set(
      id,
      names.flatMap((name) => idOfName.get(name) ?? []),
    );
  }
  const { order, loops } = orderOf([...readings.keys()], (id) => needs.get(id) ?? []);
  const placeOfId = new Map(order.map((id, place) => [id, place]));
  const placeOf = (id: string): number => placeOfId.get(id) ?? -1;
  const places = order.map((id) => (needs.get(id) ?? []).map(placeOf));
  const neededBy: number[][] = order.map(() => []);
  places.forEach((own, place) => {
    for (const need of own) neededBy[need]?.push(place);
  });
  const nameOf = (id: string): string => readings.get(id)?.signature?.name ?? id;
  // Members of a very large loop share one way around, which is named once.
  const named = new Map<readonly string[], readonly string[]>();
  for (const way of loops.values()) if (!named.has(way)) named.set(way, way.map(nameOf));
  return {
    order,
    placeOfId,
    placeOfName: new Map([...idOfName].map(([name, id]) => [name, placeOf(id)])),
    twice,
    needs: places,
    neededBy,
    loops: new Map([...loops].map(([id, way]) => [id, named.get(way) ?? []])),
    near: onDemand(() => spelling(idOfName.keys())),
  };
}

/** Most notebooks have no misspelt name. */
function onDemand(make: () => Spelling): Spelling {
  let made: Spelling | null = null;
  return (word, except) => {
    made ??= make();
    return made(word, except);
  };
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
