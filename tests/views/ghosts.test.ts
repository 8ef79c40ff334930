import { expect, test, vi } from "vitest";
import type { Result } from "../../src/cells/index.ts";
import { Ghosts } from "../../src/views/ghosts.ts";

const ok: Result = { ok: true, value: 2, shape: { kind: "boolean" } };
const failed = { ok: false, error: { code: "not_finite", message: "", at: null, root: "a" } } as unknown as Result;

test("only what was chosen as a line and has a value for the cell is drawn", () => {
  const ghosts = new Ghosts();
  ghosts.take([
    { trial: null, isLine: true, program: null, result: () => ok },
    { trial: "steep", isLine: true, program: null, result: (id) => (id === "a" ? ok : undefined) },
    { trial: "flat", isLine: false, program: null, result: () => ok },
    { trial: "none", isLine: true, program: null, result: () => failed },
  ]);
  expect(ghosts.lines("a").map(({ name }) => name)).toEqual(["steep"]);
  expect(ghosts.lines("b")).toEqual([]);
});

test("news is told to who listens, but nothing where there was and is nothing", () => {
  const ghosts = new Ghosts();
  const heard = vi.fn();
  const stop = ghosts.onChange(heard);
  ghosts.take([]);
  expect(heard).not.toHaveBeenCalled();
  ghosts.take([{ trial: "steep", isLine: false, program: null, result: () => ok }]);
  ghosts.take([]);
  expect(heard).toHaveBeenCalledTimes(2);
  stop();
  ghosts.take([{ trial: "steep", isLine: false, program: null, result: () => ok }]);
  expect(heard).toHaveBeenCalledTimes(2);
});
