/** A lock by name, as far as it is used here; see the Web Locks API. */
export interface Locks {
  request<T>(
    name: string,
    options: { ifAvailable?: boolean; steal?: boolean; signal?: AbortSignal },
    act: (lock: object | null) => T | PromiseLike<T>,
  ): Promise<T>;
}

/**
 * The pen of a notebook, of which there is one for all tabs of the browser. A tab that is closed or dies lays it down.
 * Where the browser has no locks (a page that is served without https has none) everyone gets one: then it is noticed at
 * the next keeping that somebody else has written.
 */
export class Pen {
  private layDown: (() => void) | null = null;
  private readonly name: string;

  constructor(
    notebook: string,
    private readonly locks: Locks | undefined,
    /** Another tab took the pen away. */
    private readonly onStolen: () => void,
  ) {
    this.name = penName(notebook);
  }

  /** Takes the pen where it lies free; gives true where it is ours now. */
  take(): Promise<boolean> {
    return this.ask({ ifAvailable: true });
  }

  /** Waits for the pen, until it is ours or the signal calls it off. */
  wait(signal: AbortSignal): Promise<boolean> {
    return this.ask({ signal });
  }

  /** Takes the pen in any case. */
  steal(): Promise<boolean> {
    return this.ask({ steal: true });
  }

  /** Resolves once the pen lies free, without taking it; never where there are no locks or the signal calls it off. */
  async lies(signal: AbortSignal): Promise<void> {
    if (!this.locks) return new Promise(() => undefined);
    try {
      await this.locks.request(this.name, { signal }, () => undefined);
    } catch {
      await new Promise(() => undefined);
    }
  }

  lay(): void {
    this.layDown?.();
    this.layDown = null;
  }

  private ask(options: { ifAvailable?: boolean; steal?: boolean; signal?: AbortSignal }): Promise<boolean> {
    const { locks } = this;
    if (!locks) return Promise.resolve(true);
    return new Promise((resolve) => {
      let isHeld = false;
      const act = (lock: object | null): Promise<void> | undefined => {
        resolve(lock !== null);
        if (!lock) return undefined;
        isHeld = true;
        return new Promise<void>((lay) => {
          this.layDown = lay;
        });
      };
      locks.request(this.name, options, act).catch(() => {
        if (isHeld) {
          this.layDown = null;
          this.onStolen();
        }
        // Where it was not called off, the browser refuses locks, as it does where nothing may be stored.
        resolve(!options.signal?.aborted);
      });
    });
  }
}

/** The name of the lock that stands for the pen of a notebook. */
export const penName = (notebook: string): string => `spanwise notebook ${notebook}`;
