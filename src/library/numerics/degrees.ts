/** Degrees as radians: for limits and examples, which are told in degrees and kept in SI. */
export const degrees = (angle: number): number => (angle * Math.PI) / 180;
