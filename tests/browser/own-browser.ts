import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium } from "playwright-core";
import { inject } from "vitest";
import { browserFlags } from "../../src/tools/browser.js";

/** A browser of a test's own that keeps its storage from one start to the next, and can be killed. */
export interface OwnBrowser {
  /** Starts it, again after it was killed. */
  start(): Promise<BrowserContext>;
  /** Ends it at once, as a crash would: it hears nothing of it and can do nothing any more. */
  kill(): Promise<void>;
  /** Ends it and clears its storage away. */
  end(): Promise<void>;
}

/** One that is not started yet. */
export function ownBrowser(): OwnBrowser {
  const profile = mkdtempSync(join(tmpdir(), "spanwise-profile-"));
  let running: ChildProcess | null = null;
  const kill = async (): Promise<void> => {
    const program = running;
    running = null;
    if (program?.pid === undefined) return;
    const gone = new Promise((resolve) => program.once("exit", resolve));
    try {
      // The whole group: a browser is several processes, of which each could still write.
      process.kill(process.platform === "win32" ? program.pid : -program.pid, "SIGKILL");
    } catch {
      program.kill("SIGKILL");
    }
    await gone;
  };
  return {
    async start() {
      const flags = ["--headless=new", "--no-first-run", "--remote-debugging-port=0", `--user-data-dir=${profile}`];
      running = spawn(inject("browserPath"), [...browserFlags, ...flags, "about:blank"], {
        detached: true,
        stdio: ["ignore", "ignore", "pipe"],
      });
      const browser = await chromium.connectOverCDP(await endpointOf(running));
      const [context] = browser.contexts();
      if (!context) throw new Error("got a browser without a context, expected the one of its profile");
      return context;
    },
    kill,
    async end() {
      await kill();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** Where it listens, which it tells among its complaints. */
function endpointOf(program: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let told = "";
    program.stderr?.on("data", (more) => {
      told += more;
      const [, endpoint] = /DevTools listening on (ws:\S+)/.exec(told) ?? [];
      if (endpoint) resolve(endpoint);
    });
    program.once("exit", () => reject(new Error(`the browser ended before it listened: ${told}`)));
  });
}
