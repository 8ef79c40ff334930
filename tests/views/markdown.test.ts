import { describe, expect, test } from "vitest";
import { readProse } from "../../src/views/markdown.ts";
import { words } from "../../src/views/words.ts";

/** What stands in a prose, kind by kind, from the outside in. */
const kindsIn = (text: string): string[] => {
  const kinds: string[] = [];
  const walk = (node: object): void => {
    if ("type" in node) kinds.push(String(node.type));
    if ("children" in node) (node.children as object[]).forEach(walk);
  };
  walk(readProse(text));
  return kinds;
};

test("markup is text: it gives no node of its own kind", () => {
  for (const markup of ["<b>bold</b>", "<script>run()</script>", "a <img src=x onerror=run()> b", "<!-- note -->"]) {
    expect(kindsIn(markup).filter((kind) => kind === "html")).toEqual([]);
    expect(JSON.stringify(readProse(markup))).toContain(JSON.stringify(markup.slice(-4)).slice(1, -1));
  }
});

describe("what is built to hang the reader stays as it is written, and says so", () => {
  const texts = {
    "nested quotes": "> ".repeat(5000),
    "nested numbered lists": "1. ".repeat(5000),
    "lists set in ever deeper": Array.from({ length: 1000 }, (_, depth) => `${" ".repeat(depth)}- a`).join("\n"),
    "quotes that go on for thousands of lines": `${"> ".repeat(15)}${"a\n".repeat(30_000)}`,
    "nested emphasis": "*a **b ".repeat(1000) + "b** a*".repeat(1000),
    "brackets that never close": "[".repeat(9000),
    "marks of code of every length": "`a``b```".repeat(1200),
  };
  test.each(Object.entries(texts))("%s", (_, text) => {
    expect(readProse(text).children).toEqual([
      { type: "paragraph", children: [expect.objectContaining({ type: "emphasis" })] },
      { type: "code", value: text },
    ]);
    expect(JSON.stringify(readProse(text))).toContain(words.proseAsWritten);
  });
});

test("long and rich prose as people write it is laid out", () => {
  const chapter = `## Wing\n\nThe *outer* panel is **light**, \`3 mm\`:\n\n- one\n  - two\n    - three\n\n> as said\n\n`;
  const kinds = new Set(kindsIn(chapter.repeat(40)));
  expect([...kinds].sort()).toEqual(
    [
      "blockquote",
      "emphasis",
      "heading",
      "inlineCode",
      "list",
      "listItem",
      "paragraph",
      "root",
      "strong",
      "text",
    ].sort(),
  );
});
