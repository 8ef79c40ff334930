import { describe, expect, test } from "vitest";
import { parsePath, placeholders, segments } from "../../src/cells/path.ts";

describe("a name with fields and elements", () => {
  test.each(["span", "main_wing.span", "cants[2]", "a.b[1].c", " main . span ", "(a).b", "main.if"])(
    "%s is one",
    (text) => {
      expect(() => parsePath(text)).not.toThrow();
    },
  );
  test.each(["1 + 2", "f(2)", "12", "-a", "a[b]", "a[1 + 1]", "a[-1]", "5[a]", '"a"', "[a]", "a = b", "not a"])(
    "%s is none",
    (text) => {
      expect(() => parsePath(text)).toThrow(`“${text}” is not a name.`);
    },
  );
  test.each(["", "a.", "a b", "{a}"])("%j has a fault of its own", (text) => {
    expect(() => parsePath(text)).toThrow(/[.?]$/);
  });
});

describe("a note", () => {
  test.each([
    ["Span {span}.", ["span"]],
    ["{a}{b.c} {d[1]}", ["a", "b.c", "d[1]"]],
    ["nothing", []],
    ["", []],
    ["\\{a\\} {b}", ["b"]],
    ["{} {a", []],
    ["{a\nb}", []],
    ["{{a}}", ["a"]],
    [`{${"a".repeat(200)}}`, ["a".repeat(200)]],
    [`{${"a".repeat(201)}}`, []],
  ])("%j shows what stands between its braces", (text, live) => {
    expect(placeholders(text)).toEqual(live);
  });

  test("is cut without loss, a backslash before a brace left out of what is read", () => {
    const text = "A \\{b\\} {c} and \\d {e.f}";
    expect(
      segments(text)
        .map(({ source }) => source)
        .join(""),
    ).toBe(text);
    expect(
      segments(text)
        .map((each) => (each.live ? `<${each.text}>` : each.text))
        .join(""),
    ).toBe("A {b} <c> and \\d <e.f>");
  });
});
