/** Holds a drawing to the picture kept beside its test. */
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";
import { standalone } from "../../../src/views/drawings/standalone.ts";

const views = new URL("../../../src/views/", import.meta.url);
const look = {
  theme: readFileSync(new URL("theme.css", views), "utf8"),
  drawing: readFileSync(new URL("drawings/drawing.css", views), "utf8"),
};

/**
 * Compares a drawing, as it stands alone, with the kept picture. Where they differ, or none is kept yet, the new one is
 * written beside it as `….actual.svg`: look at both, and let the new one take the place of the old if it is right.
 */
export function expectPicture(svg: SVGElement, kept: URL): void {
  const actual = new URL(kept.href.replace(/\.svg$/, ".actual.svg"));
  const text = pictureOf(svg);
  const before = existsSync(kept) ? readFileSync(kept, "utf8") : "";
  if (text === before) {
    rmSync(actual, { force: true });
    return;
  }
  writeFileSync(actual, text);
  expect(text, `the drawing differs from its kept picture; look at ${fileURLToPath(actual)}`).toBe(before);
}

/** One element a line, decimals to a tenth, so that a difference can be read. */
const pictureOf = (svg: SVGElement): string =>
  `${standalone(svg, look)
    .outerHTML.replace(/\d+\.\d{2,}/g, (number) => String(Math.round(Number(number) * 10) / 10))
    .replace(/></g, ">\n<")}\n`;
