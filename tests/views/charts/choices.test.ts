import { describe, expect, it } from "vitest";
import { choiceByKey, choiceNear } from "../../../src/views/charts/choices.ts";

describe("keys", () => {
  const from = { panel: 0, index: 2 };
  const by = (key: string, start = from) => choiceByKey(key, start, [5, 5]);
  it("lead along the swept value and between panels", () => {
    expect(by("ArrowRight")).toEqual({ panel: 0, index: 3 });
    expect(by("ArrowLeft")).toEqual({ panel: 0, index: 1 });
    expect(by("ArrowDown")).toEqual({ panel: 1, index: 2 });
    expect(by("ArrowUp", { panel: 1, index: 2 })).toEqual(from);
    expect(by("Home")).toEqual({ panel: 0, index: 0 });
    expect(by("End")).toEqual({ panel: 0, index: 4 });
  });
  it("stop at the ends", () => {
    expect(by("ArrowRight", { panel: 1, index: 4 })).toEqual({ panel: 1, index: 4 });
    expect(by("ArrowUp")).toEqual(from);
  });
  it("lead to a point that is there where the next panel has fewer", () => {
    expect(choiceByKey("ArrowDown", { panel: 0, index: 4 }, [5, 2])).toEqual({ panel: 1, index: 1 });
  });
  it("that lead nowhere give null", () => expect(by("Tab")).toBeNull());
});

describe("a place on the sheet", () => {
  const spots = [
    [
      { x: 10, y: 10 },
      { x: 30, y: 10 },
    ],
    [{ x: 10, y: 100 }],
  ];
  it("means the nearest point within reach", () => {
    expect(choiceNear(spots, { x: 22, y: 12 })).toEqual({ panel: 0, index: 1 });
    expect(choiceNear(spots, { x: 12, y: 95 })).toEqual({ panel: 1, index: 0 });
  });
  it("means none where all are far", () => expect(choiceNear(spots, { x: 60, y: 60 })).toBeNull());
});
