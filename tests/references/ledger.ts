import { afterAll, describe, expect, test } from "vitest";
import { agree, type Dimension } from "../../src/library/quantity.ts";
import { unitOf } from "../../src/library/units.ts";

/** One value that stands outside of our code, and what we compute to compare. `value` and `tolerance` are in `unit`. */
export interface Entry<Input> {
  readonly id: string;
  readonly input: Input;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly mark: string;
  readonly tolerance: number;
  readonly why: string;
}

/** What an entry's input comes to, in SI. */
export interface Computed {
  readonly value: number;
  readonly dimension: Dimension;
}

const keys = ["id", "input", "value", "unit", "source", "mark", "tolerance", "why"];
const marks = ["verified", "derived", "own computation", "common practice", "from memory"];

/**
 * The tests of one ledger: its entries are complete and named once, and each value is met within its tolerance. Those
 * that come three times nearer than asked are told at the end, so that their tolerance may be tightened.
 */
export function holdLedger<Input>(
  path: string,
  entries: readonly Entry<Input>[],
  compute: (input: Input) => Computed,
): void {
  const near: string[] = [];
  afterAll(() => {
    if (near.length > 0) {
      console.info(
        `${near.length} references are met three times better than their tolerance:\n  ${near.join("\n  ")}`,
      );
    }
  });

  describe(`the ledger ${path}`, () => {
    test("names each entry once and completely", () => {
      expect(new Set(entries.map((entry) => entry.id)).size).toBe(entries.length);
      for (const entry of entries) {
        expect(Object.keys(entry), entry.id).toEqual(keys);
        expect(marks, entry.id).toContain(entry.mark);
        expect(entry.tolerance, entry.id).toBeGreaterThan(0);
        for (const text of [entry.id, entry.source, entry.why]) expect(text.trim(), entry.id).not.toBe("");
      }
    });

    test.each(entries.map((entry) => [entry.id, entry] as const))("%s", (id, entry) => {
      const unit = unitOf(entry.unit);
      const computed = compute(entry.input);
      expect(agree(computed.dimension, unit.dimension), `${id} is no value in ${entry.unit}`).toBe(true);
      const found = (computed.value - unit.offset) / unit.factor;
      const off = Math.abs(found - entry.value);
      expect(off, `got ${found} ${entry.unit}, ${entry.source} has ${entry.value}`).toBeLessThanOrEqual(
        entry.tolerance,
      );
      if (off * 3 < entry.tolerance && canTighten(entry)) {
        near.push(`${path.replace(/^.*\/|\.json$/g, "")}: ${id} (off by ${off.toPrecision(2)}; ${entry.why})`);
      }
    });
  });
}

/** A tolerance of half the last digit of the value, or that of plain arithmetic, says all that it can already. */
function canTighten({ value, tolerance }: Entry<unknown>): boolean {
  const [digits = "", power = "0"] = String(value).split("e");
  const lastDigit = 10 ** (Number(power) - (digits.split(".")[1]?.length ?? 0));
  return tolerance > 0.51 * lastDigit && tolerance > 1e-6 * Math.abs(value);
}
