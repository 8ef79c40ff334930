import { describe, expect, it } from "vitest";
import { checkOptions, later, liveDrawing, type Mark, mark, textMark } from "../../../src/views/drawings/sketch.ts";
import { document, plain } from "./page.ts";

const live = (first: Mark) => liveDrawing((next: Mark) => next, first, undefined, { document });
const root = (...children: Mark[]) => mark("svg", {}, children);

describe("a drawing on the page", () => {
  it("is drawn with its attributes, texts and children; what is undefined is left away", () => {
    const { element } = live(mark("svg", { class: "a", width: 3, id: undefined }, [textMark("title", {}, "Wing")]));
    expect(element.namespaceURI).toBe("http://www.w3.org/2000/svg");
    expect(element.outerHTML).toContain('width="3"');
    expect(element.hasAttribute("id")).toBe(false);
    expect(element.textContent).toBe("Wing");
  });
  it.each([
    [
      "an attribute that changes, comes or goes",
      root(mark("path", { d: "M0,0", id: "a" })),
      root(mark("path", { d: "M1,1", class: "b" })),
    ],
    ["a text that changes", root(textMark("text", {}, "1")), root(textMark("text", {}, "2"))],
    ["more children", root(mark("g", {})), root(mark("g", {}, [mark("path", {})]), mark("g", {}))],
    [
      "fewer children",
      root(mark("g", {}, [mark("path", {}), mark("path", {})]), mark("g", {})),
      root(mark("g", {}, [mark("path", {})])),
    ],
    [
      "another kind of element",
      root(mark("path", { d: "M0,0" }), mark("g", {})),
      root(mark("circle", { r: 2 }), mark("g", {})),
    ],
    ["a text where children were", root(mark("g", {}, [mark("path", {})])), root(textMark("g", {}, "1"))],
    ["children where a text was", root(textMark("g", {}, "1")), root(mark("g", {}, [mark("path", {})]))],
  ])("takes %s in place", (_, before, after) => {
    const drawing = live(before);
    drawing.update(after, undefined);
    expect(plain(drawing.element)).toEqual(plain(live(after).element));
  });
  it("touches nothing that stays", () => {
    const drawing = live(root(mark("path", { d: "M0,0" }), mark("path", { d: "M1,1" })));
    const writes: string[] = [];
    for (const element of drawing.element.children) {
      element.setAttribute = (name: string, value: string) => void writes.push(`${name} ${value}`);
    }
    drawing.update(root(mark("path", { d: "M0,0" }), mark("path", { d: "M2,2" })), undefined);
    expect(writes).toEqual(["d M2,2"]);
  });
  it("leaves what can wait until nothing moves any more, and then makes it once", () => {
    const made: string[] = [];
    const told = (text: string): Mark => {
      const make = () => {
        made.push(text);
        return textMark("desc", {}, text);
      };
      return root(mark("path", { d: text }), later("desc", make));
    };
    const waiting = new Set<() => void>();
    const drawing = live(told("a"));
    const shown = () => [drawing.element.querySelector("path")?.getAttribute("d"), drawing.element.textContent];
    for (const text of ["b", "c"]) drawing.update(told(text), undefined, (act) => waiting.add(act));
    expect(shown()).toEqual(["c", "a"]);
    expect(waiting.size).toBe(1);
    for (const act of waiting) act();
    expect(shown()).toEqual(["c", "c"]);
    expect(made).toEqual(["a", "c"]);
  });
});

describe("options", () => {
  it("are refused where a drawing does not know them", () => {
    const known = { width: true } as const;
    expect(() => checkOptions({ width: 3 }, known, "plan")).not.toThrow();
    expect(() => checkOptions({ widht: 3 } as never, known, "plan")).toThrow(
      'got the option "widht" for the plan, expected one of width',
    );
  });
});
