import { unitOf } from "../library/units.ts";

/** An SI number in a unit, to six significant figures, as a person would write it in a formula: "12.5 mm", "8 deg". */
export function told(value: number, unit: string): string {
  const { factor, offset } = unitOf(unit);
  const figures = Number(((value - offset) / factor).toPrecision(6));
  return unit === "1" ? `${figures}` : unit === "%" ? `${figures}%` : `${figures} ${unit}`;
}
