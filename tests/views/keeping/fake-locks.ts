import type { Locks } from "../../../src/views/keeping/pen.ts";

interface Request {
  readonly grant: () => void;
  readonly refuse: (error: Error) => void;
}

/** Locks of several tabs in one process, as the Web Locks API has them: one holder, a queue, stealing, and dying tabs. */
export class FakeLocks {
  /** How often a lock was taken away from a tab. */
  stolen = 0;
  private readonly queues = new Map<string, Request[]>();
  private readonly holders = new Map<string, { readonly tab: string; readonly fail: (error: Error) => void }>();

  holder(name: string): string | undefined {
    return this.holders.get(name)?.tab;
  }

  /** What a tab sees of them; `die` lays down all it has and leaves every queue. */
  tab(tab: string): { readonly locks: Locks; die(): void } {
    let isDead = false;
    const mine: { name: string; request: Request }[] = [];
    const locks: Locks = {
      request: (name, { ifAvailable, steal, signal }, act) =>
        new Promise((resolve, reject) => {
          const grant = (): void => {
            if (isDead) return this.release(name, tab);
            this.holders.set(name, { tab, fail: reject });
            const held = Promise.resolve(act({}));
            held.then(
              (value) => {
                if (this.holders.get(name)?.fail === reject) this.release(name, tab);
                resolve(value);
              },
              (error) => reject(error),
            );
          };
          const request = { grant, refuse: reject };
          mine.push({ name, request });
          queueMicrotask(() => {
            const holder = this.holders.get(name);
            if (signal?.aborted) return reject(new DOMException("called off", "AbortError"));
            if (steal) {
              this.holders.delete(name);
              if (holder) this.stolen++;
              holder?.fail(new DOMException("stolen", "AbortError"));
              grant();
            } else if (!holder && this.queueOf(name).length === 0) grant();
            else if (ifAvailable) Promise.resolve(act(null)).then(resolve, reject);
            else {
              this.queueOf(name).push(request);
              signal?.addEventListener("abort", () => {
                this.queues.set(
                  name,
                  this.queueOf(name).filter((each) => each !== request),
                );
                reject(new DOMException("called off", "AbortError"));
              });
            }
          });
        }),
    };
    const die = (): void => {
      isDead = true;
      for (const { name, request } of mine) {
        this.queues.set(
          name,
          this.queueOf(name).filter((each) => each !== request),
        );
      }
      for (const [name, holder] of this.holders) if (holder.tab === tab) this.release(name, tab);
    };
    return { locks, die };
  }

  private release(name: string, tab: string): void {
    if (this.holders.get(name)?.tab !== tab) return;
    this.holders.delete(name);
    this.queueOf(name).shift()?.grant();
  }

  private queueOf(name: string): Request[] {
    const queue = this.queues.get(name) ?? [];
    this.queues.set(name, queue);
    return queue;
  }
}
