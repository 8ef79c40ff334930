/**
 * Reads JSON as the standard has it (RFC 8259), telling line, column and remedy where a text is broken: the platform's own
 * parser says other words in each browser, not always where, and drops all but the last of keys that stand twice.
 */
import { excerpt, messages, NotebookError, placeOf } from "./notebook-errors.ts";

/** Brackets that may stand within each other; a notebook has 5. The walk below is as deep, so the limit keeps it safe. */
export const deepest = 32;

/** Values that a text may hold; more would take seconds to check, and a notebook of 2,000 cells has 30,000. */
export const mostValues = 500_000;

/** The value of a JSON text, in objects and lists made by the platform's parser. @throws NotebookError */
export function readJson(text: string): unknown {
  checkJson(text);
  return JSON.parse(text);
}

function checkJson(text: string): void {
  let at = 0;
  let values = 0;
  const path: (string | number)[] = [];
  /** Where each bracket opened that is not closed yet. */
  const open: number[] = [];

  value();
  if (at < text.length) fail(messages.afterEnd);

  /** A value with the blanks around it. */
  function value(): void {
    if (++values > mostValues) fail(messages.tooMuch(mostValues));
    skipBlanks();
    const character = text[at];
    if (character === "{") object();
    else if (character === "[") list();
    else if (character === '"') skipText();
    else skipWord();
    skipBlanks();
  }

  function object(): void {
    const keys = new Set<string>();
    enter();
    while (text[at] !== "}") {
      if (text[at] !== '"') fail(messageForKey());
      const from = at;
      skipText();
      const key = JSON.parse(text.slice(from, at)) as string;
      path.push(key);
      if (keys.has(key)) failTwice(key, from);
      keys.add(key);
      skipBlanks();
      if (text[at] !== ":") fail(messages.colon);
      at++;
      value();
      path.pop();
      next("}");
    }
    leave();
  }

  function list(): void {
    enter();
    for (let index = 0; text[at] !== "]"; index++) {
      path.push(index);
      value();
      path.pop();
      next("]");
    }
    leave();
  }

  function enter(): void {
    if (open.length === deepest) fail(messages.tooDeep(deepest));
    open.push(at++);
    skipBlanks();
  }

  function leave(): void {
    open.pop();
    at++;
  }

  /** Past the comma to the next entry, or up to the closing bracket. */
  function next(close: "}" | "]"): void {
    if (text[at] === close) return;
    if (text[at] !== ",")
      fail(at === text.length ? messages.valueMissing : isComment() ? messages.comment : messages.comma(close));
    const comma = at++;
    skipBlanks();
    if (text[at] === close) fail(messages.commaBeforeEnd(close), comma);
    if (at === text.length) fail(messages.valueMissing);
  }

  function skipBlanks(): void {
    for (;;) {
      const code = text.charCodeAt(at);
      if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) return;
      at++;
    }
  }

  function skipText(): void {
    const from = at++;
    for (;;) {
      const code = text.charCodeAt(at);
      if (code === 0x22) break;
      if (code === 0x5c) {
        if (!/^(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.test(text.slice(at + 1, at + 6))) fail(messages.escape);
        at++;
      } else if (!(code >= 0x20)) {
        if (at >= text.length) fail(messages.openText, from);
        fail(code === 0x0a || code === 0x0d ? messages.breakInText : messages.controlInText);
      }
      at++;
    }
    at++;
  }

  /** A number, true, false or null. */
  function skipWord(): void {
    const from = at;
    while (/[\w.+-]/.test(text[at] ?? "")) at++;
    const word = text.slice(from, at);
    if (/^(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)$/.test(word)) return;
    at = from;
    fail(messageForValue(word));
  }

  function messageForValue(word: string): string {
    if (/^[-+.]?\d/.test(word)) return messages.number;
    if (isComment()) return messages.comment;
    if (isQuote(text[at])) return messages.singleQuotes;
    return word === "" ? messages.valueMissing : messages.word;
  }

  function messageForKey(): string {
    if (at === text.length) return messages.valueMissing;
    if (isComment()) return messages.comment;
    return isQuote(text[at]) ? messages.singleQuotes : messages.key;
  }

  function isComment(): boolean {
    return /^(?:\/[/*]|#)/.test(text.slice(at, at + 2));
  }

  /** Ends the walk; where the text ends inside a bracket, that is what is wrong, whatever was expected next. */
  function fail(what: string, where = at): never {
    const opened = open.at(-1);
    const early = where >= text.length && opened !== undefined;
    const told = early ? messages.endsEarly(text[opened] ?? "", positionOf(text, opened).line) : what;
    const { line, column } = positionOf(text, where);
    throw new NotebookError(`line ${line}, column ${column}`, messages.broken(line, column, told, nearBy(text, where)));
  }

  function failTwice(key: string, where: number): never {
    const place = placeOf(path);
    throw new NotebookError(place, messages.at(place, null, messages.keyTwice(key, positionOf(text, where).line)));
  }
}

/** Line and column of a position, both from 1; a line ends with a line feed, a carriage return or both together. */
function positionOf(text: string, at: number): { readonly line: number; readonly column: number } {
  const lines = text.slice(0, at).split(/\r\n?|\n/);
  return { line: lines.length, column: (lines.at(-1) ?? "").length + 1 };
}

/** What stands on the line at a position, and where there is nothing more, what stands before it. */
function nearBy(text: string, at: number): string {
  const after = /^[^\r\n]*/.exec(text.slice(at, at + 60))?.[0].trim() ?? "";
  if (after !== "") return excerpt(after, 24);
  return excerpt(
    text
      .slice(0, at)
      .slice(-200)
      .trim()
      .split(/[\r\n]/)
      .at(-1)
      ?.slice(-24) ?? "",
    24,
  );
}

const isQuote = (character: string | undefined): boolean => /^['`‘’“”„«»]$/.test(character ?? "");
