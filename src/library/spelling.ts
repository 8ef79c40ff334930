/** Finds the candidate nearest to a misspelt word, or null; `except` names one that is not meant. */
export type Spelling = (word: string, except?: string) => string | null;

/** The candidate nearest to a misspelt word, or null where none is near enough to be meant; see `spelling`. */
export const nearest = (word: string, candidates: Iterable<string>): string | null => spelling(candidates)(word);

/**
 * Prepares candidates for many words. The nearest is that of the least edit distance, the first of several: of a single
 * letter only the other case is near enough. Letters may be added, left out, changed or swapped with a neighbour (Damerau
 * 1964, Levenshtein 1966); letter case counts half. Where none is near, the longest with which the word begins is meant:
 * "degrees" finds its unit so.
 */
export function spelling(candidates: Iterable<string>): Spelling {
  const all = new Set(candidates);
  const byLength = new Map<number, Candidate[]>();
  let place = 0;
  for (const name of all) {
    const lower = name.toLowerCase();
    const same = byLength.get(name.length) ?? [];
    byLength.set(name.length, same);
    same.push({ name, lower, letters: lettersOf(lower), place: place++ });
  }
  return (word, except) => nearestOf(word, except, byLength) ?? longestBeginning(word, except, all);
}

interface Candidate {
  readonly name: string;
  readonly lower: string;
  readonly letters: number;
  /** In the order given. */
  readonly place: number;
}

function nearestOf(
  word: string,
  except: string | undefined,
  byLength: ReadonlyMap<number, readonly Candidate[]>,
): string | null {
  const lower = word.toLowerCase();
  const letters = lettersOf(lower);
  const most = word.length === 1 ? 0.5 : Math.min(2, Math.floor(word.length / 2));
  let best: Candidate | null = null;
  let least = most;
  for (let length = word.length - Math.floor(most); length <= word.length + most; length++) {
    for (const candidate of byLength.get(length) ?? []) {
      // Most candidates are out before a distance is taken.
      if (candidate.name === except || lettersApart(letters, candidate.letters) > least) continue;
      const inLower = distance(lower, candidate.lower, least) + 0.5;
      const away = inLower - 0.5 > least ? inLower : Math.min(inLower, distance(word, candidate.name, least));
      if (away > least || (best && away === least && candidate.place > best.place)) continue;
      least = away;
      best = candidate;
    }
  }
  return best?.name ?? null;
}

function longestBeginning(word: string, except: string | undefined, all: ReadonlySet<string>): string | null {
  for (let length = word.length; length > 1; length--) {
    const beginning = word.slice(0, length);
    if (beginning !== except && all.has(beginning)) return beginning;
  }
  return null;
}

/** The letters that occur in a word, a bit each; several share one. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let index = 0; index < word.length; index++) letters |= 1 << (word.charCodeAt(index) & 31);
  return letters;
}

/** The least number of slips that two words with these letters can lie apart, found without comparing them. */
const lettersApart = (a: number, b: number): number => Math.max(count(a & ~b), count(b & ~a));

/** How many bits are set. */
function count(bits: number): number {
  let left = bits;
  let set = 0;
  for (; left !== 0; left &= left - 1) set++;
  return set;
}

/** The edit distance of two words; somewhere beyond `most` where it is more than that. */
function distance(a: string, b: string, most: number): number {
  let above: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = swapped ? (above[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      next[j] = Math.min(change, swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1);
      least = Math.min(least, next[j] as number);
    }
    // A swap leaps over one row, so both must be beyond.
    if (least > most && Math.min(...row) > most) return Number.POSITIVE_INFINITY;
    above = row;
    row = next;
  }
  return row[b.length] ?? 0;
}
