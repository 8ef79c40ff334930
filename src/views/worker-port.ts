import type { Answer, Port } from "../cells/index.ts";

/** The way to hands in workers; `start` starts one, and may be refused. */
export function workerPort(start: () => Worker): Port {
  return {
    // One core stays with the page.
    most: Math.min(4, Math.max(1, navigator.hardwareConcurrency - 1)),
    now: () => performance.now(),
    canReplace: () => navigator.onLine,
    open(hear, broke) {
      try {
        const worker = start();
        worker.addEventListener("message", ({ data }: MessageEvent<Answer>) => hear(data));
        worker.addEventListener("error", (event) => {
          // The cells go on without it; what happened is still to be seen.
          console.warn(`The worker has failed: ${event.message || "it could not be loaded"}`);
          broke();
        });
        return { send: (message) => worker.postMessage(message), close: () => worker.terminate() };
      } catch (error) {
        console.warn(error);
        return null;
      }
    },
    later(ms, act) {
      const timer = setTimeout(act, ms);
      return () => clearTimeout(timer);
    },
  };
}
