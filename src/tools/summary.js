/**
 * Counts a test run for its closing line.
 * @param {VitestReport | undefined} report what Vitest wrote; undefined when it wrote nothing
 * @param {readonly {name: string, ok: boolean}[]} steps the other steps of the run (types, lint, the Vitest process itself);
 *   a step that failed counts as one failure, one that held counts for nothing
 * @returns {{passed: number, failed: number, skipped: number, line: string}}
 *
 * @typedef {{
 *   numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number,
 *   testResults: {status: string, assertionResults: {status: string}[]}[],
 * }} VitestReport the part of Vitest's JSON report that is used
 */
export function summarise(report, steps) {
  const passed = report?.numPassedTests ?? 0;
  const skipped = (report?.numPendingTests ?? 0) + (report?.numTodoTests ?? 0);
  const tests = (report?.numFailedTests ?? 0) + brokenFiles(report);
  const failedSteps = steps.filter((step) => !step.ok);
  // A failed test makes the Vitest step fail as well; that is one failure, not two.
  const failed = tests + failedSteps.filter((step) => step.name !== "tests" || tests === 0).length;
  return {
    passed,
    failed,
    skipped,
    line: `${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ""}`,
  };
}

/**
 * Test files that failed outside any test of theirs, for example because they could not be loaded.
 * @param {VitestReport | undefined} report
 */
function brokenFiles(report) {
  return (report?.testResults ?? []).filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
}
