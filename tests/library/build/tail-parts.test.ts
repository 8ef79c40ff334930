import { expect, test } from "vitest";
import { type TailParts, tailParts } from "../../../src/library/build/tail-parts.ts";
import { type WingSeat, wingSeat } from "../../../src/library/build/wing-seat.ts";
import { sampleGlider } from "../../../src/library/glide/sample-gliders.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { call } from "../call.ts";
import { ploverWing } from "../plover.ts";
import { areaOf, strokesOf } from "./strokes.ts";

const { tailplane, fin, stick, balance } = sampleGlider;
const parts = (glider: unknown) => call(tailParts, { glider }) as TailParts;
const seat = (glider: unknown, given: Record<string, unknown> = {}) => call(wingSeat, { glider, ...given }) as WingSeat;

test("tail parts have the areas of the tail", () => {
  const { pattern } = parts(sampleGlider);
  expect(pattern.parts.part).toEqual(["tailplane", "fin", "stick"]);
  expect(areaOf(strokesOf(pattern, "tailplane", "cut")[0] ?? [])).toBeCloseTo(tailplane?.area ?? 0, 12);
  expect(areaOf(strokesOf(pattern, "fin", "cut")[0] ?? [])).toBeCloseTo(fin?.area ?? 0, 12);
  expect(pattern.parts.width).toEqual([0.15, 0.05, stick?.length]);
});

test("every mark on the stick is named, ahead of it with an arrow where the next mark stands close behind", () => {
  const { pattern, marks } = parts(sampleGlider);
  const on = pattern.labels.part.flatMap((part, i) =>
    part === "stick" ? [{ text: pattern.labels.label[i] ?? "", x: pattern.labels.x[i] ?? 0 }] : [],
  );
  marks.mark.forEach((mark, i) => {
    const at = marks.at[i] ?? 0;
    const label = on.find(({ text }) => text.startsWith(mark));
    expect([mark, label?.text.endsWith("→"), (label?.x ?? 0) < at]).toEqual([
      mark,
      mark === "tailplane, leading edge",
      mark === "tailplane, leading edge",
    ]);
  });
});

test("a glider without a tail or a stick has no tail parts", () => {
  expect(() => parts({ wing: ploverWing, seat_height: 0, seat_angle: 0 })).toThrow(/neither tailplane, fin nor stick/);
});

test("a seat takes the root joint's angle and the wing's incidence", () => {
  const found = seat({ ...sampleGlider, wing: ploverWing, seat_angle: degrees(2) }, { width: 0.014 });
  expect(found.right_slope).toBeCloseTo(degrees(3), 12);
  expect(found.groove).toBeCloseTo(0.007 * Math.tan(degrees(3)), 12);
  // One corner of the side template is as much lower as the chord falls.
  expect(found.front_height - found.rear_height).toBeCloseTo(0.074 * Math.sin(degrees(2)), 12);
  const [outline] = strokesOf(found.pattern, "seat, side", "cut");
  expect(Math.max(...(outline ?? []).map(([, y]) => y))).toBeCloseTo(found.front_height, 12);
});

test("the balance mark lies the same distance behind the root at every joint", () => {
  const { balance: marks } = seat({ ...sampleGlider, wing: ploverWing });
  expect(marks.place).toEqual(["root", "joint 1–2", "joint 2–3"]);
  marks.behind.forEach((behind, k) => {
    expect(behind + (ploverWing.right.stations.x[k] ?? 0)).toBeCloseTo(balance?.x ?? 0, 12);
  });
});

test("a wing that would lie in the stick is refused with what to raise", () => {
  expect(() => seat({ ...sampleGlider, seat_height: 0.005 })).toThrow(
    /trailing edge .*below the stick.*Raise seat_height/,
  );
  const { stick: _stick, ...without } = sampleGlider;
  expect(() => seat(without)).toThrow(/no stick/);
});

test("a seat that reaches past the root panels is refused", () => {
  expect(() => seat({ ...sampleGlider, wing: ploverWing }, { width: 0.25 })).toThrow(
    /seat 250 mm wide reaches past the root panels, which end 105 mm/,
  );
});
