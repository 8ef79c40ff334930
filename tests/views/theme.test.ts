import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const css = readFileSync(new URL("../../src/views/theme.css", import.meta.url), "utf8");
const colours = new Map(
  [...css.matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(([, name = "", light, dark]) => [
    name,
    { light: light ?? "", dark: dark ?? "" },
  ]),
);

/** Relative luminance and contrast ratio (W3C, Web Content Accessibility Guidelines 2.2, 2023, definitions). */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
function contrast(text: string, ground: string, mode: "light" | "dark"): number {
  const [low = 0, high = 0] = [text, ground]
    .map((name) => luminance(colours.get(name)?.[mode] ?? ""))
    .sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

describe.each(["light", "dark"] as const)("the %s colours", (mode) => {
  it.each([
    ["ink", ["paper", "film", "entered", "moved-wash", "holds-wash", "wood"]],
    ["soft", ["paper", "film", "entered", "moved-wash", "holds-wash"]],
    ["faint-text", ["paper"]],
    ["blue", ["paper", "film", "entered"]],
    ["moved", ["paper", "entered", "moved-wash"]],
    ["holds", ["paper", "film", "entered", "holds-wash"]],
  ])("give %s as text at least 4.5 : 1 on every ground it stands on", (text, grounds) => {
    for (const ground of grounds)
      expect(contrast(text, ground, mode), `${text} on ${ground}`).toBeGreaterThanOrEqual(4.5);
  });
  it("give the lines that carry meaning at least 3 : 1 on paper", () => {
    for (const line of ["ink", "soft", "blue", "moved", "holds"]) {
      expect(contrast(line, "paper", mode), line).toBeGreaterThanOrEqual(3);
    }
  });
});
