import type { LateralModes, LongitudinalModes } from "../../library/index.ts";
import { figureText } from "./figure-text.ts";
import type { PlotData, PlotPanel, Spot } from "./plot-data.ts";

type Roots = Pick<LateralModes, "root_name" | "root_rate" | "root_turning" | "verdict">;

/** The two groups of modes, or one of them. */
export interface ModesShown {
  readonly longitudinal?: LongitudinalModes | undefined;
  readonly lateral?: LateralModes | undefined;
}

/**
 * The roots of the motion in the complex plane, as the field draws them: how fast each grows to the right, how fast it
 * swings upwards; what lies left of 0 dies away.
 */
export function modesPlot(modes: ModesShown, before?: ModesShown): PlotData {
  const groups = [
    ["pitch and speed", modes.longitudinal, before?.longitudinal],
    ["roll, yaw and sideslip", modes.lateral, before?.lateral],
  ] as const;
  const shown = groups.flatMap(([name, now, then]) => (now ? [{ name, now, then }] : []));
  const rate = { label: "rate of growth; left of 0 it dies away", unit: "1/s", isExact: true } as const;
  return {
    view: "modes",
    title: "Modes of motion",
    x: rate,
    panels: shown.map(
      ({ name, now, then }): PlotPanel => ({
        y: { label: `${name}: swing`, unit: "rad/s" },
        x: rate,
        curves: [],
        spots: [...(then ? spotsOf(then, "before") : []), ...spotsOf(now, "root")],
        limits: [{ axis: "x", at: 0, text: "", look: "holds" }],
        good: { from: Number.NEGATIVE_INFINITY, to: 0 },
        // Some room on either side: no root stands on the edge, and that nothing grows is seen.
        reach: { x: roomAbout([0, ...now.root_rate, ...(then?.root_rate ?? [])]), y: [0] },
      }),
    ),
    narrowNote: shown.map(({ now }) => spokenRoots(now)).join("; "),
    description: () => shown.map(({ now }) => `${now.verdict}. ${spokenRoots(now)}.`).join(" "),
  };
}

function roomAbout(rates: readonly number[]): [number, number] {
  const [least, most] = [Math.min(...rates), Math.max(...rates)];
  const room = 0.06 * Math.max(0.1, most - least);
  return [least - room, most + room];
}

function spotsOf({ root_name, root_rate, root_turning }: Roots, look: "before" | "root"): Spot[] {
  return root_name.map((name, i): Spot => {
    const [x, y] = [root_rate[i] ?? Number.NaN, root_turning[i] ?? Number.NaN];
    // Of a pair the upper root tells both.
    if (look === "before" || y < 0) return { look, x, y, text: "" };
    return { look, x, y, text: `${name}: ${timesOf(x, y)}`, brief: name };
  });
}

const spokenRoots = (roots: Roots): string =>
  spotsOf(roots, "root")
    .flatMap(({ text }) => (text === "" ? [] : [text]))
    .join("; ");

function timesOf(rate: number, turning: number): string {
  const change =
    rate === 0 ? "stays" : `${rate < 0 ? "half" : "double"} in ${figureText(Math.LN2 / Math.abs(rate), "s")}`;
  return turning === 0 ? change : `${change}, swing of ${figureText((2 * Math.PI) / turning, "s")}`;
}
