import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { editCell, type Notebook, readNotebook, Session } from "../../../src/cells/index.ts";
import { functions } from "../../../src/library/index.ts";
import { Drafts } from "../../../src/views/keeping/drafts.ts";
import { Keeper } from "../../../src/views/keeping/keeper.ts";
import { type Hindrance, type Kept, ShelfError } from "../../../src/views/keeping/shelf.ts";
import { OpenFile } from "../../../src/views/open-file.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const notebook: Notebook = {
  title: "Arm",
  trials: [],
  cells: [{ id: "a1", kind: "given", name: "arm", formula: "2 m" }],
};

/** A keeper with a shelf that takes `takes` ms for each keeping, and fails as `fails` says. */
function begun({ takes = 20 } = {}) {
  const session = new Session(functions);
  session.open(notebook);
  const drafts = new Drafts();
  const shelf = {
    kept: [] as { readonly at: number; readonly kept: Kept; readonly after: number | null }[],
    fails: null as Hindrance | null,
    async put(kept: Kept, after: number | null): Promise<void> {
      await new Promise((resolve) => setTimeout(resolve, takes));
      if (shelf.fails) throw new ShelfError(shelf.fails);
      shelf.kept.push({ at: performance.now(), kept, after });
    },
    async putLast(kept: Kept): Promise<void> {
      shelf.kept.push({ at: performance.now(), kept, after: null });
    },
  };
  const told: string[] = [];
  const keeper = new Keeper(
    "n1",
    { session, file: new OpenFile(session), drafts, shelf },
    { onKept: () => told.push("kept"), onTrouble: (why, isNews) => told.push(`${why}${isNews ? ", news" : ""}`) },
  );
  keeper.begin();
  const set = (formula: string) => session.edit((before) => editCell(before, "a1", { formula }));
  const last = () => {
    const kept = shelf.kept.at(-1)?.kept;
    return kept && readNotebook(kept.text ?? "").cells.map((cell) => ("formula" in cell ? cell.formula : cell.kind));
  };
  return { session, drafts, shelf, keeper, told, set, last };
}

test("nothing is kept before anything is edited", async () => {
  const { shelf, keeper } = begun();
  await vi.advanceTimersByTimeAsync(5000);
  expect(shelf.kept).toEqual([]);
  expect([keeper.isKept, keeper.isThere, keeper.holds]).toEqual([true, false, true]);
});

test("the edits of a moment are kept together, by their last", async () => {
  const { shelf, keeper, set, last, told } = begun();
  for (const formula of ["3 m", "4 m", "5 m"]) set(formula);
  expect(keeper.isKept).toBe(false);
  await vi.advanceTimersByTimeAsync(1000);
  expect(shelf.kept.length).toBe(1);
  expect(last()).toEqual(["5 m"]);
  expect([keeper.isKept, keeper.isThere, told]).toEqual([true, true, ["kept"]]);
});

test.each([1, 150, 480])(
  "while edits come without a rest, none stands unkept for a second: %d ms a keeping",
  async (takes) => {
    const { shelf, set } = begun({ takes });
    const made: { readonly at: number; readonly formula: string }[] = [];
    for (let step = 0; step < 200; step += 1) {
      const formula = `${10 + step} m`;
      made.push({ at: performance.now(), formula });
      set(formula);
      await vi.advanceTimersByTimeAsync(30);
    }
    await vi.advanceTimersByTimeAsync(2000);
    for (const { at, formula } of made) {
      const found = shelf.kept.find(({ kept }) => Number.parseInt(formulaOf(kept), 10) >= Number.parseInt(formula, 10));
      expect((found?.at ?? Number.POSITIVE_INFINITY) - at).toBeLessThan(1000);
    }
  },
);

const formulaOf = ({ text }: Kept): string => {
  const [cell] = readNotebook(text ?? "").cells;
  return cell && "formula" in cell ? cell.formula : "";
};

test("each keeping names the revision that it follows, and the first of a notebook that was read goes on from there", async () => {
  const { shelf, keeper, set } = begun();
  set("3 m");
  const flushed = keeper.flush();
  await vi.advanceTimersByTimeAsync(20);
  expect(await flushed).toBe(true);
  const [first] = shelf.kept;
  if (!first) throw new Error("got nothing kept, expected the edit");
  keeper.wasRead({ ...first.kept.entry, revision: 7 });
  set("4 m");
  await vi.advanceTimersByTimeAsync(1000);
  expect(shelf.kept.map(({ after, kept }) => [after, kept.entry.revision])).toEqual([
    [0, 1],
    [7, 8],
  ]);
});

test("what cannot be kept is told once, counts as unkept, and is tried again at the next edit", async () => {
  const { shelf, keeper, set, last, told } = begun();
  shelf.fails = "full";
  set("3 m");
  await vi.advanceTimersByTimeAsync(1000);
  set("4 m");
  await vi.advanceTimersByTimeAsync(1000);
  expect(told).toEqual(["full, news", "full"]);
  expect([keeper.isKept, keeper.holds, keeper.trouble]).toEqual([false, false, "full"]);
  // No try without an edit.
  await vi.advanceTimersByTimeAsync(60_000);
  expect(told.length).toBe(2);
  shelf.fails = null;
  set("5 m");
  await vi.advanceTimersByTimeAsync(1000);
  expect(last()).toEqual(["5 m"]);
  expect([keeper.isKept, keeper.holds, keeper.trouble, told.at(-1)]).toEqual([true, true, null, "kept"]);
});

test("what is half typed is kept as it would be if the editor were left, and the notebook goes on without it", async () => {
  const { session, drafts, set, last, shelf } = begun();
  set("3 m");
  drafts.hold((before) => editCell(before, "a1", { formula: "3 m +" }));
  drafts.setAnswer("q1", { answer: "more", reason: "" });
  await vi.advanceTimersByTimeAsync(1000);
  expect(last()).toEqual(["3 m +"]);
  expect(shelf.kept.at(-1)?.kept.drafts).toEqual({ q1: { answer: "more", reason: "" } });
  expect(session.notebook.cells[0]).toMatchObject({ formula: "3 m" });
});

test("what is unkept when the page is left is kept at once, also while the edit before is still being kept", async () => {
  const { keeper, shelf, set, last } = begun({ takes: 100 });
  set("3 m");
  await vi.advanceTimersByTimeAsync(400);
  set("4 m");
  keeper.keepLast();
  expect(last()).toEqual(["4 m"]);
  expect(shelf.kept.length).toBe(1);
});

test("a notebook that can only be read is not kept, nor one whose keeper is closed", async () => {
  const { session, keeper, shelf, set } = begun();
  session.readOnly = true;
  keeper.touch();
  await vi.advanceTimersByTimeAsync(1000);
  session.readOnly = false;
  set("3 m");
  await keeper.close();
  set("4 m");
  await vi.advanceTimersByTimeAsync(1000);
  expect(shelf.kept).toEqual([]);
});
