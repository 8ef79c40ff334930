/** Reads a drawing back from its elements, for tests: where its texts stand and where its lines run. */
import { estimateWidth } from "../../../src/views/drawings/text-size.ts";

export interface TextOnSheet {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
export interface InkPoint {
  readonly x: number;
  readonly y: number;
  readonly of: string;
}

const numberOf = (element: Element, name: string) => Number(element.getAttribute(name) ?? 0);

/** The boxes of all texts: from the top of figures to the baseline, or below where letters reach there. */
export function textsOf(svg: Element): TextOnSheet[] {
  return [...svg.querySelectorAll("text")].map((element) => {
    const text = element.textContent ?? "";
    const size = numberOf(element, "font-size");
    const left = numberOf(element, "x");
    const baseline = numberOf(element, "y");
    const width = estimateWidth(text, { size, weight: numberOf(element, "font-weight") });
    const bottom = baseline + (/[gjpqy,;()_]/.test(text) ? 0.2 * size : 0);
    return { text, left, top: baseline - 0.7 * size, right: left + width, bottom };
  });
}

/** The lines that are drawn as a class, each as the points it runs through. */
export function linesOf(svg: Element, name: string): [number, number][][] {
  const data = [...svg.querySelectorAll(`path.${name}`)].map((path) => path.getAttribute("d") ?? "").join("");
  const lines = data.split("M").slice(1);
  return lines.map((line) => line.split("L").map((pair) => pair.split(",").map(Number) as [number, number]));
}

/** Points every half px along all lines and outlines; `skip` names classes of areas that texts may stand on. */
export function inkOf(svg: Element, skip: readonly string[] = []): InkPoint[] {
  return [...svg.querySelectorAll("path, circle, rect")].flatMap((element) => {
    const of = element.getAttribute("class") ?? element.localName;
    if (of.split(" ").some((name) => skip.includes(name))) return [];
    return outlineOf(element, of);
  });
}

function outlineOf(element: Element, of: string): InkPoint[] {
  if (element.localName === "path") return alongPath(element.getAttribute("d") ?? "", of);
  if (element.localName === "circle") return alongCircle(element, of);
  const [x, y, width, height] = ["x", "y", "width", "height"].map((name) => numberOf(element, name)) as [
    number,
    number,
    number,
    number,
  ];
  return alongPath(`M${x},${y}L${x + width},${y}L${x + width},${y + height}L${x},${y + height}Z`, of);
}

/** A circle in a path: two half turns from its left end. */
const circleInPath = /M([^,]+),([^a]+)a([^,]+),[^ ]+ 0 1,0 [^a]+a[^ ]+ 0 1,0 [^M]+/g;

function alongPath(data: string, of: string): InkPoint[] {
  const circles = [...data.matchAll(circleInPath)].flatMap(([, left, y, r]) =>
    around(Number(left) + Number(r), Number(y), Number(r), of),
  );
  return [...circles, ...alongLines(data.replaceAll(circleInPath, ""), of)];
}

function alongLines(data: string, of: string): InkPoint[] {
  if (!/^([ML]-?[\d.]+,-?[\d.]+|Z)*$/.test(data)) throw new Error(`got the path ${data}, expected M, L and Z`);
  const points: InkPoint[] = [];
  let start = { x: 0, y: 0 };
  let at = start;
  for (const [command = ""] of data.matchAll(/[MLZ][^MLZ]*/g)) {
    const [x = 0, y = 0] = command === "Z" ? [start.x, start.y] : command.slice(1).split(",").map(Number);
    if (command.startsWith("M")) start = { x, y };
    else {
      const steps = Math.max(1, Math.ceil(2 * Math.hypot(x - at.x, y - at.y)));
      for (let step = 0; step <= steps; step++) {
        points.push({ x: at.x + ((x - at.x) * step) / steps, y: at.y + ((y - at.y) * step) / steps, of });
      }
    }
    at = { x, y };
  }
  return points;
}

function alongCircle(element: Element, of: string): InkPoint[] {
  const [cx, cy, r] = ["cx", "cy", "r"].map((name) => numberOf(element, name)) as [number, number, number];
  return around(cx, cy, r, of);
}

function around(cx: number, cy: number, r: number, of: string): InkPoint[] {
  return Array.from({ length: 48 }, (_, index) => {
    const turn = (index * Math.PI) / 24;
    return { x: cx + r * Math.cos(turn), y: cy + r * Math.sin(turn), of };
  });
}

/** Every text that touches a line, another text or the edge of the sheet, in words; empty for a good drawing. */
export function touching(svg: Element, skip: readonly string[] = []): string[] {
  const texts = textsOf(svg);
  const ink = inkOf(svg, skip);
  const [, , width = 0, height = 0] = (svg.getAttribute("viewBox") ?? "").split(" ").map(Number);
  return texts.flatMap((text, index) => {
    const found: string[] = [];
    if (text.left < 0 || text.top < 0 || text.right > width || text.bottom > height) found.push("the edge");
    const point = ink.find(({ x, y }) => x >= text.left && x <= text.right && y >= text.top && y <= text.bottom);
    if (point) found.push(`a ${point.of} at ${point.x.toFixed(1)},${point.y.toFixed(1)}`);
    const other = texts
      .slice(index + 1)
      .find(
        (each) => each.left < text.right && text.left < each.right && each.top < text.bottom && text.top < each.bottom,
      );
    if (other) found.push(`"${other.text}"`);
    return found.map((what) => `"${text.text}" touches ${what}`);
  });
}
