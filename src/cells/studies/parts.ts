/** A study spread over processes or machines: each computes its part and writes it down, then the parts are joined. */
import type { Notebook, StudyCell } from "../cell.ts";
import type { Row, Study } from "./study.ts";
import { studyMessages } from "./study-messages.ts";
import { piecesOf, type Share } from "./work.ts";

/** A part as it is written into a file. */
export interface Part {
  readonly format: typeof partFormat;
  /** The study's name. */
  readonly study: string;
  /** Which part of how many, counted from 1. */
  readonly part: readonly [index: number, of: number];
  /** Tells the state of the notebook that it was computed from. */
  readonly notebook: string;
  readonly rows: readonly Row[];
}

const partFormat = "spanwise-study-part";

/** Most parts of a study. */
const mostParts = 100_000;

/** Reads `2/8`. Says in an Error what else it is. */
export function readShare(text: string): Share {
  const match = /^\s*(\d{1,6})\s*\/\s*(\d{1,6})\s*$/.exec(text);
  const [index, of] = [Number(match?.[1]), Number(match?.[2])];
  if (!(index >= 1 && of >= index && of <= mostParts)) throw new Error(studyMessages.part(text));
  return { index, of };
}

export const partOf = (notebook: Notebook, { name }: StudyCell, { index, of }: Share, rows: readonly Row[]): Part => ({
  format: partFormat,
  study: name,
  part: [index, of],
  notebook: stateOf(notebook),
  rows,
});

/**
 * The rows of a whole study from what its parts' files hold, in any order. Says in an Error what is missing, twice there,
 * of another study or of another state of the notebook; `sources` names each file.
 */
export function joinParts(
  notebook: Notebook,
  { cell: { name }, pieces }: Study,
  parts: readonly unknown[],
  sources: readonly string[],
): readonly Row[] {
  const state = stateOf(notebook);
  const found = new Map<number, readonly Row[]>();
  let of = 0;
  for (const [place, part] of parts.entries()) {
    const refuse = (message: string): never => {
      throw new Error(`${sources[place]}: ${message}`);
    };
    if (!isPart(part)) throw refuse(studyMessages.notAPart);
    const [index, all] = part.part;
    of ||= all;
    if (part.study !== name) refuse(studyMessages.otherStudy(part.study, name));
    if (part.notebook !== state) refuse(studyMessages.otherNotebook);
    if (all !== of) refuse(studyMessages.otherCount(all, of));
    if (found.has(index)) refuse(studyMessages.partTwice(index));
    const { from, to } = piecesOf(pieces, { index, of });
    if (part.rows.length !== to - from) refuse(studyMessages.notAPart);
    found.set(index, part.rows);
  }
  if (of === 0) throw new Error(studyMessages.noPart);
  const missing = Array.from({ length: of }, (_, index) => index + 1).filter((index) => !found.has(index));
  if (missing.length > 0) throw new Error(studyMessages.partsMissing(missing, of));
  return Array.from({ length: of }, (_, index) => found.get(index + 1) ?? []).flat();
}

function isPart(value: unknown): value is Part {
  if (typeof value !== "object" || value === null) return false;
  const { format, study, part, notebook, rows } = value as Partial<Record<keyof Part, unknown>>;
  if (format !== partFormat || typeof study !== "string" || typeof notebook !== "string") return false;
  if (!Array.isArray(part) || part.length !== 2 || !part.every((each) => Number.isInteger(each) && each >= 1))
    return false;
  return part[0] <= part[1] && part[1] <= mostParts && Array.isArray(rows) && rows.every((row) => Array.isArray(row));
}

/**
 * A short text that two states of a notebook hardly ever share: everything that a study could depend on, put through the
 * hash of Fowler, Noll and Vo twice with different starts (RFC 9923).
 */
function stateOf({ cells, trials }: Notebook): string {
  const text = JSON.stringify({ cells, trials });
  const hash = (start: number): string => {
    let value = start;
    for (let index = 0; index < text.length; index++) value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
    return (value >>> 0).toString(16).padStart(8, "0");
  };
  return hash(0x811c9dc5) + hash(0x050c5d1f);
}
