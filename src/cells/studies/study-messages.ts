/** Every sentence that a study says to a person: what keeps it from being run, what it found, and the remedy. */

const list = (words: readonly string[], last: string): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
const maybe = (nearest: string | null): string => (nearest ? ` Did you mean ${nearest}?` : "");
const many = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, " ");

export const studyMessages = {
  // What keeps a study from being run
  noStudy: (name: string, nearest: string | null, all: readonly string[]) =>
    `There is no study named ${name}.${nearest ? maybe(nearest) : all.length ? ` There are ${list(all, "and")}.` : " The notebook has none."}`,
  in: (study: string, message: string) => `Study ${study}: ${message}`,
  inInput: (target: string, message: string) => `Input ${target}: ${message}`,
  inResult: (text: string, message: string) => `Result ${text}: ${message}`,
  inTarget: (message: string) => `The target: ${message}`,
  inputCount: (study: string, wanted: string, got: number) =>
    `A ${study} takes ${wanted}; here ${got === 0 ? "is none" : got === 1 ? "is one" : `are ${got}`}.`,
  inputTwice: (target: string) => `${target} stands twice. Take one of the two out.`,
  noResult: "Name at least one result, such as main_wing.span.",
  resultCount: (study: string, wanted: string, got: number) => `A ${study} tells of ${wanted}; here are ${got}.`,
  notNumber: (target: string, got: string) => `A study sets single numbers; ${target} is ${got}.`,
  textColumn: (target: string) => `${target} is text. A study sets single numbers.`,
  waits: (target: string, root: string) => `${target} has an error, or waits for ${root}. Mend that first.`,
  noRange: (target: string) =>
    `${target} has no range. Say from where to where it is to go: its lowest and its highest value.`,
  tooMany: (count: number, most: number) =>
    `That would be ${many(count)} variants; ${many(most)} is the most. Take fewer points or a narrower range.`,
  noPlusMinus:
    "No input says how far it may be off. Give a given its ±, or name inputs here and say of each how far it may be off.",
  inputWithoutPlusMinus: (target: string) => `${target} does not say how far it may be off. Give it its ±.`,
  noTarget: "Say what the result is to reach, in its unit, such as 12 deg.",
  goalCount: (results: number, goals: number) =>
    `Say of each result whether it is to be least or most: there ${results === 1 ? "is one" : `are ${results}`}, and for ${goals} it is said.`,
  pairIsInput: (target: string) =>
    `${target} is set as an input and as the other half of one. Take one of the two out.`,
  correlationAlone: (target: string) =>
    `${target} says how much the halves go together, but not which is the other half. Name it, or take that out.`,

  // What was found
  isZero: (target: string) => `1% of ${target} is nothing, since it is 0. Give it its ±.`,
  failedAt: (root: string, message: string) => `${root}: ${message}`,

  // Parts
  part: (written: string) => `“${written}” is no part. Write which of how many, such as 2/8.`,
  noPart: "Name the files of all parts.",
  notAPart: "This is no part of a study. Name files that --part has written.",
  otherStudy: (of: string, wanted: string) => `This is a part of the study ${of}, not of ${wanted}.`,
  otherNotebook: "This part was computed from another state of the notebook. Compute all parts anew.",
  otherCount: (of: number, wanted: number) => `This is one of ${of} parts, but others are of ${wanted}.`,
  partTwice: (index: number) => `Part ${index} is there twice.`,
  partsMissing: (missing: readonly number[], of: number) =>
    `Of ${of} parts ${list(missing.map(String), "and")} ${missing.length === 1 ? "is" : "are"} missing.`,
} as const;
