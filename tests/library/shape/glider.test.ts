import { describe, expect, test } from "vitest";
import type { Part } from "../../../src/library/mass/part-record.ts";
import { degrees } from "../../../src/library/numerics/degrees.ts";
import { fin } from "../../../src/library/shape/fin.ts";
import { fuselageStick } from "../../../src/library/shape/fuselage-stick.ts";
import { type FuselageStick, fuselageStickRecord } from "../../../src/library/shape/fuselage-stick-record.ts";
import { glider } from "../../../src/library/shape/glider.ts";
import { type Glider, gliderRecord } from "../../../src/library/shape/glider-record.ts";
import { tailplane } from "../../../src/library/shape/tailplane.ts";
import type { Tailplane } from "../../../src/library/shape/tailplane-record.ts";
import { call, Refusal } from "../call.ts";
import { ploverFin, ploverSeat, ploverStick, ploverTailplane, ploverWing } from "../plover.ts";

const { density: _, ...stickSizes } = ploverStick;
const tail = call(tailplane, ploverTailplane) as Tailplane;
const stick = call(fuselageStick, stickSizes) as FuselageStick;
const weighed: Part = {
  mass: 0.0169,
  x: 0.0312,
  y: 0,
  z: 0.011,
  ixx: 9e-5,
  iyy: 1.6e-4,
  izz: 2.3e-4,
  ixy: 0,
  ixz: 0,
  iyz: 0,
};
const line = (value: unknown) => (gliderRecord.text as (value: unknown) => string)(value);

describe("a glider", () => {
  test("holds its parts as they were given, and what follows from them", () => {
    const whole = call(glider, {
      wing: ploverWing,
      tailplane: tail,
      fin: call(fin, ploverFin),
      stick,
      balance: weighed,
      neutral_x: 0.0428,
      seat_height: ploverSeat.z,
      seat_angle: ploverSeat.incidence,
    }) as Glider;
    expect(whole.wing).toBe(ploverWing);
    expect(whole.stick?.length).toBeCloseTo(0.38, 12);
    expect(whole.decalage).toBeCloseTo(degrees(1.1), 12);
    expect(whole.tail_arm).toBeCloseTo(tail.quarter_x - 0.0312, 12);
    expect(whole.static_margin).toBeCloseTo((0.0428 - 0.0312) / ploverWing.mac, 12);
    expect(line(whole)).toBe("479 mm span, 16.9 g, static margin 17.6%");
  });
  test("of a wing alone has no fields but those of the wing and its seat", () => {
    const alone = call(glider, { wing: ploverWing }) as Glider;
    expect(Object.keys(alone).sort()).toEqual(["seat_angle", "seat_height", "wing"]);
    expect(line(alone)).toBe("479 mm span");
  });
  test("leaves out what needs a part that is missing", () => {
    const unweighed = call(glider, { wing: ploverWing, tailplane: tail, neutral_x: 0.04 }) as Glider;
    expect(unweighed.decalage).toBeCloseTo(-tail.incidence, 12);
    expect("tail_arm" in unweighed || "static_margin" in unweighed).toBe(false);
    const tailless = call(glider, { wing: ploverWing, balance: weighed, neutral_x: 0.04 }) as Glider;
    expect(tailless.static_margin).toBeCloseTo((0.04 - 0.0312) / ploverWing.mac, 12);
    expect("tail_arm" in tailless || "decalage" in tailless).toBe(false);
  });
  test("is refused on a seat of 45 deg or more", () => {
    expect(() => call(glider, { wing: ploverWing, seat_angle: 0.8 })).toThrow(Refusal);
  });
});

describe("a fuselage stick", () => {
  test("is refused where its rear end does not lie behind its front end", () => {
    expect(() => call(fuselageStick, { ...stickSizes, rear_x: stickSizes.front_x })).toThrow(
      "The rear end must lie behind the front end",
    );
  });
  test("tells itself in one line", () => {
    expect((fuselageStickRecord.text as (value: unknown) => string)(stick)).toBe("380 mm long");
  });
});
