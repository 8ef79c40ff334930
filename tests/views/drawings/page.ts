import { parseHTML } from "linkedom";

/** A document without a browser. */
export const { document } = parseHTML("<!doctype html><html><body></body></html>") as unknown as { document: Document };

/** An element and all in it with attributes in one order, to compare what was drawn by different ways. */
export function plain(element: Element): unknown {
  const attributes = [...element.attributes].map(({ name, value }) => [name, value]).sort();
  const children = [...element.children].map(plain);
  return { tag: element.tagName, attributes, children, text: children.length === 0 ? element.textContent : "" };
}
