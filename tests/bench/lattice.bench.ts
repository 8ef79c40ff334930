import { LuDecomposition, Matrix } from "ml-matrix";
import { derivativesAt } from "../../src/library/flow/derivatives.ts";
import type { LatticeOptions } from "../../src/library/flow/lattice.ts";
import { loadsAbout } from "../../src/library/flow/quadratic-loads.ts";
import { solveLattice } from "../../src/library/flow/solve-lattice.ts";
import { factorise, solveFactored } from "../../src/library/numerics/lu.ts";
import { taperedFin, taperedTailplane } from "../../src/library/shape/sample-tails.ts";
import { threePanelWing } from "../../src/library/shape/sample-wings.ts";
import type { Bench, Row } from "./bench.ts";
import { median, ratioText } from "./timing.ts";

const glider = {
  wing: threePanelWing,
  tailplane: taperedTailplane,
  fin: taperedFin,
  seat_height: 0.012,
  seat_angle: 0.03,
};
const { area, span, mac: chord } = threePanelWing;

/** From the shape of a glider with wing, tailplane and fin to all its derivatives; and the linear solve by itself. */
const lattice: Bench = async () => {
  const coarse = wholeSet({ strips: 12, rows: 4, tailStrips: 4, finStrips: 4, tailRows: 3 });
  const fine = wholeSet({ strips: 22, rows: 6, tailStrips: 8, finStrips: 6, tailRows: 6 });
  const growth = Math.log(fine.time / coarse.time) / Math.log(fine.unknowns / coarse.unknowns);
  return [
    row(coarse, 1),
    row(fine, 6),
    {
      figure: "growth of that with the number of unknowns",
      measured: `by the power ${growth.toFixed(2)}`,
      goal: "below the power 3 of a whole matrix",
      ratio: `${ratioText(growth / 3)} of the goal`,
    },
    linearSolve(),
  ];
};

interface Timed {
  readonly unknowns: number;
  readonly time: number;
  readonly general: number;
}

function wholeSet(counts: Omit<LatticeOptions, "sectionSlope" | "camber">): Timed {
  const options = { ...counts, sectionSlope: 5.7, camber: 0 };
  const run = (angle: number) => {
    const flow = solveLattice({ ...glider, seat_angle: angle }, options);
    if (!flow) throw new Error("got no solution, expected one");
    const loads = loadsAbout(flow.loads, [0.035, 0, 0.02]);
    const found = derivativesAt(loads, 0.1, { area, span, chord }, "stability", { slope: 0.3, way: 0.2 });
    if (!(found.lift_alpha > 3)) throw new Error(`got a lift slope of ${found.lift_alpha}, expected more than 3`);
    return flow.lattice.unknowns;
  };
  const unknowns = run(0.03);
  const matrix = Matrix.from1DArray(unknowns, unknowns, filled(unknowns));
  const sides = Matrix.zeros(unknowns, 8);
  return {
    unknowns,
    // Each time another seat angle, as a slider has it.
    time: times((i) => run(0.03 + i * 1e-5)),
    general: times(() => new LuDecomposition(matrix).solve(sides)),
  };
}

const row = ({ unknowns, time, general }: Timed, goal: number): Row => ({
  figure: `whole derivative set of a glider, ${unknowns} unknowns (median, warm)`,
  measured: `${time.toFixed(2)} ms against ${general.toFixed(2)} ms of a general library for the whole matrix alone`,
  goal: `at most ${goal} ms`,
  ratio: `${ratioText(general / time)} times faster, ${ratioText(time / goal)} of the goal`,
});

function linearSolve(): Row {
  const size = 200;
  const numbers = filled(size);
  const sides = new Float64Array(size * 8).fill(1);
  const matrix = Matrix.from1DArray(size, size, numbers);
  const library = Matrix.from1DArray(size, 8, sides);
  const ours = times(() => {
    const factors = factorise(Float64Array.from(numbers), size);
    return factors && solveFactored(factors, sides, 8);
  });
  const theirs = times(() => new LuDecomposition(matrix).solve(library));
  return {
    figure: "200 linear equations solved for 8 right-hand sides, against a general-purpose library",
    measured: `${ours.toFixed(2)} ms against ${theirs.toFixed(2)} ms`,
    goal: "faster",
    ratio: `${ratioText(theirs / ours)} times faster`,
  };
}

/** Numbers like those of a lattice: largest on the diagonal, falling off beside it. */
const filled = (size: number): Float64Array =>
  Float64Array.from({ length: size ** 2 }, (_, i) => 1 / (1 + Math.abs(Math.floor(i / size) - (i % size))) ** 2);

/** Milliseconds of a call: the median of many, after so many that the engine has compiled all of it. */
function times(run: (round: number) => unknown): number {
  const warm = performance.now() + 500;
  for (let i = 0; i < 40 || performance.now() < warm; i++) run(i);
  const all: number[] = [];
  for (let i = 0; i < 200; i++) {
    const start = performance.now();
    run(i);
    all.push(performance.now() - start);
  }
  return median(all);
}

export default lattice;
