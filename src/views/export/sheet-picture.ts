/** A figure as a picture of its own: its title above it, below it where it is from, in the light colours. */
import { type Look, standalone } from "../drawings/standalone.ts";

/** What stands around the figure. */
export interface SheetTexts {
  readonly title: string;
  readonly shows: string;
  readonly from: string;
}

const margin = 14;
const head = 40;
const foot = 30;

/** The whole as an SVG element that needs no style sheet, no font file and no script. */
export function sheetPicture(figure: SVGSVGElement, { title, shows, from }: SheetTexts, look: Look): SVGElement {
  const { ownerDocument: document } = figure;
  const make = (tag: string, attributes: Readonly<Record<string, string | number>>, content = ""): SVGElement => {
    const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
    for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
    if (content) element.textContent = content;
    return element;
  };
  const inner = figure.cloneNode(true) as SVGElement;
  for (const gone of inner.querySelectorAll(".choice-layer, .by-hand")) gone.remove();
  const size = (name: "width" | "height"): number => Number(figure.getAttribute(name));
  const [width, height] = [size("width") + 2 * margin, size("height") + head + foot];
  const description = [...inner.children].find((each) => each.tagName.toLowerCase() === "desc");
  const outer = make("svg", { class: "drawing", width, height, viewBox: `0 0 ${width} ${height}` });
  const line = (name: string, content: string, y: number, size: number, weight: number): SVGElement =>
    make("text", { class: name, x: margin + 4, y, "font-size": size, "font-weight": weight }, content);
  inner.setAttribute("x", String(margin));
  inner.setAttribute("y", String(head));
  outer.append(
    make("title", {}, title),
    make("desc", {}, [description?.textContent?.trim(), `${from}.`].filter(Boolean).join(" ")),
    make("rect", { class: "sheet-ground", width, height }),
    line("figure", title, 20, 15, 700),
    ...(shows ? [line("note", shows, 36, 12, 400)] : []),
    inner,
    line("note", from, height - 11, 11, 400),
  );
  return standalone(outer, look);
}
