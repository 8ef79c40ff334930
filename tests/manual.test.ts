import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { functions } from "../src/library/index.ts";
import { manualHtml } from "../src/manual.ts";

const template = `<!doctype html><html><head><link rel="stylesheet" crossorigin href="a.css"></head><body><!-- manual --></body></html>`;
const page = manualHtml(template);
const { document } = parseHTML(page);

test("every function has its place, with its parameters, formula, sources and computed examples", () => {
  for (const { name, summary, parameters, formula, sources, examples } of functions.values()) {
    const article = document.getElementById(`function-${name}`)?.closest("article");
    expect(article?.querySelector(".summary")?.textContent).toBe(summary);
    const told = [...(article?.querySelectorAll("tbody th") ?? [])].map(({ textContent }) => textContent);
    expect(told).toEqual(expect.arrayContaining(Object.keys(parameters)));
    const grounds = article?.querySelector(".grounds")?.textContent ?? "";
    for (const text of [formula, ...sources.map((source) => source.text)]) expect(grounds).toContain(text);
    expect(article?.querySelectorAll(".example")).toHaveLength(examples.length);
  }
});

test("every link leads to a place that is there, and every place is there once", () => {
  const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  const links = [...document.querySelectorAll("a")].map((link) => link.getAttribute("href"));
  expect(links.length).toBeGreaterThan(functions.size);
  expect(links.filter((href) => !href?.startsWith("#") || !ids.includes(href.slice(1)))).toEqual([]);
});

test("it needs no script and carries no style that the page's policy would refuse", () => {
  expect(page).not.toMatch(/<script|\sstyle=|\son\w+=|javascript:/);
});

test("headings go down step by step", () => {
  const levels = [...document.querySelectorAll("h1, h2, h3, h4")].map(({ tagName }) => Number(tagName[1]));
  expect(levels[0]).toBe(1);
  expect(levels.every((level, index) => index === 0 || level <= (levels[index - 1] ?? 0) + 1)).toBe(true);
});

test("signs in the texts of specs are texts, and the style can be asked for from a file", () => {
  expect(page).not.toContain("crossorigin");
  expect(document.querySelector("main")?.textContent).toContain("√");
});

test("a template without the place is refused", () => {
  expect(() => manualHtml("<html></html>")).toThrow("<!-- manual -->");
});
