/** Elements made by a document that is handed in: the same in the browser and for the manual page. */

export type Content = Node | string | null | readonly Content[];

/** An element with attributes and content; null in it stands for nothing. Texts are never markup. */
export function make(
  document: Document,
  tag: string,
  attributes: Readonly<Record<string, string>>,
  ...content: readonly Content[]
): HTMLElement {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  fill(element, content);
  return element;
}

function fill(element: Element, content: Content): void {
  if (content === null) return;
  if (isList(content)) for (const each of content) fill(element, each);
  else element.append(content);
}

const isList = (content: Content): content is readonly Content[] => Array.isArray(content);
