import { expect, test } from "vitest";
import { summarise } from "../../src/tools/summary.js";

const report = (over: object) => ({
  numPassedTests: 7,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [],
  ...over,
});
const steps = (over: Record<string, boolean> = {}) =>
  Object.entries({ types: true, lint: true, tests: true, ...over }).map(([name, ok]) => ({ name, ok }));

test("a clean run counts its tests", () => {
  expect(summarise(report({}), steps()).line).toBe("7 passed, 0 failed");
});

test("a failed test counts once, although the run of the tests failed as well", () => {
  expect(summarise(report({ numFailedTests: 2 }), steps({ tests: false })).line).toBe("7 passed, 2 failed");
});

test("types and lint that fail count one each", () => {
  expect(summarise(report({}), steps({ types: false, lint: false })).line).toBe("7 passed, 2 failed");
  const all = summarise(report({ numFailedTests: 3 }), steps({ types: false, lint: false, tests: false }));
  expect(all.line).toBe("7 passed, 5 failed");
});

test("a test file that could not be loaded counts as a failure", () => {
  const testResults = [
    { status: "failed", assertionResults: [] },
    { status: "failed", assertionResults: [{ status: "failed" }] },
    { status: "passed", assertionResults: [{ status: "passed" }] },
  ];
  const broken = summarise(report({ numFailedTests: 1, testResults }), steps({ tests: false }));
  expect(broken.line).toBe("7 passed, 2 failed");
});

test("a run that failed without a failed test, or wrote no report, counts as one failure", () => {
  expect(summarise(report({}), steps({ tests: false })).line).toBe("7 passed, 1 failed");
  expect(summarise(undefined, steps({ tests: false })).line).toBe("0 passed, 1 failed");
});

test("skipped tests are told", () => {
  expect(summarise(report({ numPendingTests: 1, numTodoTests: 2 }), steps()).line).toBe(
    "7 passed, 0 failed, 3 skipped",
  );
});
