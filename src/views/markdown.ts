/**
 * Prose to templates: paragraphs, headings, emphasis, lists, links, code, quotes. Every text stays a text: HTML and
 * character references are shown as they are written, pictures by their description.
 */
import { html, type TemplateResult } from "lit";
import type { Nodes, Parents, Root, RootContent } from "mdast";
import { fromMarkdown } from "mdast-util-from-markdown";
import { words } from "./words.ts";

/** Prose, read: what `proseTemplate` draws any number of times. */
export type Prose = Root;

/**
 * Reads prose. The places of live pieces are held by `hole`. A text far beyond what anybody writes would hold the page
 * up: it stays as it is written, and says so.
 */
export function readProse(text: string): Prose {
  const isBeyond = text.length > most.characters || nestedLine.test(text) || marksIn(text) > most.marks;
  const prose = isBeyond ? null : parse(text);
  return prose && depthOf(prose) <= most.depth ? prose : asWritten(text);
}

/** The template of prose; `live(i)` draws the i-th live piece. */
export function proseTemplate(prose: Prose, live: (index: number) => unknown): TemplateResult {
  const inner = (node: Parents): unknown[] => node.children.map((child) => nodeTemplate(child, inner, live));
  return html`${inner(prose)}`;
}

/** Holds the place of a live piece in the text that is parsed. */
export const hole = (index: number): string => `\uE000${index}\uE001`;

/** Text of a person without the characters that have a meaning of their own here. */
export const withoutHoles = (text: string): string => text.replace(/[\uE000-\uE002]/g, "");

/** The parser takes the square of a text's length, and drawing goes as deep as the text does. */
const most = { characters: 10_000, marks: 1_000, depth: 40 };

/** A line that begins with more blanks and marks of lists and quotes than any prose has. */
const nestedLine = new RegExp(`^[ \\t>*+\\-\\d.)]{${most.depth}}`, "m");

const marksIn = (text: string): number => text.match(/\*+|_+|\[|`+/g)?.length ?? 0;

function parse(text: string): Prose {
  // A character reference is decoded by way of markup, which the page's policy forbids: so none reaches the parser.
  return fromMarkdown(text.replaceAll("&", ampersand), {
    extensions: [{ disable: { null: ["htmlFlow", "htmlText", "characterReference", "definition"] } }],
  });
}

function depthOf(prose: Prose): number {
  let depth = -1;
  for (let level: readonly Nodes[] = [prose]; level.length > 0; depth++) {
    level = level.flatMap((node) => ("children" in node ? node.children : []));
  }
  return depth;
}

const asWritten = (text: string): Prose => ({
  type: "root",
  children: [
    { type: "paragraph", children: [{ type: "emphasis", children: [{ type: "text", value: words.proseAsWritten }] }] },
    { type: "code", value: text },
  ],
});

const ampersand = "\uE002";

function nodeTemplate(
  node: RootContent,
  inner: (node: Parents) => unknown[],
  live: (index: number) => unknown,
): unknown {
  switch (node.type) {
    case "paragraph":
      return html`<p>${inner(node)}</p>`;
    case "heading":
      return headingTemplate(node.depth, inner(node));
    case "text":
      return textParts(node.value, live);
    case "emphasis":
      return html`<em>${inner(node)}</em>`;
    case "strong":
      return html`<strong>${inner(node)}</strong>`;
    case "inlineCode":
      return html`<code>${textParts(node.value, live)}</code>`;
    case "code":
      return html`<pre><code>${textParts(node.value, live)}</code></pre>`;
    case "break":
      return html`<br />`;
    case "thematicBreak":
      return html`<hr />`;
    case "blockquote":
      return html`<blockquote>${inner(node)}</blockquote>`;
    case "list":
      return node.ordered ? html`<ol start=${node.start ?? 1}>${inner(node)}</ol>` : html`<ul>${inner(node)}</ul>`;
    case "listItem":
      return html`<li>${inner(node)}</li>`;
    case "link":
      return linkTemplate(plain(node.url), inner(node));
    case "image":
      return textParts(node.alt ?? "", live);
    default:
      return textParts(sourceOf(node), live);
  }
}

/** The page's own heading is the notebook's title, so that headings in prose begin one step below. */
function headingTemplate(depth: number, content: unknown[]): TemplateResult {
  if (depth === 1) return html`<h2>${content}</h2>`;
  return depth === 2 ? html`<h3>${content}</h3>` : html`<h4>${content}</h4>`;
}

/** Only web addresses lead anywhere; any other stands beside its text. */
function linkTemplate(url: string, content: unknown[]): TemplateResult {
  if (!/^https?:\/\/[^\s]+$/i.test(url)) return html`${content}${url === "" ? "" : ` (${url})`}`;
  return html`<a href=${url} target="_blank" rel="noopener noreferrer">${content}</a>`;
}

function textParts(text: string, live: (index: number) => unknown): unknown[] {
  return text.split(/(\uE000\d+\uE001)/).map((piece) => {
    const index = /^\uE000(\d+)\uE001$/.exec(piece)?.[1];
    return index === undefined ? plain(piece) : live(Number(index));
  });
}

const plain = (text: string): string => text.replaceAll(ampersand, "&");

const sourceOf = (node: Nodes): string => ("value" in node ? node.value : "");
