import type { Tabs } from "./tabs.ts";

/** This tab writes the notebook; or another does, and this one reads; or this one is about to take over. */
export type Phase = "writing" | "reading" | "taking";

/** What a tab does for its part. */
export interface PenHost {
  onPhase(phase: Phase, before: Phase): void;
  /** Another tab wants to write: nothing is edited here from now on; gives true where the last edit is kept. */
  yield(): Promise<boolean>;
  /** The other tab cannot keep its changes, and so goes on writing. */
  onRefused(): void;
}

/** How long a page that is left may take to lay its pen down, in ms. */
const leaving = 400;
/** How long the pen lies free before a reader takes it up, in ms: the other page may only be loading again. */
const returning = 2000;
/** How long another tab may take to keep its last edit before it counts as hung, in ms. */
const answering = 5000;

/**
 * The pen of a notebook, of which there is one for all tabs of the browser: a lock (Web Locks API). A tab that is closed
 * or dies lays it down, and one that reads takes it up. Where the browser has no locks, as on a page served without
 * https, everyone gets one; then it is noticed at the next keeping that somebody else has written.
 */
export class Pen {
  private current: Phase = "reading";
  private layDown: (() => void) | null = null;
  /** Calls off what is waited for. */
  private waiting = new AbortController();
  private isYielding = false;
  private isClosed = false;
  private readonly stopHearing: () => void;
  private readonly locks = navigator.locks as LockManager | undefined;

  constructor(
    private readonly notebook: string,
    private readonly tabs: Tabs,
    private readonly host: PenHost,
  ) {
    this.stopHearing = tabs.onSaying((says, of) => {
      if (of !== notebook) return;
      if (says === "ask" && this.current === "writing") void this.give();
      if (says === "refuse" && this.current === "taking") this.isRefused();
    });
  }

  get phase(): Phase {
    return this.current;
  }

  /** Resolves once it is known whether this tab writes or reads; `onPhase` tells only of changes after that. */
  async begin(): Promise<void> {
    let isOurs = await this.take({ ifAvailable: true });
    if (!isOurs) {
      // A page that is loaded again asks while the one before is still leaving.
      await pause(leaving);
      isOurs = await this.take({ ifAvailable: true });
    }
    if (isOurs) this.current = "writing";
    else void this.watch();
  }

  /** The person wants to write here: the other tab is asked, and if it does not answer the pen is taken from it. */
  async takeOver(): Promise<void> {
    if (this.current !== "reading") return;
    this.waiting.abort();
    this.turn("taking");
    this.tabs.say("ask", this.notebook);
    const waiting = new AbortController();
    this.waiting = waiting;
    if (!this.locks) await pause(leaving);
    const late = setTimeout(() => waiting.abort(), answering);
    let isOurs = await this.take({ signal: waiting.signal });
    clearTimeout(late);
    if (!isOurs && this.isTaking) isOurs = await this.take({ steal: true });
    if (!this.isTaking) this.lay();
    else this.turn("writing");
  }

  /** Somebody else has written, whoever has the pen. */
  lose(): void {
    this.lay();
    if (this.isClosed) return;
    this.turn("reading");
    void this.watch();
  }

  close(): void {
    this.isClosed = true;
    this.stopHearing();
    this.waiting.abort();
    this.lay();
  }

  private get isTaking(): boolean {
    return this.current === "taking" && !this.isClosed;
  }

  private async give(): Promise<void> {
    if (this.isYielding) return;
    this.isYielding = true;
    const isKept = await this.host.yield();
    this.isYielding = false;
    if (this.current !== "writing" || this.isClosed) return;
    if (isKept) this.lose();
    else this.tabs.say("refuse", this.notebook);
  }

  private isRefused(): void {
    this.waiting.abort();
    this.turn("reading");
    this.host.onRefused();
    void this.watch();
  }

  /** Takes the pen up once the other tab has gone; one that is only loaded again may have it back. */
  private async watch(): Promise<void> {
    const { locks } = this;
    if (!locks) return;
    this.waiting.abort();
    this.waiting = new AbortController();
    const { signal } = this.waiting;
    for (;;) {
      await locks.request(penName(this.notebook), { signal }, () => undefined).catch(() => undefined);
      await pause(returning);
      if (signal.aborted) return;
      const isOurs = await this.take({ ifAvailable: true });
      if (isOurs && signal.aborted) this.lay();
      if (signal.aborted) return;
      if (isOurs) return this.turn("writing");
    }
  }

  /** True where the pen is ours now, and until it is laid down or taken away. */
  private take(options: LockOptions): Promise<boolean> {
    const { locks } = this;
    if (!locks) return Promise.resolve(true);
    return new Promise((resolve) => {
      let isHeld = false;
      const hold = (lock: Lock | null): Promise<void> | undefined => {
        isHeld = lock !== null;
        resolve(isHeld);
        return isHeld
          ? new Promise<void>((lay) => {
              this.layDown = lay;
            })
          : undefined;
      };
      locks.request(penName(this.notebook), options, hold).catch(() => {
        // Where it was not called off, the browser refuses locks, as it does where nothing may be stored.
        if (isHeld) this.lose();
        else resolve(!options.signal?.aborted);
      });
    });
  }

  private lay(): void {
    this.layDown?.();
    this.layDown = null;
  }

  private turn(phase: Phase): void {
    const before = this.current;
    this.current = phase;
    this.host.onPhase(phase, before);
  }
}

/** True where some tab, this one too, has the pen of a notebook. */
export async function isBeingWritten(notebook: string): Promise<boolean> {
  try {
    const { held = [] } = await navigator.locks.query();
    return held.some(({ name }) => name === penName(notebook));
  } catch {
    return false;
  }
}

/** The name of the lock that stands for the pen of a notebook. */
const penName = (notebook: string): string => `spanwise notebook ${notebook}`;

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
