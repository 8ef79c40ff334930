/** Every word of studies: how they go. */
import type { StudyNews } from "../cells/index.ts";

export const words = {
  progress: (name: string) => `progress of ${name}`,
  outcome: (name: string) => `what ${name} comes to`,
  stop: "Stop",
  stopOf: (name: string) => `stop ${name}`,
  run: "Run",
  runOf: (name: string) => `run ${name}`,
  told: ({ status, progress, left }: Pick<StudyNews, "status" | "progress" | "left">) => {
    const share = `${Math.floor(100 * progress)}%`;
    if (status === "waiting") return "begins in a moment";
    if (status === "running") return left === null ? "running" : `${share} done, about ${duration(left)} left`;
    if (status === "stopped") return `stopped, ${share} done`;
    if (status === "long") return `would take about ${duration(left ?? 0)}, so it waits for you`;
    return "";
  },
  cannotDraw: "This could not be drawn.",
  makeTrial: "Make a trial of it",
  take: "Take these values",
  taken: (settings: string) => `Now ${settings}.`,
  notTakenBack: "Other things were done since then. Undo takes them back one by one.",
  trialMade: (name: string) => `Made the trial ${name}.`,
  takeBack: "Take it back",
  numbers: "Numbers",
  numbersOf: (name: string) => `numbers of ${name}`,
  noValue: "no value",
  moreRows: (count: number) => `and ${count === 1 ? "1 row" : `${count} rows`} more; the file of values has them all`,
};

/** A time in ms, as people say it. */
function duration(time: number): string {
  const seconds = Math.max(1, Math.round(time / 1000));
  if (seconds < 90) return `${seconds} s`;
  const minutes = Math.round(seconds / 60);
  return minutes < 90 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
}
