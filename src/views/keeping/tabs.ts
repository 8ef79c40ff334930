/**
 * What tabs say to each other about a notebook: that one asks for the pen, that the other cannot give it, that it was
 * kept anew, or deleted.
 */
export type Saying = "ask" | "refuse" | "kept" | "deleted";

const sayings: readonly unknown[] = ["ask", "refuse", "kept", "deleted"] satisfies Saying[];

/** The other tabs of this browser that have Spanwise open. Where the browser has no such channel, nobody hears. */
export class Tabs {
  private readonly channel = openChannel();

  say(says: Saying, of: string): void {
    this.channel?.postMessage({ says, of });
  }

  /** Calls back at what other tabs say. Gives what ends it. */
  onSaying(listener: (says: Saying, of: string) => void): () => void {
    // A tab with another Spanwise in it may say what is not known here.
    const hear = ({ data }: MessageEvent<unknown>): void => {
      if (typeof data !== "object" || data === null || !("says" in data) || !("of" in data)) return;
      if (typeof data.of === "string" && sayings.includes(data.says)) listener(data.says as Saying, data.of);
    };
    this.channel?.addEventListener("message", hear);
    return () => this.channel?.removeEventListener("message", hear);
  }
}

function openChannel(): BroadcastChannel | null {
  try {
    return new BroadcastChannel("spanwise");
  } catch {
    return null;
  }
}
