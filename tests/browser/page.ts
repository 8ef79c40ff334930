import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { test as base, expect, inject } from "vitest";

/** A page of the app as a test holds it. */
export interface AppPage {
  readonly page: Page;
  /** What the page complained of so far: console errors and warnings, uncaught errors, policy violations, failed loads. */
  readonly complaints: readonly string[];
}

/** How a page is opened. */
export interface OpenOptions extends BrowserContextOptions {
  /** The address; the built app unless told. */
  readonly url?: string;
  /** False for a browser that has no storage for notebooks, as some private windows have none. */
  readonly storage?: boolean;
}

interface Fixtures {
  /**
   * Opens the app in a fresh context: nothing stored, nothing shared with another test. The test fails at its end when
   * the page complained of anything, unless it called `complaintsExpected` first.
   */
  open: (options?: OpenOptions) => Promise<AppPage>;
  /** Tells that this test makes the page complain on purpose and looks at the complaints itself. */
  complaintsExpected: () => void;
  held: { pages: AppPage[]; closers: (() => Promise<void>)[]; tolerant: boolean };
  browser: Browser;
}

/** Vitest's `test` with a browser: `test("…", async ({ open }) => { const { page } = await open(); … })`. */
export const test = base.extend<Fixtures>({
  browser: [
    // biome-ignore lint/correctness/noEmptyPattern: Vitest reads the fixtures it needs from this pattern
    async ({}, use) => {
      const browser = await chromium.connect(inject("browserEndpoint"));
      await use(browser);
      await browser.close();
    },
    { scope: "file" },
  ],
  // biome-ignore lint/correctness/noEmptyPattern: Vitest reads the fixtures it needs from this pattern
  held: async ({}, use) => {
    const held: Fixtures["held"] = { pages: [], closers: [], tolerant: false };
    await use(held);
    await Promise.all(held.closers.map((close) => close()));
    if (!held.tolerant) expect(held.pages.flatMap((each) => each.complaints)).toEqual([]);
  },
  complaintsExpected: async ({ held }, use) => {
    await use(() => {
      held.tolerant = true;
    });
  },
  open: async ({ browser, held }, use) => {
    await use(async ({ url = inject("appUrl"), storage = true, ...options } = {}) => {
      const context = await browser.newContext(options);
      held.closers.push(() => context.close());
      await context.addInitScript(reportViolations);
      if (!storage) await context.addInitScript(removeStorage);
      const page = await context.newPage();
      const complaints: string[] = [];
      held.pages.push({ page, complaints });
      listen(page, complaints);
      await page.goto(url);
      return { page, complaints };
    });
  },
});

export { expect } from "vitest";

/** Runs in the page: a violation that no console message tells of is told too. */
function reportViolations(): void {
  addEventListener("securitypolicyviolation", (event) => {
    console.error(
      `policy violation: ${event.effectiveDirective} by ${event.blockedURI} at ${event.sourceFile}:${event.lineNumber}`,
    );
  });
}

/** Runs in the page. */
function removeStorage(): void {
  Object.defineProperty(window, "indexedDB", { get: () => undefined });
}

function listen(page: Page, complaints: string[]): void {
  page.on("console", (message) => {
    if (["error", "warning", "assert"].includes(message.type()))
      complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(`uncaught: ${error.message}`));
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  page.on("requestfailed", (request) => {
    // A page that is left while it still loads ends its requests itself.
    const reason = request.failure()?.errorText ?? "unknown";
    if (reason !== "net::ERR_ABORTED") complaints.push(`${reason}: ${request.url()}`);
  });
}
