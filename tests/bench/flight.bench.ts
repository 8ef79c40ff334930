import { sampleGlider } from "../../src/library/glide/sample-gliders.ts";
import { trim } from "../../src/library/glide/trim.ts";
import { recovery } from "../../src/library/motion/recovery.ts";
import { curvedWing } from "../../src/library/shape/curved-wing.ts";
import type { Glider } from "../../src/library/shape/glider-record.ts";
import type { Wing } from "../../src/library/shape/wing-record.ts";
import { call } from "../library/call.ts";
import type { Bench, Row } from "./bench.ts";
import { median, ratioText } from "./timing.ts";

/** A glider trimmed, and let go in a bank and flown for 12 s; and how both grow with the panels of its wing. */
const flight: Bench = async () => {
  const counts = [2, 8, 16];
  const gliders = counts.map((count): Glider => ({ ...sampleGlider, wing: curved(count) }));
  const trims = gliders.map((glider) => times(() => call(trim, { glider }), 15));
  const flights = gliders.map((glider, i) => times(() => call(recovery, { glider, bank: 0.5 + i * 1e-3 }), 9));
  const [first = Number.NaN] = flights;
  const row = (figure: string, all: readonly number[], goal: number): Row[] => [
    {
      figure: `${figure}, ${counts[0]} panels a side (median, warm)`,
      measured: `${all[0]?.toFixed(1)} ms`,
      goal: `at most ${goal} ms, so that it follows a slider`,
      ratio: `${ratioText((all[0] ?? Number.NaN) / goal)} of the goal`,
    },
    {
      figure: `growth of that with the panels, ${counts.join(", ")} a side`,
      measured: all.map((time) => `${time.toFixed(1)} ms`).join(", "),
      goal: "below the power 3 of a whole matrix",
      ratio: `by the power ${power(all, counts).toFixed(2)}`,
    },
  ];
  return [
    ...row("trim of a whole glider", trims, 25),
    ...row("let go in a bank and flown for 12 s", flights, 100),
    {
      figure: "flown against the clock",
      measured: `12 s in ${first.toFixed(1)} ms`,
      goal: "faster than the glider",
      ratio: `${ratioText(12_000 / first)} times faster`,
    },
  ];
};

const curved = (panels: number): Wing =>
  call(curvedWing, { span: 0.7, root_chord: 0.1, tip_chord: 0.07, dihedral: 0.2, panels, thickness: 0.003 }) as Wing;

/** From the second size to the third, where panels are more than the least of strips. */
const power = (times: readonly number[], counts: readonly number[]): number =>
  Math.log((times[2] ?? Number.NaN) / (times[1] ?? Number.NaN)) / Math.log((counts[2] ?? 0) / (counts[1] ?? 0));

/** Milliseconds of a call: the median of many after some to warm up. */
function times(run: () => unknown, rounds: number): number {
  for (let i = 0; i < 15; i++) run();
  return median(
    Array.from({ length: rounds }, () => {
      const start = performance.now();
      run();
      return performance.now() - start;
    }),
  );
}

export default flight;
