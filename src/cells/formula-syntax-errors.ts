import { FormulaError } from "./errors.ts";
import type { Range } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { keywords } from "./names.ts";

/** The error for a place where the grammar found no way on: `at` is the parser's fault, `within` the node it stands in. */
export function explainSyntax(text: string, at: Range, within: string): FormulaError {
  const [message, range] =
    explainNothing(text) ??
    explainFraction(text, at) ??
    explainOpenText(text, at) ??
    explainEnd(text, at, within) ??
    explainWord(text, wordAt(text, at), within);
  return new FormulaError("syntax", message, range);
}

type Explanation = readonly [message: string, at: Range];

/** Signs known from elsewhere, and what to write in their place. */
const instead: Readonly<Record<string, string>> = {
  "==": "=",
  "=<": "<=",
  "=>": ">=",
  "<>": "!=",
  "≤": "<=",
  "≥": ">=",
  "≠": "!=",
  "&&": "and",
  "||": "or",
  "&": "and",
  "|": "or",
  "!": "not",
  "**": "^",
  "×": "*",
  "·": "*",
  "÷": "/",
  "−": "-",
  "–": "-",
  "²": "^2",
  "³": "^3",
  π: "pi",
  º: "°",
  ";": ",",
  "“": '"',
  "”": '"',
  "„": '"',
  "'": '"',
};

function explainNothing(text: string): Explanation | null {
  return text.trim() === "" ? [messages.emptyFormula, [0, text.length]] : null;
}

/** `1 3/8` without a unit. */
function explainFraction(text: string, [from]: Range): Explanation | null {
  for (const { 0: written, index } of text.matchAll(/\d+\s+\d+\/\d+/g)) {
    const to = index + written.length;
    if (from >= index && from <= to) return [messages.fractionWithoutUnit(written), [index, to]];
  }
  return null;
}

function explainOpenText(text: string, [from]: Range): Explanation | null {
  const quote = from + blanksAt(text, from);
  const open = text[quote] === '"' && !/^"(?:[^"\\\n]|\\.)*"/s.test(text.slice(quote));
  return open ? [messages.openText, [quote, text.length]] : null;
}

/** Where the grammar found a fault at the end only. */
function explainEnd(text: string, [from]: Range, within: string): Explanation | null {
  const end = text.trimEnd().length;
  if (from + blanksAt(text, from) < end) return null;
  const last = /(?:[A-Za-z_]\w*|\d[\w.]*|.)$/su.exec(text.slice(0, end))?.[0] ?? "";
  const at: Range = [end - last.length, end];
  if (last.endsWith(".")) return [messages.fieldMissing, [end - 1, end]];
  const open = unclosed(text);
  if (endsOpen(last) || (open === null && within !== "If")) return [messages.valueMissingAtEnd, at];
  return open ? [messages.unclosed(text[open[0]] ?? "("), open] : [messages.ifIncomplete, at];
}

/** Where the grammar found a fault at a word or sign. */
function explainWord(text: string, [from, to]: Range, within: string): Explanation {
  const word = text.slice(from, to);
  const before = text.slice(0, from).trimEnd();
  const foreign = foreignSign(text, from);
  if (before.endsWith(".")) return [messages.fieldMissing, [before.length - 1, before.length]];
  if (before === "" && word === "=") return [messages.leadingEquals, [from, to]];
  if (foreign) return [messages.writeInstead(text.slice(...foreign), instead[text.slice(...foreign)] ?? ""), foreign];
  const shouted = [word, /\w*$/.exec(before)?.[0] ?? ""].find(isShouted);
  if (shouted) return [messages.smallLetters(shouted), rangeOfLast(text, shouted, to)];
  if (word === "then" || word === "else") {
    const open = unclosed(text);
    if (open) return [messages.unclosed(text[open[0]] ?? "("), open];
    if (within !== "If") return [messages.strayWord(word), [from, to]];
  }
  if (/^[*/^<>=,)\]]|^(?:!=|and|or|then|else)$/.test(word) && (before === "" || endsOpen(before))) {
    return [messages.valueMissingBefore(word), [from, to]];
  }
  if (word === "if") return [messages.ifElsewhere, [from, to]];
  if (word === ")" || word === "]") return [explainBracket(text.slice(0, from), word), [from, to]];
  if (word === ",") return [messages.strayComma, [from, to]];
  if (/^[\w"([]/.test(word) && /[\w"\])%°]$/.test(before) && !endsOpen(before)) {
    return [thenIsMissing(before) ? messages.ifIncomplete : messages.signMissing(word), [from, to]];
  }
  const known = /^[\w\s"()[\],.:^*/+\-<>=!%°]/.test(word);
  return [known ? messages.unexpected(word) : messages.strangeCharacter(word), [from, to]];
}

/** A closing bracket out of place, by what is open before it. */
function explainBracket(before: string, closing: string): string {
  const range = unclosed(before);
  if (!range) return messages.strayBracket(closing);
  const open = before.slice(...range);
  return (open === "(") === (closing === ")") ? messages.ifIncomplete : messages.otherBracket(open, closing);
}

/** The word, number or sign that comes next from the fault on. */
function wordAt(text: string, [from]: Range): Range {
  const next = from + blanksAt(text, from);
  const word = /^(?:[A-Za-z_]\w*|\d[\w.]*|[<>=!]=?|.)/su.exec(text.slice(next))?.[0] ?? "";
  return [next, next + word.length];
}

/** The range of a sign that is none of ours: of two characters that the fault is among, or of the one at it. */
function foreignSign(text: string, at: number): Range | null {
  const ranges: readonly Range[] = [
    [at - 1, at + 1],
    [at, at + 2],
    [at, at + 1],
  ];
  return (
    ranges.find(([from, to]) => from >= 0 && to <= text.length && Object.hasOwn(instead, text.slice(from, to))) ?? null
  );
}

/** A word of the language in capitals, which is none. */
const isShouted = (word: string): boolean => keywords.has(word.toLowerCase()) && !keywords.has(word);

/** True where a text ends so that a value has to follow. */
const endsOpen = (text: string): boolean =>
  /[-+*/^<>=,:([]$/.test(text) || /(?:^|\W)(?:if|then|else|and|or|not)$/.test(text);

/** True where the last `if` before a place has no `then` yet. */
const thenIsMissing = (before: string): boolean => {
  const words = before.match(/\b(?:if|then)\b/g) ?? [];
  return words.at(-1) === "if";
};

/** Range of the first bracket that is never closed. */
function unclosed(text: string): Range | null {
  const open: number[] = [];
  for (const match of text.matchAll(/"(?:[^"\\\n]|\\.)*"|[()[\]]/gs)) {
    if (match[0] === "(" || match[0] === "[") open.push(match.index);
    else if (match[0] === ")" || match[0] === "]") open.pop();
  }
  const last = open.at(-1);
  return last === undefined ? null : [last, last + 1];
}

function rangeOfLast(text: string, word: string, to: number): Range {
  const from = text.slice(0, to).lastIndexOf(word);
  return [from, from + word.length];
}

const blanksAt = (text: string, from: number): number => /^\s*/.exec(text.slice(from))?.[0].length ?? 0;
