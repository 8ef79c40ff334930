import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Cell, type Notebook, readNotebook, Session } from "../../src/cells/index.ts";
import { functions } from "../../src/library/index.ts";
import { quickPart } from "../cells/quick-part.ts";
import type { Bench, BenchContext, Row } from "./bench.ts";
import { heapOf } from "./heap.ts";
import { ratioText } from "./timing.ts";

/** Bytes after the first edits and after all of them, without the steps that could be undone. */
interface Heaps {
  readonly early: number;
  readonly late: number;
}

const counts = { early: 1000, late: 10_000 };

/** 10,000 edits of the demo, each computed before the next: by the session alone, and on the page in real Chromium. */
const manyEdits: Bench = async (context) => [
  rowOf("10,000 edits of the demo, heap of the session", await inNode(context)),
  rowOf("10,000 edits of the demo, heap of the page with its elements", await inPage(context)),
];

function rowOf(figure: string, { early, late }: Heaps): Row {
  const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(2);
  return {
    figure,
    measured: `${megabytes(late)} MB, after the first 1,000 ${megabytes(early)} MB`,
    goal: "within 10 %",
    ratio: `${ratioText(late / early)} times the first`,
  };
}

async function inNode({ root }: BenchContext): Promise<Heaps> {
  if (!globalThis.gc) throw new Error("got no gc, expected --expose-gc");
  const session = new Session(functions);
  session.open(quickPart(readNotebook(readFileSync(join(root, "notebooks", "plover.json"), "utf8"))));
  const until = async (from: number, to: number): Promise<number> => {
    await editDemo(session, from, to, () => session.settled());
    await new Promise((resolve) => setTimeout(resolve, 100));
    for (let round = 0; round < 3; round++) globalThis.gc?.();
    return process.memoryUsage().heapUsed;
  };
  return { early: await until(0, counts.early), late: await until(counts.early, counts.late) };
}

/** A frame is drawn after each edit, as for a person. */
async function inPage({ openApp }: BenchContext): Promise<Heaps> {
  const { browser, url } = await openApp();
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(url);
  await page.getByRole("slider", { name: "slide tip_break" }).waitFor();
  const until = async (from: number, to: number): Promise<number> => {
    const session = `document.querySelector("spanwise-page").desk.session`;
    await page.evaluate(`(${editDemo})(${session}, ${from}, ${to}, () => new Promise(requestAnimationFrame))`);
    await page.waitForTimeout(2000);
    return heapOf(page);
  };
  return { early: await until(0, counts.early), late: await until(counts.early, counts.late) };
}

/**
 * Edits of every sort in turns of ten, after which the notebook is as it was but for its givens: givens moved, a formula
 * written in another way, cells put in that name each other and taken out again, the named one first. Then lets go of
 * the history. Runs in the page, too, so it names nothing outside itself.
 */
async function editDemo(session: Session, from: number, to: number, pause: () => Promise<unknown>): Promise<void> {
  const put = (notebook: Notebook, place: number, cell: Cell): Notebook => ({
    ...notebook,
    cells: [...notebook.cells.slice(0, place), cell, ...notebook.cells.slice(place)],
  });
  const change = (notebook: Notebook, name: string, formula: (before: string) => string): Notebook => ({
    ...notebook,
    cells: notebook.cells.map((cell) => {
      return "name" in cell && "formula" in cell && cell.name === name
        ? { ...cell, formula: formula(cell.formula) }
        : cell;
    }),
  });
  const remove = (notebook: Notebook, id: string): Notebook => ({
    ...notebook,
    cells: notebook.cells.filter((cell) => cell.id !== id),
  });
  const edit = (notebook: Notebook, index: number): Notebook => {
    const turn = index % 10;
    const [first, second] = [`first_${index - turn}`, `second_${index - turn}`];
    const amount = (index * 7) % 20;
    if (turn === 0 || turn === 2) return change(notebook, "tip_break", () => `${amount / 2} deg`);
    if (turn === 1 || turn === 5) return change(notebook, "span", () => `${400 + 10 * amount} mm`);
    if (turn === 3) return change(notebook, "nose_clay", () => `${2 + amount / 10} g`);
    if (turn === 4)
      return change(notebook, "eda", (before) => (before.startsWith("(") ? before.slice(1, -1) : `(${before})`));
    if (turn === 6) return put(notebook, 20, { id: first, kind: "derived", name: first, formula: "2 * span" });
    if (turn === 7) return put(notebook, 5, { id: second, kind: "derived", name: second, formula: `${first} + span` });
    return remove(notebook, turn === 8 ? first : second);
  };
  for (let index = from; index < to; index++) {
    session.edit((notebook) => edit(notebook, index));
    await pause();
  }
  // Opening the notebook that is open lets go of its history and touches nothing else.
  session.open(session.notebook);
}

export default manyEdits;
