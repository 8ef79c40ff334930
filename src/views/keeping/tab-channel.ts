/** What tabs say to each other about a notebook: who asks for the pen, gives, keeps or has it, and what was kept. */
export type Saying = "ask" | "give" | "keep" | "write" | "kept" | "deleted";

const sayings: readonly string[] = ["ask", "give", "keep", "write", "kept", "deleted"] satisfies Saying[];

type Listener = (says: Saying, of: string) => void;

/** The other tabs of this browser that have Spanwise open. Where the browser has no such channel, nobody hears. */
export class TabChannel {
  private readonly channel: BroadcastChannel | null;
  private readonly listeners = new Set<Listener>();

  constructor() {
    this.channel = openChannel();
    this.channel?.addEventListener("message", ({ data }: MessageEvent<unknown>) => this.hear(data));
  }

  say(says: Saying, of: string): void {
    this.channel?.postMessage({ says, of });
  }

  /** Calls back at what other tabs say. Gives what ends it. */
  onSaying(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** A tab with another Spanwise in it may say what is not known here. */
  private hear(data: unknown): void {
    if (typeof data !== "object" || data === null || !("says" in data) || !("of" in data)) return;
    const { says, of } = data;
    if (typeof of !== "string" || typeof says !== "string" || !sayings.includes(says)) return;
    for (const listener of this.listeners) listener(says as Saying, of);
  }
}

function openChannel(): BroadcastChannel | null {
  try {
    return new BroadcastChannel("spanwise");
  } catch {
    return null;
  }
}
