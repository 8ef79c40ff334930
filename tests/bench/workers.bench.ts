import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Browser } from "playwright-core";
import type { Cell, Notebook, StudyCell } from "../../src/cells/cell.ts";
import { Crew } from "../../src/cells/crew/crew.ts";
import type { Port } from "../../src/cells/crew/port.ts";
import { readNotebook, writeNotebook } from "../../src/cells/notebook-file.ts";
import { functions } from "../../src/library/index.ts";
import type { Bench, Row } from "./bench.ts";
import { ratioText } from "./timing.ts";

const goal = 1.7;

/** Hands in threads of Node's, instead of workers of a browser. */
const threads = (program: string, most: number): Port => ({
  most,
  now: () => performance.now(),
  canReplace: () => true,
  later(ms, act) {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
  open(hear, broke) {
    const worker = new Worker(program);
    worker.on("message", hear);
    worker.on("error", broke);
    return { send: (message) => worker.postMessage(message), close: () => void worker.terminate() };
  },
});

type Fields = Pick<StudyCell, "study" | "inputs" | "results"> & Partial<StudyCell>;

/** Cells of a whole design that flies: its trim by the lattice, its modes of motion. */
const flight: readonly Cell[] = [
  { id: "w1", kind: "derived", name: "flown", formula: "trim(plover)" },
  { id: "w2", kind: "derived", name: "moves", formula: "modes(plover)" },
];
const whole: Fields = {
  ...{ study: "sweep", checks: ["little_loss"] },
  inputs: [{ input: "tip_break", points: 200 }],
  results: ["flown.sink", "moves.lateral.spiral.rate", "eda"],
};
const atRest: Fields = { study: "sweep", inputs: [{ input: "tip_break", points: 2000 }], results: ["eda", "loss"] };
const tolerance: Fields = {
  ...{ study: "tolerance", results: ["tip_righting", "v_righting"], builds: 10_000 },
  inputs: [
    { input: "tip_bend", plus_minus: "1 deg" },
    { input: "v_bend", plus_minus: "1 deg", law: "normal" },
  ],
};

/** Runs a study from the order to the last outcome; gives how long it took, in ms, and how many variants there were. */
function run(crew: Crew, { cells, trials }: Notebook, fields: Fields): Promise<number> {
  const study: StudyCell = { id: "bench", kind: "study", name: "bench", ...fields };
  const start = performance.now();
  return new Promise((resolve, reject) => {
    crew.study({ study, cells: [...cells, study], trials }, ({ status, message }) => {
      if (status === "refused") reject(new Error(message ?? ""));
      if (status === "done") resolve(performance.now() - start);
    });
  });
}

/** Studies over one and over two hands, and what a running study does to the thread that draws. */
const workers: Bench = async ({ root, openApp, bundle }) => {
  const program = await bundle("hand-thread.ts");
  const open = (name: string) => readNotebook(readFileSync(join(root, "notebooks", name), "utf8"));
  const demo = open("plover.json");
  const flying = { ...demo, cells: [...demo.cells, ...flight] };
  const lesson = open("from-flat-to-bent.json");
  const [one, two] = [1, 2].map((most) => new Crew(threads(program, most), functions)) as [Crew, Crew];
  const resting = process.memoryUsage().rss;
  let peak = resting;
  const watch = setInterval(() => {
    peak = Math.max(peak, process.memoryUsage().rss);
  }, 50);
  /** With one hand and with two, by turns, so that whatever else the machine does meets both; the best of several. */
  const timesOf = async (notebook: Notebook, fields: Fields): Promise<[number, number]> => {
    const times: [number[], number[]] = [[], []];
    // The first run also starts the threads and warms the code.
    for (let round = 0; round < 5; round++) {
      for (const [place, crew] of [one, two].entries()) times[place]?.push(await run(crew, notebook, fields));
    }
    const [alone, together] = times.map((all) => Math.min(...all.slice(1)));
    return [alone ?? Number.NaN, together ?? Number.NaN];
  };
  const [alone, together] = await timesOf(flying, whole);
  const [quickAlone, quick] = await timesOf(demo, atRest);
  const [buildsAlone, builds] = await timesOf(lesson, tolerance);
  clearInterval(watch);
  for (const crew of [one, two]) crew.dispose();
  const rate = (count: number, time: number): string => ((1000 * count) / time).toFixed(0);
  return [
    {
      figure: "sweep of 200 whole designs with trim and modes, two hands against one",
      measured: `${(together / 1000).toFixed(2)} s against ${(alone / 1000).toFixed(2)} s`,
      goal: `at least ${goal} times as fast`,
      ratio: `${ratioText(alone / together)} times as fast`,
    },
    {
      figure: "variants a second, two hands: with the lattice, and at rest without it",
      measured: `${rate(200, together)} with, ${rate(2000, quick)} without`,
      goal: "none set",
      ratio: `${ratioText(alone / together)} and ${ratioText(quickAlone / quick)} times one hand`,
    },
    {
      figure: "tolerance of the closed-form lesson, 10,000 builds, two hands against one",
      measured: `${(builds / 1000).toFixed(2)} s against ${(buildsAlone / 1000).toFixed(2)} s`,
      goal: "none set",
      ratio: `${ratioText(buildsAlone / builds)} times as fast`,
    },
    {
      figure: "memory of the process at its peak, three hands over all of this",
      measured: `${(peak / 1e6).toFixed(0)} MB`,
      goal: "none set",
      ratio: `${ratioText(peak / resting)} times that before`,
    },
    await longestTask(await openApp(), flying),
  ];
};

/**
 * A long study runs in the browser while a slider is moved 60 times, one move a frame; beside it the same moves without a
 * study. What a task of the main thread takes at most.
 */
async function longestTask(app: { readonly browser: Browser; readonly url: string }, flying: Notebook): Promise<Row> {
  const study: StudyCell = { id: "long", kind: "study", name: "long", ...whole, checks: [] };
  const others = flying.cells.filter(({ kind }) => kind !== "note" && kind !== "question");
  const withoutFlight = others.filter(({ id }) => !flight.some((each) => each.id === id));
  const moved = others.filter((cell) => "name" in cell && cell.name === "mid_break");
  const rest = (cells: readonly Cell[]) => cells.filter((cell) => !moved.includes(cell));
  const beside = await movesOf(app, { ...flying, cells: [...moved, ...rest(withoutFlight)] });
  const during = await movesOf(app, { ...flying, cells: [...moved, study, ...rest(others)] });
  return {
    figure: "longest task of the main thread, a slider moved 60 times while a study runs",
    measured: `${during.longest.toFixed(0)} ms, ${during.count} over 50 ms; without a study ${beside.longest.toFixed(0)} ms, ${beside.count}`,
    goal: "none over 50 ms",
    ratio: `${ratioText(during.longest / Math.max(1, beside.longest))} times that without`,
  };
}

async function movesOf(
  { browser, url }: { readonly browser: Browser; readonly url: string },
  notebook: Notebook,
): Promise<{ readonly longest: number; readonly count: number }> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  await page.evaluate(() => {
    for (const name of ["showOpenFilePicker", "showSaveFilePicker"])
      Object.defineProperty(window, name, { value: undefined });
  });
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open", exact: true }).click();
  const buffer = Buffer.from(writeNotebook({ ...notebook, title: "Bench" }));
  await (await chooser).setFiles({ name: "bench.json", mimeType: "application/json", buffer });
  const slider = page.getByRole("slider", { name: "slide mid_break", exact: true });
  await slider.waitFor();
  await page.waitForTimeout(3000);
  const tasks = await slider.evaluate(async (element) => {
    const durations: number[] = [];
    const observer = new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) durations.push(duration);
    });
    observer.observe({ type: "longtask" });
    const input = element as HTMLInputElement;
    for (let index = 0; index < 60; index++) {
      await new Promise(requestAnimationFrame);
      input.value = String(Number(input.min) + (Number(input.max) - Number(input.min)) * (0.3 + (index % 20) * 0.02));
      input.dispatchEvent(new Event("input", { bubbles: true }));
    }
    input.dispatchEvent(new Event("change", { bubbles: true }));
    // The study begins anew and its first outcomes come.
    await new Promise((resolve) => setTimeout(resolve, 3000));
    return durations;
  });
  await page.close();
  return { longest: Math.max(0, ...tasks), count: tasks.length };
}

export default workers;
