import { inject } from "vitest";
import { serveApp } from "../../src/tools/app.js";
import { expect, test } from "./page.ts";

test("the app opens with a clean console and no policy violation", async ({ open }) => {
  const { page } = await open();
  await page.waitForLoadState("networkidle");
  expect(await page.title()).toContain("Spanwise");
});

test("the built files work under a path of several steps, with nothing missing", async ({ open }) => {
  const { page } = await open({ url: inject("appUrlBelow") });
  await page.waitForLoadState("networkidle");
  expect(await page.title()).toContain("Spanwise");
});

test("a script that is not the app's own is refused and noticed", async ({ open, complaintsExpected }) => {
  complaintsExpected();
  const { page, complaints } = await open();
  await page.evaluate(() => {
    const script = document.createElement("script");
    script.append("window.stranger = true");
    document.body.append(script);
  });
  expect(await page.evaluate(() => "stranger" in window)).toBe(false);
  await expect.poll(() => complaints.join("\n")).toMatch(/policy violation: (script-src|require-trusted-types-for)/);
});

test("text cannot be turned into markup or code", async ({ open, complaintsExpected }) => {
  complaintsExpected();
  const { page, complaints } = await open();
  const refused = await page.evaluate(() => {
    try {
      document.body.innerHTML = "<p>text from a notebook</p>";
      return false;
    } catch {
      return true;
    }
  });
  expect(refused).toBe(true);
  await expect.poll(() => complaints.join("\n")).toMatch(/policy violation: require-trusted-types-for/);
});

test("the server states the page's policy as a header too, and forbids framing", async () => {
  const { headers } = await fetch(inject("appUrl"));
  expect(headers.get("content-security-policy")).toMatch(
    /^default-src 'self'; .*require-trusted-types-for 'script'.*; frame-ancestors 'none'$/,
  );
});

test("a file that is not there is not found, instead of the page in its place", async () => {
  expect((await fetch(`${inject("appUrl")}assets/missing.js`)).status).toBe(404);
});

test("a taken port is passed over for the next free one", async () => {
  const first = await serveApp({ port: 4573 });
  const second = await serveApp({ port: first.port });
  expect(second.port).toBeGreaterThan(first.port);
  expect((await fetch(second.url)).status).toBe(200);
  await Promise.all([first.close(), second.close()]);
});
