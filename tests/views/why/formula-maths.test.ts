import { describe, expect, test } from "vitest";
import { parseFormula } from "../../../src/cells/index.ts";
import { formulaMaths } from "../../../src/views/why/formula-maths.ts";
import { leaf, type Maths, mathsText, row } from "../../../src/views/why/maths.ts";

const set = (text: string): Maths => row(...formulaMaths(parseFormula(text), { text }));
const read = (text: string): string => mathsText(set(text));

/** Tags and texts only: "mfrac(a, b)". */
const plan = (maths: Maths): string =>
  "text" in maths ? maths.text : `${maths.tag}(${maths.parts.map(plan).join(" ")})`;

describe("a typeset formula", () => {
  test("has fractions for divisions, roots, powers and bars", () => {
    expect(plan(set("a / (b + c)"))).toBe("mfrac(a mrow(b mrow(+ c)))");
    expect(plan(set("sqrt(a * b)"))).toBe("msqrt(mrow(a mrow(· b)))");
    expect(plan(set("x^2"))).toBe("msup(x 2)");
    expect(plan(set("abs(x - 1)"))).toBe("mrow(| mrow(x mrow(− 1)) |)");
    expect(plan(set("floor(x)"))).toBe("mrow(⌊ x ⌋)");
  });

  test("needs no brackets over and under a bar, under a root and in an exponent", () => {
    expect(read("(a + b) / (c - d)")).toBe("(a + b) / (c − d)");
    expect(plan(set("(a + b)^(n - 1)"))).toBe("msup(mrow(( mrow(a mrow(+ b)) )) mrow(n mrow(− 1)))");
  });

  test("keeps the brackets that the order needs, about negative numbers to the right of a sign and raised units too", () => {
    expect(read("a * (b + c)")).toBe("a · (b + c)");
    expect(read("a - (b - c)")).toBe("a − (b − c)");
    expect(read("a * -3")).toBe("a · (−3)");
    expect(read("a - -b")).toBe("a − (−b)");
    expect(read("(9 m/s)^2")).toBe("(9 m/s)^2");
    expect(read("-x^2")).toBe("−x^2");
    expect(read("(-x)^2")).toBe("(−x)^2");
    expect(read("2 * 3 mm")).toBe("2 · 3 mm");
    expect(read("not (a and b)")).toBe("not (a and b)");
  });

  test("reads names as words, and counts, letters and elements as indices", () => {
    expect(read("tip_break")).toBe("tip break");
    expect(plan(set("v_max"))).toBe("msub(v max)");
    expect(plan(set("panel_2"))).toBe("msub(panel 2)");
    expect(plan(set("x1"))).toBe("msub(x 1)");
    expect(plan(set("main_wing.area"))).toBe("msub(area main\u00a0wing)");
    expect(plan(set("cants[i + 1]"))).toBe("msub(cants mrow(i mrow(+ 1)))");
    expect(plan(set("main_wing.cants[2]"))).toBe("msub(cants mrow(main\u00a0wing , 2))");
    expect(read("2 * pi * gravity")).toBe("2 · π · g");
  });

  test("sets units upright with raised powers, shop fractions and powers of ten as such", () => {
    expect(read("1.2 kg/m^3")).toBe("1.2 kg/m³");
    expect(read("25%")).toBe("25%");
    expect(plan(set("1 3/8 in"))).toBe("mrow(mrow(1 \u202f mfrac(3 8)) \u202f in)");
    expect(plan(set("3/32 in"))).toBe("mrow(mfrac(3 32) \u202f in)");
    expect(read("2.5e-7")).toBe("2.5 · 10^(−7)");
  });

  test("an if is cases, every else if a case of its own", () => {
    const maths = set("if a > 1 then b else if c then d else 0");
    expect(plan(maths)).toContain("mtable(mtr(");
    expect(read("if a > 1 then b else if c then d else 0")).toBe("{b if a > 1; d if c; 0 otherwise");
  });

  test("comparisons and words of logic are their signs", () => {
    expect(read("a <= b and b != c or not d")).toBe("a ≤ b and b ≠ c or not d");
  });

  test("calls keep the names of their arguments; texts are quoted", () => {
    expect(read("wing(panels, left: others)")).toBe("wing(panels, left: others)");
    expect(read('material("light balsa")')).toBe("material(“light balsa”)");
    expect(read("[1 mm, 2 mm]")).toBe("[1 mm, 2 mm]");
  });

  test("comes in pieces at its outermost links, so that a long line can be broken there", () => {
    const pieces = (text: string) => formulaMaths(parseFormula(text), { text }).map(mathsText);
    expect(pieces("a + b * c - d")).toEqual(["a", "+ b · c", "− d"]);
    expect(pieces("wing(panels, left: others)")).toEqual(["wing(panels,", "left: others)"]);
    expect(pieces("[a, b, c]")).toEqual(["[a,", "b,", "c]"]);
    expect(pieces("a / b")).toEqual(["a / b"]);
    expect(pieces("a > 1 and b < 2")).toEqual(["a", "> 1", "and b < 2"]);
  });

  test("takes values in place of names, in brackets where they would be misread", () => {
    const values = new Map<string, readonly [string, "atom" | "quantity" | "negative"]>([
      ["a", ["−2", "negative"]],
      ["b", ["9 m/s", "quantity"]],
    ]);
    const put = (text: string): string =>
      mathsText(
        row(
          ...formulaMaths(parseFormula(text), {
            text,
            put: (path) => {
              const known = path.type === "name" ? values.get(path.name) : undefined;
              return known ? { maths: leaf("mn", known[0]), holds: known[1] } : null;
            },
          }),
        ),
      );
    expect(put("a * b")).toBe("−2 · 9 m/s");
    expect(put("b * a")).toBe("9 m/s · (−2)");
    expect(put("b^2 + c")).toBe("(9 m/s)^2 + c");
    expect(put("a^2 - a")).toBe("(−2)^2 − (−2)");
    expect(put("b / c")).toBe("9 m/s / c");
  });
});
