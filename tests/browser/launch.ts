import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { serveApp } from "../../src/tools/app.js";
import { browserFlags, ensureBrowser } from "../../src/tools/browser.js";
import { root } from "../../src/tools/place.js";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built app is served, ending in a slash. */
    appUrl: string;
    /** The same files served under a path of several steps. */
    appUrlBelow: string;
    /** Where the one browser that all tests share listens. */
    browserEndpoint: string;
    /** The browser's program, for a test that starts one of its own. */
    browserPath: string;
  }
}

/** Builds the app where needed, serves it, and starts one browser for every browser test; ends all of it afterwards. */
export default async function launch(project: TestProject): Promise<() => Promise<void>> {
  build();
  const executablePath = await ensureBrowser((line) => console.log(`Spanwise: ${line}`));
  const app = await serveApp({ port: 4273 });
  const below = await serveApp({ port: 4373, base: "/some/sub/path/" });
  const browser = await chromium.launchServer({ executablePath, args: browserFlags, host: "127.0.0.1" });
  project.provide("appUrl", app.url);
  project.provide("appUrlBelow", below.url);
  project.provide("browserEndpoint", browser.wsEndpoint());
  project.provide("browserPath", executablePath);
  return async () => {
    await browser.close();
    await Promise.all([app.close(), below.close()]);
  };
}

/** In a process of its own: this one's NODE_ENV is "test", which would pick the development builds of packages. */
function build(): void {
  const { NODE_ENV: _, VITEST: __, ...env } = process.env;
  const command = [join(root, "src", "tools", "build.js"), "--if-stale"];
  const { status } = spawnSync(process.execPath, command, { cwd: root, env, stdio: "inherit" });
  if (status !== 0) throw new Error("the app could not be built; the lines above say why");
}
