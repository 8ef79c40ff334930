/** What holds for every chart of a study, tested on its examples. */
import { expect, it } from "vitest";
import type { StudyOptions } from "../../../../src/views/charts/studies/study-chart.ts";
import type { Example } from "../../../../src/views/drawings/example.ts";
import type { LiveDrawing, Surroundings } from "../../../../src/views/drawings/sketch.ts";
import { textsOf, touching } from "../../drawings/ink.ts";
import { document, plain } from "../../drawings/page.ts";
import { expectPicture } from "../../drawings/snapshot.ts";

/** Areas and targets are no lines: labels may stand on them. */
export const areas = ["area", "band", "choice", "share-bar", "wash"];

export const textsIn = (svg: Element): string[] => textsOf(svg).map(({ text }) => text);
export const descriptionOf = (svg: Element): string => svg.querySelector("desc")?.textContent ?? "";
export const namesIn = (svg: Element): string[] =>
  [...svg.querySelectorAll(".choice")].map((choice) => choice.getAttribute("aria-label") ?? "");

type Live<Data> = (data: Data, options: StudyOptions, surroundings: Surroundings) => LiveDrawing<Data, StudyOptions>;

/** Snapshots of the examples, and what must hold of them at any width. */
export function testChart<Data>(
  name: string,
  live: Live<Data>,
  examples: readonly Example<Data, StudyOptions>[],
): void {
  const draw = ({ data, options }: Example<Data, StudyOptions>, more: StudyOptions = {}): SVGSVGElement =>
    live(data, { ...options, ...more }, { document }).element;

  it.each(examples.map((example, index) => [example.title, example, index + 1] as const))(
    "draws %s as kept, at 660 and 330 px",
    (_, example, number) => {
      for (const width of [660, 330]) {
        expectPicture(draw(example, { width }), new URL(`${name}-${number}-${width}.svg`, import.meta.url));
      }
    },
  );
  it("has no label that touches a line, another label or the edge, at any width", () => {
    for (const example of examples) {
      for (const width of [240, 290, 330, 390, 470, 560, 660, 740, 900]) {
        const found = touching(draw(example, { width }), areas);
        expect(found, `${example.title} at ${width} px`).toEqual([]);
      }
    }
  });
  it("is a figure with a title and a description in words", () => {
    for (const example of examples) {
      const svg = draw(example);
      expect(svg.getAttribute("role")).toBe("figure");
      expect(svg.querySelector("title")?.textContent).not.toBe("");
      expect(descriptionOf(svg)).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
      expect(descriptionOf(svg).length).toBeGreaterThan(20);
    }
  });
  it("redrawn in place is the same as drawn afresh", () => {
    examples.forEach((before, index) => {
      const after = examples[(index + 1) % examples.length] ?? before;
      const drawing = live(before.data, before.options, { document });
      drawing.update(after.data, { ...after.options, width: 420 });
      expect(plain(drawing.element)).toEqual(plain(draw(after, { width: 420 })));
    });
  });
  it("refuses an option it does not know", () => {
    const [example] = examples;
    if (!example) throw new Error("got no example, expected one");
    // @ts-expect-error an unknown option is a type error too
    expect(() => draw(example, { colour: "red" })).toThrow('got the option "colour"');
  });
}
