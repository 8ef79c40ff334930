import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tradeOffExamples } from "../../../src/views/charts/trade-off.example.ts";
import {
  liveTradeOff,
  type SweepPoint,
  type TradeOffData,
  type TradeOffOptions,
  tradeOff,
} from "../../../src/views/charts/trade-off.ts";
import { allPoints } from "../../../src/views/charts/trade-off-data.ts";
import { textsOf, touching } from "../drawings/ink.ts";
import { document, plain } from "../drawings/page.ts";
import { expectPicture } from "../drawings/snapshot.ts";

const degrees = (count: number) => (count * Math.PI) / 180;
const draw = (data: TradeOffData, options: TradeOffOptions = {}) => tradeOff(data, options, { document });
/** Areas and targets are no lines: labels may stand on them. */
const areas = ["area", "band", "choice"];

const point = (tip: number, loss: number | null, eda: number | null, reason?: string): SweepPoint => ({
  value: degrees(tip),
  x: loss,
  y: [eda === null ? null : degrees(eda)],
  reason,
});
const data: TradeOffData = {
  sweep: { name: "tip_break", unit: "deg" },
  x: { name: "loss", unit: "%" },
  y: [{ name: "eda", label: "equivalent dihedral", unit: "deg" }],
  points: [point(0, 0.01, 5), point(6, 0.02, 8), point(12, 0.035, 10.2), point(18, 0.06, 11.5)],
  present: point(12, 0.035, 10.2),
};
const names = (svg: Element) => [...svg.querySelectorAll(".choice")].map((choice) => choice.getAttribute("aria-label"));
const descriptionOf = (svg: Element) => svg.querySelector("desc")?.textContent ?? "";

/** Sweeps that rise, fall, stand still, have gaps, single points and none, of all sizes. */
const anyData = fc
  .record({
    count: fc.integer({ min: 0, max: 41 }),
    panels: fc.integer({ min: 1, max: 3 }),
    scale: fc.constantFrom(1e-9, 1e-3, 1, 250, 3e8),
    slope: fc.constantFrom(-1, 0, 0.2, 1),
    bend: fc.constantFrom(-1, 0, 1),
    gaps: fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 8 }),
    places: fc.boolean(),
    present: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    baseline: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    limit: fc.option(fc.double({ min: -0.2, max: 1.2, noNaN: true })),
    limitOfX: fc.boolean(),
    long: fc.boolean(),
    back: fc.boolean(),
    further: fc.constantFrom(0, 0, 0, 1, 4),
    band: fc.option(fc.double({ min: 0, max: 0.02, noNaN: true })),
  })
  .map(
    ({
      count,
      panels,
      scale,
      slope,
      bend,
      gaps,
      places,
      present,
      baseline,
      limit,
      limitOfX,
      long,
      back,
      further,
      band,
    }): TradeOffData => {
      const y = Array.from({ length: panels }, (_, panel) => ({
        name: long && panel === 2 ? "a_quantity_with_a_name_that_goes_on_and_on" : `quantity_${panel}`,
        unit: panel === 1 ? "mm" : "",
      }));
      const at = (share: number): SweepPoint => ({
        value: share,
        x: 0.04 + (back ? -1 : 1) * (0.03 * share + 0.02 * share * share),
        y: y.map((_, panel) => scale * (1 + slope * share + bend * share * (share - 0.6) * (panel + 1))),
      });
      const points = Array.from({ length: count }, (_, index) => {
        const whole = at(count === 1 ? 0.4 : index / (count - 1));
        if (!gaps.includes(index)) return whole;
        return {
          ...whole,
          x: places ? whole.x : null,
          y: y.map((_, panel) => (panel === 1 ? 1 : null)),
          reason: "it stalls",
        };
      });
      const allowed =
        limit === null
          ? []
          : [
              {
                quantity: limitOfX ? "loss" : "quantity_0",
                min: limitOfX ? 0.04 + 0.05 * limit : scale * (1 + limit),
                label: long ? "enough_for_the_autumn_meeting_on_a_windy_day" : "enough",
              },
            ];
      return {
        sweep: { name: long ? "the_break_of_the_outermost_panel" : "tip_break", unit: "deg" },
        x: { name: "loss", label: "tilt loss", unit: "%" },
        y,
        points,
        present: present === null ? null : at(present),
        baseline:
          baseline === null
            ? undefined
            : { ...at(baseline), name: long ? "the one that was flown at the autumn meeting" : "as flown" },
        allowed,
        band: band ?? undefined,
        ...(further > 0 && {
          curve: "plain V",
          further: Array.from({ length: further }, (_, curve) => ({
            name: long ? `with ${curve + 2} panels on either side of it` : `${curve + 2} panels`,
            points: points.map(({ x, ...point }) => ({ ...point, x: x === null ? null : x * (1 - 0.03 * curve) })),
            present: present === null ? null : at(0.9 * present),
          })),
        }),
      };
    },
  );
const anyWidth = fc.integer({ min: 320, max: 900 });

it("marks other designs by a ring with their name, and tells where they are", () => {
  const marked = [{ ...point(8, 0.028, 6.5), name: "flat middle" }];
  const svg = draw({ ...data, marked });
  expect(svg.querySelectorAll(".design-ring")).toHaveLength(1);
  expect(textsOf(svg).map(({ text }) => text)).toContain("flat middle");
  expect(descriptionOf(svg)).toContain("For comparison flat middle, tip_break 8 deg: loss 2.8%");
});

describe("the trade-off chart", () => {
  it.each(tradeOffExamples.map((example, index) => [example.title, example, index + 1] as const))(
    "draws %s as kept, at 660 and 330 px",
    (_, example, number) => {
      for (const width of [660, 330]) {
        const kept = new URL(`trade-off-${number}-${width}.svg`, import.meta.url);
        expectPicture(draw(example.data, { ...example.options, width }), kept);
      }
    },
  );

  it("is a figure that says what it shows, with the trend in words", () => {
    const svg = draw(data);
    expect(svg.getAttribute("role")).toBe("figure");
    expect(svg.querySelector("title")?.textContent).toBe("eda against loss as tip_break changes");
    expect(descriptionOf(svg)).toBe(
      "From 0 deg to 18 deg of tip_break loss rises from 1% to 6% and eda rises from 5 deg to 11.5 deg. " +
        "The present design, tip_break 12 deg: loss 3.5%, eda 10.2 deg.",
    );
  });
  it("tells a trend that turns by its highest or lowest, and one that does not move", () => {
    const [a, b] = [point(0, 0.03, 5), point(9, 0.03, 9)];
    expect(descriptionOf(draw({ ...data, points: [a, b, point(18, 0.03, 7)], present: null }))).toBe(
      "From 0 deg to 18 deg of tip_break loss stays at 3% and eda goes from 5 deg to 7 deg, highest 9 deg.",
    );
  });
  it("says which side of a limit a check allows, and what the baseline is", () => {
    const allowed = [{ quantity: "eda", min: degrees(9), label: "enough_dihedral" }];
    const words = descriptionOf(draw({ ...data, allowed, baseline: { ...point(6, 0.02, 8), name: "as flown" } }));
    expect(words).toContain("enough_dihedral holds where eda is above 9 deg.");
    expect(words).toContain("For comparison as flown, tip_break 6 deg: loss 2%, eda 8 deg.");
  });

  it("names every point by the given, its value and what comes of it", () => {
    expect(names(draw(data))[2]).toBe("tip_break 12 deg: eda 10.2 deg, loss 3.5%");
  });
  it("never drops a point without a value: a hollow cross, its reason in the name, the description and the note", () => {
    const points = [
      ...data.points,
      point(24, null, null, "the wing stalls."),
      point(30, Number.NaN, Number.NaN, "the wing stalls."),
    ];
    const svg = draw({ ...data, points });
    expect(svg.querySelectorAll(".failed")).toHaveLength(2);
    expect(names(svg)[4]).toBe("tip_break 24 deg: no value, the wing stalls");
    expect(descriptionOf(svg)).toContain("No value for tip_break 24 deg and 30 deg: the wing stalls.");
    expect(textsOf(svg).map(({ text }) => text)).toContain("✕ 2 of 6 without a value: the wing stalls");
  });
  it("breaks the curve at a gap", () => {
    const [a, b, c, d] = data.points as [SweepPoint, SweepPoint, SweepPoint, SweepPoint];
    const path = (points: readonly SweepPoint[]) =>
      draw({ ...data, points })
        .querySelector(".curve")
        ?.getAttribute("d") ?? "";
    expect(path([a, b, c, d]).split("M")).toHaveLength(2);
    expect(path([a, b, point(9, 0.03, null), c, d]).split("M")).toHaveLength(3);
  });
  it("puts each quantity in a panel of its own over one axis along x", () => {
    const two = tradeOffExamples[0]?.data as TradeOffData;
    const svg = draw(two);
    const [first = [], second = []] = [0, 1].map((panel) =>
      [...(svg.querySelectorAll(".point")[panel]?.getAttribute("d") ?? "").matchAll(/M([^,]+),/g)].map(([, x]) => x),
    );
    expect(first).toHaveLength(11);
    expect(first).toEqual(second);
    expect(svg.querySelectorAll(".curve")).toHaveLength(2);
  });
  it("says on each axis what and in which unit", () => {
    const texts = textsOf(draw(data)).map(({ text }) => text);
    expect(texts).toContain("equivalent dihedral, deg");
    expect(texts).toContain("loss, %");
    expect(texts).toContain("eda");
    expect(texts).toContain("tip_break 12 deg");
  });
  it("tells each of several curves by a dash of its own, by name at the curve and in the legend, and what nobody sees", () => {
    const { data: family, options } = tradeOffExamples[3] as (typeof tradeOffExamples)[0];
    const svg = draw(family, options);
    const texts = textsOf(svg).map(({ text }) => text);
    for (const name of ["plain V", "two panels", "three panels", "smooth"]) {
      expect(texts.filter((text) => text === name).length, name).toBeGreaterThan(0);
    }
    expect([1, 2, 3].map((curve) => svg.querySelectorAll(`.curve-layer .trial-${curve}`).length)).toEqual([1, 1, 1]);
    expect(svg.querySelectorAll("rect.band").length).toBe(2);
    expect(texts).toContain("no difference you could see");
    expect(descriptionOf(svg)).toContain("of bend of plain V loss rises from");
    expect(descriptionOf(svg)).toMatch(/Of two panels loss rises from .* Of three panels loss rises/);
    expect(descriptionOf(svg)).toContain("Within 0.4% of the present loss there is no difference you could see.");
    expect(descriptionOf(svg)).toContain("No value for bend 4 deg and 6 deg of smooth: it does not come upright.");
    expect(descriptionOf(svg)).toMatch(/Of smooth loss rises from [^.]*\.\d+% to [^ ]* \(from 8 deg to 20 deg\)/);
    expect(names(svg)).toHaveLength(36);
    expect(names(svg)[10]).toMatch(/^two panels, bend 6 deg: tip_height/);
  });
  it("tells what is swept once, also where it stands along x itself", () => {
    const counted = (point: SweepPoint): SweepPoint => ({ ...point, x: point.value });
    const { points, present } = data;
    const along: TradeOffData = {
      ...data,
      x: data.sweep,
      points: points.map(counted),
      present: present && counted(present),
    };
    expect(descriptionOf(draw(along))).toBe(
      "From 0 deg to 18 deg of tip_break eda rises from 5 deg to 11.5 deg. The present design, tip_break 12 deg: eda 10.2 deg.",
    );
  });
  it("says to the end why points have no value, in as many lines as that takes", () => {
    const reason = "it is left out where bank and speed never stay near their trim";
    const failing: TradeOffData = { ...data, points: [point(0, 0.01, null, reason), ...data.points.slice(1)] };
    for (const width of [330, 660]) {
      const lines = [...draw(failing, { width }).querySelectorAll(".note-layer text")].map((line) => line.textContent);
      expect(lines.join(" ")).toBe(`✕ 1 of 4 without a value: ${reason}`);
    }
  });
  it("shades only what all checks allow, up to their limits", () => {
    const allowed = [
      { quantity: "eda", min: degrees(8), label: "enough" },
      { quantity: "loss", max: 0.03, label: "cheap" },
    ];
    const area = draw({ ...data, allowed }).querySelector(".area");
    const whole = draw({ ...data, allowed: allowed.slice(0, 1) }).querySelector(".area");
    expect(Number(area?.getAttribute("width"))).toBeLessThan(Number(whole?.getAttribute("width")));
    expect(area?.getAttribute("height")).toBe(whole?.getAttribute("height"));
  });

  it("has no label that touches a line, another label or the edge, whatever the data and the width", () => {
    fc.assert(
      fc.property(anyData, anyWidth, (shown, width) => {
        expect(touching(draw(shown, { width }), areas)).toEqual([]);
      }),
      { seed: 11, numRuns: 120 },
    );
  });
  it("has at least two ticks on each axis and every target at least 24 px, whatever the data", () => {
    fc.assert(
      fc.property(anyData, anyWidth, (shown, width) => {
        const svg = draw(shown, { width });
        const ticks = svg.querySelectorAll(".axis-layer text").length - shown.y.length - 1;
        expect(ticks).toBeGreaterThanOrEqual(2 * (shown.y.length + 1));
        const targets = [...svg.querySelectorAll(".choice")];
        expect(targets).toHaveLength(allPoints(shown).length * shown.y.length);
        for (const target of targets)
          expect([target.getAttribute("width"), target.getAttribute("height")]).toEqual(["24", "24"]);
      }),
      { seed: 12, numRuns: 100 },
    );
  });
  it("redrawn in place is the same as drawn afresh", () => {
    fc.assert(
      fc.property(anyData, anyData, anyWidth, (before, after, width) => {
        const live = liveTradeOff(before, {}, { document });
        live.update(after, { width });
        expect(plain(live.element)).toEqual(plain(draw(after, { width })));
      }),
      { seed: 13, numRuns: 60 },
    );
  });
  it("refuses an option it does not know, and a point with too few values", () => {
    // @ts-expect-error an unknown option is a type error too
    expect(() => draw(data, { colour: "red" })).toThrow('got the option "colour" for the trade-off chart');
    expect(() => draw({ ...data, points: [{ value: 0, x: 0, y: [] }] })).toThrow(
      "got a point with 0 values in a chart of 1",
    );
  });
});

describe("choosing a point", () => {
  const send = (target: Element | undefined, type: string, more: object) =>
    target?.dispatchEvent(
      Object.assign(new (document.defaultView?.Event ?? Event)(type, { bubbles: true, cancelable: true }), more),
    );
  const setUp = (shown: TradeOffData = data) => {
    const chosen: number[] = [];
    const live = liveTradeOff(
      shown,
      { onChoose: (value) => chosen.push(Math.round((value * 180) / Math.PI)) },
      { document },
    );
    const { element } = live;
    element.getBoundingClientRect = () => ({ left: 100, top: 50, width: 330, height: 200 }) as DOMRect;
    const choices = () => [...element.querySelectorAll(".choice")];
    const stops = () => choices().flatMap((choice, index) => (choice.getAttribute("tabindex") === "0" ? [index] : []));
    return { live, element, chosen, choices, stops };
  };
  const middleOf = (choice: Element | undefined) => ["x", "y"].map((name) => Number(choice?.getAttribute(name)) + 12);
  /** Where the point is that is marked as in hand. */
  const near = (element: Element) => {
    const point = element.querySelector(".point.near");
    return point && ["cx", "cy"].map((name) => Number(point.getAttribute(name)));
  };
  /** Where the middle of a point lies in a chart shown at half its size, from 100,50 on. */
  const onScreen = (choice: Element | undefined): [number, number] => {
    const [x = 0, y = 0] = middleOf(choice);
    return [x / 2 + 100, y / 2 + 50];
  };

  it("has one tab stop, at the present design", () => {
    const { stops, choices } = setUp();
    expect(stops()).toEqual([2]);
    expect(choices().map((choice) => choice.getAttribute("aria-current"))).toEqual([null, null, "true", null]);
  });
  it("takes the value nearest to the pointer, in a chart shown at half its size", () => {
    const { element, choices, chosen } = setUp();
    const [x, y] = onScreen(choices()[1]);
    send(element, "click", { detail: 1, clientX: x + 3, clientY: y - 2 });
    send(element, "click", { detail: 1, clientX: x, clientY: y + 60 });
    expect(chosen).toEqual([6]);
  });
  it("takes the value of a point pressed without a pointer", () => {
    const { choices, chosen } = setUp();
    send(choices()[3], "click", { detail: 0 });
    expect(chosen).toEqual([18]);
  });
  it("takes the value of the point in focus by Enter and by the space bar, and leaves other keys alone", () => {
    const { choices, chosen } = setUp();
    send(choices()[0], "keydown", { key: "Enter" });
    send(choices()[1], "keydown", { key: " " });
    send(choices()[1], "keydown", { key: "a" });
    send(choices()[1], "keydown", { key: "Enter", ctrlKey: true });
    expect(chosen).toEqual([0, 6]);
  });
  it("tells the values of the point in focus in the note, and keeps it in focus while the data changes", () => {
    const { live, element, choices, stops } = setUp();
    const note = () => element.querySelector(".note-layer")?.textContent;
    expect(note()).toBe("choose a point to take its value");
    send(choices()[1], "focusin", {});
    expect(note()).toBe("tip_break 6 deg: eda 8 deg, loss 2%");
    expect(stops()).toEqual([1]);
    const before = choices()[1];
    live.update({ ...data, points: data.points.map((each) => ({ ...each, x: (each.x ?? 0) * 1.1 })) }, {});
    expect(choices()[1]).toBe(before);
    expect(note()).toBe("tip_break 6 deg: eda 8 deg, loss 2.2%");
    send(choices()[1], "focusout", {});
    expect(stops()).toEqual([2]);
  });
  it("gives the focus to the point that a pointer chose, whichever target lies on top", () => {
    const { element, choices } = setUp();
    const focused: number[] = [];
    for (const [index, choice] of choices().entries()) (choice as SVGElement).focus = () => void focused.push(index);
    const [x, y] = onScreen(choices()[1]);
    send(element, "click", { detail: 1, clientX: x, clientY: y });
    expect(focused).toEqual([1]);
  });
  it("lets the keyboard take over from a pointer that rests on a point", () => {
    const { element, choices } = setUp();
    const [x, y] = onScreen(choices()[3]);
    send(element, "pointermove", { clientX: x, clientY: y });
    send(choices()[0], "focusin", {});
    expect(near(element)).toEqual(middleOf(choices()[0]));
  });
  it("marks the point under the pointer", () => {
    const { element, choices } = setUp();
    const [x, y] = onScreen(choices()[3]);
    send(element, "pointermove", { clientX: x, clientY: y });
    expect(near(element)).toEqual(middleOf(choices()[3]));
    send(element, "pointerleave", {});
    expect(near(element)).toBeNull();
  });
});
