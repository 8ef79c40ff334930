import { formatNumber, joinUnit } from "../format.ts";

/** A value in SI as a chart tells it: three figures and its unit. */
export const figureText = (value: number, unit: string): string => joinUnit(formatNumber(value, unit, { figures: 3 }));
