import { unitOf } from "./units.ts";

/**
 * An SI value told in a unit for the one-line text of a record: three figures, more only before the point; no blank
 * before %, as everywhere.
 */
export function numberText(value: number, unit: string): string {
  const number = value / unitOf(unit).factor;
  const short = Math.abs(number) >= 100 ? Math.round(number) : Number(number.toPrecision(3));
  const text = String(short + 0).replace("-", "−");
  return unit === "1" ? text : `${text}${unit === "%" ? "" : " "}${unit}`;
}
