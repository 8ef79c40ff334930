import { html, nothing, type TemplateResult } from "lit";
import { guard } from "lit/directives/guard.js";
import type { CellError } from "../cells/index.ts";
import { formulaPieces, type Piece } from "./formula-highlight.ts";
import { words } from "./words.ts";

/** A formula at rest: highlighted text, the faulty term marked. Looked at again only where one of these changes. */
export const formulaLine = (text: string, mark: readonly [number, number] | null, waits: boolean): unknown =>
  guard([text, mark?.[0], mark?.[1], waits], () => line(text, mark, waits));

function line(text: string, mark: readonly [number, number] | null, waits: boolean): TemplateResult {
  if (text.trim() === "") return html`<code class="formula"><span class="f-empty">${words.emptyFormula}</span></code>`;
  // One line: blanks within the element are kept as they stand in the formula.
  return html`<code class="formula">${formulaPieces(text, mark).map((piece) => pieceTemplate(piece, waits))}</code>`;
}

function pieceTemplate({ text, look, marked }: Piece, waits: boolean) {
  if (marked) {
    const kind = waits ? "awaited" : "faulty";
    return html`<mark class="${kind}${text === "" ? " at-end" : ""}"><span class=${look || nothing}>${text || " "}</span></mark>`;
  }
  return look === "" ? breakable(text) : html`<span class=${look}>${breakable(text)}</span>`;
}

/** A long path may go on in the next line after a dot or before a bracket. */
const breakable = (text: string): unknown =>
  text.split(/(?<=\.)|(?=\[)/).map((part, index) => (index === 0 ? part : html`<wbr />${part}`));

/** Where an error marks the formula of its own cell; null where it marks something else, such as the name. */
export function markOf(error: CellError | undefined, text: string): readonly [number, number] | null {
  if (!error || error.place || nameCodes.has(error.code)) return null;
  const [from, to] = error.at;
  return from === 0 && to === 0 && text.length > 0 && error.code !== "syntax" ? null : error.at;
}

/** Codes of errors that are about the cell's name. */
export const nameCodes: ReadonlySet<string> = new Set(["duplicate_name", "reserved_name"]);
