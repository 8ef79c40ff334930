import { describe, expect, test } from "vitest";
import { type PartsList, partsList } from "../../../src/library/build/parts-list.ts";
import { type WorkOrder, workOrder } from "../../../src/library/build/work-order.ts";
import { sampleGlider } from "../../../src/library/glide/sample-gliders.ts";
import { buildWing } from "../../../src/library/shape/wing.ts";
import { call, refuse } from "../call.ts";
import { withColumns } from "../panel-arbitraries.ts";
import { ploverPanels, ploverWing } from "../plover.ts";

const glider = { ...sampleGlider, wing: ploverWing };
const order = (given: Record<string, unknown> = {}) => (call(workOrder, { glider, ...given }) as WorkOrder).steps;

describe("the order of work", () => {
  test("bevels each kind of joint by half of its fold, before any is glued", () => {
    const { work } = order();
    const bevels = work.filter((text) => /^Sand the bevels/.test(text));
    expect(bevels).toHaveLength(3);
    expect(bevels[0]).toMatch(/root: 3 deg on each/);
    expect(bevels[1]).toMatch(/joint 1–2: 3.51 deg/);
    expect(work.findIndex((text) => /^Glue/.test(text))).toBeGreaterThan(work.indexOf(bevels[2] ?? ""));
  });
  test("puts each caution at the step that it belongs to", () => {
    const { work, caution } = order();
    const at = (pattern: RegExp) => caution[work.findIndex((text) => pattern.test(text))] ?? "";
    expect(at(/^Sand the section/)).toMatch(/FFP3.*FFP1 or FFP2 is too little/);
    expect(at(/^Glue the 5 joints/)).toMatch(/dust mask does not stop it/);
    expect(at(/^Lay the strips/)).toMatch(/No cotton gloves/);
    expect(at(/^Feather/)).toMatch(/FFP3/);
    expect(at(/^Print the sheets/)).toMatch(/steel rule/);
    expect(at(/^Cut tailplane/)).toMatch(/steel rule.*FFP3/);
    expect(at(/^Toss it/)).toMatch(/never aimed at anyone/);
  });
  test("follows the choice of glue, strips and jig, and has no joints where there are none", () => {
    expect(order({ strips: false }).work.some((text) => /strips/.test(text))).toBe(false);
    expect(order({ jig: false }).part).not.toContain("jig");
    expect(Math.max(...order({ glue: "epoxy" }).wait)).toBe(12 * 3600);
    const flat = buildWing(
      withColumns(ploverPanels, { break: [0, 0, 0], washout: [0, 0, 0], length: [0.1, 0.08, 0.06] }),
      undefined,
      refuse,
    );
    expect(order({ glider: { ...glider, wing: flat } }).work.join()).toMatch(/joint 1–2: 0 deg/);
    expect(() => order({ glue: "putty" })).toThrow(/putty/);
  });
  test("has something to check at every step", () => {
    for (const check of order().check) expect(check).toMatch(/\S+.*[.]$/);
  });
});

test("the parts list counts both halves, whether they are alike or not", () => {
  const list = call(partsList, { glider }) as PartsList;
  const count = (name: string) => list.parts.count[list.parts.part.indexOf(name)];
  expect(count("wing panel 2")).toBe(2);
  expect(count("strips, root")).toBe(2);
  expect(count("strips, joint 2–3")).toBe(4);
  const left = withColumns(ploverPanels, { thickness: [0.003, 0.002, 0.002] });
  const unlike = call(partsList, { glider: { ...glider, wing: buildWing(ploverPanels, left, refuse) } }) as PartsList;
  const size = (name: string, given: Record<string, unknown>) => {
    const { parts } = call(partsList, { glider, ...given }) as PartsList;
    return parts.size[parts.part.indexOf(name)];
  };
  expect(size("strips, root", { root_width: 0.03 })).toMatch(/^30 mm/);
  expect(size("strips, root", { strip_width: 0.015 })).toMatch(/^15 mm/);
  expect(size("strips, joint 1–2", { root_width: 0.03 })).toMatch(/^20 mm/);
  expect(list.supplies.supply.join()).toMatch(/FFP3/);
  expect(unlike.parts.part.filter((name) => /^wing panel (right|left)/.test(name))).toHaveLength(6);
});
