import type { Recovery } from "../../library/index.ts";
import { figureText } from "./figure-text.ts";
import type { Band, Place, PlotData, PlotLimit, PlotPanel } from "./plot-data.ts";

type Column = Exclude<keyof Recovery["history"], "time">;

/** The share of its trim that speed, and the angle that bank, may be off where a flight counts as settled. */
const settled = { bank: (5 * Math.PI) / 180, speed: 0.1 } as const;

/** A flight over time: bank, sideslip, speed, angle of attack and height, with what it aims at and where it settles. */
export function flightHistoryPlot(flight: Recovery, before?: Recovery): PlotData {
  const { history, trim_bank, trim_speed, trim_sink, stall_angle, settling_time, left_model } = flight;
  const end = history.time.at(-1) ?? 1;
  const places = ({ history: of }: Recovery, column: Column): Place[] =>
    of.time.map((x, i) => ({ x, y: of[column][i] ?? Number.NaN }));
  const across = (low: number, high: number): Band => ({
    low: [low, low].map((y, i) => ({ x: i * end, y })),
    high: [high, high].map((y, i) => ({ x: i * end, y })),
  });
  const panel = (column: Column, label: string, unit: string, more: Partial<PlotPanel> = {}): PlotPanel => ({
    y: { label, unit },
    ...more,
    curves: [
      ...(before ? [{ look: "ghost" as const, places: places(before, column) }] : []),
      ...(more.curves ?? []),
      { look: "curve", places: places(flight, column) },
    ],
    limits: [...(more.limits ?? []), ...timeLimits(settling_time, left_model, column === "bank")],
  });
  return {
    view: "flight-history",
    title: "Flight after letting go",
    x: { label: "time", unit: "s", isExact: true },
    panels: [
      panel("bank", "bank to the right, and 5° about its trim", "deg", {
        bands: [across(trim_bank - settled.bank, trim_bank + settled.bank)],
      }),
      panel("sideslip", "sideslip to the right", "deg", { isMinor: true, reach: { y: [0] } }),
      panel("speed", "speed, and a tenth about its trim", "m/s", {
        isMinor: true,
        bands: [across((1 - settled.speed) * trim_speed, (1 + settled.speed) * trim_speed)],
      }),
      panel("angle", "angle of attack", "deg", {
        limits: [{ axis: "y", at: stall_angle, text: "stall", look: "moved" }],
        reach: { y: [stall_angle] },
      }),
      panel("height", "height", "m", {
        curves: [
          {
            look: "aside",
            name: "steady glide",
            places: [
              { x: 0, y: 0 },
              { x: end, y: -trim_sink * end },
            ],
          },
        ],
      }),
    ],
    note: `${flight.verdict}; it ${flight.limits}`,
    description: () => describe(flight),
  };
}

function timeLimits(settling: number | undefined, left: number | undefined, isTold: boolean): PlotLimit[] {
  const told = (text: string): string => (isTold ? text : "");
  return [
    ...(settling === undefined
      ? []
      : [{ axis: "x", at: settling, text: told(`settled ${figureText(settling, "s")}`), look: "holds" } as const]),
    ...(left === undefined ? [] : [{ axis: "x", at: left, text: told("beyond the model"), look: "moved" } as const]),
  ];
}

function describe({
  verdict,
  settling_time,
  height_lost,
  worst_angle,
  stall_angle,
  limits,
  history,
}: Recovery): string {
  const bank = history.bank[0] ?? 0;
  const when = settling_time === undefined ? "" : ` after ${figureText(settling_time, "s")}`;
  const [angle, stall] = [figureText(worst_angle, "deg"), figureText(stall_angle, "deg")];
  const reached =
    worst_angle < stall_angle
      ? `reaches ${angle}; it would stall at ${stall}`
      : `goes to ${angle}, past the ${stall} at which it stalls`;
  const height = `${figureText(Math.abs(height_lost), "m")} ${height_lost < 0 ? "less than in" : "beyond"} the steady glide`;
  return (
    `Let go in a bank of ${figureText(bank, "deg")} it ${verdict}${when}, and loses ${height}. ` +
    `Its angle of attack ${reached}. It ${limits}.`
  );
}
