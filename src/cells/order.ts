/** The order in which cells can be computed, and the loops among them. */

export interface Order {
  /** Every id, each after all that it needs; members of a loop stand next to each other. */
  readonly order: readonly string[];
  /** Members of loops, each with the way around from itself: `a` → [a, b, c]. */
  readonly loops: ReadonlyMap<string, readonly string[]>;
}

/** Strongly connected components (Tarjan 1972), without recursion: a chain may be as long as the notebook. */
export function orderOf(ids: readonly string[], needs: (id: string) => readonly string[]): Order {
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const onStack = new Set<string>();
  const stack: string[] = [];
  const order: string[] = [];
  const loops = new Map<string, readonly string[]>();
  for (const start of ids) {
    if (index.has(start)) continue;
    const walk: { id: string; next: number }[] = [];
    enter(start);
    for (let step = walk.at(-1); step; step = walk.at(-1)) {
      const need = needs(step.id)[step.next++];
      if (need === undefined) leave(step.id);
      else if (!index.has(need)) enter(need);
      else if (onStack.has(need)) lower(step.id, index.get(need) ?? 0);
    }

    function enter(id: string): void {
      index.set(id, index.size);
      low.set(id, index.size - 1);
      stack.push(id);
      onStack.add(id);
      walk.push({ id, next: 0 });
    }
    function leave(id: string): void {
      walk.pop();
      const above = walk.at(-1);
      if (above) lower(above.id, low.get(id) ?? 0);
      if (low.get(id) === index.get(id)) close(id);
    }
  }
  return { order, loops };

  function lower(id: string, to: number): void {
    low.set(id, Math.min(low.get(id) ?? to, to));
  }
  function close(id: string): void {
    const members = stack.splice(stack.lastIndexOf(id));
    for (const member of members) onStack.delete(member);
    order.push(...members.reverse());
    if (members.length > 1 || needs(id).includes(id)) nameLoop(members);
  }
  /** Each member is told its own shortest way around; in a very large loop one way stands for all. */
  function nameLoop(members: readonly string[]): void {
    const within = new Set(members);
    const shared = members.length > 200 ? wayAround(members[0] ?? "", within) : null;
    for (const member of members) loops.set(member, shared ?? wayAround(member, within));
  }
  function wayAround(from: string, within: ReadonlySet<string>): readonly string[] {
    const cameFrom = new Map<string, string>();
    const queue = [from];
    for (const id of queue) {
      for (const need of needs(id)) {
        if (need === from) return path(id, cameFrom);
        if (!within.has(need) || cameFrom.has(need)) continue;
        cameFrom.set(need, id);
        queue.push(need);
      }
    }
    return [from];
  }
}

function path(end: string, cameFrom: ReadonlyMap<string, string>): string[] {
  const way = [end];
  for (let id = cameFrom.get(end); id !== undefined; id = cameFrom.get(id)) way.push(id);
  return way.reverse();
}
