import { unitOf } from "./units.ts";

/**
 * An SI value told in a unit for the one-line text of a record: three figures, more only before the point, and from
 * 10 million up with an exponent; no blank before %, as everywhere.
 */
export function numberText(value: number, unit: string): string {
  const number = value / unitOf(unit).factor;
  const size = Math.abs(number);
  const short =
    size >= 1e7 ? number.toExponential(2) : size >= 100 ? Math.round(number) : Number(number.toPrecision(3));
  const text = String(typeof short === "string" ? short.replace("e+", "e") : short + 0).replaceAll("-", "−");
  return unit === "1" ? text : `${text}${unit === "%" ? "" : " "}${unit}`;
}
