import { describe, expect, test } from "vitest";
import { firstTurn, type Happening, next, type Phase } from "../../../src/views/keeping/tenancy.ts";

/** The phases that a tab goes through, and all it does on its way. */
function after(...happenings: Happening[]): { phase: Phase; acts: string } {
  let phase = firstTurn.phase;
  const acts: string[] = [...firstTurn.acts];
  for (const happening of happenings) {
    const turn = next(phase, happening);
    phase = turn.phase;
    acts.push(...turn.acts);
  }
  return { phase, acts: acts.join(", ") };
}

describe("a tab", () => {
  test("writes where nobody else does, and says so", () => {
    expect(after("granted")).toEqual({ phase: "writing", acts: "try, say write" });
  });

  test("reads where another writes, and watches for it to leave", () => {
    expect(after("refused")).toEqual({ phase: "reading", acts: "try, watch" });
  });

  test("that reads is offered the pen when the writer has left, and does not take it by itself", () => {
    expect(after("refused", "left")).toEqual({ phase: "free", acts: "try, watch" });
  });

  test("that was offered the pen reads on where a third was quicker", () => {
    expect(after("refused", "left", "other writes")).toEqual({ phase: "reading", acts: "try, watch, watch" });
  });

  test("that takes over asks, waits in line, and writes once the pen is there", () => {
    expect(after("refused", "take")).toEqual({
      phase: "taking",
      acts: "try, watch, end watch, say ask, queue, wait",
    });
    expect(after("refused", "take", "other gives", "granted").phase).toBe("writing");
  });

  test("takes the pen by force only where the other does not answer", () => {
    expect(after("refused", "take", "late").acts).toMatch(/leave queue, steal$/);
  });

  test("goes on reading where the other cannot keep its changes", () => {
    expect(after("refused", "take", "other gives", "other keeps").phase).toBe("reading");
  });

  test("that is asked keeps its last edit before it lays the pen down", () => {
    expect(after("granted", "asked")).toEqual({ phase: "giving", acts: "try, say write, say give, keep" });
    expect(after("granted", "asked", "kept")).toEqual({
      phase: "reading",
      acts: "try, say write, say give, keep, lay down, watch",
    });
  });

  test("that is asked and cannot keep its last edit goes on writing, and says so", () => {
    expect(after("granted", "asked", "not kept")).toMatchObject({ phase: "writing" });
    expect(after("granted", "asked", "not kept").acts).toMatch(/say keep$/);
  });

  test("from which the pen is stolen reads, whatever it was doing with it", () => {
    expect(after("granted", "stolen").phase).toBe("reading");
    expect(after("granted", "asked", "stolen").phase).toBe("reading");
    expect(after("granted", "asked", "stolen", "kept").phase).toBe("reading");
  });

  test("that is closed lays down whatever it has, and does nothing more", () => {
    const ways: [Happening[], RegExp][] = [
      [["granted", "close"], /lay down$/],
      [["granted", "asked", "close"], /lay down$/],
      [["refused", "close"], /end watch$/],
      [["refused", "take", "close"], /leave queue, end wait$/],
    ];
    for (const [way, acts] of ways) {
      expect(after(...way).acts).toMatch(acts);
      expect(after(...way, "granted", "asked", "take", "left").acts).toBe(after(...way).acts);
    }
  });

  test("is moved by nothing that has no meaning in its phase", () => {
    expect(after("granted", "take", "other gives", "left", "late").phase).toBe("writing");
    expect(after("refused", "asked", "kept", "stolen").phase).toBe("reading");
  });
});
