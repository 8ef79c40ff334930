import type { ClockPorts } from "./keeping-clock.ts";
import { type Locks, Pen } from "./pen.ts";
import type { Saying, TabChannel } from "./tab-channel.ts";
import { type Act, firstTurn, type Happening, next, type Phase, type Turn } from "./tenancy.ts";

export interface TenantPorts extends ClockPorts {
  readonly locks: Locks | undefined;
  readonly channel: Pick<TabChannel, "say" | "onSaying">;
}

/** What a tab does for its part. */
export interface TenantHost {
  /** The phase has changed; told before anything else is done about it. */
  onPhase(phase: Phase, before: Phase): void;
  /** Keeps the last edit, and gives true where it is kept. */
  keep(): Promise<boolean>;
  /** The other tab cannot keep its changes, and so goes on writing. */
  onUnwilling(): void;
}

/** How long a page that is left may take to lay its pen down, in ms: also where it is only loaded again. */
const leaving = 400;
/** How long another tab may take to answer, and to keep its last edit, in ms. */
const answering = 2500;
const keeping = 10_000;

/** What another tab says, as it happens to this one. */
const heard: Partial<Readonly<Record<Saying, Happening>>> = {
  ask: "asked",
  give: "other gives",
  keep: "other keeps",
  write: "other writes",
};

/** This tab's part in who may edit one notebook: carries out what the state machine says. */
export class Tenant {
  private current: Phase = firstTurn.phase;
  private readonly pen: Pen;
  private watching = new AbortController();
  private queueing = new AbortController();
  private endWait: (() => void) | null = null;
  private readonly stopHearing: () => void;

  constructor(
    private readonly notebook: string,
    private readonly ports: TenantPorts,
    private readonly host: TenantHost,
  ) {
    this.pen = new Pen(notebook, ports.locks, () => this.happen("stolen"));
    this.stopHearing = ports.channel.onSaying((says, of) => {
      const happening = of === notebook ? heard[says] : undefined;
      if (happening === undefined) return;
      if (happening === "other keeps" && this.current === "taking") host.onUnwilling();
      this.happen(happening);
    });
  }

  get phase(): Phase {
    return this.current;
  }

  /** Resolves once it is known whether this tab writes or reads. */
  async begin(): Promise<void> {
    await this.perform("try");
  }

  /** The person wants to edit here. */
  takeOver(): void {
    this.happen("take");
  }

  /** What stands in the storage is not what this tab left there: somebody else has the pen. */
  isOverwritten(): void {
    this.pen.lay();
    this.happen("stolen");
  }

  close(): void {
    this.stopHearing();
    this.happen("close");
  }

  private happen(happening: Happening): void {
    this.go(next(this.current, happening));
  }

  private go({ phase, acts }: Turn): void {
    const before = this.current;
    this.current = phase;
    if (phase !== before) this.host.onPhase(phase, before);
    for (const act of acts) void this.perform(act);
  }

  private async perform(act: Act): Promise<void> {
    const { channel } = this.ports;
    switch (act) {
      case "try":
        this.happen((await this.tryTwice()) ? "granted" : "refused");
        return;
      case "watch":
        this.watching = new AbortController();
        return this.watch(this.watching.signal);
      case "end watch":
        this.watching.abort();
        return;
      case "queue":
        this.queueing = new AbortController();
        if (await this.pen.wait(this.queueing.signal)) this.gotPen();
        return;
      case "leave queue":
        this.queueing.abort();
        return;
      case "steal":
        if (await this.pen.steal()) this.gotPen();
        return;
      case "lay down":
        this.pen.lay();
        return;
      case "say ask":
        return channel.say("ask", this.notebook);
      case "say give":
        return channel.say("give", this.notebook);
      case "say keep":
        return channel.say("keep", this.notebook);
      case "say write":
        return channel.say("write", this.notebook);
      case "wait":
        return this.wait(answering);
      case "wait longer":
        return this.wait(keeping);
      case "end wait":
        this.endWait?.();
        return;
      case "keep":
        this.happen((await this.host.keep()) ? "kept" : "not kept");
        return;
    }
  }

  /** A page that is loaded again asks while the one before is still leaving. */
  private async tryTwice(): Promise<boolean> {
    if (await this.pen.take()) return true;
    await this.pause(leaving);
    return this.pen.take();
  }

  /** Another tab that is only loaded again lays its pen down for a moment: it is left in peace. */
  private async watch(signal: AbortSignal): Promise<void> {
    await this.pen.lies(signal);
    await this.pause(2 * leaving);
    if (signal.aborted) return;
    const isFree = await this.pen.take();
    if (isFree) this.pen.lay();
    if (signal.aborted) return;
    if (isFree) this.happen("left");
    else await this.watch(signal);
  }

  /** The pen may come when it is wanted no more. */
  private gotPen(): void {
    if (this.current === "taking") this.happen("granted");
    else this.pen.lay();
  }

  private wait(ms: number): void {
    this.endWait?.();
    this.endWait = this.ports.after(ms, () => this.happen("late"));
  }

  private pause(ms: number): Promise<void> {
    return new Promise((resolve) => this.ports.after(ms, resolve));
  }
}
