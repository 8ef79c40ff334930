import type { Browser } from "playwright-core";

/** One line of the table that `npm run bench` prints. Texts, with their units; figures of a machine are never asserted. */
export interface Row {
  /** What is measured. */
  readonly figure: string;
  /** The measured value, with its unit. */
  readonly measured: string;
  /** What DEVELOPERS.md sets as the goal. */
  readonly goal: string;
  /** The measured value against what was run beside it, or against the goal where nothing can run beside it. */
  readonly ratio: string;
}

/** What a bench is given. */
export interface BenchContext {
  /** The project's folder; the app stands built in its `dist`. */
  readonly root: string;
  /** Serves the built app and starts a browser; both are ended after the bench. */
  readonly openApp: () => Promise<{ readonly browser: Browser; readonly url: string }>;
  /** Bundles a further program of tests/bench, for a thread; gives its path. */
  readonly bundle: (name: string) => Promise<string>;
}

/** The default export of a `tests/bench/*.bench.ts` file. It runs in a process of its own, with `gc()` at hand. */
export type Bench = (context: BenchContext) => Promise<readonly Row[]>;
