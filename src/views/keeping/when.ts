import { words } from "./words.ts";

/** How long ago something was, as it is told: by the minute within the hour, else by the day and time. Both in ms. */
export function when(at: number, now: number): string {
  const minutes = Math.floor((now - at) / 60_000);
  if (minutes < 1) return words.justNow;
  if (minutes < 60) return words.minutesAgo(minutes);
  const [then, today] = [new Date(at), new Date(now)];
  return then.toDateString() === today.toDateString() ? words.today(time.format(then)) : words.on(date.format(then));
}

const time = new Intl.DateTimeFormat("en-GB", { timeStyle: "short" });
const date = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" });
