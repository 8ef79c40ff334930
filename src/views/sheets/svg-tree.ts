/** An element of SVG as plain data: it becomes the text of a file, or an element of the page, by no detour over markup. */
export interface SvgTree {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (SvgTree | string)[];
}

const svgNamespace = "http://www.w3.org/2000/svg";

/** The text of a file. */
export function svgText(tree: SvgTree): string {
  return `${written({ ...tree, attributes: { xmlns: svgNamespace, ...tree.attributes } })}\n`;
}

function written({ tag, attributes, children }: SvgTree): string {
  const own = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(told(value))}"`);
  if (children.length === 0) return `<${tag}${own.join("")}/>`;
  const inner = children.map((child) => (typeof child === "string" ? escaped(child) : `\n${written(child)}`));
  return `<${tag}${own.join("")}>${inner.join("")}${typeof children.at(-1) === "string" ? "" : "\n"}</${tag}>`;
}

/** An element of this document. */
export function svgElement({ tag, attributes, children }: SvgTree): SVGElement {
  const element = document.createElementNS(svgNamespace, tag) as SVGElement;
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, told(value));
  element.append(...children.map((child) => (typeof child === "string" ? child : svgElement(child))));
  return element;
}

/** A thousandth of a millimetre is finer than any paper or cutter. */
const told = (value: string | number): string =>
  typeof value === "string" ? value : String(Math.round(value * 1000) / 1000 + 0);

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
