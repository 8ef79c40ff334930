import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

/** Straight dark lines on a page of paper, mm: where they begin, and how long they are. */
export interface Ruled {
  readonly width: number;
  readonly height: number;
  /** Level lines: x of the left end, y from above, length. */
  readonly level: readonly Line[];
  /** Upright lines: x, y of the upper end, length. */
  readonly upright: readonly Line[];
}
interface Line {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

const dotsPerInch = 400;
const host = "https://pdf.test";
const emptyPage = `<!doctype html><title>PDF</title><script type="module">
  window.reader = await import("/legacy/build/pdf.mjs");
</script>`;

/**
 * The straight lines of at least 40 mm on a page of a PDF file, found in its pixels: the file is turned into an image by
 * pdf.js, a reader of another hand, in a page of its own.
 */
export async function linesOnPage(page: Page, pdf: Uint8Array, number = 1): Promise<Ruled> {
  const folder = createRequire(import.meta.url)
    .resolve("pdfjs-dist/package.json")
    .replace(/package\.json$/, "");
  await page.route(`${host}/**`, (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === "/") return route.fulfill({ contentType: "text/html", body: emptyPage });
    if (pathname === "/file.pdf") return route.fulfill({ contentType: "application/pdf", body: Buffer.from(pdf) });
    return route.fulfill({ contentType: "text/javascript", body: readFileSync(folder + pathname.slice(1)) });
  });
  await page.goto(`${host}/`);
  await page.waitForFunction("window.reader");
  return page.evaluate(measure, { number, dotsPerInch });
}

/** Runs in the page. */
async function measure({ number, dotsPerInch }: { number: number; dotsPerInch: number }): Promise<Ruled> {
  const { reader } = window as unknown as { reader: typeof import("pdfjs-dist") };
  reader.GlobalWorkerOptions.workerSrc = "https://pdf.test/legacy/build/pdf.worker.mjs";
  const file = await reader.getDocument({ url: "https://pdf.test/file.pdf" }).promise;
  const paper = await file.getPage(number);
  const viewport = paper.getViewport({ scale: dotsPerInch / 72 });
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(viewport.width);
  canvas.height = Math.round(viewport.height);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("got no canvas");
  await paper.render({ canvas, canvasContext: context, viewport }).promise;
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
  const isDark = (x: number, y: number) => (data[4 * (y * width + x)] ?? 255) < 150;
  const mm = 25.4 / dotsPerInch;
  const least = 40 / mm;
  const runs = (across: number, along: number, dark: (a: number, b: number) => boolean) => {
    const found: { at: number; from: number; length: number }[] = [];
    for (let a = 0; a < across; a++) {
      let from = -1;
      for (let b = 0; b <= along; b++) {
        const on = b < along && dark(a, b);
        if (on && from < 0) from = b;
        if (!on && from >= 0) {
          if (b - from >= least) found.push({ at: a, from, length: b - from });
          from = -1;
        }
      }
    }
    // Neighbouring rows of pixels are one line: the longest of them.
    return found.filter(
      (run) =>
        !found.some(
          (other) =>
            other !== run &&
            Math.abs(other.at - run.at) <= 4 &&
            Math.abs(other.from - run.from) < 20 &&
            (other.length > run.length || (other.length === run.length && other.at < run.at)),
        ),
    );
  };
  const level = runs(height, width, (y, x) => isDark(x, y));
  const upright = runs(width, height, (x, y) => isDark(x, y));
  return {
    width: width * mm,
    height: height * mm,
    level: level.map(({ at, from, length }) => ({ x: from * mm, y: at * mm, length: length * mm })),
    upright: upright.map(({ at, from, length }) => ({ x: at * mm, y: from * mm, length: length * mm })),
  };
}
