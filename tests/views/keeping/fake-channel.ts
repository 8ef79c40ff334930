import type { Saying, TabChannel } from "../../../src/views/keeping/tab-channel.ts";

type Listener = (says: Saying, of: string) => void;

/** What tabs of one process say to each other: heard by all others, a moment later and in order. */
export class FakeChannel {
  private readonly tabs = new Map<string, Set<Listener>>();

  tab(name: string): Pick<TabChannel, "say" | "onSaying"> {
    const listeners = this.tabs.get(name) ?? new Set();
    this.tabs.set(name, listeners);
    return {
      say: (says, of) => {
        for (const [other, theirs] of this.tabs) {
          if (other !== name) queueMicrotask(() => [...theirs].forEach((listener) => listener(says, of)));
        }
      },
      onSaying: (listener) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    };
  }

  leave(name: string): void {
    this.tabs.get(name)?.clear();
  }
}
