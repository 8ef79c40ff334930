/** A joint's name by the number of the panel inboard of it, 0 for the joint of the two halves: "root", "right 1–2". */
export const jointName = (side: "right" | "left", inner: number): string =>
  inner === 0 ? "root" : `${side} ${inner}–${inner + 1}`;
