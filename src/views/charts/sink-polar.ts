import type { SinkPolar } from "../../library/index.ts";
import { figureText } from "./figure-text.ts";
import type { Place, PlotData, Spot } from "./plot-data.ts";

/** Sink over speed, sink downwards: the line from the origin that just touches it touches it at the best glide. */
export function sinkPolarPlot(polar: SinkPolar, before?: SinkPolar): PlotData {
  const places = ({ speed }: SinkPolar, of: readonly number[]): Place[] =>
    speed.map((x, i) => ({ x, y: of[i] ?? Number.NaN }));
  const { best_glide_speed, best_glide_ratio, least_sink, least_sink_speed, stall_speed, speed, sink } = polar;
  // The path goes down by one part in the square root of 1 + ratio² of the way along it.
  const bestSink = best_glide_speed / Math.hypot(1, best_glide_ratio);
  const bestSpeed = figureText(best_glide_speed, "m/s");
  const fastest = Math.max(...speed);
  const until = Math.min(fastest, 1.5 * best_glide_speed) / best_glide_speed;
  const stallSink = sink[speed.indexOf(Math.min(...speed))] ?? Number.NaN;
  const spots: Spot[] = [
    { look: "point", x: least_sink_speed, y: least_sink, text: `least sink ${figureText(least_sink, "m/s")}` },
    // Its line has its name, and more room.
    { look: "point", x: best_glide_speed, y: bestSink, text: `flattest at ${bestSpeed}`, brief: bestSpeed },
    { look: "point", x: stall_speed, y: stallSink, text: `stall ${figureText(stall_speed, "m/s")}` },
  ];
  return {
    view: "sink-polar",
    title: "Sink polar",
    x: { label: "speed", unit: "m/s", isExact: true },
    panels: [
      {
        y: { label: "sink, downwards", unit: "m/s" },
        isDown: true,
        bands: [{ low: places(polar, polar.sink_low), high: places(polar, polar.sink_high) }],
        curves: [
          ...(before ? [{ look: "ghost" as const, places: places(before, before.sink) }] : []),
          {
            look: "aside",
            name: `best glide ${figureText(best_glide_ratio, "1")} to 1`,
            places: [
              { x: 0, y: 0 },
              { x: until * best_glide_speed, y: until * bestSink },
            ],
          },
          { look: "curve", places: places(polar, sink) },
        ],
        spots,
        reach: { x: [0], y: [0] },
      },
    ],
    note: "the band: sink if all drag but the induced is as small or as large as the sections leave open",
    description: () =>
      `Sink over speed from the stall at ${figureText(stall_speed, "m/s")} to ${figureText(fastest, "m/s")}. Least sink ` +
      `${figureText(least_sink, "m/s")} at ${figureText(least_sink_speed, "m/s")}; best glide ` +
      `${figureText(best_glide_ratio, "1")} to 1 at ${bestSpeed}.`,
  };
}
