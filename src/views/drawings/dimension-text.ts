/** How lengths and angles are told on a drawing. */
import { unitOf } from "../../library/at-first.ts";
import { formatNumber, joinUnit } from "../format.ts";

/** How lengths are told on a drawing. */
export interface LengthFormat {
  readonly unit: string;
  readonly fraction?: number | undefined;
}

/** A length to three figures with its unit: "479 mm". */
export const lengthText = (value: number, { unit, fraction }: LengthFormat): string =>
  joinUnit(formatNumber(value, unit, fraction === undefined ? { figures: 3 } : { figures: 3, fraction }));

/** A length without its unit, to the decimals that give a whole four figures: of 239 "5.5", "19.4", "40.9". */
export function partFigure(value: number, whole: number, { unit, fraction }: LengthFormat): string {
  if (fraction !== undefined && isShopUnit(unit)) return formatNumber(value, unit, { fraction }).number;
  const { factor } = unitOf(unit);
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(whole / factor)));
  const shown = Number((value / factor).toFixed(decimals));
  // The rounding to decimals is what shortens; the figures only have to be enough, and few where there is an exponent.
  return formatNumber(shown * factor, unit, { figures: Math.abs(shown) < 1e7 ? 12 : 4 }).number;
}

/** Shop fractions are of inches and feet; every other unit keeps decimals. */
const isShopUnit = (unit: string): boolean => unit === "in" || unit === "ft";

/** The same with its unit: "40.9 mm". */
export const partText = (value: number, whole: number, format: LengthFormat): string =>
  joinUnit({ number: partFigure(value, whole, format), unit: format.unit });

/** An angle in degrees to three figures, at most to a hundredth: "20", "2.25". */
export const degreesFigure = (value: number): string =>
  formatNumber(Math.round((value / unitOf("deg").factor) * 100) / 100, "1", { figures: 3 }).number;
