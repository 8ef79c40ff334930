/** How long nothing may have moved, in ms. */
const pause = 60;

/** Work that can wait until nothing moves any more: each task once, in the order in which it was added. */
export class IdleQueue {
  private readonly tasks = new Set<() => void>();
  private timer = 0;

  add(task: () => void): void {
    this.tasks.add(task);
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => whenIdle(this.run, 200), pause);
  }

  private readonly run = (deadline: IdleDeadline | null): void => {
    for (const task of this.tasks) {
      this.tasks.delete(task);
      task();
      if (deadline && !deadline.didTimeout && deadline.timeRemaining() < 1) break;
    }
    if (this.tasks.size > 0) whenIdle(this.run, 200);
  };
}

/** Calls back when the browser has nothing else to do, after so many ms at the latest. */
export function whenIdle(act: (deadline: IdleDeadline | null) => void, timeout: number): void {
  if ("requestIdleCallback" in window) requestIdleCallback(act, { timeout });
  else setTimeout(() => act(null), 50);
}
