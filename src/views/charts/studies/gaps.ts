/** Variants without a value, told together where their reason is the same. */
import { listInWords } from "../../drawings/words.ts";

/** Where something has no value, in words, and why. */
export interface ToldGap {
  readonly where: string;
  readonly reason: string;
}

/** Gaps with one reason together, in order of the first. */
export interface GapGroup {
  readonly reason: string;
  readonly count: number;
  /** "tip_break 14 deg, 15 deg and 16 deg", cut short where there are many. */
  readonly where: string;
}

/** Groups gaps by their reason, whatever numbers stand in it; a place that lacks several results counts once. */
export function gapGroups(gaps: readonly ToldGap[]): readonly GapGroup[] {
  const byReason = new Map<string, { readonly reason: string; readonly places: Set<string> }>();
  for (const { where, reason } of gaps) {
    const key = reason.replaceAll(/[-−]?\d+(\.\d+)?(e[-+]?\d+)?/g, "#");
    const group = byReason.get(key) ?? { reason: reason.replace(/\.$/, ""), places: new Set() };
    byReason.set(key, group);
    group.places.add(where);
  }
  return [...byReason.values()].map(({ reason, places }) => {
    const all = [...places];
    const more = all.length > mostTold ? [`${all.length - mostTold + 1} more`] : [];
    return { reason, count: all.length, where: listInWords([...all.slice(0, mostTold - more.length), ...more]) };
  });
}

/** One line below a chart: "✕ 3 of 41 without a value: the wing stalls". */
export function gapNote(groups: readonly GapGroup[], of: number): string | null {
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  return count === 0 ? null : `✕ ${count} of ${of} without a value: ${groups[0]?.reason}`;
}

const mostTold = 6;
