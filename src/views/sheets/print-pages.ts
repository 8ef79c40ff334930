import type { PageDrawing } from "./marks.ts";
import { pageSvg } from "./page-svg.ts";
import { svgElement } from "./svg-tree.ts";

/** Prints pages at true size, each on a sheet of paper of its own size, and nothing else. Ends when the dialog is closed. */
export async function printPages(pages: readonly PageDrawing[]): Promise<void> {
  const [first] = pages;
  if (!first) return;
  const place = document.createElement("div");
  place.className = "true-size";
  place.append(...pages.map((page) => svgElement(pageSvg(page))));
  const style = new CSSStyleSheet();
  style.replaceSync(`@page { size: ${first.width}mm ${first.height}mm; margin: 0; }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, style];
  document.body.append(place);
  try {
    // Chromium waits here until its dialog is closed; where printing goes on without, the event tells when it is done.
    await new Promise<void>((resolve) => {
      window.addEventListener("afterprint", () => resolve(), { once: true });
      window.print();
    });
  } finally {
    place.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== style);
  }
}
