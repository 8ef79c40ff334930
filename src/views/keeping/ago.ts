/** How long ago something was, as it is told, and for how many ms that stays true; infinite where it always does. */
export function ago(at: number, now: number): { readonly text: string; readonly holds: number } {
  const seconds = Math.max(0, (now - at) / 1000);
  if (seconds < 2) return { text: "just now", holds: (2 - seconds) * 1000 };
  if (seconds < 60) return counted(seconds, 1, "s");
  if (seconds < 3600) return counted(seconds, 60, "min");
  if (seconds < 12 * 3600) return counted(seconds, 3600, "h");
  return { text: `on ${dates.format(at)}`, holds: Number.POSITIVE_INFINITY };
}

const dates = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "short",
  year: "numeric",
  hour: "2-digit",
  minute: "2-digit",
});

function counted(seconds: number, unit: number, sign: string): { readonly text: string; readonly holds: number } {
  const count = Math.floor(seconds / unit);
  return { text: `${count} ${sign} ago`, holds: Math.ceil(((count + 1) * unit - seconds) * 1000) };
}
