/** What the clock runs on, so that tests need not wait. */
export interface ClockPorts {
  /** Calls back after so many ms; gives what calls it off. */
  after(ms: number, act: () => void): () => void;
}

/**
 * How long the first edit after a rest waits for others to come, in ms. Not renewed by later ones: a drag of a minute is
 * kept all along.
 */
export const gathering = 350;

/**
 * When to keep: soon after an edit, edits of a moment together, and never two at once. What failed is tried again after
 * the next edit.
 */
export class KeepingClock {
  private dirty = false;
  private running: Promise<void> | null = null;
  private callOff: (() => void) | null = null;
  private hasFailed = false;
  private stopped = false;

  constructor(
    /** Keeps all as it then is; where it throws, nothing was kept. */
    private readonly keep: () => Promise<void>,
    private readonly ports: ClockPorts,
  ) {}

  /** True where everything is kept. */
  get isKept(): boolean {
    return !this.dirty && this.running === null;
  }

  /** True where the last try failed. */
  get failed(): boolean {
    return this.hasFailed;
  }

  /** Something was edited. */
  touch(): void {
    if (this.stopped) return;
    this.dirty = true;
    if (this.callOff || this.running) return;
    this.callOff = this.ports.after(gathering, () => {
      this.callOff = null;
      this.run();
    });
  }

  /** Keeps now what is not kept yet; gives true where all of it is kept afterwards. */
  async flush(): Promise<boolean> {
    // Without a pause where there is nothing to wait for: the page may be about to go.
    if (this.running) await this.running;
    if (this.dirty && !this.stopped) await this.run();
    return this.isKept;
  }

  /** Nothing is kept any more from here on, but what is being kept goes on. Waits for that. */
  async stop(): Promise<void> {
    this.stopped = true;
    this.rest();
    await this.running;
  }

  private run(): Promise<void> {
    this.rest();
    this.running ??= this.keepOnce();
    return this.running;
  }

  private async keepOnce(): Promise<void> {
    let touchedMeanwhile = false;
    try {
      this.dirty = false;
      await this.keep();
      this.hasFailed = false;
    } catch {
      // The next edit tries again; one that came meanwhile is such an edit.
      touchedMeanwhile = this.dirty;
      this.dirty = true;
      this.hasFailed = true;
    }
    this.running = null;
    if (this.dirty && (!this.hasFailed || touchedMeanwhile)) this.touch();
  }

  private rest(): void {
    this.callOff?.();
    this.callOff = null;
  }
}
