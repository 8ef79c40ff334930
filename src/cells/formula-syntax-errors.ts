import { FormulaError } from "./errors.ts";
import type { Range } from "./formula-tree.ts";
import { messages } from "./messages.ts";
import { keywords } from "./names.ts";

/** The error for a place where the grammar found no way on: `at` is the parser's fault, `within` the node it stands in. */
export function explainSyntax(text: string, at: Range, within: string): FormulaError {
  const [message, range] = explain(text, at, within);
  return new FormulaError("syntax", message, range);
}

function explain(text: string, [from, to]: Range, within: string): [message: string, at: Range] {
  if (text.trim() === "") return [messages.emptyFormula, [0, text.length]];
  const mixed = /(\d+)\s+(\d+\/\d+)/.exec(text);
  if (mixed && from >= mixed.index && from <= mixed.index + mixed[0].length) {
    return [messages.fractionWithoutUnit(mixed[0]), [mixed.index, mixed.index + mixed[0].length]];
  }
  const quote = text.indexOf('"', from);
  if (quote >= 0 && text.slice(from, quote).trim() === "" && !/^"(?:[^"\\\n]|\\.)*"/s.test(text.slice(quote))) {
    return [messages.openText, [quote, text.length]];
  }
  const next = from + (/^\s*/.exec(text.slice(from))?.[0].length ?? 0);
  const end = text.trimEnd().length;
  if (next >= end) {
    const open = unclosed(text);
    if (open && (from > 0 || to > 0)) {
      const valueMissing = /[-+*/^<>=,([]\s*$/.test(text.slice(0, end));
      return [valueMissing ? messages.valueMissingAtEnd : messages.unclosed(text[open[0]] ?? "("), open];
    }
    return [messages.valueMissingAtEnd, [Math.max(0, end - 1), end]];
  }
  const word = /^(?:[A-Za-z_]\w*|\d[\w.]*|[<>=!]=?=?|&&|\|\||.)/su.exec(text.slice(next))?.[0] ?? "";
  const range: Range = [next, next + word.length];
  const before = text.slice(0, next).trimEnd();
  if (word === "==" || (word === "=" && before.endsWith("="))) return [messages.singleEquals, range];
  if (word === "&&" || word === "||" || word === "!") return [messages.wordsForLogic(word), range];
  if (word === "if") return [messages.ifElsewhere, range];
  if ((word === "then" || word === "else") && within !== "If") return [messages.strayWord(word), range];
  if (/^[)\]]$/.test(word)) {
    return [/[-+*/^<>=,([]$/.test(before) ? messages.valueMissingBefore(word) : messages.strayBracket(word), range];
  }
  if (/^[\w"([]/.test(word) && !keywords.has(word) && /[\w"\])%°]$/.test(before))
    return [messages.signMissing(word), range];
  if (!/^[\w\s"()[\],.:^*/+\-<>=!%°]/.test(word)) return [messages.strangeCharacter(word), range];
  return [messages.unexpected(word), range];
}

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
