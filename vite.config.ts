import { lezer } from "@lezer/generator/rollup";
import { defineConfig } from "vitest/config";

export default defineConfig({
  // Relative addresses: the built files work under any path.
  base: "./",
  plugins: [lezer()],
  worker: { format: "es", plugins: () => [lezer()] },
  build: {
    target: "es2023",
    // The page's policy allows no data: addresses, so small fonts and pictures stay files too.
    assetsInlineLimit: 0,
    // The size that counts is measured, compressed, by the bench; a warning would only startle a newcomer.
    chunkSizeWarningLimit: 1000,
    // The app, and the manual of all functions, which the build fills in afterwards.
    rolldownOptions: { input: ["index.html", "functions.html"] },
  },
  test: {
    // Two shared, noisy cores: generous limits, and one thing at a time where a browser draws.
    maxWorkers: 2,
    testTimeout: 90_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/**/*.browser.test.ts"],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/**/*.browser.test.ts"],
          globalSetup: "tests/browser/launch.ts",
          maxWorkers: 1,
          testTimeout: 120_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
