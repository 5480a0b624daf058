/** What one step of `npm test` gave: checks passed and failed. */
const nothing = { passed: 0, failed: 0 };

/** A step that either passes or fails as a whole counts one. */
export function tallyOfExit(code) {
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/**
 * Counts from the test runner's own JSON. A file that could not be run holds no counted test and yet failed: it counts one.
 * So does a test that was skipped or left to do, and a run that ended badly for a reason no test shows.
 */
export function tallyOfRun(report, code) {
  if (report === null) return { passed: 0, failed: 1 };
  const failedFiles = report.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const failed = report.numFailedTests + report.numPendingTests + report.numTodoTests + failedFiles;
  const unexplained = code !== 0 && failed === 0 ? 1 : 0;
  return { passed: report.numPassedTests, failed: failed + unexplained };
}

/** The sum of several. */
export function sum(tallies) {
  return tallies.reduce(
    (total, tally) => ({ passed: total.passed + tally.passed, failed: total.failed + tally.failed }),
    nothing,
  );
}

/** The last line of `npm test`: `214 passed, 0 failed`. */
export function lastLine(tally) {
  return `${tally.passed} passed, ${tally.failed} failed`;
}
