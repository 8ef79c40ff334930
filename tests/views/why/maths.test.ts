import { expect, test } from "vitest";
import { parseFormula } from "../../../src/cells/index.ts";
import { formulaMaths } from "../../../src/views/why/formula-maths.ts";
import { mathsElement } from "../../../src/views/why/maths.ts";
import { document } from "../drawings/page.ts";

const element = (text: string): Element => mathsElement(formulaMaths(parseFormula(text), { text }), document);

test("is an element of MathML that says in one line what it shows", () => {
  const math = element("tip_break / 2 + 3 deg");
  expect(math.tagName.toLowerCase()).toBe("math");
  expect(math.getAttribute("alttext")).toBe("tip break / 2 + 3 deg");
});

test("marks signs between two things, of which a piece shows only one", () => {
  const [plus] = element("a + b").querySelectorAll("mo");
  expect(plus?.getAttribute("form")).toBe("infix");
  const [minus] = element("-a").querySelectorAll("mo");
  expect(minus?.hasAttribute("form")).toBe(false);
});

test("text stays text: what a name or a text holds is never markup", () => {
  const math = element('material("<img src=x>")');
  expect(math.querySelector("img")).toBeNull();
  expect(math.textContent).toContain("<img src=x>");
});
