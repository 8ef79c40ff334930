import { describe, expect, test } from "vitest";
import { browserPlaces, findBrowser } from "../../src/tools/browser.js";

const linux = { platform: "linux", env: { PATH: "/usr/local/bin:/usr/bin" } };

describe("where a browser is looked for", () => {
  test("SPANWISE_BROWSER is the only place when it is set", () => {
    const env = { ...linux.env, SPANWISE_BROWSER: "/opt/mine/chromium" };
    expect(browserPlaces({ platform: "linux", env })).toEqual(["/opt/mine/chromium"]);
    expect(findBrowser({ platform: "linux", env }, (path) => path.startsWith("/usr"))).toBeUndefined();
  });

  test("on Linux, under its usual names in every folder of the path, Chromium first", () => {
    const there = ["/usr/bin/google-chrome", "/usr/bin/chromium"];
    expect(findBrowser(linux, (path) => there.includes(path))).toBe("/usr/bin/chromium");
  });

  test("one that is there but does not start is passed over", () => {
    expect(findBrowser(linux, (path) => path === "/usr/local/bin/microsoft-edge")).toBe(
      "/usr/local/bin/microsoft-edge",
    );
  });

  test("on a Mac, among the applications of everyone and of the user", () => {
    const places = browserPlaces({ platform: "darwin", env: { HOME: "/Users/ada" } });
    expect(places).toContain("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
    expect(places).toContain("/Users/ada/Applications/Chromium.app/Contents/MacOS/Chromium");
  });

  test("on Windows, in each folder for programs that is named", () => {
    const places = browserPlaces({ platform: "win32", env: { PROGRAMFILES: "C:\\Programs" } });
    expect(places).toEqual([
      "C:\\Programs\\Chromium\\Application\\chrome.exe",
      "C:\\Programs\\Google\\Chrome\\Application\\chrome.exe",
      "C:\\Programs\\Microsoft\\Edge\\Application\\msedge.exe",
    ]);
  });

  test("nowhere, when the path is empty", () => {
    expect(browserPlaces({ platform: "linux", env: {} })).toEqual([]);
  });
});
