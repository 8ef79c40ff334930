import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "../../src/tools/place.js";
import { pagePolicy } from "../../src/tools/policy.js";

test("the policy of a page is read from its meta tag, on one line", () => {
  const page = `<meta charset="utf-8"><meta
    http-equiv="Content-Security-Policy"
    content="default-src 'self';
      object-src 'none'"
  >`;
  expect(pagePolicy(page)).toBe("default-src 'self'; object-src 'none'");
});

test("a page without a policy is an error", () => {
  expect(() => pagePolicy(`<meta name="Content-Security-Policy" content="x">`)).toThrow("states no");
});

test("our page allows its own files only: no inline code or style, no eval, no address outside", () => {
  const policy = pagePolicy(readFileSync(join(root, "index.html"), "utf8"));
  expect(policy).toContain("default-src 'self'");
  expect(policy).toContain("require-trusted-types-for 'script'");
  expect(policy).not.toMatch(/unsafe|eval|https?:|\*/);
});
