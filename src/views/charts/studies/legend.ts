import type { Box } from "../../drawings/geometry.ts";
import { type Mark, mark, round } from "../../drawings/sketch.ts";
import { straight, strokeMarks, textAt } from "../../drawings/strokes.ts";
import { type Measure, shorten } from "../../drawings/text-size.ts";
import { hatching } from "../hatch.ts";
import { small } from "../panels.ts";

/** One thing that a legend explains: a line or an area of a class, or hatching. */
export interface LegendItem {
  readonly sample: "line" | "area" | "hatch" | "disc" | "ring";
  /** Class of the sample. */
  readonly class: string;
  readonly text: string;
}

/** A legend in rows, each item as wide as it is; `bottom` is where it ends, or `top` where there is nothing to explain. */
export function legendMarks(
  items: readonly LegendItem[],
  { left, right, top }: Pick<Box, "left" | "right" | "top">,
  measure: Measure,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  let x = left;
  let y = top + 12;
  const marks = items.flatMap((item) => {
    const text = shorten(item.text, right - left - sampleWidth - 7, small, measure);
    const width = sampleWidth + 7 + measure(text, small);
    if (x > left && x + width > right) {
      x = left;
      y += rowHeight;
    }
    const made = [...sampleMarks(item, x, y), textAt("note", text, { x: x + sampleWidth + 7, y }, small)];
    x += width + 22;
    return made;
  });
  return { marks, bottom: items.length === 0 ? top : y + 6 };
}

function sampleMarks({ sample, class: name }: LegendItem, x: number, y: number): Mark[] {
  const box = { left: x, right: x + sampleWidth, top: y - 10, bottom: y + 1 };
  const corners = [
    { x: box.left, y: box.top },
    { x: box.right, y: box.top },
    { x: box.right, y: box.bottom },
    { x: box.left, y: box.bottom },
  ];
  const middle = { x: x + sampleWidth / 2, y: y - 4.5 };
  switch (sample) {
    case "line":
      return strokeMarks([straight(name, { x: box.left, y: middle.y }, { x: box.right, y: middle.y })]);
    case "area":
      return [
        mark("rect", { class: name, x: round(x), y: round(box.top), width: sampleWidth, height: box.bottom - box.top }),
      ];
    case "hatch":
      return strokeMarks(hatching([corners], []));
    case "disc":
    case "ring":
      return [mark("circle", { class: name, cx: round(middle.x), cy: round(middle.y), r: 5 })];
  }
}

const sampleWidth = 26;
const rowHeight = 19;
