import { highlightTree, tagHighlighter, tags } from "@lezer/highlight";
import { parser } from "../cells/index.ts";

/** The classes of a formula's parts, shared by the page and the editor. */
export const formulaHighlighter = tagHighlighter([
  { tag: tags.function(tags.variableName), class: "f-call" },
  { tag: tags.variableName, class: "f-name" },
  { tag: tags.propertyName, class: "f-field" },
  { tag: tags.labelName, class: "f-label" },
  { tag: tags.number, class: "f-number" },
  { tag: tags.unit, class: "f-unit" },
  { tag: tags.string, class: "f-text" },
  { tag: [tags.keyword, tags.bool], class: "f-word" },
]);

/** A run of characters of one look. */
export interface Piece {
  readonly text: string;
  /** Empty for what has no look of its own. */
  readonly look: string;
  /** Part of the term that is marked. */
  readonly marked: boolean;
}

/**
 * A formula cut into pieces by their look, the marked range cut out of them. A mark without length takes the character
 * after it, or stands as an empty piece at the end.
 */
export function formulaPieces(text: string, mark: readonly [number, number] | null): Piece[] {
  const looks: { from: number; to: number; look: string }[] = [];
  highlightTree(parser.parse(text), formulaHighlighter, (from, to, look) => looks.push({ from, to, look }));
  const [from, to] = mark ? widened(mark, text.length) : [-1, -1];
  const cuts = new Set([0, text.length, from, to, ...looks.flatMap((look) => [look.from, look.to])]);
  const places = [...cuts].filter((place) => place >= 0 && place <= text.length).sort((a, b) => a - b);
  const pieces: Piece[] = [];
  let next = 0;
  places.slice(1).forEach((end, index) => {
    const start = places[index] ?? 0;
    while ((looks[next]?.to ?? Number.POSITIVE_INFINITY) <= start) next++;
    const look = looks[next];
    const inside = look !== undefined && look.from <= start;
    pieces.push({
      text: text.slice(start, end),
      look: inside ? look.look : "",
      marked: start >= from && end <= to,
    });
  });
  if (mark && from === to) pieces.push({ text: "", look: "", marked: true });
  return pieces;
}

/** A range that can be seen: one without length takes the character after it, if there is one. */
export function widened([from, to]: readonly [number, number], length: number): readonly [number, number] {
  const start = Math.min(from, length);
  return [start, Math.min(length, Math.max(to, from === to ? start + 1 : to))];
}
