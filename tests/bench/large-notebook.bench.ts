import type { Browser } from "playwright-core";
import { writeNotebook } from "../../src/cells/index.ts";
import type { Bench } from "./bench.ts";
import { heapOf } from "./heap.ts";
import { manyCells } from "./many-cells.ts";
import { median, quantile, ratioText } from "./timing.ts";

const rounds = 5;
const goals = { seconds: 1, megabytes: 200 };

/** What one opening of the notebook took and then held. */
interface Opening {
  /** From the choice of the file until the first slider was moved and the page had shown it, in s. */
  readonly usable: number;
  /** Main-thread milliseconds of moves of that slider once everything was at rest. */
  readonly moves: readonly number[];
  readonly megabytes: number;
}

/**
 * A file of 2,000 cells is chosen in real Chromium. Usable is it once its first slider has been moved and what follows
 * from that is painted; beside it 20 cells of the same kinds are opened.
 */
const largeNotebook: Bench = async ({ openApp }) => {
  const { browser, url } = await openApp();
  const large: Opening[] = [];
  const small: Opening[] = [];
  for (let round = 0; round < rounds; round++) {
    small.push(await open(browser, url, 20));
    large.push(await open(browser, url, 2000));
  }
  const [seconds, few] = [large, small].map((all) => median(all.map(({ usable }) => usable))) as [number, number];
  const megabytes = median(large.map((each) => each.megabytes));
  const moves = large.flatMap((each) => each.moves);
  const fewMoves = small.flatMap((each) => each.moves);
  return [
    {
      figure: "notebook of 2,000 cells, first screen usable",
      measured: `${seconds.toFixed(2)} s, with 20 cells ${few.toFixed(2)} s`,
      goal: `within ${goals.seconds} s`,
      ratio: `${ratioText(seconds / goals.seconds)} of the goal; ${ratioText(seconds / few)} times 20 cells`,
    },
    {
      figure: "notebook of 2,000 cells, heap with its elements",
      measured: `${megabytes.toFixed(0)} MB`,
      goal: `at most ${goals.megabytes} MB`,
      ratio: `${ratioText(megabytes / goals.megabytes)} of the goal`,
    },
    {
      figure: "notebook of 2,000 cells, edit to paint, a slider dragged",
      measured: `median ${median(moves).toFixed(1)} ms, p95 ${quantile(moves, 0.95).toFixed(1)} ms`,
      goal: "none of its own",
      ratio: `${ratioText(median(moves) / median(fewMoves))} times 20 cells`,
    },
  ];
};

async function open(browser: Browser, url: string, count: number): Promise<Opening> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  await page.getByRole("slider", { name: "slide span" }).waitFor();
  await page.waitForTimeout(1000);
  const usable = await page.evaluate(openInPage, writeNotebook(manyCells(count)));
  await page.waitForTimeout(2000);
  const moves = await page.evaluate(moveInPage);
  await page.waitForTimeout(1000);
  const megabytes = (await heapOf(page)) / 1e6;
  await page.close();
  return { usable: usable / 1000, moves, megabytes };
}

/** Runs in the page: gives milliseconds. */
async function openInPage(text: string): Promise<number> {
  const files = new DataTransfer();
  files.items.add(new File([text], "large.json", { type: "application/json" }));
  const input = document.querySelector<HTMLInputElement>("input.upload");
  if (!input) throw new Error("got no file input, expected one");
  const task = () =>
    new Promise<void>((resolve) => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve();
      channel.port2.postMessage(0);
    });
  const start = performance.now();
  input.files = files.files;
  input.dispatchEvent(new Event("change"));
  const shown = () => document.querySelector('output[aria-label="value of eda"]')?.textContent?.trim() ?? "";
  const slider = () => document.querySelector<HTMLInputElement>('input[aria-label="slide tip_break"]');
  while (!slider() || !/\d/.test(shown()) || !document.querySelector(".cell[aria-label='bent']")) {
    if (performance.now() - start > 60_000) throw new Error("got no first screen within a minute");
    await new Promise(requestAnimationFrame);
  }
  const knob = slider() as HTMLInputElement;
  const before = shown();
  knob.value = "14";
  knob.dispatchEvent(new Event("input", { bubbles: true, composed: true }));
  while (shown() === before) await new Promise(requestAnimationFrame);
  // The task after a frame's callbacks begins once the frame is painted.
  await task();
  return performance.now() - start;
}

/** Runs in the page: main-thread milliseconds from each move of the slider to the end of the frame that shows it. */
async function moveInPage(): Promise<number[]> {
  const knob = document.querySelector<HTMLInputElement>('input[aria-label="slide tip_break"]');
  if (!knob) throw new Error("got no slider, expected one");
  const task = () =>
    new Promise<void>((resolve) => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve();
      channel.port2.postMessage(0);
    });
  const times: number[] = [];
  for (let move = 0; move < 60; move++) {
    await new Promise(requestAnimationFrame);
    await task();
    let frame = 0;
    const painted = new Promise<void>((resolve) => {
      requestAnimationFrame(() => {
        frame = performance.now();
        task().then(resolve);
      });
    });
    const start = performance.now();
    knob.value = String(8 + (move % 12));
    knob.dispatchEvent(new Event("input", { bubbles: true, composed: true }));
    await task();
    const handled = performance.now();
    await painted;
    if (move >= 10) times.push(handled - start + performance.now() - frame);
  }
  return times;
}

export default largeNotebook;
