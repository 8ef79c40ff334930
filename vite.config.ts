import { lezer } from "@lezer/generator/rollup";
import { defineConfig } from "vitest/config";

export default defineConfig({
  base: "./",
  plugins: [lezer()],
  build: { target: "es2023" },
});
