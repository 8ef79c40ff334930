import type { Page } from "playwright-core";
import type { Bench, Row } from "./bench.ts";
import { median, quantile, ratioText } from "./timing.ts";

const goal = 6;
const edits = 240;
const warmUp = 40;

/** One edit: main-thread milliseconds from the event to the end of its frame, and whether that frame showed it. */
interface Sample {
  readonly work: number;
  readonly shown: boolean;
}

/**
 * The demo's sliders are moved in real Chromium, one edit a frame. Work is what the main thread does from the event to
 * the frame: the event with its microtasks, then the frame's callbacks, style, layout and paint. Beside it runs the same
 * move of a bare slider that writes one text, in the same page.
 */
const editToPaint: Bench = async ({ openApp }) => {
  const { browser, url } = await openApp();
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  await page.getByRole("slider", { name: "slide tip_break" }).waitFor();
  await page.waitForTimeout(1000);
  const rows: Row[] = [];
  const bare = (await measure(page, null, "")).map(({ work }) => work);
  for (const name of ["tip_break", "span"]) {
    const samples = await measure(page, `slide ${name}`, `value of ${name}`);
    const work = samples.map((sample) => sample.work);
    const late = samples.filter(({ shown }) => !shown).length;
    rows.push({
      figure: `edit to paint, ${name} dragged, shipped demo`,
      measured: `p95 ${quantile(work, 0.95).toFixed(1)} ms, median ${median(work).toFixed(1)} ms, ${late} of ${samples.length} not in the next frame`,
      goal: `p95 at most ${goal} ms, all in the next frame`,
      ratio: `${ratioText(quantile(work, 0.95) / goal)} of the goal; ${ratioText(median(work) / median(bare))} times a bare slider`,
    });
  }
  return rows;
};

/** Moves the slider of that name back and forth; a bare one, made for the purpose, where the name is null. */
async function measure(page: Page, slider: string | null, output: string): Promise<Sample[]> {
  const handle = slider === null ? null : await page.getByRole("slider", { name: slider, exact: true }).elementHandle();
  const shown = slider === null ? null : await page.getByLabel(output, { exact: true }).elementHandle();
  const all = await page.evaluate(runInPage, { handle, shown, count: edits + warmUp });
  return all.slice(warmUp);
}

/** Runs in the page. */
async function runInPage(of: { handle: Node | null; shown: Node | null; count: number }): Promise<Sample[]> {
  let slider = of.handle as HTMLInputElement;
  let output = of.shown as HTMLElement;
  const made = document.createElement("div");
  if (!of.handle) {
    slider = document.createElement("input");
    slider.type = "range";
    output = document.createElement("output");
    slider.addEventListener("input", () => {
      output.textContent = slider.value;
    });
    made.append(slider, output);
    document.body.append(made);
  }
  const [low, high] = [Number(slider.min || 0), Number(slider.max || 100)];
  const task = () =>
    new Promise<void>((resolve) => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve();
      channel.port2.postMessage(0);
    });
  const samples: Sample[] = [];
  for (let index = 0; index < of.count; index++) {
    await new Promise(requestAnimationFrame);
    await task();
    const [before, stood] = [output.textContent, slider.value];
    let frame = 0;
    const painted = new Promise<void>((resolve) => {
      requestAnimationFrame(() => {
        frame = performance.now();
        task().then(resolve);
      });
    });
    const start = performance.now();
    slider.value = String(low + (high - low) * (0.5 + 0.4 * Math.sin(index * 0.9)));
    slider.dispatchEvent(new Event("input", { bubbles: true, composed: true }));
    await task();
    const handled = performance.now();
    await painted;
    // A slider that snaps to the step it stood on has nothing to show.
    const shown = output.textContent !== before || slider.value === stood;
    samples.push({ work: handled - start + performance.now() - frame, shown });
  }
  made.remove();
  return samples;
}

export default editToPaint;
