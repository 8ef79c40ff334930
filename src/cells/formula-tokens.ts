/**
 * Tokens that a plain lexer cannot tell apart: a number with the unit that belongs to it, and the shop fraction. A unit
 * follows a number only; `3/32 in` is one literal, `3/32` a division.
 */
import { ExternalTokenizer, type InputStream } from "@lezer/lr";
import { MisplacedFraction, Numeral, ShopFraction, Unit } from "./formula.grammar.terms";
import { keywords } from "./names.ts";

export const literalTokens = new ExternalTokenizer((input, stack) => {
  if (stack.canShift(Numeral)) readNumber(input);
  else if (stack.canShift(Unit)) readUnit(input);
});

/** `12`, `1.5e-3`, `.5`, or a shop fraction together with its unit. */
function readNumber(input: InputStream): void {
  const whole = digits(input, 0);
  if (whole > 0) {
    const fraction = fractionAt(input, whole);
    if (fraction) {
      input.acceptToken(fraction.misplaced ? MisplacedFraction : ShopFraction, fraction.end);
      return;
    }
  }
  let end = whole;
  if (is(input, end, ".") && isDigit(input.peek(end + 1))) end = digits(input, end + 1);
  if (end === 0) return;
  if (is(input, end, "e") || is(input, end, "E")) {
    const sign = is(input, end + 1, "-") || is(input, end + 1, "+") ? 1 : 0;
    const exponent = digits(input, end + 1 + sign);
    if (exponent > end + 1 + sign) end = exponent;
  }
  input.acceptToken(Numeral, end);
}

/**
 * A shop fraction whose first number ends at `first`: `3/32` or `1 3/8`, with a unit after it. It is misplaced before
 * any unit but the bare `in` and `ft`, and right after `/` or `^`.
 */
function fractionAt(input: InputStream, first: number): { end: number; misplaced: boolean } | null {
  let slash = first;
  if (!is(input, slash, "/")) {
    const second = blanks(input, first);
    slash = digits(input, second);
    if (second === first || slash === second || !is(input, slash, "/")) return null;
  }
  const end = digits(input, slash + 1);
  if (end === slash + 1) return null;
  const unitFrom = blanks(input, end);
  const unitTo = unitEnd(input, unitFrom);
  if (unitTo === unitFrom) return null;
  let before = -1;
  while (isBlank(input.peek(before))) before--;
  const divides = is(input, before, "/") || is(input, before, "^");
  const unit = slice(input, unitFrom, unitTo);
  return { end: unitTo, misplaced: divides || (unit !== "in" && unit !== "ft") };
}

function readUnit(input: InputStream): void {
  const end = unitEnd(input, 0);
  if (end > 0) input.acceptToken(Unit, end);
}

/** Where the run of units that begins at `from` ends: `m/s^2`, `N s`, also of words that are no unit. */
function unitEnd(input: InputStream, from: number): number {
  let end = unitWord(input, from);
  if (end === from) return from;
  for (;;) {
    end = unitPower(input, end);
    const next = is(input, end, "/") ? end + 1 : blanks(input, end);
    const after = next === end ? next : unitWord(input, next);
    if (after === next) return end;
    end = after;
  }
}

/** Where the unit word at `from` ends; `from` itself where there is none: keywords and calls are not units. */
function unitWord(input: InputStream, from: number): number {
  let end = from;
  if (is(input, from, "%")) return from + 1;
  if (is(input, from, "°")) {
    end = from + 1;
    return (is(input, end, "C") || is(input, end, "F")) && !isWord(input.peek(end + 1)) ? end + 1 : end;
  }
  if (!isWord(input.peek(from)) || isDigit(input.peek(from))) return from;
  while (isWord(input.peek(end))) end++;
  if (is(input, blanks(input, end), "(")) return from;
  return keywords.has(slice(input, from, end)) ? from : end;
}

/** The end of a whole power written tight, as in `m^2`, `s^-1`; a power of another kind is told as an unknown unit. */
function unitPower(input: InputStream, from: number): number {
  if (!is(input, from, "^")) return from;
  const sign = is(input, from + 1, "-") ? 1 : 0;
  let end = from + 1 + sign;
  while (isWord(input.peek(end)) || (is(input, end, ".") && isDigit(input.peek(end + 1)))) end++;
  return end === from + 1 + sign ? from : end;
}

function digits(input: InputStream, from: number): number {
  let end = from;
  while (isDigit(input.peek(end))) end++;
  return end;
}

function blanks(input: InputStream, from: number): number {
  let end = from;
  while (isBlank(input.peek(end))) end++;
  return end;
}

function slice(input: InputStream, from: number, to: number): string {
  let text = "";
  for (let at = from; at < to; at++) text += String.fromCharCode(input.peek(at));
  return text;
}

const is = (input: InputStream, at: number, character: string): boolean => input.peek(at) === character.charCodeAt(0);
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isBlank = (code: number): boolean => code === 32 || code === 9 || code === 10 || code === 13 || code === 0xa0;
const isWord = (code: number): boolean =>
  isDigit(code) || (code >= 65 && code <= 90) || (code >= 97 && code <= 122) || code === 95;
