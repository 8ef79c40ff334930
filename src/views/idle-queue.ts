/** How long nothing may have moved, in ms: longer than a hand halts while it drags on. */
const pause = 250;

/** How long tasks run at least before others have their turn, in ms: a browser that is never idle gets on, too. */
const turn = 4;

/** Work that can wait until nothing moves any more: each task once, in the order in which it was added. */
export class IdleQueue {
  private readonly tasks = new Set<() => void>();
  private waiting = false;
  private movedAt = 0;

  add(task: () => void): void {
    this.tasks.add(task);
    // While something is dragged this is called for every cell in every frame: a timer each would cost more than the work.
    this.movedAt = performance.now();
    if (!this.waiting) this.wait(pause);
  }

  private wait(time: number): void {
    this.waiting = true;
    setTimeout(() => {
      const left = this.movedAt + pause - performance.now();
      if (left > 1) return this.wait(left);
      this.waiting = false;
      whenIdle(this.run, 200);
    }, time);
  }

  private readonly run = (deadline: IdleDeadline | null): void => {
    const until = performance.now() + Math.max(turn, deadline?.timeRemaining() ?? 0);
    for (const task of this.tasks) {
      this.tasks.delete(task);
      task();
      if (performance.now() >= until) break;
    }
    if (this.tasks.size > 0) whenIdle(this.run, 200);
  };
}

/** Calls back when the browser has nothing else to do, after so many ms at the latest. */
export function whenIdle(act: (deadline: IdleDeadline | null) => void, timeout: number): void {
  if ("requestIdleCallback" in window) requestIdleCallback(act, { timeout });
  else setTimeout(() => act(null), 50);
}
