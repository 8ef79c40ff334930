/** A time that passes only when a test says so. */
export class Time {
  now = 0;
  private waiting: { readonly at: number; readonly act: () => void }[] = [];

  readonly after = (ms: number, act: () => void): (() => void) => {
    const entry = { at: this.now + ms, act };
    this.waiting.push(entry);
    return () => {
      this.waiting = this.waiting.filter((each) => each !== entry);
    };
  };

  /** Lets so many ms pass, and whatever falls into them happen in order. */
  async pass(ms: number): Promise<void> {
    const end = this.now + ms;
    for (;;) {
      await this.settle();
      const due = this.waiting.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
      if (!due) break;
      this.waiting = this.waiting.filter((each) => each !== due);
      this.now = Math.max(this.now, due.at);
      due.act();
    }
    this.now = end;
    await this.settle();
  }

  /** Lets all that is only promised come true. */
  private async settle(): Promise<void> {
    for (let turn = 0; turn < 50; turn++) await Promise.resolve();
  }
}
