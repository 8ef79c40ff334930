/** Counts and lists in words, for descriptions. */

/** "no", "one", "two", … up to twelve, then figures. */
export const countInWords = (count: number): string => countWords[count] ?? String(count);

/** "3, 10 and 21". */
export const listInWords = (items: readonly string[]): string =>
  items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;

const countWords = "no one two three four five six seven eight nine ten eleven twelve".split(" ");
