/** Sets `slope` to the rate of change at `state`. Both have the same length. */
export type Slope = (state: Float64Array, slope: Float64Array) => void;

/**
 * A stepper of the classical fourth-order rule (W. Kutta, Zeitschrift für Mathematik und Physik 46 (1901) 435–453; from
 * memory) for a state of `size` numbers: moves the state on by one step, in place. The error of one step falls with the
 * fifth power of its length.
 */
export function rungeKutta(size: number, slope: Slope): (state: Float64Array, step: number) => void {
  const [k1, k2, k3, k4, at] = Array.from({ length: 5 }, () => new Float64Array(size)) as FiveOf<Float64Array>;
  const along = (state: Float64Array, k: Float64Array, step: number): Float64Array => {
    for (let i = 0; i < size; i++) at[i] = (state[i] as number) + step * (k[i] as number);
    return at;
  };
  return (state, step) => {
    slope(state, k1);
    slope(along(state, k1, step / 2), k2);
    slope(along(state, k2, step / 2), k3);
    slope(along(state, k3, step), k4);
    for (let i = 0; i < size; i++) {
      const sum = (k1[i] as number) + 2 * (k2[i] as number) + 2 * (k3[i] as number) + (k4[i] as number);
      state[i] = (state[i] as number) + (step / 6) * sum;
    }
  };
}

type FiveOf<T> = [T, T, T, T, T];
