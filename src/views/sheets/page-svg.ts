import { dashOf, looks, type Mark, type PageDrawing } from "./marks.ts";
import type { SvgTree } from "./svg-tree.ts";

/** A page as SVG at true size: one unit is one millimetre. */
export function pageSvg({ title, width, height, area, frame, content }: PageDrawing): SvgTree {
  const { x, y } = area;
  const view = `${x} ${y} ${area.width} ${area.height}`;
  return svgOfSize(width, height, title, [
    ...frame.map((mark) => markSvg(mark)),
    {
      tag: "svg",
      attributes: { x, y, width: area.width, height: area.height, viewBox: view, overflow: "hidden" },
      children: content.map((mark) => markSvg(mark)),
    },
  ]);
}

/** An SVG of this size in mm. */
export const svgOfSize = (width: number, height: number, title: string, body: readonly SvgTree[]): SvgTree => ({
  tag: "svg",
  attributes: {
    width: `${thousandths(width)}mm`,
    height: `${thousandths(height)}mm`,
    viewBox: `0 0 ${thousandths(width)} ${thousandths(height)}`,
  },
  children: [{ tag: "title", attributes: {}, children: [title] }, ...body],
});

/** How a mark looks where not as on paper. */
export interface Ink {
  readonly color: string;
  /** Of lines, mm; they are drawn through then, without dashes. */
  readonly width: number;
}

/** A line or a text as an element of SVG; in black, as on paper, where no ink is given. */
export function markSvg(mark: Mark, ink?: Ink): SvgTree {
  return mark.kind === "line" ? lineSvg(mark, ink) : textSvg(mark, ink);
}

const thousandths = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

function lineSvg({ layer, points }: Extract<Mark, { readonly kind: "line" }>, ink?: Ink): SvgTree {
  const { width } = ink ?? looks[layer];
  const dash = ink ? undefined : dashOf(layer, points);
  return {
    tag: "polyline",
    attributes: {
      points: points.map(([x, y]) => `${thousandths(x)},${thousandths(y)}`).join(" "),
      fill: "none",
      stroke: ink?.color ?? "#000",
      "stroke-width": width,
      "stroke-linejoin": "round",
      ...(dash && { "stroke-dasharray": dash.join(" ") }),
    },
    children: [],
  };
}

function textSvg(mark: Extract<Mark, { readonly kind: "text" }>, ink?: Ink): SvgTree {
  const { text, size, angle = 0, anchor = "start", isBold } = mark;
  const [x, y] = mark.at;
  return {
    tag: "text",
    attributes: {
      ...{ x, y },
      ...(angle !== 0 && { transform: `rotate(${thousandths(-angle)} ${thousandths(x)} ${thousandths(y)})` }),
      "font-family": "Helvetica, Arial, sans-serif",
      "font-size": size,
      "text-anchor": anchor,
      // Labels are placed by their middle.
      ...(anchor === "middle" && { "dominant-baseline": "central" }),
      ...(ink && { fill: ink.color }),
      ...(isBold && { "font-weight": 700 }),
    },
    children: [text],
  };
}
