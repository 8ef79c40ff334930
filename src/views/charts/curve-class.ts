/** The class of each curve: the first is what counts, the others are told apart by dash as well as colour. */
export const curveClass = (index: number): string => (index === 0 ? "curve" : `trial-${((index - 1) % 4) + 1}`);
