import { expect, test } from "vitest";
import { arc, flatBottomed } from "../../../src/library/build/section-curve.ts";
import { type SectionTemplates, sectionTemplates } from "../../../src/library/build/section-templates.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { ploverPanels, ploverWing } from "../plover.ts";
import { areaOf } from "./strokes.ts";

test("the section of a template holds the share of the blank that sanding leaves", () => {
  for (const sanded of [0.6, 0.78, 0.9]) {
    const curve = flatBottomed(0.07, 0.0032, sanded, 0.3, 2001);
    expect(areaOf(curve) / (0.07 * 0.0032)).toBeCloseTo(sanded, 4);
    expect(Math.max(...curve.map(([, z]) => z))).toBeCloseTo(0.0032, 6);
  }
});

test("an arc passes through both edges and is as high as its camber says, and every place lies on one circle", () => {
  const curve = arc(0.08, 0.05, 41);
  expect(curve[0]?.[1]).toBeCloseTo(0, 12);
  expect(curve.at(-1)?.[1]).toBeCloseTo(0, 12);
  expect(curve[20]?.[1]).toBeCloseTo(0.004, 12);
  const radius = (0.04 ** 2 + 0.004 ** 2) / 0.008;
  for (const [x, z] of curve) expect(Math.hypot(x - 0.04, z + radius - 0.004)).toBeCloseTo(radius, 12);
});

test("a wing with equal halves has one set of templates, at the chords of its panels", () => {
  const { templates, pattern } = call(sectionTemplates, { wing: ploverWing }) as SectionTemplates;
  expect(templates.chord).toEqual([0.074, 0.07, 0.07, 0.06, 0.06, 0.04]);
  expect(pattern.parts.part).toEqual(templates.template);
  expect(pattern.parts.width[0]).toBeCloseTo(0.074 + 0.016, 9);
});

test("an arc without camber is refused with what to give", () => {
  expect(() => call(sectionTemplates, { wing: ploverWing, shape: "arc" })).toThrow(/Panel right 1 has no camber/);
  const thick = buildWing({ ...ploverPanels, thickness: [0.0032, 0.24, 0.002] }, undefined, refuse);
  expect(() => call(sectionTemplates, { wing: thick })).toThrow(/Panel right 2 is 240 mm thick/);
  const { pattern } = call(sectionTemplates, { wing: ploverWing, shape: "arc", camber: 0.05 }) as SectionTemplates;
  expect(pattern.parts.height[0]).toBeCloseTo(0.012 + 0.0037, 9);
});
