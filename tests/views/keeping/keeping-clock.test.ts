import { expect, test } from "vitest";
import { gathering, KeepingClock } from "../../../src/views/keeping/keeping-clock.ts";
import { Time } from "./time.ts";

/** A clock whose keepings take as long as the test says, and fail where it says so. */
function started({ takes = 0 } = {}) {
  const time = new Time();
  const kept: number[] = [];
  let edits = 0;
  let atOnce = 0;
  let most = 0;
  let fails = false;
  const clock = new KeepingClock(async () => {
    const now = edits;
    most = Math.max(most, ++atOnce);
    if (takes > 0) await new Promise<void>((done) => time.after(takes, done));
    atOnce--;
    if (fails) throw new Error("no room");
    kept.push(now);
  }, time);
  return {
    time,
    clock,
    kept,
    most: () => most,
    fail: (now: boolean) => {
      fails = now;
    },
    edit: () => {
      edits++;
      clock.touch();
    },
  };
}

test("an edit is kept a moment later, once", async () => {
  const { time, clock, kept, edit } = started();
  edit();
  expect(clock.isKept).toBe(false);
  await time.pass(gathering - 1);
  expect(kept).toEqual([]);
  await time.pass(1);
  expect(kept).toEqual([1]);
  expect(clock.isKept).toBe(true);
  await time.pass(10_000);
  expect(kept).toEqual([1]);
});

test("edits that follow each other without a pause are kept all along, never later than a second", async () => {
  const { time, kept, edit } = started({ takes: 50 });
  for (let step = 1; step <= 600; step++) {
    edit();
    await time.pass(16);
    const oldest = step - (kept.at(-1) ?? 0);
    expect(oldest * 16).toBeLessThan(1000);
  }
  expect(kept.length).toBeGreaterThan(20);
  expect(kept.length).toBeLessThan(30);
});

test("never are two under way, however long one takes, and the last edit is kept in the end", async () => {
  const { time, kept, most, edit } = started({ takes: 2000 });
  for (let step = 0; step < 100; step++) {
    edit();
    await time.pass(90);
  }
  await time.pass(10_000);
  expect(most()).toBe(1);
  expect(kept.at(-1)).toBe(100);
});

test("flushing keeps at once, also what was edited while another keeping was under way", async () => {
  const { time, clock, kept, edit } = started({ takes: 100 });
  edit();
  const first = clock.flush();
  edit();
  const second = clock.flush();
  await time.pass(100);
  expect(await first).toBe(false);
  await time.pass(100);
  expect(await second).toBe(true);
  expect(kept).toEqual([1, 2]);
  await time.pass(gathering);
  expect(kept).toEqual([1, 2]);
});

test("flushing with nothing to keep does nothing", async () => {
  const { clock, kept } = started();
  expect(await clock.flush()).toBe(true);
  expect(kept).toEqual([]);
});

test("what failed is tried again after the next edit, and not before", async () => {
  const { time, clock, kept, edit, fail } = started();
  fail(true);
  edit();
  await time.pass(60_000);
  expect(clock.failed).toBe(true);
  expect(clock.isKept).toBe(false);
  fail(false);
  await time.pass(60_000);
  expect(kept).toEqual([]);
  edit();
  await time.pass(gathering);
  expect(kept).toEqual([2]);
  expect(clock.failed).toBe(false);
});

test("an edit made while a keeping fails is such a next edit", async () => {
  const { time, kept, edit, fail } = started({ takes: 100 });
  fail(true);
  edit();
  await time.pass(gathering + 50);
  edit();
  await time.pass(60);
  fail(false);
  await time.pass(gathering + 100);
  expect(kept).toEqual([2]);
});

test("flushing says so where it fails", async () => {
  const { clock, edit, fail } = started();
  fail(true);
  edit();
  expect(await clock.flush()).toBe(false);
});

test("a stopped clock keeps nothing more, but waits for what is under way", async () => {
  const { time, clock, kept, edit } = started({ takes: 100 });
  edit();
  await time.pass(gathering + 10);
  edit();
  const stopped = clock.stop();
  await time.pass(100);
  await stopped;
  edit();
  await time.pass(10_000);
  expect(await clock.flush()).toBe(false);
  expect(kept).toEqual([1]);
});
